/** @module What options use along with others: set-ups paid once, the set that a balanced part comes from, the way they take. */
import type { EngineType } from '../engine/engine-type.ts';
import type { Option, SetUp } from './plan-model.ts';

/** Where a part's mass comes from: parts of one offer, those as found that nobody weighed, or one that was weighed. */
export const massFrom = ({ slot, component, does, size, supplier, mass }: Option): string => {
  if (does !== 'put back') return `${component}, ${does}, ${size}, ${supplier}`;
  return `${mass === undefined ? component : slot} as found`;
};

/** Taken by all options of one way together. */
export const wayTaken = (way: string): string => `the way ${way}`;

/** Set-ups of an option; at no cost what its mass comes from where masses are balanced, and the way where only one is taken. */
const usesOf = ({ couplings }: EngineType, option: Option): readonly SetUp[] => {
  const { component, way, setUps } = option;
  const balanced = couplings.some((coupling) => coupling.kind === 'balance' && coupling.of === component);
  const oneWay = couplings.some(
    (coupling) => coupling.kind === 'either or' && way !== undefined && coupling.ways.includes(way),
  );
  return [
    ...setUps,
    ...(balanced ? [{ name: massFrom(option), cents: 0 }] : []),
    ...(oneWay && way !== undefined ? [{ name: wayTaken(way), cents: 0 }] : []),
  ];
};

export interface Uses {
  readonly setUps: readonly SetUp[];
  /** Names used by each option, in their order. */
  readonly byOption: readonly ReadonlySet<string>[];
}

export const usesOfAll = (engine: EngineType, options: readonly Option[]): Uses => {
  const used = options.map((option) => usesOf(engine, option));
  return {
    setUps: [...new Map(used.flat().map((setUp) => [setUp.name, setUp])).values()],
    byOption: used.map((own) => new Set(own.map(({ name }) => name))),
  };
};
