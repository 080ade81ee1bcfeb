/** @module What must be said of the instruments that readings of a job were taken with: a caution, never a block. */
import { type Caution, standing } from '../register/standing.ts';
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

/** Cautions of instruments that were read with, each as it stood when it was last read with. */
export const cautionsOf = (
  job: OpenJob,
  reads: ReadonlyMap<string, string> = lastUses(job),
): readonly Caution[] =>
  [...reads].flatMap(([name, at]) => {
    const instrument = job.sheet.instruments.get(name);
    return instrument ? standing(instrument, at) : [];
  });
