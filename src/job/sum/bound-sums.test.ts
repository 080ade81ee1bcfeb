/** @module The sums of an operation: what is given to them, what holds the operation back, what may be noted. */
import { describe, expect, it } from 'vitest';
import { agreed, Bench, booking } from '../../../test/job/bench.ts';
import { asked, clearance, engineWithSums, readyToLay } from '../../../test/job/summing.ts';
import { standingOf } from '../holds.ts';
import { keptHere } from './keeping.ts';
import { notedAt, noteSum, sumNamed } from './noted-sum.ts';
import { reckonHere, sumAt } from './sum-at.ts';

const here = (one: Bench, named = clearance, typed = {}) => {
  const at = sumNamed(one.open, named);
  if (at.kind === 'refused') throw new Error(at.refusal.what);
  const found = sumAt(one.open, at.value, typed);
  if (!found) throw new Error('no such sum');
  return found;
};

const held = (one: Bench): readonly string[] => {
  const operation = one.open.sheet.engine.operations.get('lay-crankshaft');
  const standing = operation && standingOf(one.open, operation);
  return standing?.kind === 'held' ? standing.lacking.map(({ says }) => says) : [];
};

describe('what a sum is held to', () => {
  const bySize = engineWithSums.replace(
    'greatest: 0.080 mm }',
    "greatest: 0.080 mm, size-of: mains, sizes: { '0.25': { least: 0.040 mm, greatest: 0.095 mm } } }",
  );

  // source: by hand: 50.061 − 49.975 = 0.086, beyond 0.080 of standard and within 0.040 to 0.095 of 0.25
  it('goes by the size at which its place stands', () => {
    expect(bySize).not.toBe(engineWithSums);
    const one = agreed(bySize);
    one.done({ kind: 'do operation', operation: 'lift-crankshaft', note: '' });
    const keeps = (place: string) => {
      const found = here(one, { ...clearance, place }, { bore: '50.061 mm' });
      const done = reckonHere(found);
      if (done.kind === 'refused') throw new Error(done.refusal.what);
      return keptHere(one.open, found, done.value.reckoned);
    };
    expect(keeps('main.1')).toMatchObject([{ verdict: 'outside' }]);
    one.done({ kind: 'note size found', component: 'mains', place: 'main.1', size: '0.25' });
    expect(keeps('main.1')).toMatchObject([
      { verdict: 'within', says: expect.stringContaining('to be 0.040 mm to 0.095 mm at size 0.25') },
    ]);
    expect(keeps('main.2')).toMatchObject([
      { verdict: 'outside', says: expect.stringContaining('to be 0.030 mm to 0.080 mm') },
    ]);
  });
});

describe('a sum within its operation', () => {
  it('takes what the engine gives, with its ± and where it comes from, and asks for the rest', () => {
    const sum = here(readyToLay());
    const given = sum.inputs.map(({ input, given }) => [input.key, given]);
    expect(Object.fromEntries(given)).toEqual({
      bore: undefined,
      shaft: {
        kind: 'given',
        text: expect.stringMatching(/^49\.975 ± 0\.00\d mm$/),
        from: 'main bearing 1, main journal diameter, least of 2, read with mic-25-50',
      },
      shared: undefined,
    });
    expect(sum.title).toBe('clearance in the shells, main bearing 1');
    expect(reckonHere(sum)).toMatchObject({ refusal: { what: 'clearance needs bore too' } });
  });

  it('gives a result that is known no better than what went into it', () => {
    const sum = here(readyToLay(), clearance, { bore: '50.030 mm' });
    const done = reckonHere(sum);
    if (done.kind === 'refused') throw new Error(done.refusal.what);
    const { values, reckoned } = done.value;
    const half = Number(/± ([\d.]+)/.exec(sum.texts.shaft ?? '')?.[1]);
    // source: JCGM 100:2008, 5.1.2: of a difference with one uncertain term the uncertainty is that term's
    expect(reckoned.results.clearance?.u).toBeCloseTo(half / 1.96, 5);
    expect(values.quantities.shaft?.value).toBe(49.975);
    expect(reckoned.results.clearance?.value).toBeCloseTo(0.055, 9);
  });

  it('says what is to be measured first where the engine is to give it', () => {
    const one = new Bench();
    one.done({ ...booking, engineType: engineWithSums });
    expect(here(one).inputs.find(({ input }) => input.key === 'shaft')?.given).toEqual({
      kind: 'first',
      says: 'main journal diameter is not yet measured',
      remedy: 'read main bearing 1, main journal diameter, vertical',
    });
    expect(reckonHere(here(one, clearance, { bore: '50.03 mm' }))).toMatchObject({
      refusal: { what: 'main journal diameter is not yet measured' },
    });
  });

  it('takes the engine’s own geometry', () => {
    const sum = here(readyToLay(), { operation: 'fit-pumps', sum: 'turn' } as typeof clearance, {
      angle: '20 deg',
    });
    expect(sum.texts).toEqual({ stroke: '90 mm', rod: '150 mm', angle: '20 deg' });
    expect(reckonHere(sum).kind).toBe('answer');
  });
});

describe('an operation with sums', () => {
  it('is held until each that it must have is noted at each of its places', () => {
    const one = readyToLay();
    expect(held(one)).toEqual([
      '“clearance in the shells, main bearing 1”: not reckoned',
      '“clearance in the shells, main bearing 2”: not reckoned',
    ]);
    one.done(asked(one, '50.030 ± 0.004 mm'));
    expect(held(one)).toEqual(['“clearance in the shells, main bearing 2”: not reckoned']);
    one.done(asked(one, '50.030 ± 0.004 mm', { ...clearance, place: 'main.2' }));
    expect(held(one)).toEqual([]);
    one.done({ kind: 'do operation', operation: 'lay-crankshaft', note: '' });
    expect(one.refused(asked(one, '50.031 mm'))).toContain('was signed by Ilse Quarrow');
  });

  it('is held by one that is outside or too near its limit', () => {
    const one = readyToLay();
    one.done(asked(one, '50.100 ± 0.004 mm', { ...clearance, place: 'main.2' }));
    one.done(asked(one, '50.053 ± 0.004 mm'));
    expect(held(one)).toEqual([
      expect.stringMatching(
        /main bearing 1”: clearance 0\.0780 ± 0\.00\d+ mm, to be 0\.030 mm to 0\.080 mm, is too near/,
      ),
      expect.stringMatching(/main bearing 2”: clearance 0\.1250 ± 0\.00\d+ mm, to be .* is outside/),
    ]);
  });

  it('is held again when what it was reckoned from has changed', () => {
    const one = readyToLay();
    for (const place of ['main.1', 'main.2'])
      one.done(asked(one, '50.030 ± 0.004 mm', { ...clearance, place }));
    one.read('main.2', '49.961', 'vertical');
    const [first, ...others] = held(one);
    expect(others).toEqual([]);
    expect(first).toMatch(
      /“clearance in the shells, main bearing 2”: reckoned with other figures: shaft was 49\.975 ± 0\.00\d mm and is 49\.961 ± 0\.00\d mm/,
    );
    one.done(asked(one, '50.030 ± 0.004 mm', { ...clearance, place: 'main.2' }));
    expect(held(one)).toEqual([]);
  });

  it('loses its sums when it, or what it rests on, is opened again', () => {
    const one = readyToLay();
    for (const place of ['main.1', 'main.2'])
      one.done(asked(one, '50.030 ± 0.004 mm', { ...clearance, place }));
    one.done({ kind: 'do operation', operation: 'lay-crankshaft', note: '' });
    one.done({ kind: 'reopen operation', operation: 'lay-crankshaft', why: 'a shell turned' });
    expect(one.open.sums.size).toBe(0);
    expect(held(one)).toHaveLength(2);
  });

  it('is not held by one that may be left undone', () => {
    expect(held(agreed())).toEqual(['“Lift the crankshaft” is not done']);
    expect(held(readyToLay()).join()).not.toContain('bolt');
  });
});

describe('the noting of a sum', () => {
  it('is refused when the results do not come of the inputs', () => {
    const one = readyToLay();
    const request = asked(one, '50.030 ± 0.004 mm');
    const found = request.found.map((result) =>
      result.key === 'clearance' ? { ...result, text: '0.0450 mm' } : result,
    );
    expect(one.refused({ ...request, found })).toContain('clearance does not come of these figures');
    expect(one.refused({ ...request, found: found.slice(1) })).toContain('clearance does not come of these');
  });

  it('is refused when a figure is not the engine’s own', () => {
    const one = readyToLay();
    const request = asked(one, '50.030 mm');
    const inputs = request.inputs.map((input) =>
      input.key === 'shaft' ? { ...input, text: '49.980 mm' } : input,
    );
    expect(one.refused({ ...request, inputs })).toMatch(
      /shaft is not what the job has for it: that is 49\.975/,
    );
    const typed = inputs.map(({ key, text }) => ({ key, text }));
    expect(one.refused({ ...request, inputs: typed })).toContain('shaft is not what the job has for it');
    expect(one.refused({ ...request, inputs: [...request.inputs, ...request.inputs] })).toContain('not what');
  });

  it('is refused when it claims to be measured and was typed', () => {
    const one = readyToLay();
    const request = asked(one, '50.030 mm');
    const inputs = request.inputs.map((input) =>
      input.key === 'shaft' ? { ...input, from: 'read with a laser' } : input,
    );
    expect(one.refused({ ...request, inputs })).toContain('shaft does not come from where it is said');
    const claimed = request.inputs.map((input) =>
      input.key === 'bore' ? { ...input, from: 'read with bore-35-160' } : input,
    );
    expect(one.refused({ ...request, inputs: claimed })).toContain('bore');
  });

  it.each([
    [{ ...clearance, operation: 'lay-crankshft' }, 'write lay-crankshaft'],
    [{ ...clearance, sum: 'clearence' }, 'write clearance'],
    [{ ...clearance, place: 'main.3' }, 'it is not done at main.3'],
    [{ operation: 'lay-crankshaft', sum: 'clearance' }, 'it is done at each place'],
    [{ operation: 'lay-crankshaft', sum: 'preload', place: 'main.1' }, 'it is not done at main.1'],
  ])('is refused for a sum that is not there: %o', (named, says) => {
    const one = readyToLay();
    expect(one.refused({ ...asked(one, '50.030 mm'), place: undefined, ...named } as never)).toContain(says);
    expect(JSON.stringify(noteSum(one.open, named, {}, { note: '' }))).toContain(says);
  });

  it('tells what may not be typed', () => {
    const one = readyToLay();
    const note = (typed: Record<string, string>) =>
      noteSum(one.open, clearance, { bore: '50.03 mm', ...typed }, { note: '' });
    expect(note({ shaft: '49 mm' })).toMatchObject({
      refusal: { where: 'shaft', what: 'it is given here and not asked' },
    });
    expect(note({ shft: '49 mm' })).toMatchObject({ refusal: { what: 'clearance does not take shft' } });
    expect(note({ bore: '50.03 kg' })).toMatchObject({ refusal: { where: 'bore=50.03 kg' } });
  });
});

describe('a noted sum', () => {
  it('keeps what was noted as it was', () => {
    const one = readyToLay();
    one.done(asked(one, '50.030 ± 0.004 mm'));
    const at = sumNamed(one.open, clearance);
    if (at.kind === 'refused') throw new Error(at.refusal.what);
    expect(notedAt(one.open, at.value)?.noted).toMatchObject({
      operation: 'lay-crankshaft',
      place: 'main.1',
      fitted: 'shells as found',
      inputs: [
        { key: 'bore', text: '50.030 ± 0.004 mm' },
        { key: 'shaft', text: expect.stringContaining('49.975'), from: expect.stringContaining('mic-25-50') },
      ],
      by: 'Ilse Quarrow',
    });
  });
});
