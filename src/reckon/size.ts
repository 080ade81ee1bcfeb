/** @module Size of a part at 20 °C from its readings and the figures of the instrument. */
import type { Material } from '../engine/engine-type.ts';
import type { Instrument } from '../measure/instrument.ts';
import { meanAndDeviation, pooledDeviation } from '../measure/mean-and-deviation.ts';
import type { Reading } from '../measure/reading.ts';
import { repeatsIn, sizeOfRepeats } from '../measure/repeats.ts';
import { startingFreedom } from '../measure/size.ts';
import { tidy } from '../quantity/figure.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { lengthOf, type Typed } from '../quantity/typed.ts';
import { expanded, type Uncertain } from '../quantity/uncertain.ts';
import { lengthRows } from './length-list.ts';
import { quantityOf, type Reckoning, result, type Values } from './reckoning.ts';

const materials: readonly Material[] = ['steel', 'cast iron', 'aluminium', 'bronze'];

const lengthFigure = (values: Values, key: string): Typed => ({
  text: String(quantityOf(values, key).value),
  unit: 'mm',
});

/** A figure that may have been left out, as if it had been typed. */
const optional = <Key extends string>(values: Values, given: string, key: Key, unit: string) => {
  const value = values.quantities[given]?.value;
  return (value === undefined ? {} : { [key]: { text: String(value), unit } }) as {
    readonly [K in Key]?: Typed;
  };
};

const instrumentFrom = (values: Values): Instrument => ({
  name: 'instrument',
  kind: 'any',
  range: { least: { text: '0', unit: 'mm' }, greatest: { text: '1e6', unit: 'mm' } },
  resolution: lengthFigure(values, 'resolution'),
  permissibleError: lengthFigure(values, 'permissible-error'),
  repeatability: lengthFigure(values, 'repeatability'),
  ...optional(values, 'zero', 'zero', 'mm'),
});

const cell = { place: 'the', characteristic: 'part', plane: '', axis: '' };

const readingsFrom = (values: Values): Answer<readonly Reading[]> => {
  const rows = lengthRows('readings', values.texts.readings ?? '');
  if (rows.kind === 'refused') return rows;
  if (rows.value.length > 1)
    return refuse(
      'these are readings of several sizes',
      'readings',
      'part the repeats of one size by commas',
    );
  return answer(
    rows.value.flat().map((typed, index) => ({
      id: `${index + 1}`,
      cell,
      typed,
      instrument: 'instrument',
      ...optional(values, 'temperature', 'temperature', '°C'),
      ...optional(values, 'instrument-temperature', 'instrumentTemperature', '°C'),
    })),
  );
};

const millimetres = ({ typed }: Reading): number => {
  const length = lengthOf(typed);
  return length.kind === 'answer' ? length.value : Number.NaN;
};

/**
 * Size of a part from readings of it by one instrument: those that repeat the last one, as their mean.
 *
 * The instrument repeats as its figure says, with nine degrees of freedom, and as these readings do, pooled.
 *
 * @param readings    of one size, oldest first, as typed
 * @param instrument  its figures as typed
 * @param material    of the part, where it is known
 * @returns mm at 20 °C with what is not known of it by name; undefined where a figure is no length
 * @source  JCGM 100:2008, 4.2, 4.3.7, H.1; ISO 1
 * @example sizeFromReadings([], { name: 'any', kind: 'any', range: { least: { text: '0', unit: 'mm' }, greatest: { text: '25', unit: 'mm' } }, resolution: { text: '0.01', unit: 'mm' }, permissibleError: { text: '0.004', unit: 'mm' }, repeatability: { text: '0.001', unit: 'mm' } }) // undefined
 */
export const sizeFromReadings = (
  readings: readonly Reading[],
  instrument: Instrument,
  material?: Material,
): Uncertain | undefined => {
  if (readings.length === 0) return undefined;
  const repeats = repeatsIn(readings, instrument).map(millimetres);
  const before = lengthOf(instrument.repeatability);
  const deviation = before.kind === 'answer' ? Math.abs(before.value) : 0;
  const spread = pooledDeviation([{ deviation, freedom: startingFreedom }, meanAndDeviation(repeats)]);
  return sizeOfRepeats(readings, instrument, { spread, material });
};

const outOfRange = (values: Values) => {
  const heat = ['temperature', 'instrument-temperature'].find((key) => {
    const degrees = values.quantities[key]?.value ?? 20;
    return !(degrees >= -50 && degrees <= 200);
  });
  if (heat) return refuse('nobody measures at that temperature', heat, 'give it between -50 and 200 °C');
  const below = ['resolution', 'permissible-error', 'repeatability'].find(
    (key) => quantityOf(values, key).value < 0,
  );
  return below ? refuse('a figure less than 0 is out of range', below, 'leave out its sign') : undefined;
};

export const sizeReckoning: Reckoning = {
  name: 'size',
  title: 'Size of a part at 20 °C from one or more readings, and how well it is known',
  inputs: [
    {
      kind: 'text',
      key: 'readings',
      title: 'repeats of one size parted by commas, a unit after the last',
      range: 'one or more',
      example: '54.980, 54.982, 54.981 mm',
    },
    {
      kind: 'quantity',
      key: 'permissible-error',
      title: 'maximum permissible error of the instrument, plus or minus',
      dimension: 'length',
      range: '0 and up',
      example: '0.004mm',
    },
    {
      kind: 'quantity',
      key: 'resolution',
      title: 'one step of its scale',
      dimension: 'length',
      range: '0 and up',
      example: '0.001mm',
    },
    {
      kind: 'quantity',
      key: 'repeatability',
      title: 'standard deviation of repeats by one person',
      dimension: 'length',
      range: '0 and up',
      example: '0.0015mm',
    },
    {
      kind: 'quantity',
      key: 'zero',
      title: 'what it showed on its zero or master; left out where it was not checked',
      dimension: 'length',
      range: 'any',
      example: '-0.002mm',
      optional: true,
    },
    {
      kind: 'quantity',
      key: 'temperature',
      title: 'temperature of the part',
      dimension: 'temperature',
      range: '-50 to 200 °C',
      example: '28°C',
      optional: true,
    },
    {
      kind: 'quantity',
      key: 'instrument-temperature',
      title: 'temperature of the instrument',
      dimension: 'temperature',
      range: '-50 to 200 °C; that of the part where it is left out',
      example: '22°C',
      optional: true,
    },
    {
      kind: 'text',
      key: 'material',
      title: 'what the part is made of',
      range: materials.join(', '),
      example: 'aluminium',
      optional: true,
    },
  ],
  formula:
    'size = (mean − zero) (1 + αi (Ti − 20)) / (1 + αp (Tp − 20)); u² = (error/√3)² + u(zero)² + s²/n + (step/2√3)² + heat',
  source: 'JCGM 100:2008, 4.2, 4.3.7, H.1; ISO 1 (20 °C)',
  reckon: (values) => {
    const wrong = outOfRange(values);
    if (wrong) return wrong;
    const readings = readingsFrom(values);
    if (readings.kind === 'refused') return readings;
    const named = values.texts.material;
    const material = materials.find((known) => known === named);
    if (named !== undefined && named !== '' && !material) {
      return refuse(
        `the expansion of ${named.slice(0, 30)} is not known`,
        'material',
        `choose ${materials.join(', ')}`,
      );
    }
    const instrument = instrumentFrom(values);
    const size = sizeFromReadings(readings.value, instrument, material);
    if (!size) return refuse('a reading is no length', 'readings', 'give each reading as a length');
    const aside = readings.value.length - repeatsIn(readings.value, instrument).length;
    return answer({
      results: { size: result(size, 'mm'), 'known-to': { value: tidy(expanded(size, 0.95)), unit: 'mm' } },
      notes: [
        ...(instrument.zero ? [] : ['The zero was not checked: the size is known less well for it.']),
        ...(aside > 0
          ? [`${aside} of the readings lie too far from the last to be repeats of it, and were left out.`]
          : []),
      ],
    });
  },
};
