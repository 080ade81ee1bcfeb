/** @module Rule: crank, cylinders, bearings and firing order belong to one engine that can turn. */
import type { EngineType, PlaceKind } from '../engine-type.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import { millimetres } from './every-limits.ts';

const crank = ({ stroke, rod, pinOffset }: EngineType): readonly Finding[] => {
  if (stroke <= 0) return [wrong(['stroke'], 'the stroke is not above zero', 'give it as the manual has it')];
  const least = stroke / 2 + Math.abs(pinOffset);
  if (rod > least) return [];
  return [
    wrong(
      ['rod'],
      `a rod of ${millimetres(rod)} cannot turn: it must be longer than ${millimetres(least)}, half the stroke and the pin offset`,
      'compare rod and stroke with the manual; the rod is measured between centres',
    ),
  ];
};

const firingOrder = ({ cylinders, firingOrder: order }: EngineType): readonly Finding[] => {
  const each = new Set(order);
  const complete =
    order.length === cylinders && each.size === cylinders && order.every((no) => no <= cylinders);
  return complete
    ? []
    : [
        wrong(
          ['firing-order'],
          `the firing order ${order.join(', ')} does not name each of ${cylinders} cylinders once`,
          `list the numbers 1 to ${cylinders} in the order in which they fire`,
        ),
      ];
};

const count = ({ cylinders, layout }: EngineType, kind: PlaceKind): readonly Finding[] => {
  const path = ['places', kind.name, 'count'];
  if (kind.along === 'engine') return [];
  if (kind.along === 'cylinder') {
    if (kind.count % cylinders === 0) return [];
    const what = `${kind.count} places (${kind.title}) cannot be shared among ${cylinders} cylinders`;
    return [wrong(path, what, `give ${cylinders} or a multiple of it, or let them stand along the engine`)];
  }
  const throws = layout === 'vee' ? Math.ceil(cylinders / 2) : cylinders;
  if (kind.count === throws + 1) return [];
  const what = `${kind.count} bearings (${kind.title}) for ${throws} crank throws`;
  if (kind.count > throws + 1) return [wrong(path, what, `a crankshaft has at most ${throws + 1}`)];
  return [doubtful(path, what, `most crankshafts have ${throws + 1}; look whether it is so`)];
};

export const engineForm = (engine: EngineType): readonly Finding[] => [
  ...crank(engine),
  ...firingOrder(engine),
  ...[...engine.placeKinds.values()].flatMap((kind) => count(engine, kind)),
];
