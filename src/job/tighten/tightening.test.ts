/** @module Laws of a joint on the bench: every bolt once a stage, the next one never skipped, whatever is asked. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brambleholt, mudlark, quillfeather } from '../../../test/engines/demo-engines.ts';
import type { Bench } from '../../../test/job/bench.ts';
import { jointedEngine, lay, pulled, readyToTighten } from '../../../test/job/tightening.ts';
import { jointOf } from './joint.ts';
import { stagePreload } from './preload.ts';
import { tighteningsOf } from './tightening.ts';

const joints = (bench: Bench) => {
  const operation = bench.open.sheet.engine.operations.get(lay);
  if (operation === undefined) throw new Error('the engine lays no crankshaft');
  return tighteningsOf(bench.open, operation);
};

describe('the order of a joint', () => {
  it('takes every bolt once, of every fastener of the demonstration engines', () => {
    for (const engine of [quillfeather(), mudlark(), brambleholt()])
      for (const fastener of engine.fasteners.values()) {
        const { bolts, order } = jointOf(fastener);
        expect(order.toSorted()).toEqual(bolts.map(({ name }) => name).toSorted());
        expect(order).toHaveLength(fastener.count);
      }
  });

  it("is the maker's own before any reckoned one, and is counted where nothing says how they stand", () => {
    const orderFrom = (engine: ReturnType<typeof mudlark>, name: string) => {
      const fastener = engine.fasteners.get(name);
      return fastener && jointOf(fastener).orderFrom;
    };
    expect(orderFrom(mudlark(), 'head-nuts')).toBe('the maker');
    expect(orderFrom(quillfeather(), 'head-nuts')).toBe('centre out');
    expect(orderFrom(mudlark(), 'big-end-bolts')).toBe('counted');
  });

  it('begins at the middle of a head and ends at its ends', () => {
    const nuts = quillfeather().fasteners.get('head-nuts');
    const order = nuts ? jointOf(nuts).order : [];
    // source: common practice, no source: nuts 5 and 6 stand at the middle of the head, 1, 2, 9 and 10 at its ends
    expect(order.slice(0, 2).toSorted()).toEqual(['5', '6']);
    expect(order.slice(-4).toSorted()).toEqual(['1', '10', '2', '9']);
  });
});

describe('a joint, whatever is asked of it', () => {
  const tries = fc.array(
    fc.record({
      stage: fc.integer({ min: 0, max: 2 }),
      bolts: fc.uniqueArray(fc.constantFrom('1', '2', '3', '4'), { minLength: 1 }),
      overrule: fc.boolean(),
    }),
    { maxLength: 12 },
  );

  it('has every bolt at most once a stage, no stage begun before the one before is whole, and a next one that is the first left', () => {
    fc.assert(
      fc.property(tries, (asked) => {
        const bench = readyToTighten();
        for (const { stage, bolts, overrule } of asked) {
          const before = joints(bench)[0];
          const answer = bench.ask(
            pulled({ stage, bolts, ...(overrule && { overruled: { by: 'Wat Dunmow', why: 'so' } }) }),
          );
          if (answer.kind === 'answer' && !overrule)
            expect(bolts).toEqual(before?.stages[stage]?.left.slice(0, bolts.length));
        }
        const [joint] = joints(bench);
        const noted = joint?.stages.flatMap((one) => one.noted.map(({ bolts }) => bolts)) ?? [];
        for (const { done, left, noted: here } of joint?.stages ?? []) {
          const all = here.flatMap(({ bolts }) => bolts);
          expect(new Set(all).size).toBe(all.length);
          expect([...done, ...left].toSorted()).toEqual(['1', '2', '3', '4']);
        }
        const begun = joint?.stages.map(({ done }) => done.length) ?? [];
        for (const [at, count] of begun.entries()) if (count > 0 && at > 0) expect(begun[at - 1]).toBe(4);
        const at = begun.findIndex((count) => count < 4);
        expect(joint?.next).toEqual(at < 0 ? undefined : { stage: at, bolt: joint?.stages[at]?.left[0] });
        expect(noted.flat().length).toBe(begun.reduce((sum, count) => sum + count, 0));
      }),
      { numRuns: 40 },
    );
  });

  it('comes to the same noted whole or bolt by bolt', () => {
    const whole = readyToTighten();
    whole.done(pulled());
    const single = readyToTighten();
    for (const bolt of ['1', '4', '2', '3']) single.done(pulled({ bolts: [bolt] }));
    const shown = (bench: Bench) => joints(bench)[0]?.stages.map(({ done, left }) => ({ done, left }));
    expect(shown(single)).toEqual(shown(whole));
  });
});

describe('the tension of a stage', () => {
  it('lies between the frictions of the engine type, with the proof load beside it; an angle tells none', () => {
    const { fasteners } = readyToTighten(jointedEngine).open.sheet.engine;
    const caps = fasteners.get('cap-bolts');
    const [, last] = caps?.stages ?? [];
    const pull = caps && last && stagePreload(caps, last);
    // source: ISO 898-1, proof load of M10 in class 8.8 is 33.7 kN
    expect(pull?.proofLoad).toBeCloseTo(33.7, 0);
    expect(pull?.least).toBeLessThan(pull?.greatest ?? 0);
    expect(pull?.greatest).toBeLessThan(pull?.proofLoad ?? 0);
    const rods = fasteners.get('rod-bolts');
    const [, angle] = rods?.stages ?? [];
    expect(rods && angle && stagePreload(rods, angle)).toBeUndefined();
  });
});
