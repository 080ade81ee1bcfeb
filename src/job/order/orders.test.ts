/** @module From the agreed plan to orders, and from what comes to what is taken in, sent back or planned anew. */
import { describe, expect, it } from 'vitest';
import {
  groundBack,
  lineAt,
  lines,
  listed,
  noCrack,
  orderFrom,
  readJournals,
  toOrder,
} from '../../../test/job/ordering.ts';
import { fittedSize } from '../../measure/fitted-size.ts';
import { optionsOf } from '../../plan/options.ts';
import { standingOf } from '../holds.ts';
import { phaseOf } from '../phase.ts';
import { planQuestionOf } from '../planning.ts';
import { oneUseNeeded } from './one-use.ts';
import { orderListOf } from './order-list.ts';

describe('the order list', () => {
  // source: prices of the engine type added by hand: grinding 180.00; shells 40.00, carriage 6.00, four tabs at 0.75;
  // one pump 95.00 and one gasket at 1.20
  it('holds what the plan buys and what the strip spoils, supplier by supplier', () => {
    const lists = orderListOf(toOrder().open);
    expect(lists.map(({ supplier, cents, days }) => [supplier, cents, days])).toEqual([
      ['Ashlar Grinding', 18_000, 4],
      ['Ashlar Parts', 4000 + 600 + 300, 1],
      ['Ashlar Fuel', 9500 + 120, 2],
    ]);
  });

  it('says of each line where it goes, how many, and why', () => {
    const bench = toOrder();
    expect(listed(bench, lines.mains)).toMatchObject({
      says: 'main journals: machine to 0.25',
      places: ['main.1', 'main.2'],
      count: 1,
      why: ['cleans up'],
    });
    expect(listed(bench, lines.tabs)).toMatchObject({
      count: 4,
      cents: 300,
      why: ['spoilt by “Lift the crankshaft”'],
    });
    expect(listed(bench, lines.gaskets)).toMatchObject({
      places: ['pump.2'],
      count: 1,
      why: ['goes with fuel pumps'],
    });
  });

  it('is empty before a plan is chosen', () => {
    const bench = toOrder();
    const { plan: _, ...without } = bench.open;
    expect(orderListOf(without)).toEqual([]);
  });

  it('takes a strip of which nothing is signed for done, and one that is signed at its word', () => {
    const { open } = toOrder();
    const spoilt = (done: readonly string[]) =>
      oneUseNeeded(
        {
          ...open,
          done: new Map(done.map((name) => [name, { note: '', by: '', at: '' }])),
        },
        [],
      ).map(({ item }) => item.name);
    expect(spoilt([])).toEqual(['main-lock-tabs']);
    expect(spoilt(['lift-crankshaft'])).toEqual(['main-lock-tabs']);
    expect(spoilt(['lay-crankshaft'])).toEqual(['main-lock-tabs']);
  });

  it('loses what is ordered, and pays what is paid once but once', () => {
    const bench = toOrder();
    const order = orderFrom(bench, 'Ashlar Parts', 'O-2');
    bench.done({ ...order, lines: order.lines.filter(({ line }) => line === lines.shells) });
    const list = orderListOf(bench.open).find(({ supplier }) => supplier === 'Ashlar Parts');
    expect(list).toMatchObject({ cents: 300, charges: [] });
    expect(listed(bench, lines.shells)).toMatchObject({ ordered: 1, left: 0 });
  });
});

describe('an order', () => {
  it('waits for the owner', () => {
    const bench = toOrder();
    const order = orderFrom(bench, 'Ashlar Grinding', 'O-1');
    const { plan } = bench.open;
    if (plan === undefined) throw new Error('no plan');
    const { by: _, at: __, ordersBefore: ___, ...told } = plan;
    bench.done({ kind: 'choose plan', ...told });
    expect(bench.refused(order)).toContain('the owner has not agreed');
  });

  it('is for what is on the list, as many as are left, at its price', () => {
    const bench = toOrder();
    const order = orderFrom(bench, 'Ashlar Parts', 'O-2');
    const [shells] = order.lines;
    if (shells === undefined) throw new Error('no shells');
    const refused = (line: Partial<typeof shells>) =>
      bench.refused({ ...order, lines: [{ ...shells, ...line }] });
    expect(refused({ count: 2 })).toContain('2 are ordered and 1 are needed');
    expect(refused({ count: 0 })).toContain('none of it is ordered');
    expect(refused({ cents: 1 })).toContain('another price');
    expect(refused({ line: 'x' })).toContain('is not on the list of Ashlar Parts');
    expect(refused({ places: ['pump.1'] })).toContain('not needed at all of these places');
    expect(bench.refused({ ...order, lines: [shells, shells] })).toContain('stands twice');
    expect(bench.refused({ ...order, lines: [] })).toContain('nothing is ordered');
    expect(bench.refused({ ...order, supplier: 'Ashlar' })).toContain('nothing is needed from “Ashlar”');
    expect(bench.refused({ ...order, order: ' ' })).toContain('give the order a number');
    expect(bench.refused({ ...order, charges: [{ says: 'carriage', cents: 1 }] })).toContain(
      'not to be paid',
    );
    bench.done(order);
    expect(bench.refused({ ...order, order: 'O-2' })).toContain('was placed already');
    expect(bench.refused({ ...order, order: 'O-3', charges: [] })).toContain('it was ordered already');
  });

  it('is what comes next once the owner has agreed, and then that it comes', () => {
    const bench = toOrder();
    expect(phaseOf(bench.job)).toMatchObject({
      name: 'Decide',
      next: 'place the order with Ashlar Grinding',
    });
    bench.done(orderFrom(bench, 'Ashlar Grinding', 'O-1'));
    bench.done(orderFrom(bench, 'Ashlar Parts', 'O-2'));
    bench.done(orderFrom(bench, 'Ashlar Fuel', 'O-3'));
    expect(phaseOf(bench.job)).toMatchObject({
      name: 'Decide',
      next: 'receive and check order O-1 from Ashlar Grinding',
    });
  });
});

describe('a delivery', () => {
  it('is counted line by line, no more than was ordered', () => {
    const bench = toOrder();
    bench.done(orderFrom(bench, 'Ashlar Parts', 'O-2'));
    const came = (count: number, line: string = lines.tabs, order = 'O-2') =>
      ({ kind: 'receive delivery', order, lines: [{ line, count }], note: '' }) as const;
    expect(bench.refused(came(5))).toContain('5 came and 4 were awaited');
    expect(bench.refused(came(0))).toContain('none of it came');
    expect(bench.refused(came(1, 'x'))).toContain('has no line “x”');
    expect(bench.refused(came(1, lines.tabs, 'O-9'))).toContain('there is no order O-9');
    expect(bench.refused({ ...came(1), lines: [] })).toContain('nothing was received');
    bench.done(came(3));
    expect(lineAt(bench, 'O-2', lines.tabs)).toMatchObject({
      here: 3,
      left: 1,
      standing: { kind: 'to check', lacking: ['1 of 4 still to come'] },
    });
    bench.done(came(1));
    expect(lineAt(bench, 'O-2', lines.tabs).standing).toEqual({ kind: 'taken in' });
    expect(bench.refused(came(1))).toContain('all of it is here already');
  });

  it('makes another part of it: of the size ordered, and not yet measured', () => {
    const before = toOrder().open;
    const { sheet, readBefore } = groundBack().open;
    expect(fittedSize(sheet, 'mains', 'main.1')).toBe('0.25');
    expect([...sheet.readings.keys()]).toEqual([]);
    expect([...readBefore.keys()]).toEqual([...before.sheet.readings.keys()]);
  });
});

describe('the check on arrival', () => {
  // source: the engine type's finished size 49.725 to 49.740 mm; its wear limit of 49.690 mm is no matter here
  it('takes in what measures as ordered, with its certificate', () => {
    const bench = groundBack();
    expect(lineAt(bench, 'O-1', lines.mains).standing).toMatchObject({
      kind: 'to check',
      lacking: [
        'main journal diameter at main bearing 1 is not measured, and 3 more',
        'no certificate of a crack test by magnetic particles is noted',
      ],
    });
    readJournals(bench, ['49.732', '49.733', '49.732', '49.732']);
    expect(bench.refused({ ...noCrack, certificate: '' })).toContain('write its number');
    bench.done(noCrack);
    expect(lineAt(bench, 'O-1', lines.mains).standing).toEqual({ kind: 'taken in' });
  });

  it('fails what is within its wear limit and not as ordered, says why, and the plan is asked again', () => {
    const bench = groundBack();
    readJournals(bench, ['49.732', '49.733', '49.712', '49.713']);
    bench.done(noCrack);
    const { standing } = lineAt(bench, 'O-1', lines.mains);
    expect(standing).toMatchObject({ kind: 'failed', cracked: false });
    expect(standing.kind === 'failed' ? standing.says[0] : '').toMatch(
      /^main journal diameter at main bearing 2 is 49.712 mm ± 0.00\d mm, ordered 49.725 mm to 49.740 mm$/,
    );
    const { options, barred } = optionsOf(planQuestionOf(bench.open));
    expect(options.filter(({ slot }) => slot === 'mains').map(({ size }) => size)).toEqual(['0.50']);
    expect(barred.map(({ says }) => says).join('\n')).toContain(
      'put back: found at main.2: not as ordered from Ashlar Grinding',
    );
  });

  it('never takes in a cracked part, and the plan neither puts it back nor machines it', () => {
    const bench = groundBack();
    readJournals(bench, ['49.732', '49.733', '49.732', '49.732']);
    bench.done({ ...noCrack, crackTest: { by: 'magnetic particles', showed: 'a crack' } });
    expect(lineAt(bench, 'O-1', lines.mains).standing).toMatchObject({ kind: 'failed', cracked: true });
    expect(
      bench.refused({ kind: 'accept line', order: 'O-1', line: lines.mains, why: 'only a hair' }),
    ).toContain('a cracked part is never taken in');
    const { options } = optionsOf(planQuestionOf(bench.open));
    expect(options.filter(({ slot }) => slot === 'mains')).toEqual([]);
  });

  it('is settled by a person with a reason where a size is too near its limit to say', () => {
    const bench = groundBack();
    readJournals(bench, ['49.732', '49.733', '49.726', '49.732']);
    bench.done(noCrack);
    const accept = {
      kind: 'accept line',
      order: 'O-1',
      line: lines.mains,
      why: 'clearance reckoned',
    } as const;
    expect(lineAt(bench, 'O-1', lines.mains).standing).toMatchObject({
      kind: 'to check',
      lacking: ['main journal diameter at main bearing 2 is too near its limit for how it was measured'],
    });
    expect(bench.refused({ ...accept, why: '' })).toContain('why it is taken as it is');
    bench.done(accept);
    expect(lineAt(bench, 'O-1', lines.mains).standing).toEqual({
      kind: 'taken in',
      accepted: 'clearance reckoned',
    });
    expect(bench.refused(accept)).toContain('taken in already');
  });

  it('ends with what goes back, which is due again and is measured anew', () => {
    const bench = groundBack();
    readJournals(bench, ['49.732', '49.733', '49.712', '49.713']);
    const back = {
      kind: 'send back',
      order: 'O-1',
      line: lines.mains,
      count: 1,
      places: ['main.1', 'main.2'],
      why: 'main 2 ground under its size',
    } as const;
    expect(bench.refused({ ...back, count: 2 })).toContain('2 go back and 1 are here');
    expect(bench.refused({ ...back, places: ['pump.1'] })).toContain('not ordered for “pump.1”');
    expect(bench.refused({ ...back, why: '' })).toContain('why it goes back');
    bench.done(back);
    expect(bench.refused(back)).toContain('none of it is here');
    expect(lineAt(bench, 'O-1', lines.mains)).toMatchObject({ here: 0, standing: { kind: 'awaited' } });
    expect([...bench.open.sheet.readings.keys()]).toEqual([]);
    bench.done({
      kind: 'receive delivery',
      order: 'O-1',
      lines: [{ line: lines.mains, count: 1 }],
      note: '',
    });
    expect(lineAt(bench, 'O-1', lines.mains).standing).toMatchObject({ kind: 'to check' });
  });

  it('holds the build back until it is settled', () => {
    const bench = groundBack();
    const lay = bench.open.sheet.engine.operations.get('lay-crankshaft');
    if (lay === undefined) throw new Error('no such operation');
    readJournals(bench, ['49.732', '49.733', '49.712', '49.713']);
    expect(standingOf(bench.open, lay)).toMatchObject({
      kind: 'held',
      lacking: [
        {
          says: expect.stringMatching(
            /^main journals: machine to 0.25, order O-1, is not taken in: not as ordered: main journal/,
          ),
        },
      ],
    });
    bench.done({ kind: 'accept line', order: 'O-1', line: lines.mains, why: 'shells chosen to suit' });
    expect(standingOf(bench.open, lay)).toEqual({ kind: 'open' });
  });
});
