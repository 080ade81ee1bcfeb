/** @module Rule: a second person has checked the figures against the manual. */
import type { EngineType } from '../engine-type.ts';
import { doubtful, type Finding } from '../finding.ts';

export const checkedByTwo = ({ checked }: EngineType): readonly Finding[] =>
  checked === undefined
    ? [
        doubtful(
          ['format'],
          'nobody has checked these figures against the manual',
          'let a second person compare every figure, then add `checked: { by: …, on: … }`',
        ),
      ]
    : [];
