/** @module What is asked of a plan in words, letting go of it, and what differs from the booking. */
import { describe, expect, it } from 'vitest';
import { wornQuillfeather } from '../../test/engines/worn-quillfeather.ts';
import { optionsOf } from '../plan/options.ts';
import { planEngine } from '../plan/plan.ts';
import type { Demands } from '../plan/plan-model.ts';
import { hours } from '../quantity/brand.ts';
import { highsSolver } from '../solver/highs.ts';
import { askedOfPlan, otherwiseThanBooked } from './asked-of-plan.ts';

const { engine } = wornQuillfeather;
const questionOf = (demands: Demands) => ({
  sheet: wornQuillfeather,
  findings: [],
  hoursRun: hours(6000),
  demands,
});
const { options } = optionsOf(questionOf({}));
const grinding = options.find(({ slot, does }) => slot === 'mains' && does === 'machine');
const supplier = grinding?.supplier ?? '';
const id = grinding?.id ?? '';

const everything: Demands = {
  hours: 4_000,
  days: 6,
  cents: 100_000,
  withoutSuppliers: [supplier],
  fixed: { mains: id },
  prices: { [id]: 12_345, 'block-on-the-mill': 7_000 },
};

describe('what is asked of a plan', () => {
  it('is told each in words', () => {
    const says = askedOfPlan(engine, options, everything).map((one) => one.says);
    expect(says.slice(0, 4)).toEqual([
      '4000 h wanted',
      'ready in 6 days',
      'cost at most 1000.00',
      `nothing from ${supplier}`,
    ]);
    expect(says[4]).toMatch(/^main journals.*: machine to /);
    expect(says[5]).toContain(' at 123.45 instead of ');
    expect(says[6]).toBe('block-on-the-mill at 70.00 instead of 80.00');
  });

  it('is let go of one at a time, until nothing is asked', () => {
    let left = everything;
    for (let count = 7; count > 0; count -= 1) {
      const asked = askedOfPlan(engine, options, left);
      expect(asked.length).toBe(count);
      left = asked[count % asked.length]?.lettingGo ?? left;
    }
    expect(left).toEqual({});
  });

  it('is named by a conflict in words that lead back to it', async () => {
    const demands: Demands = { withoutSuppliers: [supplier], fixed: { mains: id } };
    const conflict = await planEngine(questionOf(demands), await highsSolver());
    expect(conflict.kind).toBe('conflict');
    if (conflict.kind !== 'conflict') return;
    const asked = askedOfPlan(engine, options, demands);
    expect(conflict.demands.toSorted()).toEqual(asked.map(({ stands }) => stands).toSorted());
  });

  it('is held against the booking', () => {
    expect(otherwiseThanBooked(engine, options, { hours: 4_000 }, { hours: 4_000 })).toEqual([]);
    expect(otherwiseThanBooked(engine, options, { hours: 4_000 }, { hours: 4_400, days: 6 })).toEqual([
      '4400 h wanted',
      'ready in 6 days',
      'no longer asked: 4000 h wanted',
    ]);
  });
});
