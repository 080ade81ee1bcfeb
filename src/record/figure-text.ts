/** @module How figures are written in the record: lengths in mm, angles in degrees, money, probability, spread. */
import { inMillimetres, spreadText } from '../engine/shown-in.ts';
import { type Radians, toDegrees } from '../quantity/brand.ts';
import { formatFigure } from '../quantity/figure.ts';

/** @example lengthText(54.9804) // '54.980 mm' */
export const lengthText = (millimetres: number): string => `${formatFigure(millimetres, 3)} mm`;

/** @example knownText(0.0614, 0.0032) // '0.061 ± 0.004 mm' */
export const knownText = (millimetres: number, half: number): string =>
  `${formatFigure(millimetres, 3)} ${spreadText(half, inMillimetres)}`;

const signed = (text: string, value: number): string => (value > 0 && /[1-9]/.test(text) ? `+${text}` : text);

/** @example errorText(0.02) // '+0.020 mm' */
export const errorText = (millimetres: number): string => signed(lengthText(millimetres), millimetres);

/** Early is advanced: the sign says which, the word makes sure. */
export const timingText = (angle: Radians): string => {
  const degrees = formatFigure(toDegrees(angle), 2);
  const size = degrees.replace('-', '');
  if (!/[1-9]/.test(size)) return `${size}°`;
  return `${size}° ${degrees.startsWith('-') ? 'late' : 'early'}`;
};

/** @example probabilityText(0.9731) // '97.3 %' */
export const probabilityText = (probability: number): string => {
  if (probability > 0.9995) return 'over 99.9 %';
  if (probability < 0.0005) return 'under 0.1 %';
  return `${formatFigure(probability * 100, 1)} %`;
};

/** @example moneyText(123450, 'crowns') // '1234.50 crowns' */
export const moneyText = (cents: number, currency: string): string =>
  `${formatFigure(cents / 100, 2)} ${currency}`.trim();

/** `2026-10-05T08:12:00.000Z` as `2026-10-05 08:12 UTC`; a time in another form stays as it is. */
export const timeText = (at: string): string => {
  const parts = /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})(?::\d{2}(?:\.\d+)?)?Z$/.exec(at);
  return parts ? `${parts[1]} ${parts[2]} UTC` : at;
};
