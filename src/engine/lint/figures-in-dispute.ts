/** @module Rule: no figure is left that two people read differently in the manual, and nobody checks their own. */
import type { EngineType } from '../engine-type.ts';
import type { FilePath } from '../file-path.ts';
import { doubtful, type Finding } from '../finding.ts';
import { samePerson } from '../same-person.ts';

/** The path that a difference names; the numbers in it are places in a list. */
const pathNamed = (at: string): FilePath =>
  at.split('/').map((key) => (/^\d+$/.test(key) ? Number(key) : key));

export const figuresInDispute = ({ differs, entered, checked }: EngineType): readonly Finding[] => [
  ...differs.map(({ at, reads, by, on }) =>
    doubtful(
      pathNamed(at),
      `${by} read ${reads} here in the manual (${on})`,
      'look at the page together, set the right figure, and have it typed in unseen once more',
    ),
  ),
  ...(entered !== undefined && checked !== undefined && samePerson(entered.by, checked.by)
    ? [
        doubtful(
          ['checked', 'by'],
          `${checked.by} typed the figures in and checked them too`,
          'let somebody else type the critical figures in unseen',
        ),
      ]
    : []),
];
