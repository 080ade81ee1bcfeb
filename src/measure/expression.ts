/** @module A derived characteristic from its operands: ovality, taper, clearance, with what they share. */
import type { EngineType, Expression, Place } from '../engine/engine-type.ts';
import { combine, type Uncertain } from '../quantity/uncertain.ts';
import { greatestOf, leastOf } from './extreme.ts';
import { formAtMost, greatestRange } from './form.ts';
import { type Cell, cellKey } from './reading.ts';
import { cellsOf } from './scheme.ts';
import { stepAtMost } from './step.ts';

/** A value, or the cells that must be read first. Both empty: the names do not go together. */
type Evaluated =
  | {
      readonly kind: 'known';
      /** With what is not known of it about its expectation, where extremes give it one. */
      readonly value: Uncertain;
      /** Expectation of the true value less that: see Extreme. */
      readonly bias: number;
      /** Of a form: the probability that it is no more than a limit, worked out over its own lopsided distribution. */
      readonly atMost?: (limit: number) => number;
    }
  | { readonly kind: 'missing'; readonly cells: readonly Cell[] };

/** What an expression is worked out over. */
interface Operands {
  readonly engine: EngineType;
  /** The size in a cell, where it has been read. */
  readonly sizeIn: (cell: Cell) => Uncertain | undefined;
}

interface Sized {
  readonly cell: Cell;
  readonly size: Uncertain;
  readonly bias: number;
}

type Found =
  | { readonly kind: 'known'; readonly at: string; readonly sizes: readonly Sized[] }
  | { readonly kind: 'missing'; readonly cells: readonly Cell[] };

/**
 * Where an operand at another kind of place is found: at the only place of its kind, else at the place with
 * the same number (piston 2 in bore 2).
 */
export const operandPlace = (engine: EngineType, place: Place, kind: string): string => {
  if (place.kind === kind) return place.id;
  return engine.placeKinds.get(kind)?.count === 1 ? `${kind}.1` : `${kind}.${place.number}`;
};

const sizesOf = (name: string, place: Place, operands: Operands): Found => {
  const { engine, sizeIn } = operands;
  const characteristic = engine.characteristics.get(name);
  if (!characteristic) return { kind: 'missing', cells: [] };
  const at = engine.places.get(operandPlace(engine, place, characteristic.at));
  if (!at) return { kind: 'missing', cells: [] };
  if (characteristic.derived) {
    const inner = evaluate(characteristic.derived, at, operands);
    if (inner.kind === 'missing') return inner;
    const cell = { place: at.id, characteristic: name, plane: '', axis: '' };
    return { kind: 'known', at: at.id, sizes: [{ cell, size: inner.value, bias: inner.bias }] };
  }
  const sizes: Sized[] = [];
  const missing: Cell[] = [];
  for (const cell of cellsOf(engine, name, at.id)) {
    const size = sizeIn(cell);
    if (size) sizes.push({ cell, size, bias: 0 });
    else missing.push(cell);
  }
  return missing.length > 0 || sizes.length === 0
    ? { kind: 'missing', cells: missing }
    : { kind: 'known', at: at.id, sizes };
};

const mean = (sizes: readonly Uncertain[]): Uncertain =>
  combine(sizes.map((size) => [1 / sizes.length, size] as const));

const form = (
  sized: readonly Sized[],
  groupOf: (cell: Cell) => string,
  name: string,
): Extract<Evaluated, { kind: 'known' }> => {
  const groups = [...Map.groupBy(sized, ({ cell }) => groupOf(cell)).values()].map((group) =>
    group.map(({ size }) => size),
  );
  return {
    kind: 'known',
    value: greatestRange(groups, name),
    bias: 0,
    atMost: (limit) => formAtMost(groups, limit),
  };
};

type OverPlaces = 'range over places' | 'range over neighbours';

type Pick = Exclude<Expression['kind'], 'difference' | 'sum' | 'factor' | OverPlaces>;

/**
 * The bank that a place stands in: in a vee odd cylinders face even ones, and what is numbered by cylinders stands with
 * its own. Common practice, no source.
 */
const bankOf = ({ layout, cylinders }: EngineType, { number }: Place, count: number): number =>
  layout === 'vee' && count % cylinders === 0 ? Math.ceil((number * cylinders) / count) % 2 : 0;

/** The places compared with one another: all of the kind, or one with each of those that are numbered next to it. */
const comparedPlaces = (
  kind: OverPlaces,
  of: string,
  place: Place,
  engine: EngineType,
): readonly (readonly Place[])[] => {
  const at = engine.characteristics.get(of)?.at ?? '';
  const all = [...engine.places.values()].filter((one) => one.kind === at);
  if (kind === 'range over places') return [all];
  const here = all.find(({ id }) => id === operandPlace(engine, place, at));
  if (!here) return [];
  const inLine = all.filter((one) => bankOf(engine, one, all.length) === bankOf(engine, here, all.length));
  const index = inLine.indexOf(here);
  return [inLine[index - 1], inLine[index + 1]].flatMap((next) => (next ? [[here, next]] : []));
};

/** How far places lie apart, each by the mean of its sizes: the widest of the groups compared. */
const rangeOver = (kind: OverPlaces, of: string, place: Place, operands: Operands): Evaluated => {
  const groups: Uncertain[][] = [];
  const missing: Cell[] = [];
  for (const compared of comparedPlaces(kind, of, place, operands.engine)) {
    const group: Uncertain[] = [];
    for (const one of compared) {
      const found = sizesOf(of, one, operands);
      if (found.kind === 'missing') missing.push(...found.cells);
      else group.push(mean(found.sizes.map(({ size }) => size)));
    }
    groups.push(group);
  }
  if (missing.length > 0 || groups.length === 0 || groups.some(({ length }) => length < 2)) {
    return { kind: 'missing', cells: missing };
  }
  const value = greatestRange(
    groups,
    `widest over ${kind === 'range over places' ? 'places' : 'neighbours'} of ${of}`,
  );
  if (kind === 'range over places') {
    return { kind: 'known', value, bias: 0, atMost: (limit) => formAtMost(groups, limit) };
  }
  const neighbours = groups.flatMap((group) => group.slice(1));
  const [here] = groups.flat();
  return {
    kind: 'known',
    value,
    bias: 0,
    ...(here && { atMost: (limit: number) => stepAtMost(here, neighbours, limit) }),
  };
};

const meanBias = (sized: readonly Sized[]): number =>
  sized.reduce((sum, { bias }) => sum + bias, 0) / sized.length;

const pick = (kind: Pick, sized: readonly Sized[], whose: string): Evaluated => {
  const sizes = sized.map(({ size }) => size);
  const bias = meanBias(sized);
  switch (kind) {
    case 'least': {
      const extreme = leastOf(sizes, `least of ${whose}`);
      return { kind: 'known', value: extreme.value, bias: bias + extreme.bias };
    }
    case 'greatest': {
      const extreme = greatestOf(sizes, `greatest of ${whose}`);
      return { kind: 'known', value: extreme.value, bias: bias + extreme.bias };
    }
    // A name alone stands for one size; where a scheme gives several, it stands for their mean.
    case 'reading':
    case 'mean':
      return { kind: 'known', value: mean(sizes), bias };
    case 'range over axes':
      return form(sized, ({ plane }) => plane, `widest over axes of ${whose}`);
    case 'range over planes':
      return form(sized, ({ axis }) => axis, `widest over planes of ${whose}`);
    default:
      return kind satisfies never;
  }
};

/** Σ factor × part, or all that is missing of any of them. */
const together = (parts: readonly (readonly [factor: number, part: Evaluated])[]): Evaluated => {
  const missing: Cell[] = [];
  const known: (readonly [number, Uncertain])[] = [];
  let bias = 0;
  for (const [factor, part] of parts) {
    if (part.kind === 'missing') missing.push(...part.cells);
    else {
      known.push([factor, part.value]);
      bias += factor * part.bias;
    }
  }
  return known.length < parts.length
    ? { kind: 'missing', cells: missing }
    : { kind: 'known', value: combine(known), bias };
};

/**
 * Value of an expression at a place.
 *
 * - least, greatest: the size so picked; where others run it close, it is known as well as an extreme is;
 * - range over axes (ovality): in each plane the greatest less the least over the axes, the greatest of these;
 * - range over planes (taper): along each axis the greatest less the least over the planes, the greatest of these;
 * - range over places: the greatest less the least of all places of the kind, each by the mean of its sizes;
 * - range over neighbours: the same of a place and one numbered next to it, the greatest of these;
 * - difference, sum, factor, mean: as written.
 *
 * Influences that operands share by name are carried through, so that a clearance between two parts taken
 * with one micrometer loses that micrometer's calibration. A range of two-point sizes shows nothing of a
 * form with an odd number of lobes.
 *
 * @param expression  from the engine type
 * @param place       where it is worked out
 * @param operands    engine type, and the size in each cell
 * @returns value in the core's unit of its operands, mm for lengths, or the cells still to be read
 * @source  JCGM 100:2008, 5.1 and 5.2; ISO 14405-1 for two-point sizes; ovality and taper: common practice, no source
 */
export const evaluate = (expression: Expression, place: Place, operands: Operands): Evaluated => {
  switch (expression.kind) {
    case 'difference': {
      const from = evaluate(expression.from, place, operands);
      return together([
        [1, from],
        [-1, evaluate(expression.less, place, operands)],
      ]);
    }
    case 'sum':
      return together(expression.of.map((part) => [1, evaluate(part, place, operands)] as const));
    case 'factor':
      return together([[expression.factor, evaluate(expression.of, place, operands)]]);
    case 'range over places':
    case 'range over neighbours':
      return rangeOver(expression.kind, expression.of, place, operands);
    default: {
      const found = sizesOf(expression.of, place, operands);
      return found.kind === 'missing'
        ? found
        : pick(expression.kind, found.sizes, `${found.at} ${expression.of}`);
    }
  }
};

/** Every cell that an expression at a place is worked out from, each once. */
export const operandCells = (expression: Expression, place: Place, engine: EngineType): readonly Cell[] => {
  const found = new Map<string, Cell>();
  // With nothing read, what is missing is everything.
  const all = evaluate(expression, place, { engine, sizeIn: () => undefined });
  if (all.kind === 'missing') for (const cell of all.cells) found.set(cellKey(cell), cell);
  return [...found.values()];
};
