/** @module What is known of a tagged part: where it belongs, how it stands, what was found, what is next for it. */
import { homeWords, nextFor, stateWords } from '../../job/home/home-words.ts';
import type { PartHome } from '../../job/home/part-home.ts';
import { useJob } from '../journal/use-desk.tsx';

export const TagFacts = ({ home }: { readonly home: PartHome }) => {
  const job = useJob();
  const lines: readonly (readonly [string, string])[] = [
    ['Belongs to', homeWords(job, home)],
    ['Stands', stateWords(home)],
    ['Next', nextFor(home)],
    ...home.findings.map(
      ({ finding, says }) => ['Found', says === '' ? finding : `${finding}: ${says}`] as const,
    ),
    ...home.planned.map((says) => ['Plan', says] as const),
  ];
  return (
    <dl className="facts">
      {lines.map(([name, says]) => (
        <div key={`${name} ${says}`}>
          <dt>{name}</dt>
          <dd>{says}</dd>
        </div>
      ))}
    </dl>
  );
};
