/** @module Rule: what a ring gap is said to be read in is a bore: a measured length that wears larger, at its own place. */
import type { Characteristic, EngineType } from '../engine-type.ts';
import { type Finding, wrong } from '../finding.ts';
import { quantityOf } from '../shown-in.ts';

const whyNot = (
  { placeKinds }: EngineType,
  gap: Characteristic,
  bore: Characteristic,
): string | undefined => {
  const count = (kind: string): number | undefined => placeKinds.get(kind)?.count;
  if (quantityOf(gap) !== 'length' || gap.derived) return `${gap.title} is no measured length`;
  if (quantityOf(bore) !== 'length' || bore.derived) return `${bore.title} is no measured length`;
  if (bore.wears !== 'larger') return `${bore.title} does not wear larger, as bores do`;
  const there = count(bore.at);
  return there === 1 || there === count(gap.at)
    ? undefined
    : `${gap.title} is read at ${count(gap.at)} places, ${bore.title} at ${there}`;
};

export const gapsInBores = (engine: EngineType): readonly Finding[] =>
  [...engine.characteristics.values()].flatMap((gap) => {
    const bore = engine.characteristics.get(gap.inBore ?? '');
    const why = bore && whyNot(engine, gap, bore);
    return why === undefined
      ? []
      : [
          wrong(
            ['characteristics', gap.name, 'in-bore'],
            why,
            'name the diameter of the bore that the ring runs in',
          ),
        ];
  });
