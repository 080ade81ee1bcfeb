/** @module The linter of engine types: what shape alone cannot tell, one rule a file. */
import type { EngineType } from '../engine-type.ts';
import type { Finding } from '../finding.ts';
import { checkedByTwo } from './checked-by-two.ts';

type Rule = (engine: EngineType) => readonly Finding[];

const rules: readonly Rule[] = [checkedByTwo];

/** Everything that the rules find in an engine type, errors first. */
export const lintEngine = (engine: EngineType): readonly Finding[] => {
  const findings = rules.flatMap((rule) => rule(engine));
  return [
    ...findings.filter(({ weight }) => weight === 'error'),
    ...findings.filter(({ weight }) => weight === 'warning'),
  ];
};
