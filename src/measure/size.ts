/** @module From a reading to a size: zero taken off, and everything not known of it named. */
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { amountOf, lengthOf, resolutionOf } from '../quantity/typed.ts';
import type { Term, Uncertain } from '../quantity/uncertain.ts';
import type { Instrument } from './instrument.ts';
import type { Reading } from './reading.ts';

/** Standard uncertainty of a quantity that is only known to lie within ± the half-width (JCGM 100, 4.3.7). */
const rectangular = (halfWidth: number): number => halfWidth / Math.sqrt(3);

/** A repeatability in a register rests on some ten repeats: common practice, no source. */
const repeatFreedom = 9;
/** A part and an instrument that lay side by side differ by no more, °C: common practice, no source. */
const sideBySide = 1;
/** Steel and iron, per °C: JCGM 100, H.1 takes 11.5e-6 for steel. */
const steel = 11.5e-6;
/**
 * How far a part may expand from the way its instrument does, per °C: a light alloy (about 23e-6) against
 * steel. From memory; the engine type does not say what a part is made of.
 */
const expansionApart = 12e-6;
/** ISO 1. */
const reference = 20;

/** The size of an instrument as plain figures in mm. */
interface Figures {
  readonly resolution: number;
  readonly permissibleError: number;
  readonly repeatability: number;
  readonly zero: number | undefined;
}

const figures = new WeakMap<Instrument, Answer<Figures>>();

const readFigures = (instrument: Instrument): Answer<Figures> => {
  const read = [instrument.resolution, instrument.permissibleError, instrument.repeatability].map(lengthOf);
  const zero = instrument.zero ? lengthOf(instrument.zero) : undefined;
  const refused = [...read, zero].find((each) => each?.kind === 'refused');
  const [resolution, permissibleError, repeatability] = read.map((each) =>
    each.kind === 'answer' ? Math.abs(each.value) : 0,
  );
  if (refused || resolution === undefined || permissibleError === undefined || repeatability === undefined) {
    return refuse(
      'the register has a figure that is no length',
      `instrument ${instrument.name}`,
      'correct its resolution, permissible error, repeatability or zero in the register',
    );
  }
  return answer({
    resolution,
    permissibleError,
    repeatability,
    zero: zero?.kind === 'answer' ? zero.value : undefined,
  });
};

const figuresOf = (instrument: Instrument): Answer<Figures> => {
  const kept = figures.get(instrument);
  if (kept) return kept;
  const read = readFigures(instrument);
  figures.set(instrument, read);
  return read;
};

const temperatureOf = (reading: Reading): Answer<number> =>
  reading.temperature ? amountOf(reading.temperature, 'temperature') : answer(reference);

const byName = (a: Term, b: Term): number => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0);

/**
 * Size of a part at 20 °C from one reading of it.
 *
 * size = reading - zero of the instrument. Influences, each by its name:
 * - `calibration of X`: rectangular over ± its maximum permissible error;
 * - `zero of X`: how well the zero was checked (one repeat and half a unit); where it never was, rectangular
 *   over ± the maximum permissible error once more;
 * - `resolution R`: rectangular over half a unit, of the instrument or of the figure as typed, whichever is coarser;
 * - `repeat R`: the repeatability in the register, with 9 degrees of freedom;
 * - `temperature of P C`: part and instrument within ± 1 °C of one another, on steel;
 * - `expansion of P C`: where a temperature other than 20 °C was typed, the part may expand from the way the
 *   instrument does by up to 12e-6 per °C.
 *
 * X is the instrument, R the reading, P and C place and characteristic. Readings that share a name share the
 * error: a difference between two sizes taken with one micrometer loses its calibration and zero.
 *
 * Part and instrument are taken to have lain side by side, so that what both are made of expands alike and no
 * correction is due; what may be left of it stands in the last two influences. A light-alloy part that is read
 * warm with a steel instrument is therefore known less well, never wrongly moved.
 *
 * @param reading     as typed, in a unit of length; temperature in °C or °F, 20 °C where none was typed
 * @param instrument  from the register, with which it was taken
 * @returns size in mm; refuses a figure that is no length, or a temperature that is none
 * @source  JCGM 100:2008, 4.3.7, F.2.2.1 and H.1; ISO 1 (20 °C)
 * @example sizeOf(
 *   {
 *     id: 'r1',
 *     cell: { place: 'main.1', characteristic: 'main-journal-diameter', plane: '', axis: '' },
 *     typed: { text: '54.980', unit: 'mm' },
 *     instrument: 'mic-50-75',
 *   },
 *   {
 *     name: 'mic-50-75',
 *     kind: 'outside micrometer',
 *     range: { least: { text: '50', unit: 'mm' }, greatest: { text: '75', unit: 'mm' } },
 *     resolution: { text: '0.001', unit: 'mm' },
 *     permissibleError: { text: '0.005', unit: 'mm' },
 *     repeatability: { text: '0.0015', unit: 'mm' },
 *     zero: { text: '-0.002', unit: 'mm' },
 *   },
 * ) // 54.982 mm
 */
export const sizeOf = (reading: Reading, instrument: Instrument): Answer<Uncertain> => {
  const shown = lengthOf(reading.typed);
  if (shown.kind === 'refused') return shown;
  const known = figuresOf(instrument);
  if (known.kind === 'refused') return known;
  const temperature = temperatureOf(reading);
  if (temperature.kind === 'refused') return temperature;

  const { resolution, permissibleError, repeatability, zero } = known.value;
  const value = shown.value - (zero ?? 0);
  const part = `${reading.cell.place} ${reading.cell.characteristic}`;
  const halfUnit = Math.max(resolution, resolutionOf(reading.typed)) / 2;
  const zeroed =
    zero === undefined
      ? rectangular(permissibleError)
      : Math.hypot(repeatability, rectangular(resolution / 2));
  const off20 = temperature.value - reference;
  const term = (name: string, share: number, freedom = Number.POSITIVE_INFINITY): Term => ({
    name,
    share,
    freedom,
  });
  const terms = [
    term(`calibration of ${instrument.name}`, rectangular(permissibleError)),
    term(`expansion of ${part}`, rectangular(expansionApart * value * off20)),
    term(`repeat ${reading.id}`, repeatability, repeatFreedom),
    term(`resolution ${reading.id}`, rectangular(halfUnit)),
    term(`temperature of ${part}`, rectangular(steel * value * sideBySide)),
    term(`zero of ${instrument.name}`, zeroed),
  ];
  return answer({ value, terms: terms.filter(({ share }) => share !== 0).sort(byName) });
};
