/** @module Figures are written the same everywhere, and never say more than is known. */
import { describe, expect, it } from 'vitest';
import { degrees } from '../quantity/brand.ts';
import { errorText, lengthText, moneyText, probabilityText, timeText, timingText } from './figure-text.ts';

// Each expected text follows from the rule stated in its sentence; there is no outside source for a way of writing.
describe('a figure on the record', () => {
  it('shows a length to the micrometre', () => {
    expect(lengthText(54.98)).toBe('54.980 mm');
    expect(lengthText(-0.0004)).toBe('0.000 mm');
  });

  it('says on which side an error lies, by sign and by word', () => {
    expect(errorText(0.02)).toBe('+0.020 mm');
    expect(errorText(-0.02)).toBe('-0.020 mm');
    expect(errorText(0)).toBe('0.000 mm');
    expect(timingText(degrees(0.13))).toBe('0.13° early');
    expect(timingText(degrees(-0.13))).toBe('0.13° late');
    expect(timingText(degrees(-0.0001))).toBe('0.00°');
  });

  it('never calls a probability certain', () => {
    expect(probabilityText(0.9731)).toBe('97.3 %');
    expect(probabilityText(1)).toBe('over 99.9 %');
    expect(probabilityText(0)).toBe('under 0.1 %');
  });

  it('counts money in hundredths', () => {
    expect(moneyText(123450, 'crowns')).toBe('1234.50 crowns');
    expect(moneyText(7, 'crowns')).toBe('0.07 crowns');
  });

  it('shows a moment to the minute, and leaves what is none as it is', () => {
    expect(timeText('2026-10-05T08:12:59.120Z')).toBe('2026-10-05 08:12 UTC');
    expect(timeText('soon')).toBe('soon');
  });
});
