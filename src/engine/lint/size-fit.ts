/** @module Rule: sizes fit their shells: for each step of a part there is its mate in that size, and both give the clearance asked for. */
import type { Bounds, Characteristic, Component, EngineType } from '../engine-type.ts';
import { operandsOf } from '../expression.ts';
import { type Finding, wrong } from '../finding.ts';
import { type Interval, intervalOf, type SizeOf } from '../interval.ts';
import { millimetres } from './every-limits.ts';

interface Pair {
  readonly index: number;
  readonly leader: Component;
  readonly follower: Component;
}

const pairsOf = ({ couplings, components }: EngineType): readonly Pair[] =>
  couplings.flatMap((coupling, index) => {
    if (coupling.kind !== 'same size') return [];
    const leader = components.get(coupling.leader);
    const follower = components.get(coupling.follower);
    return leader === undefined || follower === undefined ? [] : [{ index, leader, follower }];
  });

const stepsOf = ({ sizes }: Component): readonly string[] => sizes?.steps.map(({ name }) => name) ?? [];

/** Each step of one must be on offer for the other: a crank ground to a size without shells is scrap. */
const mates = (
  { offers }: EngineType,
  { index }: Pair,
  one: Component,
  other: Component,
): readonly Finding[] =>
  stepsOf(one).flatMap((step) => {
    const path = ['couplings', index, 'components'];
    if (!stepsOf(other).includes(step)) {
      const what = `${one.title} can go to ${step}, and ${other.title} have no such size`;
      return [wrong(path, what, `add the step ${step} to ${other.name}, or take it from ${one.name}`)];
    }
    if (offers.some(({ component, size }) => component === other.name && size === step)) return [];
    const what = `${one.title} can go to ${step}, and nobody offers ${other.title} in ${step}`;
    return [wrong(path, what, `add an offer of ${other.name} in ${step}, or take the step from ${one.name}`)];
  });

/** Manuals round; a tenth of the clearance's own width, and never less than this, mm, is let pass. */
const rounding = 0.005;

const outside = ([least, greatest]: Interval, asked: Bounds): boolean => {
  const width = (asked.greatest ?? greatest) - (asked.least ?? least);
  const slack = Math.max(rounding, Math.abs(width) / 10);
  return least < (asked.least ?? -Infinity) - slack || greatest > (asked.greatest ?? Infinity) + slack;
};

const clearance = (engine: EngineType, pair: Pair, fit: Characteristic, step: string): readonly Finding[] => {
  const sizeOf: SizeOf = (name) => {
    const component = [pair.leader, pair.follower].find(({ sizes }) => sizes?.of === name);
    const found = component?.sizes?.steps.find((size) => size.name === step);
    return (found?.limits ?? engine.characteristics.get(name)?.limits)?.new;
  };
  const asked = fit.limits?.new;
  const given = fit.derived === undefined ? undefined : intervalOf(fit.derived, sizeOf);
  if (asked === undefined || given === undefined || !outside(given, asked)) return [];
  const says = [asked.least, asked.greatest].map((end) => (end === undefined ? 'any' : millimetres(end)));
  return [
    wrong(
      ['couplings', pair.index, 'components'],
      `with ${pair.leader.title} and ${pair.follower.title} new in ${step}, ${fit.title} would be ${millimetres(given[0])} to ${millimetres(given[1])}, and ${says.join(' to ')} is asked for`,
      `compare the limits of ${step} for both with the manual`,
    ),
  ];
};

const clearances = (engine: EngineType, pair: Pair): readonly Finding[] => {
  const of = [pair.leader.sizes?.of, pair.follower.sizes?.of];
  const fits = [...engine.characteristics.values()].filter(({ derived }) => {
    const named = derived === undefined ? [] : operandsOf(derived).map(({ of: name }) => name);
    return of.every((name) => name !== undefined && named.includes(name));
  });
  const shared = stepsOf(pair.leader).filter((step) => stepsOf(pair.follower).includes(step));
  return fits.flatMap((fit) => ['standard', ...shared].flatMap((step) => clearance(engine, pair, fit, step)));
};

export const sizeFit = (engine: EngineType): readonly Finding[] =>
  pairsOf(engine).flatMap((pair) => [
    ...mates(engine, pair, pair.leader, pair.follower),
    ...mates(engine, pair, pair.follower, pair.leader),
    ...clearances(engine, pair),
  ]);
