/** @module What recurs in every story: booking in, bringing the instruments, reading from a file, signing operations. */
import type { EngineType, Operation } from '../src/engine/engine-type.ts';
import type { RequestOf } from '../src/job/command.ts';
import { readReadings } from '../src/measure/import-readings.ts';
import { textOf } from './files.ts';
import { instruments } from './instruments.ts';
import { fitter, foreman, shop } from './people.ts';
import type { Story } from './story.ts';

type Booking = Pick<
  RequestOf<'book in'>,
  'number' | 'owner' | 'plate' | 'hoursRun' | 'complaint' | 'hoursWanted' | 'daysWanted'
>;

export const bookIn = async (story: Story, engineFile: string, booking: Booking): Promise<void> => {
  story.tell(foreman, 0, {
    kind: 'book in',
    engineType: await textOf(engineFile),
    shop,
    currency: 'crowns',
    conformance: 0.95,
    ...booking,
  });
};

/** The instruments that the engine type asks for, from the register. */
export const bringInstruments = (story: Story, names: readonly string[]): void => {
  for (const instrument of instruments.filter(({ name }) => names.includes(name)))
    story.tell(fitter, 1, { kind: 'bring instrument', instrument });
};

const readIn = async (file: string, engine: EngineType) => {
  const { readings, troubles } = readReadings(await textOf(file), engine, instruments);
  if (troubles.length > 0)
    throw new Error(`${file}: ${troubles.map(({ what, where }) => `${what} (${where})`).join('; ')}`);
  return readings;
};

/** Takes the readings of a file one after another, those of the characteristics wanted. */
export const readFrom = async (
  story: Story,
  by: string,
  file: string,
  wanted: (characteristic: string) => boolean = () => true,
): Promise<void> => {
  for (const { cell, typed, instrument, temperature } of await readIn(file, story.job().sheet.engine))
    if (wanted(cell.characteristic))
      story.tell(by, 2, {
        kind: 'take reading',
        cell,
        typed,
        instrument,
        ...(temperature && { temperature }),
      });
};

/** Signs the operations of some parts of the job, in the order of the engine type. */
export const signAll = (story: Story, by: string, phases: readonly Operation['phase'][]): void => {
  for (const { name, phase } of story.job().sheet.engine.operations.values())
    if (phases.includes(phase) && !story.job().done.has(name))
      story.tell(by, 35, { kind: 'do operation', operation: name, note: '' });
};
