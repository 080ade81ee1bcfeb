/** @module What bars machining beside the size itself: cracks, heat, fillets, too many grindings. */
import type { Component } from '../engine/engine-type.ts';
import { judge } from '../measure/judge.ts';
import type { PlanQuestion } from './question.ts';
import { judgingPlaces, type Slot } from './slot.ts';

type Found = PlanQuestion['findings'][number];
type Hardness = NonNullable<NonNullable<Component['sizes']>['hardness']>;

const findingsAt = ({ findings }: PlanQuestion, { component, places }: Slot): readonly Found[] =>
  findings.filter(
    (found) => found.component === component.name && places.some(({ id }) => id === found.place),
  );

export const crackBar = (question: PlanQuestion, slot: Slot): string | undefined => {
  const cracked = findingsAt(question, slot).find((found) => found.cracked);
  return cracked && `cracked at ${cracked.place}`;
};

const limitsText = ({ scale, least, greatest }: Hardness): string =>
  least === undefined
    ? `at most ${greatest} ${scale}`
    : greatest === undefined
      ? `at least ${least} ${scale}`
      : `${least} to ${greatest} ${scale}`;

/** Scales are not turned into one another: the tables for that hold for single steels only. */
const hardnessTrouble = (place: string, found: string, asked: Hardness | undefined): string | undefined => {
  if (!asked) return undefined;
  const [, figure, scale] = /^\s*(\d+(?:[.,]\d+)?)\s*([A-Za-z]+)/.exec(found) ?? [];
  const value = Number(figure?.replace(',', '.'));
  if (figure === undefined || scale?.toUpperCase() !== asked.scale)
    return `overheated at ${place}, and its hardness “${found}” is not one in ${asked.scale}: note it in ${asked.scale}`;
  const fits = value >= (asked.least ?? -Infinity) && value <= (asked.greatest ?? Infinity);
  return fits
    ? undefined
    : `overheated at ${place}: hardness ${found}, and ${limitsText(asked)} is asked for`;
};

/** @source common practice: check hardness after any seizure, since an overheated journal may have hardened or gone soft */
export const heatBar = (question: PlanQuestion, slot: Slot): string | undefined => {
  const found = findingsAt(question, slot);
  for (const { place } of found.filter(({ overheated }) => overheated)) {
    const hardness = found.findLast((each) => each.place === place && each.hardness !== undefined)?.hardness;
    const trouble =
      hardness === undefined
        ? `overheated at ${place}: its hardness must be known before it is ground`
        : hardnessTrouble(place, hardness, slot.component.sizes?.hardness);
    if (trouble !== undefined) return trouble;
  }
  return undefined;
};

/** @source TM 5-3895-346-14 (fillets are kept and measured when a crankshaft is ground) */
export const filletBar = ({ sheet }: PlanQuestion, slot: Slot): string | undefined => {
  const fillet = sheet.engine.characteristics.get(slot.component.sizes?.fillet ?? '');
  if (!fillet) return undefined;
  for (const place of judgingPlaces(sheet.engine, slot, fillet.at)) {
    const { verdict } = judge(sheet, fillet.name, place);
    if (verdict === 'not yet known')
      return `${fillet.title} at ${place} is not measured, and it must be known first`;
    if (verdict !== 'within') return `${fillet.title} at ${place} is ${verdict}`;
  }
  return undefined;
};

/** Steps up to the size as found count as one grinding each, since nobody knows better. */
export const timesBar = ({ component }: Slot, found: number, size: string): string | undefined => {
  const most = component.sizes?.mostTimes;
  const before = found + 1;
  return most === undefined || before + 1 <= most
    ? undefined
    : `machined ${before} times already, as its size ${size} tells, and ${most} times is the most`;
};
