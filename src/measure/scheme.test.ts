/** @module What the measuring scheme of an engine comes to. */
import { describe, expect, it } from 'vitest';
import { smallEngine } from '../../test/engines/small-engine.ts';
import { cellsOf, entryOrder } from './scheme.ts';

const planes = ['front vertical', 'front horizontal', 'rear vertical', 'rear horizontal'];

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
