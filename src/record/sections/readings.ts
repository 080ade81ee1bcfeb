/** @module Every reading as it was typed, with who, when and with what; those struck out among them. */
import type { OpenJob } from '../../job/job.ts';
import type { Reading } from '../../measure/reading.ts';
import { repeatsIn } from '../../measure/repeats.ts';
import { typedText } from '../../quantity/typed.ts';
import { timeText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';
import { characteristicTitle, placeTitle, whereIn } from './named.ts';

const temperatures = ({ temperature, instrumentTemperature }: Reading): string => {
  const part = temperature === undefined ? '20 °C taken' : typedText(temperature);
  return instrumentTemperature === undefined
    ? part
    : `${part}, instrument at ${typedText(instrumentTemperature)}`;
};

/** Each reading of a cell: those that count as one size, and those that the last one replaced. */
const standings = (job: OpenJob, series: readonly Reading[]): readonly RecordRow[] => {
  const instrument = job.sheet.instruments.get(series.at(-1)?.instrument ?? '');
  const counting = instrument === undefined ? series.slice(-1) : repeatsIn(series, instrument);
  return series.map((reading) => {
    if (!counting.includes(reading)) return rowOf(job, reading, 'replaced by a later one');
    return rowOf(
      job,
      reading,
      counting.length === 1 ? 'counts' : `counts, one of ${counting.length} repeats`,
    );
  });
};

const rowOf = (job: OpenJob, reading: Reading, standing: string): RecordRow => {
  const { engine } = job.sheet;
  const { cell } = reading;
  const taken = job.takenBy.get(reading.id);
  return {
    of: reading.id,
    cells: [
      placeTitle(engine, cell.place),
      characteristicTitle(engine, cell.characteristic),
      whereIn(cell),
      typedText(reading.typed),
      reading.instrument,
      temperatures(reading),
      taken === undefined ? '' : `${timeText(taken.at)}, ${taken.by}`,
      standing,
    ],
    ...(standing.startsWith('struck out') ? { marked: true as const } : {}),
  };
};

export const readingSection = (job: OpenJob): RecordSection => {
  const standing = [...job.sheet.readings.values()].flatMap((series) => standings(job, series));
  const before = [...job.readBefore.values()]
    .flat()
    .map((reading) => rowOf(job, reading, 'of the part before it was machined or renewed'));
  const struck = job.struckOut.map((out) =>
    rowOf(job, out.reading, `struck out by ${out.by}, ${timeText(out.at)}: ${out.why}`),
  );
  return {
    name: 'readings',
    title: 'Readings as typed',
    says: standing.length + before.length + struck.length === 0 ? ['Nothing was read.'] : [],
    table: {
      heads: [
        'Place',
        'Characteristic',
        'Where',
        'Reading',
        'Instrument',
        'Part at',
        'When, who',
        'Standing',
      ],
      rows: [...before, ...standing, ...struck],
    },
    derived: false,
  };
};
