/** @module Cooling against worked examples of heat transfer, and the seconds before a hub grips. */
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { coolingCurve, cylinderNusselt, heatLoss } from './cooling.ts';
import { reckonByName } from './list.ts';

const hub = { bore: '49.970mm', shaft: '50.030mm', outside: '84mm', width: '40mm', 'heated-to': '240°C' };
const ask = (texts: Readonly<Record<string, string>>) => reckonByName('grip-time', { ...hub, ...texts });
const number = (texts: Readonly<Record<string, string>>, key: string) =>
  Number(known(ask(texts)).results[key]?.value);

describe('a warm hub', () => {
  it('gives its heat to still air as a cylinder does', () => {
    // source: S. W. Churchill and H. H. S. Chu (1975); Incropera: Ra 5.073e6, Pr 0.697: 23.3 printed, 23.09 recomputed
    const source = 'Incropera, horizontal cylinder, Ra 5.073e6 (Churchill and Chu 1975)';
    outsideCheck('grip-time', source, '%', 1)(cylinderNusselt(5.073e6, 0.697), 23.3);
    // recomputed: 60 mm at 150 °C in 20 °C: 7.7 W/(m²·K); radiation from 200 °C to 20 °C at 0.8: 10.8
    outsideCheck(
      'grip-time',
      'convection, recomputed from a table of air',
      '%',
      3,
    )(heatLoss(150, 20, 0.06, 0), 7.7);
    const radiated = heatLoss(200, 20, 0.06, 0.8) - heatLoss(200, 20, 0.06, 0);
    outsideCheck('grip-time', 'Stefan and Boltzmann, recomputed', '%', 0.5)(radiated, 10.8);
  });

  it('falls in temperature as any lumped part that loses heat evenly', () => {
    // Where the loss for each degree changes little, t = τ ln (start / end): a small fall, so that it does.
    const ring = { bore: 0.05, outside: 0.084, width: 0.04, heat: 500, emissivity: 0 };
    const curve = coolingCurve(ring, 200, 199, 20, undefined);
    const area =
      (Math.PI / 2) * (ring.outside ** 2 - ring.bore ** 2) +
      Math.PI * ring.width * (ring.outside + ring.bore);
    const byHand = (ring.heat / (heatLoss(199.5, 20, ring.outside, 0) * area)) * Math.log(180 / 179);
    const source = 'lumped heat, τ ln (θ₀ / θ), any text on heat transfer';
    outsideCheck('grip-time', source, '%', 0.05)(curve.at(-1)?.seconds ?? 0, byHand);
    expect(curve).toHaveLength(101);
  });

  it('grips sooner on the shaft than in the hands, later the hotter it was', () => {
    expect(number({}, 'seconds-on-shaft')).toBeLessThan(number({}, 'seconds-carried') / 5);
    expect(number({ 'heated-to': '260°C' }, 'seconds-on-shaft')).toBeGreaterThan(
      number({}, 'seconds-on-shaft'),
    );
    expect(number({ clearance: '0.02mm' }, 'seconds-on-shaft')).toBeLessThan(number({}, 'seconds-on-shaft'));
  });

  it('grips where its bore has come down to the shaft', () => {
    // by hand: 20 + 0.060 / (11.5e-6 · 49.970)
    expect(number({}, 'grips-at')).toBeCloseTo(20 + 0.06 / (11.5e-6 * 49.97), 1);
  });

  it.each([
    [{ 'heated-to': '100°C' }, 'heated-to'],
    [{ shaft: '49.9mm' }, 'bore, shaft'],
    [{ shaft: '80mm' }, 'bore, shaft'],
    [{ outside: '40mm' }, 'bore, outside, width'],
    [{ emissivity: '2' }, 'emissivity'],
    [{ room: '90°C' }, 'heated-to, room'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
