/** @module What machining leaves of the wall behind a bore or of a journal's hardened depth. */
import type { Component, Layer, Limits } from '../engine/engine-type.ts';
import { operandPlace } from '../measure/expression.ts';
import { judge } from '../measure/judge.ts';
import { formatFigure } from '../quantity/figure.ts';
import type { PlanQuestion } from './question.ts';
import { judgingPlaces, type Slot } from './slot.ts';

/**
 * Metal taken from one side of a round size, at most.
 *
 * A bore grows from its least present size to its greatest finished one, a shaft shrinks from its greatest to its
 * least; one side loses half of that.
 *
 * @param from  present size or size as made, mm on the diameter, at the end that makes most of it
 * @param to    finished size, mm on the diameter, at the end that makes most of it
 * @returns mm on the radius, 0 and up
 * @source  geometry of two circles about one centre
 * @example takenFromSide(85, 85.522) // 0.261 mm
 */
export const takenFromSide = (from: number, to: number): number => Math.abs(to - from) / 2;

type Ends = Pick<Limits, 'new'>['new'];

/** Ends of a size between which most metal is taken off. */
const furthest = (wears: 'larger' | 'smaller', from: Ends, to: Ends): number | undefined => {
  const [a, b] = wears === 'larger' ? [from.least, to.greatest] : [from.greatest, to.least];
  return a === undefined || b === undefined ? undefined : takenFromSide(a, b);
};

/** The least that is left, with the place where it was measured. */
interface Left {
  readonly left: number;
  readonly place?: string;
}

/** Present sizes at a place, their uncertain sides counted. */
const presentEnds = ({ sheet }: PlanQuestion, of: string, place: string): Ends => {
  const ends = judge(sheet, of, place).cells.flatMap(({ size, expanded = 0 }) =>
    size ? [{ least: size.value - expanded, greatest: size.value + expanded }] : [],
  );
  return ends.length === 0
    ? {}
    : {
        least: Math.min(...ends.map(({ least }) => least)),
        greatest: Math.max(...ends.map(({ greatest }) => greatest)),
      };
};

const measuredLeft = (question: PlanQuestion, slot: Slot, of: string, to: Ends): Left | string => {
  const { sheet } = question;
  const layer = sheet.engine.characteristics.get(of);
  const sized = sheet.engine.characteristics.get(slot.component.sizes?.of ?? '');
  if (!layer || !sized || sized.wears === 'either') return `${of} is not known`;
  let worst: Left | undefined;
  for (const place of judgingPlaces(sheet.engine, slot, layer.at)) {
    const { cells } = judge(sheet, of, place);
    const thinnest = Math.min(
      ...cells.map(({ size, expanded = 0 }) => (size ? size.value - expanded : Number.NaN)),
    );
    const behind = sheet.engine.places.get(place);
    const at = behind ? operandPlace(sheet.engine, behind, sized.at) : place;
    const taken = furthest(sized.wears, presentEnds(question, sized.name, at), to);
    if (cells.length === 0 || Number.isNaN(thinnest) || taken === undefined)
      return `${layer.title} at ${place} is not measured, and it must be known first`;
    const left = thinnest - taken;
    if (!worst || left < worst.left) worst = { left, place };
  }
  return worst ?? `${layer.title} is not measured, and it must be known first`;
};

const madeLeft = (
  { sheet }: PlanQuestion,
  { sizes }: Component,
  { asMade }: Layer,
  to: Ends,
): Left | string => {
  const sized = sheet.engine.characteristics.get(sizes?.of ?? '');
  const made = sized?.limits?.new;
  const taken =
    made && sized.wears !== 'either' && asMade !== undefined ? furthest(sized.wears, made, to) : undefined;
  return taken === undefined || asMade === undefined
    ? 'how deep it is as made is not known'
    : { left: asMade - taken };
};

/**
 * Why machining to a size would run a layer out, or nothing where enough is left.
 *
 * @param to  the finished size
 */
export const layerBar = (
  question: PlanQuestion,
  slot: Slot,
  name: 'wall' | 'case',
  to: Ends,
): string | undefined => {
  const layer = slot.component.sizes?.[name];
  if (!layer) return undefined;
  const found =
    layer.of === undefined
      ? madeLeft(question, slot.component, layer, to)
      : measuredLeft(question, slot, layer.of, to);
  if (typeof found === 'string') return found;
  if (found.left >= layer.least - 1e-9) return undefined;
  const what = name === 'wall' ? 'of wall would be left' : 'of hardened depth would be left';
  const at = found.place === undefined ? '' : ` at ${found.place}`;
  return `${formatFigure(found.left, 3)} mm ${what}${at}, and ${formatFigure(layer.least, 3)} mm is the least`;
};
