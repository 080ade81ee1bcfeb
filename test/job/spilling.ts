/** @module The invented two-cylinder engine with pumps whose timing is proved by a second spill, and a pack that is asked for at the strip. */
import type { JobEvent } from '../../src/job/event.ts';
import type { Instrument } from '../../src/measure/instrument.ts';
import type { Typed } from '../../src/quantity/typed.ts';
import { Bench, booking, depthGauge, micrometer, mm, plan } from './bench.ts';
import { sparrowbill } from './sparrowbill.ts';

export const spillingEngine = sparrowbill
  .replace(
    '  pump-depth:\n',
    `  pump-pack-found:
    title: shim pack as found
    at: pump
    wears: either
    instrument: outside micrometer
  spill-angle:
    title: crank before top dead centre as the spill stops
    at: pump
    quantity: angle
    wears: either
    instrument: protractor
    limits: { new: { least: 23 deg, greatest: 25 deg } }
  pump-lift:
    title: pump cam lift
    at: pump
    wears: smaller
    instrument: outside micrometer
    limits: { new: { least: 7.95 mm, greatest: 8.05 mm }, wear: { least: 7.80 mm } }
  pump-depth:
`,
  )
  .replace(
    'lift-crankshaft: { title',
    `lift-pumps:
    title: Lift the pumps
    phase: strip
    at: pump
    asks: { pack: { ask: Shim pack as found, answer: reading, reads: pump-pack-found, each: true } }
  lift-crankshaft: { title`,
  )
  .replace(
    'first-start: { title: First start, phase: run, after: [fit-pumps] }',
    `check-spill: { title: Check the spill, phase: set, at: pump, after: [fit-pumps], needs: [spill-angle] }
  first-start: { title: First start, phase: run, after: [check-spill] }`,
  )
  .replace('rate: 2 deg/mm', 'rate: 10 deg/mm')
  .replace(
    '  adding-shims: retards\n',
    `  adding-shims: retards
  found: pump-pack-found
  lift: pump-lift
  check: { characteristic: spill-angle, nominal: 24 deg, larger-is: earlier, spread: 1 deg }
`,
  );

const deg = (text: string): Typed => ({ text, unit: 'deg' });

const disc: Instrument = {
  name: 'disc',
  kind: 'protractor',
  range: { least: deg('0'), greatest: deg('360') },
  resolution: deg('0.1'),
  permissibleError: deg('0.1'),
  repeatability: deg('0.05'),
  zero: deg('0'),
};

export class SpillBench extends Bench {
  take(place: string, characteristic: string, typed: Typed, instrument: string): JobEvent {
    return this.done({
      kind: 'take reading',
      cell: { place, characteristic, plane: '', axis: '' },
      typed,
      instrument,
    });
  }

  /** Degrees before top dead centre as the spill stops. */
  spill(place: string, text: string): JobEvent {
    return this.take(place, 'spill-angle', deg(text), disc.name);
  }

  put(place: string, ...texts: readonly string[]): JobEvent {
    return this.done({ kind: 'fit pack', place, shims: texts.map(mm) });
  }
}

/** Booked in, journals sound, the plan agreed; nothing read at the pumps. */
export const spilling = (engineType = spillingEngine): SpillBench => {
  const bench = new SpillBench();
  bench.done({ ...booking, engineType });
  for (const instrument of [
    micrometer,
    depthGauge,
    disc,
    { ...micrometer, name: 'mic-0-25', range: { least: mm('0'), greatest: mm('25') } },
  ])
    bench.done({ kind: 'bring instrument', instrument });
  for (const place of ['main.1', 'main.2'])
    for (const axis of ['vertical', 'horizontal']) bench.read(place, '49.975', axis);
  bench.done(plan);
  bench.done({ kind: 'note agreement', name: 'W. Heron', how: 'by telephone' });
  return bench;
};

/** As `spilling`, with depths read, a box counted and the packs needed fitted: 0.60 and 0.70 mm. */
export const packed = (): SpillBench => {
  const bench = spilling();
  bench.read('pump.1', '59.40');
  bench.read('pump.2', '59.30');
  const shims = [
    ['0.10', 6],
    ['0.20', 4],
    ['0.30', 3],
    ['0.50', 2],
  ] as const;
  bench.done({ kind: 'count shims', shims: shims.map(([text, count]) => ({ thickness: mm(text), count })) });
  bench.put('pump.1', '0.50', '0.10');
  bench.put('pump.2', '0.50', '0.20');
  return bench;
};
