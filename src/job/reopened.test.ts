/** @module Overruling what is lacking, and opening again what was signed: what falls with it and what stands. */
import { describe, expect, it } from 'vitest';
import { askedBench, laid, pumpRead, stripped } from '../../test/job/asking.ts';
import { replay } from './evolve.ts';
import { standingOf } from './holds.ts';

const sign = (operation: string) => ({ kind: 'do operation', operation, note: '' }) as const;
const lackingAt = (bench: ReturnType<typeof laid>, operation: string) => {
  const known = bench.open.sheet.engine.operations.get(operation);
  const standing = known && standingOf(bench.open, known);
  return standing?.kind === 'held' ? standing.lacking : [];
};

describe('overruling', () => {
  const overruled = (bench: ReturnType<typeof laid>, operation: string, more = {}) => ({
    ...sign(operation),
    overruled: {
      by: 'H. Foreman',
      why: 'pump 2 comes on Friday',
      lacking: lackingAt(bench, operation).map(({ says }) => says),
      ...more,
    },
  });

  it('says what breaks or is covered out of order, and lets a named person go on with a reason', () => {
    const bench = stripped();
    pumpRead(bench);
    expect(bench.refused(sign('fit-pumps'))).toContain('the cam has nothing to turn it');
    bench.done(overruled(bench, 'fit-pumps'));
    expect(bench.open.done.get('fit-pumps')?.overruled).toMatchObject({ by: 'H. Foreman' });
    expect(replay(bench.events)).toEqual(bench.job);
  });

  it('names every proof that would be covered where the hold point for it was passed over', () => {
    const bench = askedBench();
    const [taken] = bench.open.sheet.readings.values();
    bench.done({ kind: 'strike out reading', reading: taken?.[0]?.id ?? '', why: 'dirt' });
    expect(lackingAt(bench, 'lay-crankshaft').map(({ says }) => says)).toContainEqual(
      expect.stringContaining('main journal diameter at main bearing 1 is not yet known'),
    );
  });

  it('is refused without a name, a reason, or all that is lacking; and where nothing is lacking', () => {
    const bench = stripped();
    pumpRead(bench);
    expect(bench.refused(overruled(bench, 'fit-pumps', { by: ' ' }))).toContain(
      'the person who answers for it',
    );
    expect(bench.refused(overruled(bench, 'fit-pumps', { why: '' }))).toContain('the reason');
    expect(bench.refused(overruled(bench, 'fit-pumps', { lacking: ['a cup of tea'] }))).toContain(
      'this is lacking too',
    );
    const whole = laid();
    pumpRead(whole);
    expect(whole.refused(overruled(whole, 'fit-pumps', { lacking: ['x'] }))).toContain('nothing is lacking');
  });

  it('is never granted at a gate: neither what it asks nor what comes before it', () => {
    const bench = stripped();
    expect(bench.refused(overruled(bench, 'first-start'))).toContain('nobody may go on without this');
    expect(lackingAt(bench, 'first-start').map(({ overrule }) => overrule)).toEqual(['never', 'never']);
  });
});

describe('opening again', () => {
  const reopen = { kind: 'reopen operation', operation: 'lay-crankshaft', why: 'cap off again' } as const;

  it('takes down what was signed, answered and read on it, and keeps it in sight', () => {
    const bench = laid();
    pumpRead(bench);
    bench.done(sign('fit-pumps'));
    bench.done(reopen);
    const { done, answers, reopened, sheet, readBefore } = bench.open;
    expect([...done.keys()]).toEqual(['lift-crankshaft']);
    expect([...(reopened[0]?.undone.keys() ?? [])]).toEqual(['lay-crankshaft', 'fit-pumps']);
    // Asked at the strip and answered there: that stands.
    expect([...answers.keys()].every((key) => key.startsWith('lift-crankshaft|'))).toBe(true);
    // The depth was read on the crankshaft that is out again; the journals were read before it was laid.
    expect([...sheet.readings.keys()].filter((key) => key.startsWith('pump'))).toEqual([]);
    expect([...readBefore.keys()].length).toBe(2);
    expect([...sheet.readings.keys()].filter((key) => key.startsWith('main')).length).toBe(4);
    expect(bench.refused(sign('lay-crankshaft'))).toContain('oilway');
    expect(replay(bench.events)).toEqual(bench.job);
  });

  it('wants a reason, and something that was signed', () => {
    const bench = laid();
    expect(bench.refused({ ...reopen, why: '' })).toContain('why it is opened again');
    expect(bench.refused({ ...reopen, operation: 'fit-pumps' })).toContain('not signed');
  });
});
