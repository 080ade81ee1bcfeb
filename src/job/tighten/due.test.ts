/** @module Tightening again: remembered from the first tightening on, due once the engine has run, and told to the owner. */
import { describe, expect, it } from 'vitest';
import { pumpRead } from '../../../test/job/asking.ts';
import type { Bench } from '../../../test/job/bench.ts';
import { lay, pulled, readyToTighten, tightenAll } from '../../../test/job/tightening.ts';
import { dueWords, tightenDue } from './due.ts';

const standings = (bench: Bench) =>
  tightenDue(bench.open).map((due) => (due.when === 'within the job' ? due.standing : `${due.hours} h`));

const run = (): Bench => {
  const bench = readyToTighten();
  tightenAll(bench, lay);
  bench.done({ kind: 'do operation', operation: lay, note: '' });
  pumpRead(bench);
  bench.done({ kind: 'do operation', operation: 'fit-pumps', note: '' });
  bench.done({ kind: 'do operation', operation: 'first-start', note: '' });
  return bench;
};

describe('what is tightened again', () => {
  it('is nothing as long as nothing was tightened', () => {
    expect(tightenDue(readyToTighten().open)).toEqual([]);
  });

  it('waits from the first stage on, is due once the engine has run, and done with its own operation', () => {
    const bench = readyToTighten();
    bench.done(pulled());
    expect(standings(bench)).toEqual(['waits', '50 h']);
    const ran = run();
    expect(standings(ran)).toEqual(['due', '50 h']);
    tightenAll(ran, 'look-again');
    ran.done({ kind: 'do operation', operation: 'look-again', note: '' });
    expect(standings(ran)).toEqual(['done', '50 h']);
  });

  it('is due anew once its joint was opened', () => {
    const bench = run();
    tightenAll(bench, 'look-again');
    bench.done({ kind: 'do operation', operation: 'look-again', note: '' });
    bench.done({ kind: 'reopen operation', operation: lay, why: 'a cap was turned' });
    expect(standings(bench)).toEqual([]);
    tightenAll(bench, lay);
    bench.done({ kind: 'do operation', operation: lay, note: '' });
    pumpRead(bench);
    bench.done({ kind: 'do operation', operation: 'fit-pumps', note: '' });
    expect(standings(bench)).toEqual(['waits', '50 h']);
    bench.done({ kind: 'do operation', operation: 'first-start', note: '' });
    expect(standings(bench)).toEqual(['due', '50 h']);
    expect(bench.refused({ kind: 'hand over', to: 'W. Heron', note: '' })).toMatch(
      /“Tighten the caps again” is not done/,
    );
  });

  it('is told in words: when, cold or not, and how', () => {
    const bench = run();
    expect(tightenDue(bench.open).map((due) => dueWords(bench.open, due))).toEqual([
      'cap bolts: tighten again after “First start”, by “Tighten the caps again”, once the engine is cold. one bolt at a time',
      'cap bolts: tighten again after 50 h of running. with the valves',
    ]);
  });

  it('holds the engine in the shop until it is done', () => {
    const bench = run();
    expect(bench.refused({ kind: 'hand over', to: 'W. Heron', note: '' })).toMatch(
      /“Tighten the caps again” is not done/,
    );
  });
});
