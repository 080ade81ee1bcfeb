/** @module An operation waits for the new parts that go in with it, where they are on order. */
import { describe, expect, it } from 'vitest';
import type { Bench } from '../../../test/job/bench.ts';
import { lines, orderFrom, toOrder } from '../../../test/job/ordering.ts';
import { renewedBy } from '../order/renewed-by.ts';
import { lackingParts } from './parts.ts';
import { lackingRenewed } from './renewed.ts';

const operationOf = (bench: Bench, name: string) => {
  const operation = bench.open.sheet.engine.operations.get(name);
  if (operation === undefined) throw new Error(`no operation ${name}`);
  return operation;
};

const saysOf = (bench: Bench, name: string) =>
  lackingRenewed(bench.open, operationOf(bench, name)).map(({ says }) => says);

const renewed = (bench: Bench, name: string) =>
  renewedBy(bench.open, operationOf(bench, name)).map(({ item, count }) => `${count} ${item.title}`);

describe('an operation that renews parts', () => {
  it('says which, and how many this job needs: what the strip spoilt, and what the plan brings', () => {
    const bench = toOrder();
    expect(renewed(bench, 'lay-crankshaft')).toEqual(['4 lock tabs of the main caps']);
    expect(renewed(bench, 'fit-pumps')).toEqual(['1 pump gaskets']);
    expect(renewed(bench, 'first-start')).toEqual([]);
  });

  it('waits while they are ordered and not here, and no longer', () => {
    const bench = toOrder();
    expect(saysOf(bench, 'lay-crankshaft')).toEqual([]);
    bench.done(orderFrom(bench, 'Ashlar Parts', 'O-2'));
    expect(saysOf(bench, 'lay-crankshaft')).toEqual([
      'lock tabs of the main caps, order O-2, is not taken in: awaited',
    ]);
    expect(bench.refused({ kind: 'do operation', operation: 'lay-crankshaft', note: '' })).toContain(
      'lock tabs of the main caps, order O-2, is not taken in',
    );
    const came = (count: number) =>
      ({ kind: 'receive delivery', order: 'O-2', lines: [{ line: lines.tabs, count }], note: '' }) as const;
    bench.done(came(3));
    expect(saysOf(bench, 'lay-crankshaft')).toEqual([
      'lock tabs of the main caps, order O-2, is not taken in: 1 of 4 still to come',
    ]);
    bench.done(came(1));
    expect(saysOf(bench, 'lay-crankshaft')).toEqual([]);
  });

  it('alone waits for them', () => {
    const bench = toOrder();
    bench.done(orderFrom(bench, 'Ashlar Parts', 'O-2'));
    for (const name of ['fit-pumps', 'first-start']) {
      expect(saysOf(bench, name)).toEqual([]);
      expect(lackingParts(bench.open, operationOf(bench, name))).toEqual([]);
    }
  });
});
