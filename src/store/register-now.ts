/** @module The register as the store has it, and what is in question by it, over every job. */

import { replay } from '../job/evolve.ts';
import { usesOf } from '../job/instrument-use.ts';
import { doubtfulSpans } from '../register/doubtful-span.ts';
import { registerId } from '../register/event.ts';
import { replayRegister } from '../register/evolve.ts';
import { type InstrumentInQuestion, inQuestion, type JobUses } from '../register/in-question.ts';
import type { Register } from '../register/register.ts';
import type { JournalStore } from './journal-store.ts';

export const registerNow = async ({ register }: Pick<JournalStore, 'register'>): Promise<Register> =>
  replayRegister(await register.readFrom(registerId, 0));

/** Every reading and joint in question in the workshop, by instrument; jobs that cannot be read are passed over. */
export const inQuestionNow = async (
  store: JournalStore,
  register: Register,
): Promise<readonly InstrumentInQuestion[]> => {
  const spans = [...register.instruments.values()].flatMap(doubtfulSpans);
  const [earliest] = spans.map(({ after }) => after ?? '').sort();
  if (earliest === undefined) return [];
  const jobs: JobUses[] = [];
  for (const { job: id, changed } of await store.list()) {
    // What was last changed before anything spoke against any instrument need not be read.
    if (changed <= earliest) continue;
    const events = await store.readFrom(id, 0);
    const job = replay(events);
    if (job.kind === 'open') jobs.push(usesOf(job, events));
  }
  return inQuestion(register, jobs);
};
