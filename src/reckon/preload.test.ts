/** @module Tension in bolts against the tables of ISO 898-1 and the worked figures of VDI 2230. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { mm } from '../quantity/brand.ts';
import { reckonByName } from './list.ts';
import { assemblyLimit } from './preload.ts';

const ask = (texts: Readonly<Record<string, string>>) =>
  reckonByName('preload', { thread: 'M12', class: '8.8', torque: '93N·m', state: 'oiled', ...texts });
const number = (texts: Readonly<Record<string, string>>, key: string) =>
  Number(known(ask(texts)).results[key]?.value);

describe('tension in a bolt', () => {
  it('is that of the worked figures of VDI 2230', () => {
    // source: VDI 2230: M12, 8.8, µ 0.14: preload 41.9 kN at nine tenths of yield, torque 93 N·m for it
    const vdi = outsideCheck('preload', 'VDI 2230, M12 8.8 at friction 0.14', '%', 1);
    vdi(assemblyLimit({ diameter: mm(12), pitch: mm(1.75) }, '8.8', 0.14) / 1000, 41.9);
    vdi(number({ 'least-friction': '0.14', 'greatest-friction': '0.14' }, 'greatest'), 41.9);
    // 41.9 / 1.8 = 23.3 kN at least, with a torque wrench and friction estimated
    const least = number({ 'least-friction': '0.14', 'greatest-friction': '0.14' }, 'least-by-way');
    outsideCheck('preload', 'VDI 2230, least preload with a torque wrench', '%', 1)(least, 23.3);
  });

  // recomputed from VDI 2230 for class 8.8 (ISO 4014 head, ISO 273 hole), kN at friction 0.10, 0.12, 0.14
  it.each([
    [6, 1, [10.4, 10.2, 9.9]],
    [8, 1.25, [19.1, 18.6, 18.1]],
    [10, 1.5, [30.4, 29.6, 28.8]],
    [14, 2, [60.6, 59.1, 57.6]],
    [16, 2, [82.9, 81.0, 78.9]],
  ])('of M%d may be no more than the table of nine tenths of yield', (diameter, pitch, table) => {
    const near = outsideCheck(
      'preload',
      'VDI 2230, nine tenths of yield, M6 to M16, recomputed table',
      '%',
      0.6,
    );
    table.forEach((printed, at) => {
      near(
        assemblyLimit({ diameter: mm(diameter), pitch: mm(pitch) }, '8.8', 0.1 + 0.02 * at) / 1000,
        printed,
      );
    });
  });

  // source: ISO 898-1, tables of proof loads, N: stress areas to three figures, loads rounded down to three, so that
  // 580 × 20.1 = 11 658 stands there as 11 600
  it.each([
    ['M6', '8.8', 11_600],
    ['M10', '10.9', 48_100],
    ['M12', '12.9', 81_800],
    ['M16', '8.8', 91_000],
    ['M18', '8.8', 115_000],
    ['M20', '10.9', 203_000],
  ])('of %s, class %s, is held against the proof load of the standard', (thread, grade, printed) => {
    const got = number({ thread, class: grade }, 'proof-load') * 1000;
    outsideCheck('preload', 'ISO 898-1, proof loads', '%', 0.65)(got, printed);
  });

  it('grows with the torque and falls with friction', () => {
    fc.assert(
      fc.property(between(5, 200), between(0.05, 0.3), (torque, friction) => {
        const at = (t: number, f: number) =>
          number(
            {
              torque: `${t.toFixed(2)}N·m`,
              'least-friction': f.toFixed(4),
              'greatest-friction': f.toFixed(4),
            },
            'greatest',
          );
        expect(at(torque * 2, friction)).toBeGreaterThan(at(torque, friction));
        expect(at(torque, friction + 0.05)).toBeLessThan(at(torque, friction));
      }),
    );
  });

  it('past the proof load is said', () => {
    expect(known(ask({ torque: '160N·m', state: 'compound' })).notes[0]).toContain('past the proof load');
  });

  it.each([
    [{ thread: 'W12' }, 'thread=W12'],
    [{ state: 'damp' }, 'state=damp'],
    [{ torque: '0N·m' }, 'torque'],
    [{ 'least-friction': '0.2', 'greatest-friction': '0.1' }, 'least-friction, greatest-friction'],
    [{ torque: '93 mm' }, 'torque=93 mm'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
