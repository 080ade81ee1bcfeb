/** @module The run-in shown of any journal at all, and its trends: what was read, in which unit, by which limits. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runTrend } from '../../src/drawing/run-trend.ts';
import { svgText } from '../../src/drawing/svg.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { blankJob, evolveAll } from '../../src/job/evolve.ts';
import { phasesOf } from '../../src/job/phase.ts';
import { runInStanding } from '../../src/job/run/run-in-standing.ts';
import { trendsOf } from '../../src/job/run/trends.ts';
import { noHash, seal } from '../../src/journal/chain.ts';
import { fileOf } from '../../src/record/record.ts';
import { runSections } from '../../src/record/sections/run.ts';
import { verifyRecord } from '../../src/record/verify.ts';
import { anyFact } from './any-journal.ts';
import { begin, half, idle, reading, started } from './running.ts';

/** The journal with one reading of the run told otherwise, its whole chain made anew. */
const forged = (events: readonly JobEvent[], tell: (fact: JobEvent['fact']) => JobEvent['fact']) => {
  let hash = noHash;
  return events.map(({ hash: _, ...event }) => {
    const sealed = seal({ ...event, fact: tell(event.fact), before: hash });
    if (sealed.kind === 'refused') throw new Error('it can be sealed');
    hash = sealed.value.hash;
    return sealed.value;
  });
};

describe('the record of a run-in', () => {
  const ran = () => {
    const bench = started();
    bench.done(begin(1, '6 s'));
    bench.done(reading(1, 10, idle));
    bench.done(begin(2));
    bench.done(reading(2, 10, half));
    bench.done(reading(2, 20, half));
    return bench;
  };
  const verdict = (bench: ReturnType<typeof ran>, events = bench.events) => {
    const job = evolveAll(blankJob, events);
    if (job.kind !== 'open') throw new Error('it is open');
    return verifyRecord(fileOf(job, events));
  };

  it('verifies, and shows each reading with its verdict', () => {
    const bench = ran();
    expect(verdict(bench).kind).toBe('verified');
    const file = fileOf(bench.open, bench.events);
    expect(file).toContain('step 2 minute 20');
    expect(verifyRecord(file.replace('10 of 10', '11 of 10')).kind).toBe('not verified');
  });

  it('does not verify where an alarm was run through, though the forger makes the whole chain anew', () => {
    const bench = ran();
    const events = forged(bench.events, (fact) =>
      fact.kind === 'run reading taken' && fact.step === 2 && fact.minute === 10
        ? {
            ...fact,
            gauges: fact.gauges.map((one) =>
              one.gauge === 'oil-pressure' ? { ...one, typed: { text: '1.2', unit: 'bar' } } : one,
            ),
          }
        : fact,
    );
    expect(verdict(bench, events)).toMatchObject({
      kind: 'not verified',
      refusal: { what: expect.stringContaining('oil pressure is too low') },
    });
  });
});

describe('the run-in of a job', () => {
  it('is shown without a throw whatever was stored, and never says passed what has an alarm', () => {
    const before = started();
    fc.assert(
      fc.property(fc.array(anyFact, { maxLength: 30 }), (facts) => {
        const job = evolveAll(
          before.job,
          facts.map((fact, at) => ({
            id: `event-${at}`,
            job: 'job-1',
            sequence: before.job.head.sequence + at + 1,
            at: '2026-03-02T09:00:00Z',
            actor: 'Ilse Quarrow',
            bench: 'bench 2',
            version: 1,
            fact,
            before: noHash,
            hash: noHash,
          })),
        );
        if (job.kind !== 'open') throw new Error('it is open');
        const { attempts, steps, next } = runInStanding(job);
        expect(steps.map(({ standing }) => standing === 'passed').lastIndexOf(false) >= 0).toBe(
          next !== undefined,
        );
        for (const { passed, ended, startAlarms, readings } of attempts)
          if (passed) {
            expect(ended).toBeUndefined();
            expect([
              ...startAlarms,
              ...readings.flatMap(({ alarms, struckOut }) => (struckOut ? [] : alarms)),
            ]).toEqual([]);
          }
        expect(runSections(job).length).toBeGreaterThan(0);
        expect(phasesOf(job)).toHaveLength(7);
        for (const trend of trendsOf(job, attempts)) svgText(runTrend(trend));
      }),
      { numRuns: 150 },
    );
  });

  it('has a trend of each gauge with a limit, over all that was run, in the unit that was read', () => {
    const bench = started();
    bench.done(begin(1, '6 s'));
    bench.done(reading(1, 10, { ...idle, oil: '30 psi' }));
    bench.done(begin(2));
    bench.done(reading(2, 10, { ...half, oil: '45 psi' }));
    bench.done(reading(2, 20, { ...half, oil: '46 psi' }));
    const trends = trendsOf(bench.open, runInStanding(bench.open).attempts);
    expect(trends.map(({ gauge }) => gauge.name)).toEqual([
      'oil-pressure',
      'water-temperature',
      'exhaust-temperature',
    ]);
    const [oil, , exhaust] = trends;
    expect(oil?.unit).toBe('psi');
    expect(oil?.lines[0]?.points.map(([minute]) => minute)).toEqual([10, 20, 30]);
    expect(oil?.lines[0]?.points.map(([, value]) => Number(value.toFixed(6)))).toEqual([30, 45, 46]);
    // source: 1 bar is 14.5038 psi (NIST SP 811, Appendix B)
    expect(oil?.stretches.map(({ least }) => least)).toEqual([
      expect.closeTo(1.5 * 14.5038, 3),
      expect.closeTo(2 * 14.5038, 3),
    ]);
    expect(exhaust?.lines.map(({ cylinder }) => cylinder)).toEqual([1, 2]);
    const drawn = oil && svgText(runTrend(oil));
    expect(drawn).toContain('aria-label="oil pressure over the run"');
    expect(drawn).toContain('oil pressure: 30 to 46 psi, last 46 psi.');
  });
});
