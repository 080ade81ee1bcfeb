/** @module What is asked of a job to take the readings of a file: the same on every bench and in the terminal. */
import type { ReadingsFile } from '../measure/import-readings.ts';
import type { Instrument } from '../measure/instrument.ts';
import { withMasters } from '../measure/with-masters.ts';
import type { Request } from './command.ts';
import type { OpenJob } from './job.ts';

/** One after another: instruments that the job does not have yet, sizes found, readings. */
export const requestsToTake = (
  { readings, instruments, sizesFound }: ReadingsFile,
  job: OpenJob,
  register: readonly Instrument[],
): readonly Request[] => {
  const here = job.sheet.instruments;
  const brought = new Map(
    instruments
      .filter(({ name }) => !here.has(name))
      .flatMap((instrument) => withMasters(instrument, [...instruments, ...register], here))
      .map((instrument) => [instrument.name, instrument]),
  );
  return [
    ...[...brought.values()].map((instrument): Request => ({ kind: 'bring instrument', instrument })),
    // Of all places before one of them: what is said of a place is not taken back.
    ...[...sizesFound]
      .toSorted(([a], [b]) => Number(a.includes('@')) - Number(b.includes('@')))
      .map(([key, size]): Request => {
        const [component = '', place] = key.split('@');
        return { kind: 'note size found', component, ...(place !== undefined && { place }), size };
      }),
    ...readings.map(
      ({ cell, typed, instrument, temperature, instrumentTemperature }): Request => ({
        kind: 'take reading',
        cell,
        typed,
        instrument,
        ...(temperature && { temperature }),
        ...(instrumentTemperature && { instrumentTemperature }),
      }),
    ),
  ];
};
