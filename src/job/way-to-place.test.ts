/** @module The way to a place in a job: whole, begun, open; in a job that does not go so far, and widened to it. */
import { describe, expect, it } from 'vitest';
import { signAll } from '../../demo/bench-work.ts';
import { fitter } from '../../demo/people.ts';
import { story } from '../../demo/story.ts';
import { booking } from '../../test/job/bench.ts';
import { bookedToReach, partialText, strip } from '../../test/job/partial.ts';
import { known } from '../../test/known.ts';
import { mapWayOf } from '../drawing/map-way.ts';
import type { OpenJob } from './job.ts';
import { nextAtPlace, wayToPlace } from './way-to-place.ts';

const whole = () => {
  const told = story(900, '2026-03-02T08:00:00Z');
  told.tell(fitter, 0, { ...booking, engineType: partialText });
  return told;
};

const way = (job: OpenJob, place: string) => known(wayToPlace(job, place));
const standings = (job: OpenJob, place: string) =>
  way(job, place).steps.map(({ operation, standing }) => [operation.name, standing]);

describe('the way to a place', () => {
  it('says of each step whether it is done, open now, or what comes before it', () => {
    const told = whole();
    for (const name of ['isolate-and-drain', 'lift-onto-stand']) signAll(told, fitter, ['strip'], name);
    expect(standings(told.job(), 'pump.2')).toEqual([
      ['isolate-and-drain', 'done'],
      ['lift-onto-stand', 'done'],
      ['mark-parts', 'open now'],
      ['strip-manifolds', 'not yet'],
      ['lift-pumps', 'not yet'],
    ]);
    expect(way(told.job(), 'pump.2').steps.at(-1)?.says).toContain('Take off the manifolds');
    expect(way(told.job(), 'pump.2').beyond).toBeUndefined();
  });

  it('is the same when it is open, with what it disturbed', () => {
    const told = whole();
    const before = way(told.job(), 'injector.2');
    for (const { operation } of before.steps) signAll(told, fitter, ['strip'], operation.name);
    const after = way(told.job(), 'injector.2');
    expect(after.steps.every(({ standing }) => standing === 'done')).toBe(true);
    expect(after.spoilt).toEqual(before.spoilt);
    // One injector drawn takes one washer: what is spoilt is counted where it is worked.
    expect(after.spoilt.map(({ item, count }) => [item.name, count])).toContainEqual(['nozzle-washers', 1]);
    expect(after.again.map(({ name }) => name)).toContain('fit-injectors');
  });

  it('lights on the map the places of what comes off, each with its step', () => {
    const told = whole();
    const { signs, to } = mapWayOf(told.job().sheet.engine, way(told.job(), 'main.2'));
    const steps = standings(told.job(), 'main.2').map(([name]) => name);
    expect(to).toBe('main bearing 2');
    expect(signs.get('head.1')).toEqual({ step: steps.indexOf('lift-head') + 1, standing: 'later' });
    expect(signs.get('piston.3')?.step).toBe(steps.indexOf('draw-pistons') + 1);
    expect(signs.get('main.4')?.step).toBe(steps.length);
    expect(signs.has('valve.1')).toBe(false);
  });

  it('names the next operation of the job at the place', () => {
    const told = whole();
    expect(nextAtPlace(told.job(), 'piston.2')?.name).toBe('draw-pistons');
    const partial = bookedToReach(['pump.2']);
    expect(nextAtPlace(partial.job(), 'pump.2')?.name).toBe('lift-pumps');
    expect(nextAtPlace(partial.job(), 'pump.1')).toBeUndefined();
    expect(nextAtPlace(partial.job(), 'main.1')).toBeUndefined();
  });

  it('refuses a place that nothing lays open', () => {
    expect(wayToPlace(whole().job(), 'inlet-rocker.1').kind).toBe('refused');
  });
});

describe('a place that the job does not go so far as', () => {
  it('names what going there brings, and the job reaches it once it is widened so', () => {
    const told = bookedToReach(['pump.2']);
    const { beyond, steps } = way(told.job(), 'valve.1');
    expect(beyond?.reach).toEqual(['pump.2', 'valve.1']);
    expect(beyond?.more.map(({ name }) => name)).toContain('lift-head');
    expect(beyond?.more.map(({ name }) => name)).not.toContain('strip-manifolds');
    expect(steps.find(({ operation }) => operation.name === 'lift-head')?.says).toBe(
      'this job does not go so far',
    );
    told.tell(fitter, 1, { kind: 'set scope', reach: beyond?.reach ?? [], says: 'a valve burnt' });
    expect(way(told.job(), 'valve.1').beyond).toBeUndefined();
    const taken = beyond?.more.map(({ name }) => name) ?? [];
    expect(way(told.job(), 'valve.1').steps.every(({ says }) => says !== 'this job does not go so far')).toBe(
      true,
    );
    expect(taken.length).toBeGreaterThan(5);
  });

  it('knows an operation that was done at another place alone', () => {
    const told = bookedToReach(['pump.2']);
    strip(told);
    const { beyond, steps } = way(told.job(), 'pump.1');
    expect(steps.at(-1)).toMatchObject({
      operation: { name: 'lift-pumps' },
      standing: 'not yet',
      says: 'done at other places alone: this job goes no further',
    });
    expect(beyond?.more).toEqual([]);
    expect(beyond?.signed.map(({ name }) => name)).toContain('lift-pumps');
    expect(way(told.job(), 'pump.2').beyond).toBeUndefined();
  });
});
