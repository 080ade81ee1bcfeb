/** @module Doubts that several readings raise together: rows swapped and copied, ring gaps and bores, zeros, ranges, priors. */
import { describe, expect, it } from 'vitest';
import { instruments } from '../../demo/instruments.ts';
import { brambleholt, quillfeather } from '../../test/engines/demo-engines.ts';
import {
  micrometer,
  readAll,
  reading,
  sheetOf,
  smallEngine,
  typed,
} from '../../test/engines/small-engine.ts';
import { doubtsOf } from './doubts.ts';
import type { Instrument } from './instrument.ts';
import type { Reading } from './reading.ts';
import { cellsOf } from './scheme.ts';
import { layOut } from './sheet.ts';
import { usualPriors } from './slips/priors.ts';

const journal = (place: string, ...figures: string[]) => readAll(place, 'main-journal-diameter', figures);
const again = (readings: readonly Reading[]) => readings.map((each) => ({ ...each, id: `again ${each.id}` }));
const front = 'main.1 main-journal-diameter front vertical';

const worn = ['54.951', '54.962', '54.950', '54.961'];
const fresh = ['54.990', '54.989', '54.991', '54.990'];

describe('rows taken again', () => {
  const before = [...journal('main.1', ...worn), ...journal('main.2', ...fresh)];

  it('are doubted where they stand at one another’s places, each with its own figures', () => {
    const swapped = again([...journal('main.1', ...fresh), ...journal('main.2', ...worn)]);
    const [doubt, ...more] = doubtsOf(sheetOf([...before, ...swapped]));
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ slip: 'rows swapped', places: ['main.1', 'main.2'] });
    expect(doubt?.likely.map(({ text }) => text)).toEqual([...worn, ...fresh]);
    expect(doubt?.says).toMatch(/rows of main 1 and main 2 look swapped by what was read there before/);
  });

  it('are not where they say the same again, nor where both are alike anyway', () => {
    expect(doubtsOf(sheetOf([...before, ...again(before)]))).toEqual([]);
    const alike = [
      ...journal('main.1', ...worn),
      ...journal('main.2', '54.952', '54.961', '54.951', '54.961'),
    ];
    const exchanged = again([
      ...journal('main.1', '54.952', '54.961', '54.951', '54.961'),
      ...journal('main.2', ...worn),
    ]);
    expect(doubtsOf(sheetOf([...alike, ...exchanged]))).toEqual([]);
  });
});

describe('a row equal to another to the last digit', () => {
  it('is doubted where the figures are fine, and not where they are coarse', () => {
    const bore = (place: string, ...figures: string[]) => readAll(place, 'bore-diameter', figures, 'wide');
    const wide = {
      ...micrometer,
      name: 'wide',
      kind: 'bore gauge',
      range: { least: typed('50'), greatest: typed('100') },
    };
    const sheet = (...rows: readonly Reading[]) => sheetOf(rows, { instruments: new Map([['wide', wide]]) });
    const figures = ['85.071', '85.064', '85.052', '85.049', '85.031', '85.028'];
    const [doubt, ...more] = doubtsOf(sheet(...bore('bore.1', ...figures), ...bore('bore.2', ...figures)));
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ slip: 'row copied', places: ['bore.2'] });
    expect(doubt?.says).toContain('is the row of bore 1 to the last digit');
    const coarse = ['85.07', '85.06', '85.05', '85.05', '85.03', '85.03'];
    expect(doubtsOf(sheet(...bore('bore.1', ...coarse), ...bore('bore.2', ...coarse)))).toEqual([]);
  });
});

describe('a ring gap', () => {
  const engine = quillfeather();
  const taken = (name: string, place: string, instrument: string, figures: readonly string[]) =>
    cellsOf(engine, name, place).flatMap((cell, at) => {
      const text = figures[at];
      return text === undefined
        ? []
        : [{ id: `${name} ${place} ${at}`, cell, typed: typed(text), instrument }];
    });
  const bores = (place: string, size: number) =>
    taken(
      'bore-diameter',
      place,
      'bore-35-160',
      [3, 1, 4, 2, 0, 3].map((microns) => (size + microns / 1000).toFixed(3)),
    );
  const gaps = (place: string, ...figures: string[]) => taken('ring-gap', place, 'feelers', figures);
  const doubts = (...readings: readonly Reading[]) => doubtsOf(layOut(engine, readings, instruments));

  it('that is smaller than its bore allows is doubted, with what the bore asks for', () => {
    // 0.30 + π × (85.122 - 85.022) = 0.614. source: circumference = π × diameter
    const [doubt, ...more] = doubts(...bores('bore.1', 85.122), ...gaps('piston.1', '0.66', '0.38', '0.70'));
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ slip: 'ring gap off its bore', readings: ['ring-gap piston.1 1'] });
    expect(doubt?.says).toContain('0.61 mm and more');
  });

  it('that has opened with its bore is not', () => {
    expect(doubts(...bores('bore.1', 85.122), ...gaps('piston.1', '0.66', '0.72', '0.70'))).toEqual([]);
    expect(doubts(...bores('bore.1', 85.012), ...gaps('piston.1', '0.36', '0.38', '0.40'))).toEqual([]);
  });

  it('goes by the bore that the engine type links it to, whatever that is called', () => {
    const large = brambleholt();
    const read = (name: string, place: string, instrument: string, figures: readonly string[]) =>
      cellsOf(large, name, place).map((cell, at) => ({
        id: `${name} ${place} ${at}`,
        cell,
        typed: typed(figures[at] ?? ''),
        instrument,
      }));
    const { limits } = large.characteristics.get('liner-bore') ?? {};
    const bore = (limits?.new.greatest ?? Number.NaN) + 0.1;
    const sizes = [3, 1, 4, 2, 0, 3].map((microns) => (bore + microns / 1000).toFixed(3));
    const sheet = layOut(
      large,
      [
        ...read('liner-bore', 'liner.1', 'bore-35-160', sizes),
        ...read('ring-gap', 'piston.1', 'feelers', ['0.66', '0.38', '0.70']),
      ],
      instruments,
    );
    expect(doubtsOf(sheet)).toMatchObject([
      { slip: 'ring gap off its bore', readings: ['ring-gap piston.1 1'] },
    ]);
  });

  it('that goes with the next bore is doubted with it: the rows look swapped', () => {
    const [doubt, ...more] = doubts(
      ...bores('bore.1', 85.13),
      ...bores('bore.2', 85.02),
      ...bores('bore.3', 85.06),
      ...gaps('piston.1', '0.40', '0.41', '0.42'),
      ...gaps('piston.2', '0.75', '0.76', '0.77'),
      ...gaps('piston.3', '0.53', '0.54', '0.52'),
    );
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ slip: 'rows swapped', places: ['piston.1', 'piston.2'] });
    expect(doubt?.says).toContain('by the bores that they go with');
  });
});

describe('an instrument', () => {
  const { zero: _none, ...unchecked } = micrometer;
  const readings = [...journal('main.1', ...worn)];
  const withOne = (instrument: Instrument) =>
    doubtsOf(sheetOf(readings, { instruments: new Map([[instrument.name, instrument]]) }));

  it('whose zero was never checked is doubted once, with all that was read with it', () => {
    const [doubt, ...more] = withOne(unchecked);
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ id: 'no zero check:mic-50-75', readings: readings.map(({ id }) => id) });
  });

  it('that was set in a master, or has no zero, is not', () => {
    const setTo = { master: 'ring-55', size: typed('55'), shown: typed('55') };
    expect(withOne({ ...unchecked, setTo })).toEqual([]);
    expect(withOne({ ...unchecked, kind: 'feeler set' })).toEqual([]);
  });

  it('that failed its last check is doubted with all that was read with it', () => {
    const checked = { on: '2026-03-02', against: 'ring-55', good: false };
    const [doubt, ...more] = withOne({ ...unchecked, zero: typed('0.000'), checked });
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ slip: 'out of calibration', readings: readings.map(({ id }) => id) });
    expect(doubt?.says).toContain('held against ring-55 on 2026-03-02');
    expect(withOne({ ...unchecked, zero: typed('0.000'), checked: { ...checked, good: true } })).toEqual([]);
  });

  it('that is past the day it was due is the sooner taken to be off, and said to be overdue', () => {
    const calibration = { certificate: 'K-1', on: '2025-03-02', due: '2026-03-01' };
    const odds = (on: string) => {
      const grown = ['main.1', 'main.2', 'main.3', 'main.4'].flatMap((place, at) =>
        readAll(
          place,
          'main-journal-diameter',
          [130, 128, 131, 129].map((microns) => (55 + (microns + 3 * at) / 1000).toFixed(3)),
        ),
      );
      const instrument = { ...micrometer, calibration };
      const [doubt] = doubtsOf(
        sheetOf(
          grown.map((one) => ({ ...one, on })),
          { instruments: new Map([[instrument.name, instrument]]) },
        ),
      );
      return doubt;
    };
    const [inTime, late] = [odds('2026-03-01'), odds('2026-03-02')];
    expect(inTime?.slip).toBe('constant offset');
    expect(inTime?.says).not.toContain('due for calibration');
    expect(late?.says).toContain('It was due for calibration by 2026-03-01.');
    expect((late?.odds ?? 0) / (inTime?.odds ?? 1)).toBeCloseTo(5, 6);
  });

  it('that is past its day raises no doubt of readings that lie as they should', () => {
    const calibration = { certificate: 'K-1', on: '2025-03-02', due: '2026-03-01' };
    const instrument = { ...micrometer, calibration };
    const late = readings.map((one) => ({ ...one, on: '2026-06-01' }));
    expect(doubtsOf(sheetOf(late, { instruments: new Map([[instrument.name, instrument]]) }))).toEqual([]);
  });

  it('that cannot show the figure was not the one that was used', () => {
    const small = {
      ...micrometer,
      name: 'mic-25-50',
      range: { least: typed('25'), greatest: typed('50') },
    };
    const [doubt, ...more] = doubtsOf(
      sheetOf([reading(front, typed('54.970'), 'mic-25-50')], {
        instruments: new Map([[small.name, small]]),
      }),
    );
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ slip: 'outside the range', likely: [typed('54.970')] });
    expect(doubt?.says).toContain('cannot be read on mic-25-50, which reaches from 25 mm to 50 mm');
  });
});

/** Without numbered lines that might have been misread. */
const caliper = { ...micrometer, kind: 'snap gauge' };

describe('a part that has grown', () => {
  it('is doubted where no slip accounts for it, and says by how much', () => {
    const row = journal('main.1', '55.043', '55.042', '55.044', '55.043');
    const [doubt, ...more] = doubtsOf(sheetOf(row));
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ slip: 'part grown', readings: row.map(({ id }) => id) });
    expect(doubt?.says).toContain('0.042 mm and more past what it was made to, and worn parts do not grow');
    const [single] = doubtsOf(sheetOf(row.slice(0, 1), { instruments: new Map([[caliper.name, caliper]]) }));
    expect(single).toMatchObject({ slip: 'part grown' });
    expect(single?.says).toContain('0.043 mm past what it was made to');
  });
});

describe('a figure that is no length', () => {
  const spring = {
    name: 'spring-load',
    title: 'spring load',
    at: 'main',
    wears: 'smaller' as const,
    planes: [''],
    axes: [''],
    quantity: 'force' as const,
    limits: { new: { least: 240, greatest: 260 }, goesBack: { least: 220, greatest: 260 }, printed: {} },
  };
  const engine = { ...smallEngine, characteristics: new Map([[spring.name, spring]]) };
  const tester = {
    ...micrometer,
    name: 'tester',
    kind: 'spring tester',
    range: { least: typed('0', 'N'), greatest: typed('500', 'N') },
    resolution: typed('1', 'N'),
    permissibleError: typed('2', 'N'),
    repeatability: typed('1', 'N'),
    zero: typed('0', 'N'),
    turn: typed('0', 'N'),
  };
  const loads = (...figures: string[]) =>
    doubtsOf(
      sheetOf(
        figures.map((text, at) => reading(`main.${at + 1} spring-load`, typed(text, 'N'), 'tester')),
        { engine, instruments: new Map([['tester', tester]]) },
      ),
    );

  it('is doubted for its digits like any other, and told in its own unit', () => {
    expect(loads('241', '238', '243')).toEqual([]);
    const [mark] = loads('24.1', '238', '243');
    expect(mark).toMatchObject({ slip: 'decimal shift', likely: [typed('241', 'N')] });
    const [digits] = loads('421', '238', '243');
    expect(digits).toMatchObject({ slip: 'digits transposed', likely: [typed('241', 'N')] });
    const [grown] = loads('300', '238', '243');
    expect(grown).toMatchObject({ slip: 'part grown' });
    expect(grown?.says).not.toContain('mm');
  });
});

describe('how often slips happen', () => {
  it('is the shop’s to say: one that never happens is not looked for', () => {
    const sheet = sheetOf([reading(front, typed('54.480'))]);
    expect(doubtsOf(sheet).map(({ slip }) => slip)).toEqual(['thimble turn']);
    const never = { ...usualPriors, 'thimble turn': 0 };
    expect(doubtsOf(sheet, never).map(({ slip }) => slip)).not.toContain('thimble turn');
    const often = { ...usualPriors, 'thimble turn': 0.15 };
    expect(doubtsOf(sheet, often)[0]?.odds).toBeCloseTo(10 * (doubtsOf(sheet)[0]?.odds ?? Number.NaN), 3);
  });
});
