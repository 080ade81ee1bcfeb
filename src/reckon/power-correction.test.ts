/** @module Diesel power in reference air, against figures reckoned apart and published ones of moist air. */
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { reckonByName } from './list.ts';
import { dryPressure, saturationPressure } from './moist-air.ts';
import { atmosphericFactor, engineFactor, fuelForEachLitre } from './power-correction.ts';

const early = '0.3 up to 40 (ISO 1585:1992)';
const late = '0.2 up to 37.2 (SAE J1349 and later)';
const given = {
  power: '45kW',
  pressure: '95kPa',
  temperature: '35°C',
  humidity: '40%',
  engine: 'naturally aspirated',
  fuel: '1.2kg',
  time: '6min',
  displacement: '4L',
  speed: '2000rpm',
  strokes: '4',
  plateau: early,
};
const ask = (texts: Readonly<Record<string, string>>) =>
  reckonByName('power-correction', { ...given, ...texts });

describe('power in reference air', () => {
  it('comes to figures of the standards’ formulae', () => {
    // source: reckoned apart from ISO 1585 and SAE J1349: 95 kPa dry, 308 K: fa 1.0665; fuel 50 mg: 1.0434
    const apart = outsideCheck(
      'power-correction',
      'ISO 1585 and SAE J1349 at 95 kPa, 308 K and fuel of 37.2, 40, 50 and 65 mg, reckoned apart',
      '1',
      1e-3,
    );
    const fa = atmosphericFactor('naturally aspirated', 95e3, 308 - 273.15);
    apart(fa, 1.0665);
    apart(engineFactor(40, early), 0.3);
    apart(engineFactor(37.2, late), 0.199);
    apart(engineFactor(65, early), 1.2);
    apart(fa ** engineFactor(fuelForEachLitre(12, 4e6, 2000, 4, 1), early), 1.0434);
  });

  it('agrees with another program’s evaluation of the whole', () => {
    const whole = evaluate(
      '45 * ((99 / pd) ^ 0.7 * (T / 298) ^ 1.5) ^ (0.036 * (120000 * 4 / (4 * 2000)) / 1.1 * 1 - 1.14)',
      {
        pd: 95 - (0.4 * saturationPressure(35)) / 1000,
        T: 308.15,
      },
    );
    const { corrected } = known(ask({ engine: 'turbocharged', boost: '1.1', fuel: '1440g' })).results;
    outsideCheck(
      'power-correction',
      'mathjs, the formula of ISO 1585 with charger',
      'kW',
      1e-8,
    )(Number(corrected?.value), whole);
  });

  it('takes the vapour from the air as steam tables have it', () => {
    // source: steam tables (IAPWS), from memory: 10 °C 1228 Pa, 25 °C 3169 Pa, 35 °C 5629 Pa, 40 °C 7385 Pa
    const tables = outsideCheck('power-correction', 'vapour pressure: steam tables, 10 to 40 °C', '%', 0.1);
    tables(saturationPressure(10), 1228);
    tables(saturationPressure(25), 3169);
    tables(saturationPressure(35), 5629);
    tables(saturationPressure(40), 7385);
    // source: 40 CFR 1065.645, worked example: 9.5 °C, 1.186581 kPa, from memory
    tables(saturationPressure(9.5), 1186.581);
    expect(dryPressure(95e3, 0, 35)).toBe(95e3);
  });

  it('is one in reference air, whatever burns', () => {
    expect(atmosphericFactor('turbocharged', 99e3, 24.85)).toBeCloseTo(1, 12);
    for (const fuel of [20, 39, 50, 80]) expect(1 ** engineFactor(fuel, late)).toBe(1);
  });

  it('has no step where the fuel passes a plateau, but for rounding', () => {
    for (const [at, edition] of [
      [40, early],
      [37.2, late],
      [65, early],
    ] as const)
      expect(Math.abs(engineFactor(at - 1e-9, edition) - engineFactor(at + 1e-9, edition))).toBeLessThan(
        1e-3,
      );
  });

  it('says what the other edition gives, where they differ', () => {
    const poor = { fuel: '0.7kg' };
    expect(known(ask(poor)).notes.join()).toContain('By the other edition, 0.2 up to 37.2');
    expect(known(ask({})).notes.join()).not.toContain('By the other edition');
  });

  it('says where the standard no longer holds', () => {
    const { results, notes } = known(ask({ pressure: '70kPa', fuel: '1.5kg' }));
    expect(Number(results.factor?.value)).toBeGreaterThan(1.1);
    expect(notes.join()).toContain('beyond 0.9 to 1.1');
  });

  it('carries how well power and air are known', () => {
    const { corrected } = known(ask({ power: '45±0.9kW' })).results;
    expect(Number(corrected?.u) / Number(corrected?.value)).toBeCloseTo(0.02 / 1.959964, 6);
    expect(known(ask({ pressure: '95±0.5kPa' })).results.factor?.u).toBeGreaterThan(0);
  });

  it.each([
    [{ pressure: '101.3kg' }, 'pressure=101.3kg'],
    [{ pressure: '10kPa' }, 'pressure'],
    [{ temperature: '95°C' }, 'temperature'],
    [{ humidity: '140%' }, 'humidity'],
    [{ power: '0kW' }, 'power'],
    [{ engine: 'turbocharged' }, 'boost'],
    [{ boost: '9' }, 'boost'],
    [{ fuel: '30kg' }, 'fuel, time, displacement, speed, strokes'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
