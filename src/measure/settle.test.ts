/** @module What settles an unsure verdict, tried out by doing what is proposed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometer, readAll, reading, sheetOf, typed } from '../../test/engines/small-engine.ts';
import type { Instrument } from './instrument.ts';
import { judge } from './judge.ts';
import type { Reading } from './reading.ts';
import { settle } from './settle.ts';
import type { Sheet } from './sheet.ts';

const fine: Instrument = {
  ...micrometer,
  name: 'mic-fine',
  permissibleError: typed('0.001'),
  repeatability: typed('0.0005'),
};
const coarse: Instrument = { ...micrometer, name: 'mic-coarse', permissibleError: typed('0.02') };
const short: Instrument = {
  ...fine,
  name: 'mic-25-50',
  range: { least: typed('25'), greatest: typed('50') },
};
const gauge: Instrument = { ...micrometer, name: 'bore-gauge', kind: 'bore gauge' };

const registerOf = (...each: readonly Instrument[]) => new Map(each.map((one) => [one.name, one]));
const journals = (...figures: readonly string[]) => readAll('main.1', 'main-journal-diameter', figures);
const ask = (sheet: Sheet, register: readonly Instrument[] = [], name = 'main-journal-diameter') =>
  settle(sheet, name, 'main.1', register);

/** 5.7 µm inside the wear limit, where 6.0 µm are asked for. */
const near = journals('54.980', '54.975', '54.9357', '54.978');

describe('an unsure verdict', () => {
  it('is settled by as many repeats as are proposed', () => {
    const [first] = ask(sheetOf(near));
    expect(first).toMatchObject({ kind: 'repeats', verdict: 'within' });
    expect(first?.cells.map(({ plane, axis }) => `${plane} ${axis}`)).toEqual(['rear vertical']);
    expect(first?.says).toMatch(
      /^Read rear vertical \d+ more times with the same instrument: known to ±0\.00\d\d mm instead of ±0\.00\d\d mm, and within if it stays where it is\.$/,
    );
    const times = first?.times ?? 0;
    expect(times).toBeGreaterThan(1);
    // Repeats that scatter just as the register says, so that no more is learnt of the instrument.
    const scattered = (count: number): readonly Reading[] => {
      const [, , worst] = near;
      if (!worst) throw new Error('no reading');
      return Array.from({ length: count }, (_, index) => ({
        ...worst,
        id: `again ${index}`,
        typed: typed((54.9357 + (index % 2 ? 0.0015 : -0.0015)).toFixed(4)),
      }));
    };
    const more = judge(
      sheetOf([...near, ...scattered(times + (times % 2))]),
      'main-journal-diameter',
      'main.1',
    );
    expect(more.verdict).toBe('within');
  });

  it('is settled by a better instrument of the register that reaches, never by a worse', () => {
    const sheet = sheetOf(journals('54.980', '54.975', '54.934', '54.978'));
    const proposals = ask(sheet, [coarse, short, fine, micrometer]);
    expect(proposals.map(({ kind, instrument }) => `${kind} ${instrument}`)).toEqual(['instrument mic-fine']);
    const [first] = proposals;
    expect(first?.verdict).toBe('within');
    const again = reading('main.1 main-journal-diameter rear vertical', typed('54.934'), fine.name);
    const done = sheetOf([...journals('54.980', '54.975', '54.934', '54.978'), { ...again, id: 'again' }], {
      instruments: registerOf(micrometer, fine),
    });
    expect(judge(done, 'main-journal-diameter', 'main.1').verdict).toBe('within');
  });

  it('may be settled as outside', () => {
    const [first] = ask(sheetOf(journals('54.980', '54.975', '54.926', '54.978')), [fine]);
    expect(first).toMatchObject({ kind: 'instrument', verdict: 'outside' });
  });

  it('asks for a zero check where none was made', () => {
    const { zero: _never, ...unchecked } = micrometer;
    const instruments = registerOf(unchecked);
    const sheet = sheetOf(journals('54.980', '54.975', '54.9365', '54.978'), { instruments });
    const first = ask(sheet, [fine]).find(({ kind }) => kind === 'zero');
    expect(first).toMatchObject({ kind: 'zero', instrument: micrometer.name, cells: [] });
    const checked = sheetOf([...sheet.readings.values()].flat(), { instruments: registerOf(micrometer) });
    expect(judge(checked, 'main-journal-diameter', 'main.1').verdict).toBe(first?.verdict);
  });

  it('of a clearance is settled by setting the gauge in the micrometer that took the journal', () => {
    const shells = (figures: readonly string[]) =>
      readAll('main.1', 'main-shell-bore', figures, 'bore-gauge');
    const figures = ['55.050', '55.0922', '55.050', '55.050'];
    const sheet = sheetOf([...journals('54.980', '54.970', '54.980', '54.980'), ...shells(figures)], {
      instruments: registerOf(micrometer, gauge),
    });
    expect(judge(sheet, 'main-clearance', 'main.1').verdict).toBe('unsure');
    const setting = ask(sheet, [], 'main-clearance').find(({ kind }) => kind === 'setting');
    expect(setting?.says).toMatch(/^Set bore-gauge in mic-50-75 and read the 4 sizes again: /);
    const setTo = { master: micrometer.name, size: typed('55.000'), shown: typed('55.000') };
    const done = sheetOf([...sheet.readings.values()].flat(), {
      instruments: registerOf(micrometer, { ...gauge, setTo }),
    });
    expect(judge(done, 'main-clearance', 'main.1').verdict).toBe(setting?.verdict);
  });

  it('of a warm part waits for it to cool', () => {
    const warm = journals('54.980', '54.975', '54.940', '54.978').map((each) => ({
      ...each,
      temperature: typed('45', '°C'),
    }));
    const cool = ask(sheetOf(warm)).find(({ kind }) => kind === 'cool');
    expect(cool).toMatchObject({ verdict: 'within' });
    expect(cool?.says).toContain('Let the part come to 20 °C beside the instrument');
  });

  it('reads what is unread first', () => {
    const [first, ...more] = ask(sheetOf(journals('54.931')));
    expect(first).toMatchObject({ kind: 'axis', minutes: 1.5 });
    expect(first?.cells).toHaveLength(3);
    expect(more).toEqual([]);
  });

  it('on the limit is settled by nothing, and that is said', () => {
    const proposals = ask(sheetOf(journals('54.980', '54.975', '54.930', '54.978')), [fine]);
    expect(proposals.map(({ kind }) => kind)).toEqual(['nothing']);
    expect(proposals[0]?.says).toMatch(/^Nothing in the register settles it: at 54\.9300 mm/);
  });

  it('of a form is settled by repeats of the cells that make it', () => {
    const sheet = sheetOf(journals('54.980', '54.952', '54.980', '54.980'));
    expect(judge(sheet, 'main-journal-ovality', 'main.1').verdict).toBe('unsure');
    const [first] = ask(sheet, [], 'main-journal-ovality');
    expect(first).toMatchObject({ kind: 'repeats', verdict: 'within' });
    expect(first?.cells.map(({ plane }) => plane)).toEqual(['front', 'front']);
  });
});

describe('a verdict that is settled', () => {
  it('asks for nothing', () => {
    expect(ask(sheetOf(journals('54.980', '54.975', '54.960', '54.978')), [fine])).toEqual([]);
    expect(ask(sheetOf(journals('54.980', '54.975', '54.900', '54.978')), [fine])).toEqual([]);
    expect(ask(sheetOf([]), [fine])).toEqual([]);
    expect(settle(sheetOf([]), 'no-such', 'main.1', [])).toEqual([]);
  });

  it('stands cheapest first, and only what settles is proposed', () => {
    const figure = fc.integer({ min: 549_180, max: 549_420 }).map((n) => (n / 10_000).toFixed(4));
    fc.assert(
      fc.property(figure, (worst) => {
        const sheet = sheetOf(journals('54.980', '54.975', worst, '54.978'));
        const { verdict } = judge(sheet, 'main-journal-diameter', 'main.1');
        const proposals = ask(sheet, [fine, coarse]);
        expect(proposals.length > 0).toBe(verdict === 'unsure');
        const minutes = proposals.map((each) => each.minutes);
        expect(minutes).toEqual([...minutes].sort((a, b) => a - b));
        for (const { kind, verdict: then } of proposals) {
          if (kind !== 'nothing') expect(then).toBe(Number(worst) > 54.93 ? 'within' : 'outside');
        }
      }),
      { numRuns: 60 },
    );
  });
});
