/** @module From a reading to a size at 20 °C: zero taken off, and everything not known of it named. */
import type { Material } from '../engine/engine-type.ts';
import { type Answer, answer } from '../quantity/refusal.ts';
import { amountAndStep, amountOf, type Typed } from '../quantity/typed.ts';
import type { Term, Uncertain } from '../quantity/uncertain.ts';
import { atReference } from './expansion.ts';
import type { Instrument } from './instrument.ts';
import { figuresOf, type Register, rectangular } from './instrument-figures.ts';
import type { Reading } from './reading.ts';

/** A standard deviation of repeats, with the degrees of freedom behind it. */
export interface Spread {
  /** mm. */
  readonly deviation: number;
  readonly freedom: number;
}

/** A repeatability in a register rests on some ten repeats: common practice, no source. */
export const startingFreedom = 9;

/** What may be known beside a reading and its instrument. */
export interface Beside {
  /** Where the masters of comparing instruments are found. */
  readonly register?: Register;
  /** How the instrument has repeated in this session; the register's figure where nothing is given. */
  readonly spread?: Spread | undefined;
  /** What the part is made of. */
  readonly material?: Material | undefined;
}

const alone: Beside = {};
const nobody: Register = new Map();

/** Nothing but a length grows with warmth. */
const cold: ReturnType<typeof atReference> = { factor: 1, expansion: 0, temperature: 0 };

const untold = answer(undefined);
const degrees = (typed: Typed | undefined): Answer<number | undefined> =>
  typed ? amountOf(typed, 'temperature') : untold;

/**
 * Size of a part at 20 °C from one reading of it.
 *
 * size = (reading - zero + correction) brought to 20 °C; for an instrument that compares, (master + reading - what
 * was shown in the master) brought to 20 °C. Influences, each by its name:
 * - `calibration of X`, `zero of X`, `setting of X`: see figuresOf, those of a master among them;
 * - `resolution R`: rectangular over half a unit, of the instrument or of the figure as typed, whichever is coarser;
 * - `repeat R`: the repeatability in the register, with 9 degrees of freedom, or that of the session;
 * - `temperature of P C`, `expansion of P C`: see atReference.
 *
 * X is the instrument, R the reading, P and C place and characteristic. Readings that share a name share the
 * error: a difference between two sizes taken with one micrometer loses its calibration and zero.
 *
 * What is no length (a spring's load) is corrected in the same way and not brought to 20 °C.
 *
 * @param reading     as typed, in a unit of what the instrument measures; temperatures in °C or °F, 20 °C where none was typed
 * @param instrument  from the register, with which it was taken
 * @param beside      masters, repeatability of the session, material of the part
 * @returns size in the core's unit, mm for a length; refuses a figure in a unit that is not the instrument's, a temperature that is none, a master that is not there
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
export const sizeOf = (
  reading: Reading,
  instrument: Instrument,
  { register = nobody, spread, material }: Beside = alone,
): Answer<Uncertain> => {
  const known = figuresOf(instrument, register);
  if (known.kind === 'refused') return known;
  const { measures } = known.value;
  const shown = amountAndStep(reading.typed, measures);
  if (shown.kind === 'refused') return shown;
  const part = degrees(reading.temperature);
  if (part.kind === 'refused') return part;
  const tool = degrees(reading.instrumentTemperature);
  if (tool.kind === 'refused') return tool;

  const { resolution, repeatability, offset, calibrations, settings, zeros } = known.value;
  const heat =
    measures === 'length'
      ? atReference({
          part: part.value,
          instrument: tool.value,
          partOf: material,
          instrumentOf: instrument.material,
        })
      : cold;
  const value = (shown.value.value + offset) * heat.factor;
  const whose = `${reading.cell.place} ${reading.cell.characteristic}`;
  const halfUnit = Math.max(resolution, shown.value.step) / 2;
  // In order of name, as sums of values rely on.
  const terms: Term[] = calibrations.slice();
  const add = (name: string, share: number, freedom = Number.POSITIVE_INFINITY, pool?: string): void => {
    if (share !== 0) terms.push({ name, share, freedom, pool });
  };
  add(`expansion of ${whose}`, heat.expansion * value);
  const { deviation, freedom } = spread ?? { deviation: repeatability, freedom: startingFreedom };
  add(`repeat ${reading.id}`, deviation, freedom, instrument.name);
  add(`resolution ${reading.id}`, rectangular(halfUnit));
  for (const setting of settings) terms.push(setting);
  add(`temperature of ${whose}`, heat.temperature * value);
  for (const zero of zeros) terms.push(zero);
  return answer({ value, terms });
};
