/** @module Checks of what is brought with an instrument. */
import { describe, expect, it } from 'vitest';
import type { Instrument } from './instrument.ts';
import { withMasters } from './with-masters.ts';

const mm = (text: string) => ({ text, unit: 'mm' });

const instrument = (name: string, master?: string): Instrument => ({
  name,
  kind: 'bore gauge',
  range: { least: mm('0'), greatest: mm('100') },
  resolution: mm('0.001'),
  permissibleError: mm('0.004'),
  repeatability: mm('0.001'),
  ...(master === undefined ? {} : { setTo: { master, size: mm('80'), shown: mm('0') } }),
});

const ring = instrument('ring');
const micrometer = instrument('micrometer', 'ring');
const gauge = instrument('gauge', 'micrometer');
const register = [gauge, ring, micrometer];

const names = (one: Instrument, brought: readonly Instrument[] = [], known = register) =>
  withMasters(one, known, new Map(brought.map((each) => [each.name, each]))).map(({ name }) => name);

describe('with an instrument', () => {
  it('comes first what it was set in, and before that what this was set in', () => {
    expect(names(gauge)).toEqual(['ring', 'micrometer', 'gauge']);
    expect(names(ring)).toEqual(['ring']);
  });

  it('comes nothing that the job has already', () => {
    expect(names(gauge, [micrometer])).toEqual(['gauge']);
  });

  it('comes itself again, when it was set anew', () => {
    expect(names(gauge, [gauge, micrometer])).toEqual(['gauge']);
  });

  it('comes no master twice, should masters be set in one another', () => {
    const one = instrument('one', 'two');
    const two = instrument('two', 'one');
    expect(names(one, [], [one, two])).toEqual(['two', 'one']);
  });
});
