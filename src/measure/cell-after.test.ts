/** @module Checks of where hands go after a reading. */
import { describe, expect, it } from 'vitest';
import { smallEngine } from '../../test/engines/small-engine.ts';
import { type Cell, cellKey, type Reading } from './reading.ts';
import { cellAfter, entryOrder } from './scheme.ts';
import type { Sheet } from './sheet.ts';

const order = entryOrder(smallEngine);
const cellAt = (index: number): Cell => {
  const cell = order[index];
  if (!cell) throw new Error(`there is no cell ${index}`);
  return cell;
};

const reading = (cell: Cell, id: string): Reading => ({
  id,
  cell,
  typed: { text: '1', unit: 'mm' },
  instrument: 'any',
});

/** A sheet on which the cells of these numbers are read, as often as they are named. */
const readAt = (...indexes: readonly number[]): Sheet => {
  const readings = new Map<string, readonly Reading[]>();
  for (const [at, index] of indexes.entries()) {
    const key = cellKey(cellAt(index));
    readings.set(key, [...(readings.get(key) ?? []), reading(cellAt(index), String(at))]);
  }
  return {
    engine: smallEngine,
    instruments: new Map(),
    readings,
    sizesFound: new Map(),
    conformance: 0.95,
  };
};

describe('the cell after', () => {
  it('is the next one unread', () => {
    expect(cellAfter(order, cellAt(0), readAt(0))).toEqual(cellAt(1));
    expect(cellAfter(order, cellAt(0), readAt(0, 1, 2))).toEqual(cellAt(3));
  });

  it('is one left out before, once all behind it are read', () => {
    const all = order.map((_, index) => index).filter((index) => index !== 4);
    expect(cellAfter(order, cellAt(order.length - 1), readAt(...all))).toEqual(cellAt(4));
  });

  it('is the neighbour, read or not, when a cell was read again', () => {
    expect(cellAfter(order, cellAt(0), readAt(0, 1, 0))).toEqual(cellAt(1));
  });

  it('is none past the last when nothing is left', () => {
    const all = order.map((_, index) => index);
    expect(cellAfter(order, cellAt(order.length - 1), readAt(...all))).toBeUndefined();
  });
});
