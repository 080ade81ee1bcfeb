/** @module The record's list of what was measured with, each with its zero and the error it is allowed. */
import type { OpenJob } from '../../job/job.ts';
import { typedText } from '../../quantity/typed.ts';
import type { RecordSection } from '../record-model.ts';

export const instrumentSection = (job: OpenJob): RecordSection => {
  const used = new Set([...job.sheet.readings.values()].flat().map((reading) => reading.instrument));
  const rows = [...job.sheet.instruments.values()].map((instrument) => ({
    of: instrument.name,
    cells: [
      instrument.name,
      instrument.kind,
      `${typedText(instrument.range.least)} to ${typedText(instrument.range.greatest)}`,
      typedText(instrument.resolution),
      `± ${typedText(instrument.permissibleError)}`,
      typedText(instrument.repeatability),
      instrument.zero === undefined ? 'never checked' : typedText(instrument.zero),
    ],
    ...(instrument.zero === undefined && used.has(instrument.name) ? { marked: true as const } : {}),
  }));
  return {
    name: 'instruments',
    title: 'Measured with',
    says: rows.length === 0 ? ['No instrument was brought to this job.'] : [],
    table: {
      heads: [
        'Instrument',
        'Kind',
        'Range',
        'Reads to',
        'Permissible error',
        'Repeats within (1 s)',
        'Zero showed',
      ],
      rows,
    },
    derived: false,
  };
};
