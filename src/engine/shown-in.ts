/** @module The unit and the decimals in which figures of a characteristic are shown: those of its limits. */
import { formatFigure } from '../quantity/figure.ts';
import { findUnit, stepFromCore, stepToCore, unitsOf } from '../quantity/unit.ts';
import type { Characteristic, Quantity } from './engine-type.ts';

/** Of which a figure is; a length where the engine type says nothing else. */
export const quantityOf = (characteristic: Pick<Characteristic, 'quantity'> | undefined): Quantity =>
  characteristic?.quantity ?? 'length';

export interface ShownIn {
  /** Symbol of the unit. */
  readonly unit: string;
  readonly decimals: number;
}

/** A step as fine as anybody asks for, in the core's unit: a micrometre, a hundredth of a degree. Common practice, no source. */
const finest: Readonly<Record<Quantity, number>> = {
  length: 0.001,
  angle: (0.01 * Math.PI) / 180,
  force: 0.1,
  torque: 0.1,
  pressure: 1000,
  mass: 0.0001,
};

/** Figures of no characteristic in particular. */
export const inMillimetres: ShownIn = { unit: 'mm', decimals: 3 };

const known = new WeakMap<object, ShownIn>();

const worked = (characteristic: Pick<Characteristic, 'quantity' | 'limits'>): ShownIn => {
  const quantity = quantityOf(characteristic);
  const printed = Object.values(characteristic.limits?.printed ?? {})[0]?.unit;
  const symbol = printed ?? unitsOf(quantity)[0] ?? '';
  const unit = findUnit(symbol);
  if (unit.kind === 'refused') return inMillimetres;
  // Never coarser than the finest step, and as few decimals as that takes.
  const decimals = Math.max(0, Math.ceil(-Math.log10(stepFromCore(finest[quantity], unit.value)) - 1e-9));
  return { unit: symbol, decimals };
};

/**
 * In what figures of a characteristic are shown.
 *
 * @param characteristic  from the engine type; millimetres where it is not known
 * @returns the unit in which the manual prints its limits, else the core's own, and decimals as fine as 1 µm, 0.01°,
 *   0.1 N, 0.1 N·m, 1 kPa or 0.1 g
 * @source  common practice, no source
 * @example shownIn({ quantity: 'force' }) // { unit: 'N', decimals: 1 }
 */
export const shownIn = (characteristic: Pick<Characteristic, 'quantity' | 'limits'> | undefined): ShownIn => {
  if (characteristic === undefined) return inMillimetres;
  const before = known.get(characteristic);
  if (before) return before;
  const shown = worked(characteristic);
  known.set(characteristic, shown);
  return shown;
};

/** A value of the core in the unit shown. */
const inUnit = (value: number, { unit }: ShownIn): number => {
  const found = findUnit(unit);
  return found.kind === 'refused' ? value : stepFromCore(value, found.value);
};

/** @example bareFigure(54.9804, { unit: 'mm', decimals: 3 }) // '54.980' */
export const bareFigure = (value: number, shown: ShownIn): string =>
  formatFigure(inUnit(value, shown), shown.decimals);

/** @example figureText(54.9804, { unit: 'mm', decimals: 3 }) // '54.980 mm' */
export const figureText = (value: number, shown: ShownIn): string =>
  `${bareFigure(value, shown)} ${shown.unit}`;

/** One step of the last decimal shown, in the core's unit. */
export const shownStep = ({ unit, decimals }: ShownIn): number => {
  const found = findUnit(unit);
  return found.kind === 'refused' ? 10 ** -decimals : stepToCore(10 ** -decimals, found.value);
};

/**
 * Half the width of a coverage interval: rounded up, so that no one is told that more is known than is.
 * @example bareSpread(0.0021, { unit: 'mm', decimals: 3 }) // '0.003'
 */
export const bareSpread = (half: number, shown: ShownIn): string => {
  // A spread of 3 µm that arithmetic made 3.0000000001 µm stays 3 µm.
  const steps = Math.ceil(Number((inUnit(half, shown) * 10 ** shown.decimals).toPrecision(9)));
  return formatFigure(steps / 10 ** shown.decimals, shown.decimals);
};

/** @example spreadText(0.0021, { unit: 'mm', decimals: 3 }) // '± 0.003 mm' */
export const spreadText = (half: number, shown: ShownIn): string =>
  `± ${bareSpread(half, shown)} ${shown.unit}`;
