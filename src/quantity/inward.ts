/** @module Limits written in millimetres and in inches so that neither lets through what the other bars. */
import { parseDecimal } from './decimal.ts';
import type { Typed } from './typed.ts';
import { findUnit } from './unit.ts';

/** A length exactly: top ÷ bottom, bottom above 0. */
interface Ratio {
  readonly top: bigint;
  readonly bottom: bigint;
}

const decimalParts = /^([+\-−]?)(\d*)(?:[.,](\d+))?(?:[eE]([+\-−]?\d{1,2}))?$/;

/** What was typed, exactly, in its own unit. */
const typedRatio = (text: string): Ratio | undefined => {
  const parts = decimalParts.exec(text.trim());
  if (parts === null) {
    // A rule's fraction: of at most 128 parts, so exact in binary.
    const read = parseDecimal(text);
    return read.kind === 'refused'
      ? undefined
      : { top: BigInt(Math.round(read.value.value * 128)), bottom: 128n };
  }
  const [, sign = '', whole = '', part = '', power = '0'] = parts;
  if (whole + part === '') return undefined;
  const digits = BigInt(whole + part) * (sign === '' || sign === '+' ? 1n : -1n);
  const exponent = Number(power.replace('−', '-')) - part.length;
  return exponent < 0
    ? { top: digits, bottom: 10n ** BigInt(-exponent) }
    : { top: digits * 10n ** BigInt(exponent), bottom: 1n };
};

/** Factors of lengths are whole numbers over whole numbers. */
const inUnit = ({ text, unit: symbol }: Typed, target: string): Ratio | undefined => {
  const typed = typedRatio(text);
  const from = findUnit(symbol);
  const to = findUnit(target);
  if (!typed || from.kind === 'refused' || to.kind === 'refused') return undefined;
  return {
    top: typed.top * BigInt(from.value.times) * BigInt(to.value.over),
    bottom: typed.bottom * BigInt(from.value.over) * BigInt(to.value.times),
  };
};

/** Whole steps of the last decimal, towards more or towards less. */
const stepsOf = ({ top, bottom }: Ratio, decimals: number, towards: 'more' | 'less'): bigint => {
  const scaled = top * 10n ** BigInt(decimals);
  const down = scaled / bottom - (scaled % bottom < 0n ? 1n : 0n);
  return towards === 'less' || scaled % bottom === 0n ? down : down + 1n;
};

const written = (steps: bigint, decimals: number): string => {
  const digits = (steps < 0n ? -steps : steps).toString().padStart(decimals + 1, '0');
  const sign = steps < 0n ? '-' : '';
  return decimals === 0 ? sign + digits : `${sign}${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
};

export interface InwardLimits {
  readonly least?: string;
  readonly greatest?: string;
}

/** As fine as an inch micrometer and a millimetre one read; finer where the zone between the limits asks for it. */
const usualDecimals: Readonly<Record<'mm' | 'in', number>> = { mm: 3, in: 4 };
const finest = 8;

/**
 * Limits in another unit, rounded inwards: the least one up and the greatest one down, so that what is within them is
 * within the limits as typed. Decimals are added where rounding would leave nothing between them.
 *
 * @param limits  lengths as typed, one or both
 * @param unit    `mm` or `in`
 * @returns figures in that unit, without it; as typed where that is their unit; none for what cannot be read
 * @source  the inch is 25.4 mm by definition; inward rounding is common practice, no source
 * @example inwardLimits({ least: { text: '54.720', unit: 'mm' }, greatest: { text: '54.740', unit: 'mm' } }, 'in') // { least: '2.1544', greatest: '2.1551' }
 */
export const inwardLimits = (
  limits: { readonly least?: Typed | undefined; readonly greatest?: Typed | undefined },
  unit: 'mm' | 'in',
): InwardLimits => {
  const least = limits.least && inUnit(limits.least, unit);
  const greatest = limits.greatest && inUnit(limits.greatest, unit);
  for (let decimals = usualDecimals[unit]; decimals <= finest; decimals += 1) {
    const low = least && stepsOf(least, decimals, 'more');
    const high = greatest && stepsOf(greatest, decimals, 'less');
    if (low !== undefined && high !== undefined && low > high && decimals < finest) continue;
    const own = (typed: Typed | undefined, steps: bigint): string =>
      typed?.unit === unit && !typed.text.includes('/')
        ? typed.text.replace(',', '.')
        : written(steps, decimals);
    return {
      ...(low === undefined ? {} : { least: own(limits.least, low) }),
      ...(high === undefined ? {} : { greatest: own(limits.greatest, high) }),
    };
  }
  return {};
};

/** `2.1544 in to 2.1551 in`. */
export const inwardText = ({ least, greatest }: InwardLimits, unit: 'mm' | 'in'): string => {
  if (least !== undefined && greatest !== undefined) return `${least} ${unit} to ${greatest} ${unit}`;
  if (least !== undefined) return `at least ${least} ${unit}`;
  return greatest === undefined ? '' : `at most ${greatest} ${unit}`;
};

/** `2.1544 to 2.1551`, where the unit stands at the head of the column. */
export const inwardBare = (limits: InwardLimits): string => inwardText(limits, 'in').replaceAll(' in', '');
