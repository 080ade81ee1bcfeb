/** @module Every reading as it was typed, with who, when and with what; those struck out among them. */
import type { OpenJob } from '../../job/job.ts';
import type { Reading } from '../../measure/reading.ts';
import { typedText } from '../../quantity/typed.ts';
import { timeText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';
import { characteristicTitle, placeTitle, whereIn } from './named.ts';

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
      reading.temperature === undefined ? '20 °C taken' : typedText(reading.temperature),
      taken === undefined ? '' : `${timeText(taken.at)}, ${taken.by}`,
      standing,
    ],
    ...(standing.startsWith('struck out') ? { marked: true as const } : {}),
  };
};

export const readingSection = (job: OpenJob): RecordSection => {
  const standing = [...job.sheet.readings.values()].flatMap((series) =>
    series.map((reading, at) => rowOf(job, reading, at === series.length - 1 ? 'counts' : 'repeat')),
  );
  const struck = job.struckOut.map((out) =>
    rowOf(job, out.reading, `struck out by ${out.by}, ${timeText(out.at)}: ${out.why}`),
  );
  return {
    name: 'readings',
    title: 'Readings as typed',
    says: standing.length + struck.length === 0 ? ['Nothing was read.'] : [],
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
      rows: [...standing, ...struck],
    },
    derived: false,
  };
};
