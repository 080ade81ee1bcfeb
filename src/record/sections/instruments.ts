/** @module The record's list of what was measured with, each with the error it is allowed, its zero or master, and its certificate. */
import type { OpenJob } from '../../job/job.ts';
import type { Instrument } from '../../measure/instrument.ts';
import { typedText } from '../../quantity/typed.ts';
import type { RecordSection } from '../record-model.ts';

/** Read with, and held against nothing first. */
export const neverZeroed = (instrument: Instrument | undefined): boolean =>
  instrument?.zero === undefined && instrument?.setTo === undefined;

const allowed = ({ permissibleError, correction, correctionUncertainty }: Instrument): string => {
  const error = `± ${typedText(permissibleError)}`;
  if (correction === undefined) return error;
  const known = correctionUncertainty === undefined ? '' : ` ± ${typedText(correctionUncertainty)} (k = 2)`;
  return `correction ${typedText(correction)}${known}; else ${error}`;
};

const zeroed = ({ zero, setTo }: Instrument): string => {
  if (setTo) return `set in ${setTo.master} at ${typedText(setTo.size)}, showed ${typedText(setTo.shown)}`;
  return zero === undefined ? 'never checked' : `zero showed ${typedText(zero)}`;
};

const papers = ({ calibration, checked }: Instrument): string =>
  [
    ...(calibration ? [`${calibration.certificate}, ${calibration.on}, holds until ${calibration.due}`] : []),
    ...(checked
      ? [`checked ${checked.on} against ${checked.against}: ${checked.good ? 'good' : 'not good'}`]
      : []),
  ].join('; ');

export const instrumentSection = (job: OpenJob): RecordSection => {
  const used = new Set([...job.sheet.readings.values()].flat().map((reading) => reading.instrument));
  const rows = [...job.sheet.instruments.values()].map((instrument) => ({
    of: instrument.name,
    cells: [
      instrument.name,
      instrument.material === undefined ? instrument.kind : `${instrument.kind}, ${instrument.material}`,
      `${typedText(instrument.range.least)} to ${typedText(instrument.range.greatest)}`,
      typedText(instrument.resolution),
      allowed(instrument),
      typedText(instrument.repeatability),
      zeroed(instrument),
      papers(instrument),
    ],
    ...(used.has(instrument.name) && (neverZeroed(instrument) || instrument.checked?.good === false)
      ? { marked: true as const }
      : {}),
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
        'Zero or master',
        'Certificate, last check',
      ],
      rows,
    },
    derived: false,
  };
};
