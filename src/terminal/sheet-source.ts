/** @module Where a command takes its measuring sheet from: an engine type file with a readings file, or a job. */
import { existsSync } from 'node:fs';
import type { OpenJob } from '../job/job.ts';
import { placesOfComponent, withFound } from '../measure/fitted-size.ts';
import type { Instrument } from '../measure/instrument.ts';
import { layOut, type Sheet } from '../measure/sheet.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { inUse } from '../register/register.ts';
import { registerNow } from '../store/register-now.ts';
import { type Given, lastValue, type OptionSpec, type Outcome } from './command.ts';
import { engineOnFile, notUsable } from './engine-file.ts';
import { plain } from './plain.ts';
import { readingsOnFile } from './readings-on-file.ts';
import { rowLines } from './row-lines.ts';
import { findJob, inWorkshop, storeOptions, storePath } from './workshop.ts';

export const sheetOptions: readonly OptionSpec[] = [
  ...storeOptions,
  {
    name: 'found',
    value: 'COMPONENT[@PLACE]=SIZE',
    many: true,
    says: 'with files: found at a rework size, all of a component or one place: mains=0.25, bores@bore.2=0.50',
  },
  { name: 'conformance', value: 'P', says: 'with files: the probability that the rule asks for, else 0.95' },
];

export interface SheetSource {
  readonly sheet: Sheet;
  /** Where the sheet is a job's. */
  readonly job?: OpenJob;
  /** For stderr: what is odd in the files and does not stand in the way. */
  readonly warnings: readonly string[];
  /** The readings file, where rows of it were in error and left out. */
  readonly rowsLeftOut?: string;
}

export type Sourced =
  | ({ readonly kind: 'sheet' } & SheetSource)
  /** The files were read and found wrong. */
  | { readonly kind: 'no'; readonly outcome: Outcome };

const withSizes = (given: Given, sheet: Sheet): Answer<Sheet> => {
  let found = sheet;
  for (const pair of given.values.get('found') ?? []) {
    const [key = '', size = ''] = pair.split('=');
    const [component = '', place] = key.split('@');
    const known = sheet.engine.components.get(component);
    const names = ['standard', ...(known?.sizes?.steps ?? []).map(({ name }) => name)];
    if (!known)
      return refuse(
        `there is no component ${plain(component)}`,
        '--found',
        `choose one of ${[...sheet.engine.components.keys()].join(', ')}`,
      );
    const places = placesOfComponent(sheet.engine, known);
    if (place !== undefined && !places.includes(place))
      return refuse(
        `${known.title} are not found at ${plain(place)}`,
        `--found ${component}`,
        `choose one of ${places.join(', ')}`,
      );
    if (!names.includes(size))
      return refuse(
        `there is no size ${plain(size)}`,
        `--found ${component}`,
        `choose one of ${names.join(', ')}`,
      );
    found = withFound(found, { component, ...(place !== undefined && { place }), size });
  }
  return answer(found);
};

const conformance = (given: Given): Answer<number> => {
  const text = lastValue(given, 'conformance') ?? '0.95';
  const value = /^0?\.\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  return value >= 0.5
    ? answer(value)
    : refuse(
        `${plain(text)} is no probability to judge by`,
        '--conformance',
        'give one from 0.5 to below 1, such as 0.95',
      );
};

/** The workshop's register where there is a workshop; a shop without one judges by what its files say. */
const registerFor = async (given: Given): Promise<Answer<readonly Instrument[]>> => {
  if (!existsSync(storePath(given))) return answer([]);
  return inWorkshop(given, false, async (store) => answer(inUse(await registerNow(store))));
};

const fromFiles = async (
  given: Given,
  enginePath: string,
  readingsPath: string,
): Promise<Answer<Sourced>> => {
  const read = await engineOnFile(enginePath, given.world);
  if (read.kind === 'refused') return read;
  const { engine } = read.value;
  if (!engine) return answer({ kind: 'no', outcome: notUsable(read.value) });
  const register = await registerFor(given);
  if (register.kind === 'refused') return register;
  const readings = await readingsOnFile(readingsPath, given.world, engine, register.value);
  if (readings.kind === 'refused') return readings;
  const file = readings.value;
  const asked = conformance(given);
  if (asked.kind === 'refused') return asked;
  const sheet = layOut(engine, file.readings, file.instruments, {
    sizesFound: file.sizesFound,
    conformance: asked.value,
  });
  const sizes = withSizes(given, sheet);
  if (sizes.kind === 'refused') return sizes;
  return answer({
    kind: 'sheet',
    sheet: sizes.value,
    warnings: rowLines(readingsPath, file.troubles),
    ...(file.troubles.some(({ weight }) => weight === 'error') ? { rowsLeftOut: readingsPath } : {}),
  });
};

/** `ENGINE-FILE READINGS-FILE`, or `JOB` alone. */
export const sheetOf = async (given: Given): Promise<Answer<Sourced>> => {
  const [first = '', second] = given.words;
  if (second !== undefined) return fromFiles(given, first, second);
  return inWorkshop<Sourced>(given, false, async (store) => {
    const found = await findJob(store, first);
    if (found.kind === 'refused') return found;
    const { job } = found.value;
    return answer({ kind: 'sheet', sheet: job.sheet, job, warnings: [] });
  });
};
