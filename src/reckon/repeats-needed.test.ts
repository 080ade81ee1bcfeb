/** @module So many readings are enough, and one fewer is not. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { verdictOf } from '../measure/guard-band.ts';
import { reckonByName } from './list.ts';
import { repeatsNeeded } from './repeats-needed.ts';

const ask = (texts: Readonly<Record<string, string>>) => {
  const asked = reckonByName('repeats-needed', texts);
  return asked.kind === 'answer' ? asked.value : undefined;
};

describe('readings needed', () => {
  it('are enough, and one fewer is not', () => {
    fc.assert(
      fc.property(between(-4, 4), between(0.1, 2), between(0, 1), (value, repeat, other) => {
        const bounds = { greatest: 0 };
        const count = repeatsNeeded(value, repeat, other, bounds, 0.95);
        const verdict = (n: number) =>
          verdictOf(value, Math.hypot(other, repeat / Math.sqrt(n)), Infinity, bounds, 0.95);
        if (!Number.isFinite(count)) {
          expect(verdict(1e12)).toBe('unsure');
          return;
        }
        fc.pre(count < 1e6);
        expect(verdict(count * (1 + 1e-6))).not.toBe('unsure');
        if (count > 1) expect(verdict(count - 1)).toBe('unsure');
      }),
    );
  });

  it('go by the guard band and the root of their number', () => {
    // source: ISO 14253-1:2017, 1.645 u; JCGM 100:2008, 4.2.3, s / √n: a repeat of 3 µm at 2 µm from the limit needs
    // (1.645 · 3 / 2)² = 6.09 readings
    const source = 'ISO 14253-1:2017 with JCGM 100:2008, 4.2.3, by hand: (1.645 · 3 / 2)² is 6.09';
    outsideCheck('repeats-needed', source, '1', 0)(repeatsNeeded(-2, 3, 0, { greatest: 0 }, 0.95), 7);
    expect(repeatsNeeded(-2, 0, 1, { greatest: 0 }, 0.95)).toBe(1);
    expect(repeatsNeeded(0, 1, 0, { greatest: 0 }, 0.95)).toBe(Infinity);
  });

  it('are none where repeats do not help, and that is said', () => {
    const none = ask({ size: '54.983±0.006mm', repeatability: '0.0015mm', least: '54.980mm' });
    expect(none?.results.readings).toEqual({ value: 'none', unit: '' });
    expect(none?.notes[0]).toContain('take a better instrument');
    const many = ask({ size: '54.981mm', repeatability: '0.004mm', least: '54.980mm' });
    expect(many?.results.readings?.value).toBe(44);
    expect(many?.notes[0]).toContain('Nobody reads a size so often');
  });
});
