/** @module What is said in the terminal of the instruments that were just read with. */
import { cautionsOf } from '../job/cautions.ts';
import { type Caution, cautionText } from '../register/standing.ts';
import { registerNow } from '../store/register-now.ts';
import type { Store } from '../store/sql-store.ts';
import { plain } from './plain.ts';
import type { Carried } from './workshop.ts';

/** Of the instruments of the readings just taken, as the register has them now. */
export const cautionsSince = async (store: Store, { events, job }: Carried): Promise<readonly Caution[]> => {
  const reads = new Map(
    events.flatMap(({ fact, at }) => (fact.kind === 'reading taken' ? [[fact.instrument, at] as const] : [])),
  );
  if (job.kind !== 'open' || reads.size === 0) return [];
  return cautionsOf(job, reads, await registerNow(store));
};

/** Each caution on its line. */
export const cautionLines = (cautions: readonly Caution[]): readonly string[] =>
  cautions.map((caution) => plain(`Caution: ${cautionText(caution)}.`));
