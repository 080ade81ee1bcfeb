/** @module The record tells which part went home where, what strayed, and who decided. */
import { beforeAll, describe, expect, it } from 'vitest';
import { awaitingDecision } from '../../demo/jobs/awaiting-decision.ts';
import { Bench } from '../../test/job/bench.ts';
import { recordOf } from './record.ts';

describe('the record of parts that find home', () => {
  let bench: Bench;
  beforeAll(async () => {
    bench = new Bench();
    bench.job = (await awaitingDecision()).job();
  });
  const section = () => recordOf(bench.open, bench.events).sections.find(({ name }) => name === 'homes');

  it('is left out where nothing was confirmed', () => {
    expect(section()).toBeUndefined();
  });

  it('holds every confirmation, every part that strayed, and the decision with its reason', () => {
    bench.done({ kind: 'home part', part: 'piston.2', place: 'piston.2' });
    bench.done({
      kind: 'note part strayed',
      parts: ['piston.1', 'piston.3'],
      how: 'swapped',
      says: 'bags open',
    });
    bench.done({
      kind: 'decide home',
      part: 'piston.1',
      place: 'piston.1',
      decidedBy: 'P. Sallow',
      why: 'its number is stamped under the crown',
    });
    const now = section();
    expect(now?.table?.rows.map(({ cells }) => cells.slice(0, 3))).toEqual([
      ['piston 2', 'confirmed at piston 2', ''],
      ['piston 1, piston 3', 'swapped', 'bags open'],
      ['piston 1', 'P. Sallow decided: goes to piston 1', 'its number is stamped under the crown'],
    ]);
    expect(now?.says).toContain('piston 3 (cylinder 3): swapped: bags open.');
    expect(now?.says.join(' ')).not.toContain('piston 2');
  });
});
