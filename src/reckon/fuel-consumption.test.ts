/** @module Power and fuel at a site against figures reckoned apart by ISO 3046-1. */
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { reckonByName } from './list.ts';
import { saturationPressure } from './moist-air.ts';
import { engineKinds, fuelAdjustment, indicatedRatio, powerAdjustment } from './site-power.ts';

const given = {
  power: '40kW',
  fuel: '1kg',
  time: '6min',
  'declared-power': '48kW',
  'declared-consumption': '235g/kWh',
  engine: 'naturally aspirated, limited by air',
  pressure: '90kPa',
  temperature: '35°C',
  humidity: '30%',
};
const ask = (texts: Readonly<Record<string, string>>) =>
  reckonByName('fuel-consumption', { ...given, ...texts });

describe('power and fuel at a site', () => {
  it('are adjusted as the standard’s formulae have it', () => {
    // source: ISO 3046-1 formulae reckoned apart (no printed example at hand): 90 kPa, vapour 1.5 kPa, 308 K:
    // k 0.8721, α 0.8497; 95 kPa, 3.0 kPa, 313 K: 0.8957, 0.8774; mechanical efficiency 0.80
    const apart = outsideCheck(
      'fuel-consumption',
      'ISO 3046-1, k and α at two sites, reckoned apart',
      '1',
      1e-4,
    );
    for (const [pressure, vapour, kelvin, ratio, alpha] of [
      [90e3, 1500, 308, 0.8721, 0.8497],
      [95e3, 3000, 313, 0.8957, 0.8774],
    ] as const) {
      const air = { pressure, vapour, temperature: kelvin - 273.15, coolant: 0 };
      const k = indicatedRatio('naturally aspirated, limited by air', air);
      apart(k, ratio);
      apart(powerAdjustment(k, 0.8), alpha);
    }
  });

  it('agree with another program’s evaluation, charge cooler and all', () => {
    const { results } = known(
      ask({ engine: 'turbocharged, charge cooled', coolant: '36°C', efficiency: '85%' }),
    );
    const k = '(90 / 100) ^ 0.7 * (298 / 308.15) ^ 1.2 * (298 / 309.15)';
    const alpha = `(${k} - 0.7 * (1 - ${k}) * (1 / 0.85 - 1))`;
    const program = outsideCheck('fuel-consumption', 'mathjs, the formulae of ISO 3046-1', '%', 1e-8);
    program(Number(results['site-power']?.value), evaluate(`48 * ${alpha}`));
    program(Number(results['site-consumption']?.value), evaluate(`235 * ${k} / ${alpha}`));
    program(Number(results.measured?.value), evaluate('number(1000 g / (40 kW * 6 minute), g / (kW h))'));
  });

  it('stay as declared at reference conditions', () => {
    const vapour = 1e3 / saturationPressure(24.85);
    for (const engine of engineKinds) {
      const { results } = known(
        ask({
          engine,
          pressure: '100kPa',
          temperature: '298K',
          humidity: String(vapour),
          coolant: '298K',
        }),
      );
      expect(results['site-power']?.value).toBeCloseTo(48, 6);
      expect(results['site-consumption']?.value).toBeCloseTo(235, 6);
    }
  });

  it('fall in power and rise in fuel as the air gets thinner', () => {
    const at = (pressure: number) =>
      indicatedRatio('turbocharged', { pressure, vapour: 1e3, temperature: 25, coolant: 25 });
    expect(at(80e3)).toBeLessThan(at(90e3));
    expect(fuelAdjustment(at(80e3), 0.8)).toBeGreaterThan(fuelAdjustment(at(90e3), 0.8));
  });

  it('say where more is drawn than the site lets it give, or where it could give more', () => {
    expect(known(ask({ power: '60kW' })).notes.join()).toContain('overloaded');
    expect(known(ask({ pressure: '105kPa', temperature: '10°C' })).notes.join()).toContain(
      'unless its maker agrees',
    );
  });

  it('carry how well fuel and power are known', () => {
    const { measured } = known(ask({ fuel: '1±0.01kg', power: '40±0.4kW' })).results;
    expect(Number(measured?.u) / 250).toBeCloseTo((Math.SQRT2 * 0.01) / 1.959964, 5);
  });

  it.each([
    [{ 'declared-consumption': '2g/kWh' }, 'declared-consumption'],
    [{ 'declared-power': '0kW' }, 'declared-power'],
    [{ efficiency: '20%' }, 'efficiency'],
    [{ engine: 'turbocharged, charge cooled' }, 'coolant'],
    [{ coolant: '120°C' }, 'coolant'],
    [{ power: '40N·m' }, 'power=40N·m'],
    [{ temperature: '70°C' }, 'temperature'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
