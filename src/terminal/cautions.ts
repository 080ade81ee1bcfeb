/** @module What is said in the terminal of the instruments that were just read with. */
import { cautionsOf } from '../job/cautions.ts';
import { type Caution, cautionText } from '../register/standing.ts';
import { plain } from './plain.ts';
import type { Carried } from './workshop.ts';

/** Of the instruments of the readings just taken. */
export const cautionsSince = ({ events, job }: Carried): readonly Caution[] => {
  const reads = new Map(
    events.flatMap(({ fact, at }) => (fact.kind === 'reading taken' ? [[fact.instrument, at] as const] : [])),
  );
  return job.kind === 'open' ? cautionsOf(job, reads) : [];
};

/** Each caution on its line. */
export const cautionLines = (cautions: readonly Caution[]): readonly string[] =>
  cautions.map((caution) => plain(`Caution: ${cautionText(caution)}.`));
