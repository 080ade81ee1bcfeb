/** @module What the verdicts of a sheet must be. */
import { describe, expect, it } from 'vitest';
import {
  cell,
  characteristics,
  readAll,
  reading,
  sheetOf,
  smallEngine,
  typed,
} from '../../test/engines/small-engine.ts';
import { judge, judgeAll, judgeCell } from './judge.ts';

const journal = (...figures: string[]) => readAll('main.1', 'main-journal-diameter', figures);

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
    const judged = judge(sheetOf(journal('54.980')), 'main-journal-diameter', 'main.1');
    expect(judged.verdict).toBe('not yet known');
    expect(judged.missing).toHaveLength(3);
    expect(judged).not.toHaveProperty('asNew');
    expect(judged).not.toHaveProperty('conformance');
  });

  it('does not wait where one cell is outside already', () => {
    const judged = judge(sheetOf(journal('54.850')), 'main-journal-diameter', 'main.1');
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
