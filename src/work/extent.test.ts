/** @module How far an overhaul goes that reaches some places: laws that hold for any, and the demonstration engines. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brambleholt, mudlark, quillfeather as readQuillfeather } from '../../test/engines/demo-engines.ts';
import { known } from '../../test/known.ts';
import type { EngineType } from '../engine/engine-type.ts';
import { workBefore } from '../engine/work-before.ts';
import { type Asked, type Extent, extentOf, wholeEngine } from './extent.ts';
import { wayTo } from './way-to.ts';

const quillfeather = readQuillfeather();
const engines = [quillfeather, brambleholt(), mudlark()];

const reachable = (engine: EngineType): readonly string[] => {
  const kinds = [...engine.placeKinds.keys()].filter((kind) => wayTo(engine, kind, new Set()) !== undefined);
  return [
    ...kinds,
    ...[...engine.places.values()].filter(({ kind }) => kinds.includes(kind)).map(({ id }) => id),
  ];
};

/** An engine, and some of what can be reached and done on it. */
const anyAsked = fc
  .constantFrom(...engines.filter((engine) => reachable(engine).length > 0))
  .chain((engine) =>
    fc.record({
      engine: fc.constant(engine),
      reach: fc.subarray([...reachable(engine)], { minLength: 1 }),
      more: fc.subarray([...reachable(engine)]),
      also: fc.subarray([...engine.operations.keys()], { maxLength: 3 }),
      done: fc.subarray([...engine.operations.keys()]),
    }),
  );

const of = (engine: EngineType, asked: Asked, done: readonly string[] = []): Extent =>
  known(extentOf(engine, asked, new Set(done)));

/** Characteristics in question, with their places. */
const questions = (engine: EngineType, { inQuestion }: Extent): readonly string[] =>
  [...engine.characteristics.values()].flatMap(({ name, at }) =>
    [...engine.places.values()]
      .filter(({ kind, id }) => kind === at && inQuestion(name, id))
      .map(({ id }) => `${name} at ${id}`),
  );

describe('the extent of an overhaul', () => {
  it('never drops an operation, a place or a characteristic when it goes further', () => {
    fc.assert(
      fc.property(anyAsked, ({ engine, reach, more, also }) => {
        const less = of(engine, { reach });
        const wider = of(engine, { reach: [...reach, ...more], also });
        expect([...wider.operations]).toEqual(expect.arrayContaining([...less.operations]));
        expect([...wider.open]).toEqual(expect.arrayContaining([...less.open]));
        expect(questions(engine, wider)).toEqual(expect.arrayContaining([...questions(engine, less)]));
      }),
      { numRuns: 60 },
    );
  });

  it('holds what is off already, whatever is asked', () => {
    fc.assert(
      fc.property(anyAsked, ({ engine, reach, done }) => {
        const stripped = done.filter((name) => engine.operations.get(name)?.phase === 'strip');
        const { operations } = of(engine, { reach }, stripped);
        expect([...operations]).toEqual(expect.arrayContaining([...stripped]));
      }),
      { numRuns: 60 },
    );
  });

  it('has before each operation what is in it, or what was never undone', () => {
    fc.assert(
      fc.property(anyAsked, ({ engine, reach, also }) => {
        const { operations, before } = of(engine, { reach, also });
        const off = [...operations].flatMap((name) => engine.operations.get(name)?.removes ?? []);
        for (const name of operations) {
          const earlier = [...workBefore(engine, name)];
          expect(before.get(name)?.every((one) => operations.has(one) && earlier.includes(one))).toBe(true);
          for (const one of earlier.filter((other) => !operations.has(other))) {
            const { phase, fits = [] } = engine.operations.get(one) ?? {};
            // Nobody takes it off, or nothing that it fits came off.
            expect(engine.operations.get(name)?.phase === 'strip' && phase === 'strip').toBe(false);
            expect(phase === 'strip' || fits.every((part) => !off.includes(part))).toBe(true);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('fits again whatever it takes off', () => {
    fc.assert(
      fc.property(anyAsked, ({ engine, reach, also }) => {
        const operations = [...of(engine, { reach, also }).operations].flatMap(
          (name) => engine.operations.get(name) ?? [],
        );
        const fitted = operations.flatMap(({ fits }) => fits);
        for (const part of operations.flatMap(({ removes }) => removes)) expect(fitted).toContain(part);
      }),
      { numRuns: 60 },
    );
  });

  it('is the whole engine where all that can be reached is reached, as where nothing is asked', () => {
    for (const engine of engines) {
      const all = [...wholeEngine(engine).operations];
      expect(all).toEqual([...engine.operations.keys()]);
      expect([...of(engine, { reach: [] }).operations]).toEqual(all);
      const kinds = reachable(engine);
      if (kinds.length > 0) expect(of(engine, { reach: kinds })).toMatchObject({ whole: true });
    }
  });

  it('opens one pump of three, and asks for what is read at it alone', () => {
    const extent = of(quillfeather, { reach: ['pump.2'] });
    expect([...extent.open]).toEqual(['pump.2']);
    expect(questions(quillfeather, extent)).toEqual([
      'pump-pack-found at pump.2',
      'pump-depth at pump.2',
      'spill-angle at pump.2',
    ]);
    expect([...extent.placesAt('lift-pumps', 'pump')]).toEqual(['pump.2']);
    expect(extent.operations.has('draw-injectors')).toBe(false);
  });

  it('opens every main bearing for one, since they hold one shaft, and every cam on the way of one camshaft', () => {
    const { open, operations } = of(quillfeather, { reach: ['main.1', 'cam.3'] });
    for (const place of ['main.4', 'big-end.2', 'bore.3', 'cam.1']) expect(open.has(place)).toBe(true);
    expect(open.has('valve.1')).toBe(false);
    expect(operations.has('wash-block')).toBe(false);
    expect(operations.has('fit-main-shells')).toBe(true);
  });

  it('has the timing set again though the setting stands before the pump', () => {
    expect([...of(quillfeather, { reach: ['pump.1'] }).operations]).toEqual(
      expect.arrayContaining(['find-top-dead-centre', 'fit-pumps', 'prove-stop', 'first-start', 'full-load']),
    );
  });

  it('leaves alone in setting and running what was left alone in the strip', () => {
    const pump = of(quillfeather, { reach: ['pump.1'] }).operations;
    expect(pump.has('tighten-head-again')).toBe(false);
    expect(pump.has('set-governor')).toBe(true);
    const head = of(quillfeather, { reach: ['head'] });
    expect(head.operations.has('tighten-head-again')).toBe(true);
    expect(head.operations.has('check-spill')).toBe(false);
    expect(questions(quillfeather, head).filter((one) => one.includes('pump'))).toEqual([]);
  });

  it('has the engine started again after whatever was fitted, though something in between stayed on', () => {
    fc.assert(
      fc.property(anyAsked, ({ engine, reach }) => {
        const { operations } = of(engine, { reach });
        const fitted = [...operations].some((name) => (engine.operations.get(name)?.fits ?? []).length > 0);
        expect(operations.has('first-start')).toBe(fitted);
      }),
      { numRuns: 60 },
    );
  });

  it('refuses what is not known, and says what is', () => {
    expect(extentOf(quillfeather, { reach: ['pmup.2'] })).toMatchObject({
      refusal: { remedy: 'write pump.2, if that is what is meant' },
    });
    expect(extentOf(quillfeather, { reach: [], also: ['lift-haed'] })).toMatchObject({
      refusal: { remedy: 'write lift-head, if that is what is meant' },
    });
  });
});
