/** @module What must be said of the instruments that readings of a job were taken with: a caution, never a block. */
import { cautionsInHand } from '../register/in-hand.ts';
import type { Register } from '../register/register.ts';
import type { Caution } from '../register/standing.ts';
import type { OpenJob } from './job.ts';

/** When each instrument was last read with, of the readings that count. */
const lastUses = (job: OpenJob): ReadonlyMap<string, string> => {
  const last = new Map<string, string>();
  for (const reading of [...job.sheet.readings.values()].flat()) {
    const at = job.takenBy.get(reading.id)?.at ?? '';
    if (at >= (last.get(reading.instrument) ?? '')) last.set(reading.instrument, at);
  }
  return last;
};

/**
 * Cautions of instruments that were read with, and of what they were set in, each as it stood at the reading.
 *
 * @param reads     when each was read with; else when it last was, of the readings that count
 * @param register  where it can be had; a record stands by itself, and says what was known in the job
 */
export const cautionsOf = (
  job: OpenJob,
  reads: ReadonlyMap<string, string> = lastUses(job),
  register?: Register,
): readonly Caution[] => {
  const cautions = [...reads].flatMap(([name, at]) => {
    const instrument = job.sheet.instruments.get(name);
    return instrument ? cautionsInHand(instrument, job.sheet.instruments, register, at) : [];
  });
  // One that others were set in is spoken of once.
  return [...new Map(cautions.map((caution) => [`${caution.of} ${caution.kind}`, caution])).values()];
};
