/** @module The board's line of a job: its next act by name, what it waits for and since when that is overdue, its hours. */
import { describe, expect, it } from 'vitest';
import { fitter } from '../../demo/people.ts';
import { agreed, Bench, bookedIn, booking, measured, plan } from '../../test/job/bench.ts';
import { bookedToReach, strip } from '../../test/job/partial.ts';
import { boardOf } from './board.ts';
import { isOverdue, spentWords, waitingWords } from './board-line.ts';
import { lineOf } from './job-line.ts';
import { orderListOf, placeOrder } from './order/order-list.ts';

const ordered = (due: string): Bench => {
  const bench = agreed();
  for (const [at, list] of orderListOf(bench.open).entries()) {
    const order = placeOrder(list, { order: `O-${at + 1}`, due, note: '' });
    if (order.lines.length > 0) bench.done(order);
  }
  return bench;
};

describe('what a job does next', () => {
  it('is the operation that is open, by name', () => {
    const bench = new Bench();
    bench.done(booking);
    expect(boardOf(bench.open).next).toEqual({
      says: 'Lift the crankshaft',
      phase: 'Strip',
      operation: 'lift-crankshaft',
    });
  });

  it('is the cell to read, the plan to choose, the word to ask for', () => {
    const bench = bookedIn();
    bench.read('main.1', '49.975', 'vertical');
    expect(boardOf(bench.open).next).toEqual({
      says: 'read main bearing 1, main journal diameter, horizontal',
      phase: 'Measure',
    });
    expect(boardOf(measured().open).next).toMatchObject({ says: 'choose a plan', phase: 'Decide' });
  });

  it('stands beside who is at what now, and how far the job goes', () => {
    const told = bookedToReach(['pump.2']);
    strip(told);
    told.tell(fitter, 1, { kind: 'begin work', operation: 'find-top-dead-centre' });
    expect(boardOf(told.job()).running).toMatchObject([{ by: fitter, operation: 'find-top-dead-centre' }]);
    expect(boardOf(told.job()).scope).toBe('fuel pump 2');
  });

  it('is nothing where no engine is booked in', () => {
    expect(lineOf({ kind: 'blank', head: new Bench().job.head }).board.next).toBeUndefined();
  });
});

describe('what a job waits for', () => {
  it('is the owner, by name, from the plan to the word', () => {
    const bench = measured();
    expect(boardOf(bench.open).waitsFor).toEqual([]);
    bench.done(plan);
    expect(boardOf(bench.open).waitsFor).toEqual([
      { for: 'the owner', says: 'the word of Heronsway Allotments on the plan' },
    ]);
    bench.done({ kind: 'note agreement', name: 'W. Heron', how: 'by telephone' });
    expect(boardOf(bench.open).waitsFor).toEqual([]);
  });

  it('is each order until it has come, overdue from the day after it was due', () => {
    const bench = ordered('2026-03-09');
    const [waiting] = boardOf(bench.open).waitsFor;
    if (waiting === undefined) throw new Error('nothing is waited for');
    expect(waitingWords(waiting, '2026-03-09T23:59:00Z')).toBe(
      'parts: order O-1, Ashlar Parts, due 2026-03-09',
    );
    expect(isOverdue(waiting, '2026-03-10T00:00:00Z')).toBe(true);
    const lines = bench.open.orders.get('O-1')?.lines ?? [];
    bench.done({
      kind: 'receive delivery',
      order: 'O-1',
      lines: lines.map(({ line, count }) => ({ line, count })),
      note: '',
    });
    expect(boardOf(bench.open).waitsFor).toEqual([]);
  });
});

describe('the hours done', () => {
  it('are not told as none where nobody noted any', () => {
    expect(spentWords({ spent: 0, running: [] })).toBe('no time noted');
    expect(spentWords({ spent: 45, running: [] })).toBe('45 min done');
    const at = { by: fitter, operation: 'lift-head', from: '2026-03-02T08:00:00Z' };
    expect(spentWords({ spent: 0, running: [at] })).toBe('0 min done');
  });
});

describe('a second person', () => {
  it('is waited for from the turn of the operation until somebody has looked', () => {
    const told = bookedToReach(['main']);
    const waits = () => boardOf(told.job()).waitsFor.filter((one) => one.for === 'a second person');
    const { operations } = told.job().sheet.engine;
    const [caps] = [...operations.values()].filter(({ asks }) => asks.some((ask) => ask.secondPerson));
    if (caps === undefined) throw new Error('the engine asks no second person');
    expect(waits()).toEqual([]);
    const done = new Map(told.job().done);
    for (const name of operations.keys())
      if (name !== caps.name) done.set(name, { by: fitter, at: '2026-03-02T08:00:00Z', note: '' });
    const job = { ...told.job(), done };
    expect(boardOf(job).waitsFor.filter((one) => one.for === 'a second person')[0]?.says).toContain(
      caps.title,
    );
  });
});
