/** @module The oil film of a bearing against worked examples, and the way it turns when clearance, load or oil change. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { reckonByName } from './list.ts';
import { gradeOil, readOil, walther } from './oil.ts';
import { type Bearing, oilFilm } from './oil-film.ts';

const inch = 25.4;
const poundForce = 4.4482216152605;
const microreyn = 6.894757e-3;

/** An oil that stays as it is, whatever its temperature: but for a breath, so that the temperature is found. */
const thick = (pascalSeconds: number) => (celsius: number) => pascalSeconds * Math.exp(-1e-7 * celsius);

const ask = (texts: Readonly<Record<string, string>>) =>
  reckonByName('oil-film', {
    diameter: '55mm',
    length: '27.5mm',
    clearance: '0.065mm',
    load: '4kN',
    speed: '1500rpm',
    oil: '105 mm²/s at 40 °C, 14 mm²/s at 100 °C',
    inlet: '75°C',
    ...texts,
  });

const resultOf = (texts: Readonly<Record<string, string>>, key: string): number =>
  Number(known(ask(texts)).results[key]?.value);

describe('an oil film', () => {
  it('is that of the worked examples of a handbook', () => {
    // source: Shigley, Mechanical Engineering Design, Examples 12-1 to 12-4: 500 lbf, 30 rev/s, 4 µreyn, radius and
    // length 0.75 and 1.5 in, radial clearance 0.0015 in; read from charts, hence 3 %
    const bearing: Bearing = {
      diameter: 1.5 * inch,
      length: 1.5 * inch,
      clearance: 0.003 * inch,
      load: 500 * poundForce,
      speed: 1800,
      inlet: 20,
    };
    const film = known(oilFilm(bearing, thick(4 * microreyn)));
    const shigley = (what: string) =>
      outsideCheck('oil-film', `Shigley, Examples 12-1 to 12-4: ${what}`, '%', 3);
    shigley('Sommerfeld number')(film.figures.sommerfeld, 0.135);
    shigley('least film')(film.leastFilm / inch, 0.00063);
    shigley('friction torque')(film.drag / (poundForce * inch * 1e-3), 2.62);
    shigley('side flow')(film.figures.sideFlow, 0.655);
    shigley('flow')(film.figures.flow, 4.28);
    shigley('greatest pressure')(film.greatestPressure / 6894.757, 529);
  });

  it('has the load, torque and power of a bearing in a textbook and the Sommerfeld number of a lecture note', () => {
    // source: Mott, Machine Elements in Mechanical Design, journal bearing: 1500 lbf, 850 rev/min, D = L = 2.5 in, radial
    // clearance 0.0015 in, 3.3 µreyn
    const mott = known(
      oilFilm(
        {
          diameter: 2.5 * inch,
          length: 2.5 * inch,
          clearance: 0.003 * inch,
          load: 1500 * poundForce,
          speed: 850,
          inlet: 20,
        },
        thick(3.3 * microreyn),
      ),
    );
    outsideCheck(
      'oil-film',
      'Mott, journal bearing: friction torque',
      '%',
      2,
    )(mott.drag / (poundForce * inch * 1e-3), 7.88);
    outsideCheck('oil-film', 'Mott, journal bearing: power', '%', 2)(mott.lost / 745.7, 0.106);
    // source: Plymouth University, lecture note: 2500 N, 30 rev/s, D = L = 40 mm, radial clearance 0.04 mm, 0.0275 Pa·s
    const note = known(
      oilFilm(
        { diameter: 40, length: 40, clearance: 0.08, load: 2500, speed: 1800, inlet: 20 },
        thick(0.0275),
      ),
    );
    outsideCheck(
      'oil-film',
      'Plymouth University, lecture note: mean pressure',
      'MPa',
      0.005,
    )(note.meanPressure / 1e6, 1.5625);
    outsideCheck(
      'oil-film',
      'Plymouth University, lecture note: Sommerfeld number',
      '%',
      0.5,
    )(note.figures.sommerfeld, 0.132);
  });

  it('carries its own heat away: friction is what the leaving oil has taken up', () => {
    const { results } = known(ask({}));
    const { flow, sommerfeld } = known(
      oilFilm(
        { diameter: 55, length: 27.5, clearance: 0.065, load: 4000, speed: 1500, inlet: 75 },
        known(readOil('105 mm²/s at 40 °C, 14 mm²/s at 100 °C')),
      ),
    ).figures;
    expect(sommerfeld).toBeCloseTo(Number(results.sommerfeld?.value), 5);
    const [leaving = 0, rise = 0, lost = 0] = ['oil-leaving', 'temperature-rise', 'power-lost'].map((key) =>
      Number(results[key]?.value),
    );
    // All flow, less half of what leaves at the edges, takes the whole rise.
    const inflow = flow * 27.5e-3 * 0.0325e-3 * 25 * 27.5e-3;
    expect((inflow - (leaving * 1e-6) / 60 / 2) * 1.7e6 * rise).toBeCloseTo(lost, 2);
    expect(Number(results['oil-temperature']?.value)).toBeCloseTo(75 + rise / 2, 3);
  });

  it('thins under more load, warms at more speed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 900, max: 2400 }), (load, speed) => {
        const texts = { load: `${load}kN`, speed: `${speed}rpm` };
        expect(resultOf({ ...texts, load: `${load + 1}kN` }, 'least-film')).toBeLessThan(
          resultOf(texts, 'least-film'),
        );
        expect(resultOf({ ...texts, speed: `${speed + 100}rpm` }, 'oil-temperature')).toBeGreaterThan(
          resultOf(texts, 'oil-temperature'),
        );
      }),
      { numRuns: 6 },
    );
  });

  it('leaks more through a wider gap, and is set beside others', () => {
    const { results } = known(ask({ compare: '0.040, 0.140 mm' }));
    const leak = (key: string) => Number(results[key]?.value);
    expect(leak('at-0.04-mm.oil-leaving')).toBeLessThan(leak('oil-leaving'));
    expect(leak('at-0.14-mm.oil-leaving')).toBeGreaterThan(leak('oil-leaving'));
    expect(leak('at-0.04-mm.oil-temperature')).toBeGreaterThan(leak('at-0.14-mm.oil-temperature'));
  });

  it('carries what is not known of its inputs', () => {
    const spread = (clearance: string) => known(ask({ clearance })).results['oil-leaving']?.u;
    expect(spread('0.065mm')).toBeUndefined();
    const [one = 0, two = 0] = [spread('0.065 ± 0.002 mm'), spread('0.065 ± 0.004 mm')];
    expect(two / one).toBeCloseTo(2, 1);
    // the leak grows as the gap does: its slope by two clearances
    const slope =
      (resultOf({ clearance: '0.066mm' }, 'oil-leaving') -
        resultOf({ clearance: '0.064mm' }, 'oil-leaving')) /
      0.002;
    expect(one / ((slope * 0.002) / 1.959964)).toBeCloseTo(1, 2);
  });

  it.each([
    [{ load: '0N' }, 'load'],
    [{ length: '300mm' }, 'length, diameter'],
    [{ clearance: '2mm' }, 'clearance'],
    [{ load: '900kN' }, 'load, speed, clearance'],
    [{ load: '0.01N' }, 'load, speed, clearance'],
    [{ oil: 'SAE 15W-40' }, 'oil'],
    [{ oil: '14 mm²/s at 40 °C, 105 mm²/s at 100 °C' }, 'oil=14 mm²/s at 40 °C, 105 mm²/s at 100 °C'],
    [{ oil: 'butter' }, 'oil=butter'],
    [{ inlet: '400°C' }, 'inlet'],
    [{ load: '4 mm' }, 'load=4 mm'],
    [{ compare: '0.04, 9 mm' }, 'compare, 9'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});

describe('an oil', () => {
  it('thins along the line of ASTM D341', () => {
    // source: ASTM D341 by a worked example: 32 mm²/s at 40 °C and 5.4 at 100 °C are 8.53 at 80 °C
    const at = walther({ viscosity: 32, celsius: 40 }, { viscosity: 5.4, celsius: 100 });
    outsideCheck('oil-film', 'ASTM D341, worked example', 'mm²/s', 0.005)(at(80), 8.53);
    expect(at(40)).toBeCloseTo(32, 9);
    expect(at(100)).toBeCloseTo(5.4, 9);
  });

  it('of a grade is that of the fit', () => {
    // source: A. Seireg and S. Dandage (1982): SAE 30 at 160 °F 2.92 µreyn, SAE 40 3.93 µreyn
    const near = outsideCheck(
      'oil-film',
      'A. Seireg and S. Dandage (1982), SAE 30 and 40 at 160 °F',
      '%',
      0.5,
    );
    const celsius = (160 - 32) / 1.8;
    near(known(gradeOil('30'))(celsius) / microreyn, 2.92);
    near(known(gradeOil('40'))(celsius) / microreyn, 3.93);
  });
});
