/** @module What the verdicts of a sheet must be. */
import { describe, expect, it } from 'vitest';
import {
  cell,
  characteristics,
  reading,
  sheetOf,
  smallEngine,
  typed,
} from '../../test/engines/small-engine.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { judge, judgeAll, judgeCell } from './judge.ts';
import { cellsOf, entryOrder } from './scheme.ts';

const planes = ['front vertical', 'front horizontal', 'rear vertical', 'rear horizontal'];

/** Readings of one characteristic at a place, in the order of its scheme. */
const readAll = (place: string, name: string, figures: readonly string[], instrument = 'mic-50-75') =>
  cellsOf(smallEngine, name, place).map(({ plane, axis }, index) =>
    reading(`${place} ${name} ${plane} ${axis}`, typed(figures[index] ?? ''), instrument),
  );

const journal = (...figures: string[]) => readAll('main.1', 'main-journal-diameter', figures);

describe('scheme', () => {
  it('turns the instrument before it is moved along', () => {
    expect(
      cellsOf(smallEngine, 'main-journal-diameter', 'main.2').map(({ plane, axis }) => `${plane} ${axis}`),
    ).toEqual(planes);
  });

  it('has no cells for a derived characteristic, nor at a place of another kind', () => {
    expect(cellsOf(smallEngine, 'main-clearance', 'main.1')).toEqual([]);
    expect(cellsOf(smallEngine, 'main-journal-diameter', 'bore.1')).toEqual([]);
    expect(cellsOf(smallEngine, 'no-such', 'main.1')).toEqual([]);
  });

  it('goes through all places with one instrument, each cell once', () => {
    const order = entryOrder(smallEngine);
    expect(order).toHaveLength(4 * 4 + 4 * 4 + 3 * 6 + 3 + 1 + 3 + 3);
    expect(new Set(order.map((each) => JSON.stringify(each))).size).toBe(order.length);
    expect(order.slice(0, 16).every((each) => each.characteristic === 'main-journal-diameter')).toBe(true);
  });
});

describe('verdict of a cell', () => {
  it('is not yet known before it is read', () => {
    const asked = cell('main.1 main-journal-diameter front vertical');
    expect(judgeCell(sheetOf([]), asked)).toEqual({ cell: asked, verdict: 'not yet known' });
  });

  it.each([
    ['54.980', 'within'],
    ['54.940', 'within'],
    ['54.931', 'unsure'],
    ['54.929', 'unsure'],
    ['54.900', 'outside'],
    ['55.050', 'outside'],
  ])('of a journal read %s is %s', (figure, verdict) => {
    const [taken] = journal(figure);
    if (!taken) throw new Error('no reading');
    expect(judgeCell(sheetOf([taken]), taken.cell).verdict).toBe(verdict);
  });

  it('counts the last reading taken', () => {
    const [first] = journal('54.900');
    if (!first) throw new Error('no reading');
    const again = { ...first, id: 'again', typed: typed('54.980') };
    const judged = judgeCell(sheetOf([first, again]), first.cell);
    expect(judged).toMatchObject({ reading: 'again', verdict: 'within' });
  });

  it('is not yet known where the instrument is not in the register or the figure cannot be read', () => {
    const [taken] = journal('54.980');
    if (!taken) throw new Error('no reading');
    expect(judgeCell(sheetOf([{ ...taken, instrument: 'lost' }]), taken.cell).verdict).toBe('not yet known');
    expect(judgeCell(sheetOf([{ ...taken, typed: typed('5x') }]), taken.cell).verdict).toBe('not yet known');
  });

  it('is within where the manual gives no limits', () => {
    const taken = reading('pump.1 pump-depth', typed('82.41'));
    expect(judgeCell(sheetOf([taken]), taken.cell)).toMatchObject({ verdict: 'within', conformance: 1 });
  });
});

describe('verdict of a measured characteristic', () => {
  it('is unsure of an unworn part close under its limit as made, if the micrometer is no better', () => {
    // ± 5 µm of permissible error asks for some 6 µm of room, whichever side of the limits it is.
    const judged = judge(
      sheetOf(journal('54.990', '54.997', '54.991', '54.993')),
      'main-journal-diameter',
      'main.1',
    );
    expect(judged).toMatchObject({ verdict: 'unsure', asNew: true });
    expect(judged.value?.value).toBe(54.997);
  });

  it('is decided by the worst of the two-point sizes', () => {
    const judged = judge(
      sheetOf(journal('54.980', '54.975', '54.931', '54.978')),
      'main-journal-diameter',
      'main.1',
    );
    expect(judged).toMatchObject({ verdict: 'unsure', asNew: false, missing: [] });
    expect(judged.value?.value).toBe(54.931);
    expect(judged.cells.map(({ verdict }) => verdict)).toEqual(['within', 'within', 'unsure', 'within']);
  });

  it('says whether all of it also lies within the limits as made', () => {
    const judged = judge(
      sheetOf(journal('54.990', '54.989', '54.991', '54.993')),
      'main-journal-diameter',
      'main.1',
    );
    expect(judged).toMatchObject({ verdict: 'within', asNew: true });
  });

  it('waits for the missing cells', () => {
    const judged = judge(sheetOf(journal('54.980').slice(0, 1)), 'main-journal-diameter', 'main.1');
    expect(judged.verdict).toBe('not yet known');
    expect(judged.missing).toHaveLength(3);
    expect(judged).not.toHaveProperty('asNew');
    expect(judged).not.toHaveProperty('conformance');
  });

  it('does not wait where one cell is outside already', () => {
    const judged = judge(sheetOf(journal('54.850').slice(0, 1)), 'main-journal-diameter', 'main.1');
    expect(judged).toMatchObject({ verdict: 'outside' });
    expect(judged.missing).toHaveLength(3);
  });

  it('goes by the limits of the size at which it was found', () => {
    const readings = journal('54.740', '54.738', '54.741', '54.739');
    const found = { sizesFound: new Map([['mains', '0.25']]) };
    expect(judge(sheetOf(readings), 'main-journal-diameter', 'main.1').verdict).toBe('outside');
    const judged = judge(sheetOf(readings, found), 'main-journal-diameter', 'main.1');
    expect(judged).toMatchObject({ verdict: 'within', asNew: true });
    expect(judged.limits?.new.greatest).toBe(54.75);
  });

  it('takes the most worn as the value where the manual gives no limits', () => {
    const bare = characteristics.map(({ limits: _none, ...each }) => each);
    const engine = { ...smallEngine, characteristics: new Map(bare.map((each) => [each.name, each])) };
    const judged = judge(
      sheetOf(journal('54.980', '54.975', '54.931', '54.978'), { engine }),
      'main-journal-diameter',
      'main.1',
    );
    expect(judged.value?.value).toBe(54.931);
    expect(judged).not.toHaveProperty('limits');
  });

  it('of a name or place that is not there is not yet known, and nothing is missing', () => {
    const nothing = { verdict: 'not yet known', cells: [], missing: [] };
    expect(judge(sheetOf([]), 'no-such', 'main.1')).toMatchObject(nothing);
    expect(judge(sheetOf([]), 'main-journal-diameter', 'bore.1')).toMatchObject(nothing);
    expect(judge(sheetOf([]), 'main-journal-diameter', 'main.9')).toMatchObject(nothing);
  });
});

describe('verdict of a derived characteristic', () => {
  it('ovality is the greatest range over the axes of a plane, taper over the planes along an axis', () => {
    const sheet = sheetOf(journal('54.980', '54.972', '54.969', '54.971'));
    // front 0.008, rear 0.002; vertical 0.011, horizontal 0.001
    expect(judge(sheet, 'main-journal-ovality', 'main.1').value?.value).toBeCloseTo(0.008, 12);
    expect(judge(sheet, 'main-journal-taper', 'main.1').value?.value).toBeCloseTo(0.011, 12);
  });

  it('ovality has lost the errors that its readings share', () => {
    const ovality = judge(
      sheetOf(journal('54.980', '54.972', '54.969', '54.971')),
      'main-journal-ovality',
      'main.1',
    );
    // Two repeats of 1.5 µm and two halves of a unit of 1 µm are left; the 5 µm of the micrometer is gone.
    expect(ovality.value && standardUncertainty(ovality.value)).toBeCloseTo(
      Math.sqrt(2) * Math.hypot(0.0015, 0.0005 / Math.sqrt(3)),
      9,
    );
  });

  it('is not yet known until all operands are read, and names the cells', () => {
    const judged = judge(sheetOf(journal('54.980').slice(0, 1)), 'main-clearance', 'main.1');
    expect(judged.verdict).toBe('not yet known');
    expect(judged.missing).toHaveLength(7);
  });

  const shells = (instrument: string) =>
    readAll('main.1', 'main-shell-bore', ['55.050', '55.052', '55.055', '55.051'], instrument);

  it('clearance is the widest bore less the thinnest journal', () => {
    const sheet = sheetOf([...journal('54.980', '54.975', '54.970', '54.978'), ...shells('bore-gauge')]);
    const judged = judge(sheet, 'main-clearance', 'main.1');
    expect(judged.value?.value).toBeCloseTo(0.085, 12);
    expect(judged).toMatchObject({ verdict: 'within', asNew: false, cells: [], missing: [] });
  });

  it('clearance is known better where both parts were taken with one instrument', () => {
    const u = (instrument: string) => {
      const sheet = sheetOf([...journal('54.980', '54.975', '54.970', '54.978'), ...shells(instrument)]);
      const { value } = judge(sheet, 'main-clearance', 'main.1');
      return value ? standardUncertainty(value) : Number.NaN;
    };
    expect(u('mic-50-75')).toBeLessThan(u('bore-gauge') / 1.5);
  });

  it('finds its operand at the place with the same number', () => {
    const bore = readAll(
      'bore.2',
      'bore-diameter',
      Array.from({ length: 6 }, () => '85.060'),
      'bore-gauge',
    );
    const sheet = sheetOf([...bore, reading('piston.2 piston-diameter', typed('84.900'))]);
    expect(judge(sheet, 'piston-clearance', 'bore.2').value?.value).toBeCloseTo(0.16, 12);
    expect(judge(sheet, 'piston-clearance', 'bore.1').verdict).toBe('not yet known');
  });

  it('works out sums, factors and means, and finds an operand at the only place of its kind', () => {
    const derived = {
      kind: 'sum',
      of: [
        { kind: 'factor', factor: 0.5, of: { kind: 'mean', of: 'main-journal-diameter' } },
        { kind: 'reading', of: 'end-float' },
        { kind: 'reading', of: 'main-journal-taper' },
      ],
    } as const;
    const made = {
      name: 'made-up',
      title: 'made-up',
      at: 'main',
      planes: [''],
      axes: [''],
      derived,
      wears: 'larger',
    } as const;
    const engine = {
      ...smallEngine,
      characteristics: new Map([...smallEngine.characteristics, ['made-up', made]]),
    };
    const readings = [
      ...journal('54.980', '54.970', '54.980', '54.970'),
      reading('thrust.1 end-float', typed('0.200'), 'bore-gauge'),
    ];
    // 54.975 / 2 + 0.200 + 0
    expect(judge(sheetOf(readings, { engine }), 'made-up', 'main.1').value?.value).toBeCloseTo(27.6875, 12);
    expect(judge(sheetOf(readings), 'made-up', 'main.1').verdict).toBe('not yet known');
  });

  it('names an operand that the engine does not have as never known', () => {
    const derived = { kind: 'least', of: 'no-such' } as const;
    const made = {
      name: 'made-up',
      title: 'made-up',
      at: 'main',
      planes: [''],
      axes: [''],
      derived,
      wears: 'larger',
    } as const;
    const lost = { ...made, name: 'lost', derived: { kind: 'least', of: 'bore-diameter' } } as const;
    const engine = {
      ...smallEngine,
      characteristics: new Map([...smallEngine.characteristics, ['made-up', made], ['lost', lost]]),
    };
    expect(judge(sheetOf([], { engine }), 'made-up', 'main.1')).toMatchObject({
      verdict: 'not yet known',
      missing: [],
    });
    // There is no bore 4 for main bearing 4.
    expect(judge(sheetOf([], { engine }), 'lost', 'main.4')).toMatchObject({
      verdict: 'not yet known',
      missing: [],
    });
  });
});

describe('verdicts of a sheet', () => {
  it('stand in the order of the engine type, each place once', () => {
    const all = judgeAll(sheetOf([]));
    expect(all).toHaveLength(4 * 5 + 3 + 3 + 3 + 1 + 3 + 3);
    expect(all.slice(0, 5).map(({ place, characteristic }) => `${place} ${characteristic}`)).toEqual([
      'main.1 main-journal-diameter',
      'main.2 main-journal-diameter',
      'main.3 main-journal-diameter',
      'main.4 main-journal-diameter',
      'main.1 main-journal-ovality',
    ]);
  });

  it('are the same object on the same sheet, and fresh on a grown one', () => {
    const sheet = sheetOf(journal('54.980'));
    expect(judge(sheet, 'main-clearance', 'main.1')).toBe(judge(sheet, 'main-clearance', 'main.1'));
    const grown = sheetOf(journal('54.850'));
    expect(judge(grown, 'main-journal-diameter', 'main.1').verdict).toBe('outside');
  });

  it('follow a change of the register', () => {
    const readings = journal('54.940', '54.940', '54.940', '54.940');
    expect(judge(sheetOf(readings), 'main-journal-diameter', 'main.1').verdict).toBe('within');
    const [first] = [...sheetOf([]).instruments.values()];
    if (!first) throw new Error('no instrument');
    const off = { ...first, zero: typed('0.020') };
    const sheet = sheetOf(readings, { instruments: new Map([[off.name, off]]) });
    expect(judge(sheet, 'main-journal-diameter', 'main.1').verdict).toBe('outside');
  });
});
