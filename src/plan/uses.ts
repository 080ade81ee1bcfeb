/** @module What options use along with others: set-ups paid once, and the set that a balanced part comes from. */
import type { EngineType } from '../engine/engine-type.ts';
import type { Option, SetUp } from './plan-model.ts';

/** The set that an option's part comes from: those found in the engine, or those of one offer. */
export const setOf = ({ component, does, size, supplier }: Option): string =>
  does === 'put back' ? `${component} as found` : `${component}, ${does}, ${size}, ${supplier}`;

/** A part as found whose mass is known stands for itself and for no set. */
export const isOfSet = ({ does, mass }: Option): boolean => does !== 'put back' || mass === undefined;

/** Set-ups of an option, and at no cost the set that it comes from where masses are balanced. */
const usesOf = (engine: EngineType, option: Option): readonly SetUp[] => {
  const balanced = engine.couplings.some(
    (coupling) => coupling.kind === 'balance' && coupling.of === option.component,
  );
  return balanced && isOfSet(option) ? [...option.setUps, { name: setOf(option), cents: 0 }] : option.setUps;
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
