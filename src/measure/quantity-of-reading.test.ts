/** @module What is no length is sized, judged and shown in its own unit; places are compared with one another. */
import { describe, expect, it } from 'vitest';
import { smallEngine, typed } from '../../test/engines/small-engine.ts';
import type { Characteristic, EngineType, Place } from '../engine/engine-type.ts';
import { newtons } from '../quantity/brand.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { doubtsOf } from './doubts.ts';
import type { Instrument } from './instrument.ts';
import { instrumentsFor } from './instrument-for.ts';
import { judge } from './judge.ts';
import type { Reading } from './reading.ts';
import { settle } from './settle.ts';
import { layOut } from './sheet.ts';
import { usualInstrument } from './usual-instrument.ts';

const bare = { title: 'x', planes: [''], axes: [''], wears: 'either' } as const;

const load: Characteristic = {
  ...bare,
  name: 'spring-load',
  at: 'piston',
  quantity: 'force',
  wears: 'smaller',
  instrument: 'spring tester',
  material: 'aluminium',
  limits: {
    new: { least: newtons(240) },
    goesBack: { least: newtons(220) },
    printed: { 'new.least': typed('240', 'N'), 'wear.least': typed('220', 'N') },
  },
};
const height: Characteristic = { ...bare, name: 'height', at: 'bore', axes: ['north', 'south'] };
const everywhere: Characteristic = {
  ...bare,
  name: 'height-over-all',
  at: 'thrust',
  derived: { kind: 'range over places', of: 'height' },
};
const nextDoor: Characteristic = {
  ...bare,
  name: 'height-to-neighbours',
  at: 'bore',
  derived: { kind: 'range over neighbours', of: 'height' },
};

const engine: EngineType = {
  ...smallEngine,
  characteristics: new Map([load, height, everywhere, nextDoor].map((one) => [one.name, one])),
};

const tester: Instrument = {
  name: 'tester',
  kind: 'spring tester',
  range: { least: typed('0', 'N'), greatest: typed('500', 'N') },
  resolution: typed('1', 'N'),
  permissibleError: typed('5', 'N'),
  repeatability: typed('1', 'N'),
  zero: typed('2', 'N'),
};
const dial = usualInstrument('dial gauge', 'dial');

const springRead = (text: string, unit: string, more: Partial<Reading> = {}): Reading => ({
  id: `r${text}`,
  cell: { place: 'piston.1', characteristic: 'spring-load', plane: '', axis: '' },
  typed: typed(text, unit),
  instrument: 'tester',
  ...more,
});

const standing = (place: string, ...heights: readonly [north: string, south: string]): readonly Reading[] =>
  heights.map((text, at) => ({
    id: `${place} ${at}`,
    cell: { place, characteristic: 'height', plane: '', axis: height.axes[at] ?? '' },
    typed: typed(text),
    instrument: 'dial',
  }));

describe('a force', () => {
  it('is sized and judged in newtons, whatever unit it was read in', () => {
    const sheet = layOut(engine, [springRead('26', 'kgf')], [tester]);
    const judged = judge(sheet, 'spring-load', 'piston.1');
    // source: standard gravity 9.80665 m/s²; 26 kgf less a zero of 2 N
    expect(judged.value?.value).toBeCloseTo(26 * 9.80665 - 2, 9);
    expect(judged.verdict).toBe('within');
  });

  it('is not brought to 20 °C, warm as the spring may be', () => {
    const warm = layOut(engine, [springRead('240', 'N', { temperature: typed('60', '°C') })], [tester]);
    const judged = judge(warm, 'spring-load', 'piston.1');
    expect(judged.value?.value).toBe(238);
    // source: JCGM 100:2008, 4.3.7: half-widths over the root of three; repeat 1 N twice, of reading and of zero
    const half = 0.5 / Math.sqrt(3);
    expect(judged.value && standardUncertainty(judged.value)).toBeCloseTo(
      Math.hypot(5 / Math.sqrt(3), 1, half, 1, half),
      9,
    );
  });

  it('has no size where it was read with what measures lengths', () => {
    const sheet = layOut(engine, [springRead('240', 'N', { instrument: 'dial' })], [dial]);
    expect(judge(sheet, 'spring-load', 'piston.1').verdict).toBe('not yet known');
  });

  it('is asked of a spring tester first, and is doubted for its digits as a length is', () => {
    const sheet = layOut(engine, [springRead('24', 'N')], [tester]);
    expect(instrumentsFor(sheet, 'spring-load', [dial, tester])[0]).toBe(tester);
    expect(doubtsOf(sheet)).toMatchObject([{ slip: 'decimal shift', likely: [typed('240', 'N')] }]);
    expect(doubtsOf(layOut(engine, [springRead('238', 'N')], [tester]))).toEqual([]);
  });

  it('is settled in its own unit', () => {
    const sheet = layOut(engine, [springRead('225', 'N')], [tester]);
    expect(judge(sheet, 'spring-load', 'piston.1').verdict).toBe('unsure');
    const finer: Instrument = { ...tester, name: 'finer', permissibleError: typed('0.5', 'N') };
    const [first] = settle(sheet, 'spring-load', 'piston.1', [finer]);
    expect(first?.instrument).toBe('finer');
    expect(first?.says).toMatch(/known to ±\d\.\d\d N instead of ±\d\.\d\d N, and within/);
  });

  it('of an instrument that nobody knows has the usual figures of its kind in newtons', () => {
    expect(usualInstrument('spring tester', 'x', 250).permissibleError).toEqual(typed('5.000000', 'N'));
  });
});

describe('places compared with one another', () => {
  const sheet = layOut(
    engine,
    [
      ...standing('bore.1', '1.00', '1.04'),
      ...standing('bore.2', '1.10', '1.10'),
      ...standing('bore.3', '1.05', '1.05'),
    ],
    [dial],
  );

  it('lie apart by the greatest mean less the least', () => {
    // 1.02, 1.10, 1.05
    expect(judge(sheet, 'height-over-all', 'thrust.1').value?.value).toBeCloseTo(0.08, 9);
  });

  it('lie apart from their neighbours by the wider of two steps', () => {
    const step = (place: string) => judge(sheet, 'height-to-neighbours', place).value?.value;
    expect(step('bore.1')).toBeCloseTo(0.08, 9);
    expect(step('bore.2')).toBeCloseTo(0.08, 9);
    expect(step('bore.3')).toBeCloseTo(0.05, 9);
  });

  it('are not compared before all are read, and what is missing is named', () => {
    const some = layOut(engine, [...standing('bore.1', '1.00', '1.04')], [dial]);
    expect(judge(some, 'height-to-neighbours', 'bore.1').missing.map(({ place }) => place)).toEqual([
      'bore.2',
      'bore.2',
    ]);
    expect(judge(some, 'height-over-all', 'thrust.1').missing).toHaveLength(4);
  });
});

describe('neighbours in a vee', () => {
  /** Six bores: odd ones in one bank, even ones in the other. */
  const bores: readonly Place[] = [1, 2, 3, 4, 5, 6].map((number) => ({
    id: `bore.${number}`,
    kind: 'bore',
    number,
    title: `bore ${number}`,
  }));
  const heights = ['1.00', '5.00', '1.02', '5.01', '1.05', '5.07'].flatMap((text, at) =>
    standing(`bore.${at + 1}`, text, text),
  );
  const apart = (layout: EngineType['layout'], place: string) => {
    const vee: EngineType = {
      ...engine,
      layout,
      cylinders: 6,
      places: new Map([...engine.places, ...bores.map((bore) => [bore.id, bore] as const)]),
    };
    return judge(layOut(vee, heights, [dial]), nextDoor.name, place).value?.value;
  };

  it('are those next in the same bank: four millimetres between the banks are nothing to them', () => {
    expect(apart('vee', 'bore.1')).toBeCloseTo(0.02, 6);
    expect(apart('vee', 'bore.3')).toBeCloseTo(0.03, 6);
    expect(apart('vee', 'bore.6')).toBeCloseTo(0.06, 6);
  });

  it('are those next in number where the engine is in line', () => {
    expect(apart('in line', 'bore.1')).toBeCloseTo(4, 6);
  });
});
