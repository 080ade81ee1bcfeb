/** @module A gauge in a readings file comes to the job after what it was set in, wherever that is known from. */
import { describe, expect, it } from 'vitest';
import { bookedIn, micrometer, mm } from '../../test/job/bench.ts';
import type { Instrument } from '../measure/instrument.ts';
import { requestsToTake } from './readings-to-take.ts';

const ring: Instrument = { ...micrometer, name: 'ring' };
const gauge: Instrument = {
  ...micrometer,
  name: 'gauge',
  setTo: { master: ring.name, size: mm('30'), shown: mm('0') },
};
const fileWith = (instruments: readonly Instrument[]) => ({
  instruments,
  readings: [],
  sizesFound: new Map([['mains', '0.25']]),
  troubles: [],
});
const asked = (instruments: readonly Instrument[], register: readonly Instrument[] = []) =>
  requestsToTake(fileWith(instruments), bookedIn().open, register).map((request) =>
    request.kind === 'bring instrument' ? request.instrument.name : request.kind,
  );

describe('readings to take', () => {
  it('bring a gauge after the ring it was set in, whatever their order in the file', () => {
    expect(asked([gauge, ring])).toEqual([ring.name, 'gauge', 'note size found']);
  });

  it('bring nothing that the job has already', () => {
    expect(asked([micrometer])).toEqual(['note size found']);
  });

  it('bring a master that only the register knows', () => {
    expect(asked([gauge], [ring])).toEqual([ring.name, 'gauge', 'note size found']);
  });
});
