/** @module Limits in inches never let through what limits in millimetres bar, nor the other way round. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ask, lacking } from '../../test/outside/program.ts';
import { inwardBare, inwardLimits, inwardText } from './inward.ts';

const mm = (text: string) => ({ text, unit: 'mm' });
const inch = (text: string) => ({ text, unit: 'in' });

/** A decimal text as a whole number of 10⁻¹² parts. */
const parts = (text: string): bigint => {
  const [whole = '0', part = ''] = text.replace('-', '').split('.');
  return BigInt(whole + part.padEnd(12, '0')) * (text.startsWith('-') ? -1n : 1n);
};

/** Least and greatest in whole micrometres, some apart. */
const zone = fc
  .tuple(fc.integer({ min: 0, max: 400_000 }), fc.integer({ min: 0, max: 500 }))
  .map(([least, apart]) => ({
    least: (least / 1000).toFixed(3),
    greatest: ((least + apart) / 1000).toFixed(3),
    apart,
  }));

describe('limits in both units', () => {
  // source: 25.4 mm to the inch by hand: 54.720 / 25.4 = 2.154330…, 54.740 / 25.4 = 2.155118…
  it('are rounded inwards', () => {
    expect(inwardLimits({ least: mm('54.720'), greatest: mm('54.740') }, 'in')).toEqual({
      least: '2.1544',
      greatest: '2.1551',
    });
    expect(inwardLimits({ least: mm('54.720'), greatest: mm('54.740') }, 'mm')).toEqual({
      least: '54.720',
      greatest: '54.740',
    });
    // source: 2.1642 × 25.4 = 54.97068, 2.1650 × 25.4 = 54.991
    expect(inwardLimits({ least: inch('2.1642'), greatest: inch('2.1650') }, 'mm')).toEqual({
      least: '54.971',
      greatest: '54.991',
    });
    expect(inwardLimits({ greatest: mm('0.03') }, 'in')).toEqual({ greatest: '0.0011' });
    expect(inwardLimits({ least: { text: '2 9/16', unit: 'in' } }, 'mm')).toEqual({ least: '65.088' });
    expect(inwardLimits({ least: mm('-0,5') }, 'in')).toEqual({ least: '-0.0196' });
  });

  it('never widen the limits as typed', () => {
    fc.assert(
      fc.property(zone, ({ least, greatest, apart }) => {
        const inches = inwardLimits({ least: mm(least), greatest: mm(greatest) }, 'in');
        if (inches.least === undefined || inches.greatest === undefined)
          throw new Error('a limit is missing');
        expect(parts(inches.least) * 254n >= parts(least) * 10n).toBe(true);
        expect(parts(inches.greatest) * 254n <= parts(greatest) * 10n).toBe(true);
        if (apart > 0) expect(parts(inches.least) <= parts(inches.greatest)).toBe(true);
      }),
    );
  });

  it('lose less than a step of the last figure on each side', () => {
    fc.assert(
      fc.property(zone, ({ least, greatest }) => {
        const inches = inwardLimits({ least: mm(least), greatest: mm(greatest) }, 'in');
        const step = 0.0001 * 25.4 * (1 + 1e-9);
        expect(Number(inches.least) * 25.4 - Number(least)).toBeLessThan(step);
        expect(Number(greatest) - Number(inches.greatest) * 25.4).toBeLessThan(step);
      }),
    );
  });

  // outside: Debian's units program turns the inches back
  it('come back within the limits by another program', (context) => {
    const lacks = lacking('units');
    context.skip(lacks !== undefined, `${lacks}`);
    const zones = fc.sample(zone, { numRuns: 60, seed: 7 });
    const inches = zones.map(({ least, greatest }) =>
      inwardLimits({ least: mm(least), greatest: mm(greatest) }, 'in'),
    );
    const asked = inches.flatMap(({ least, greatest }) => [`${least} inch`, 'mm', `${greatest} inch`, 'mm']);
    const told = ask('units', ['--terse', '--digits', '15'], `${asked.join('\n')}\n`)
      .trim()
      .split('\n')
      .map(Number);
    expect(told).toHaveLength(120);
    for (const [at, { least, greatest }] of zones.entries()) {
      expect(told[2 * at]).toBeGreaterThanOrEqual(Number(least) - 1e-9);
      expect(told[2 * at + 1]).toBeLessThanOrEqual(Number(greatest) + 1e-9);
    }
  });

  it('are written as they are read', () => {
    expect(inwardText({ least: '2.1544', greatest: '2.1551' }, 'in')).toBe('2.1544 in to 2.1551 in');
    expect(inwardText({ greatest: '0.0011' }, 'in')).toBe('at most 0.0011 in');
    expect(inwardText({ least: '1' }, 'mm')).toBe('at least 1 mm');
    expect(inwardText({}, 'mm')).toBe('');
    expect(inwardBare({ least: '2.1544', greatest: '2.1551' })).toBe('2.1544 to 2.1551');
    expect(inwardBare({ least: '1' })).toBe('at least 1');
    expect(inwardBare({ greatest: '1' })).toBe('at most 1');
    expect(inwardBare({})).toBe('');
    expect(inwardLimits({ least: mm('?') }, 'in')).toEqual({});
  });
});
