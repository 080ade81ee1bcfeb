/** @module Pictures of the sums of power and fuel: measured, brought to other air, declared, on one line. */
import { quantityOf } from '../../reckon/reckoning.ts';
import { figure, numberLine } from '../number-line.ts';
import { sideBySide } from '../side-by-side.ts';
import { lettered, numberIn, type Picture } from './picture.ts';

const spreadOf = (u: number | undefined): number => 1.96 * (u ?? 0);

export const powerCorrectionPicture: Picture = (given, reckoned) => {
  const measured = quantityOf(given, 'power').value / 1000;
  const corrected = numberIn(reckoned, 'corrected');
  return numberLine({
    title: 'Power as measured and in reference air',
    description: `Measured ${figure(measured, 2)} kW, corrected ${lettered(reckoned, 'corrected')}, factor ${lettered(reckoned, 'factor')}.`,
    unit: 'kW',
    stretches: [
      {
        from: 0.9 * measured,
        to: 1.1 * measured,
        words: 'factors 0.9 to 1.1, where the standard holds',
        hatch: 'wide',
      },
    ],
    marks: [
      { at: measured, words: `measured ${figure(measured, 2)}` },
      {
        at: corrected,
        words: `corrected ${figure(corrected, 2)}`,
        strong: true,
        spread: spreadOf(reckoned.results.corrected?.u),
      },
    ],
  });
};

export const fuelConsumptionPicture: Picture = (given, reckoned) => {
  const [measured, site] = [numberIn(reckoned, 'measured'), numberIn(reckoned, 'site-consumption')];
  const declared = quantityOf(given, 'declared-consumption').value;
  const [power, declaredPower] = ['power', 'declared-power'].map(
    (key) => quantityOf(given, key).value / 1000,
  ) as [number, number];
  const sitePower = numberIn(reckoned, 'site-power');
  const fuel = numberLine({
    title: 'Specific fuel consumption',
    description: `Measured ${lettered(reckoned, 'measured')}, at this site by the standard ${lettered(reckoned, 'site-consumption')}.`,
    unit: 'g/(kW·h)',
    marks: [
      { at: declared, words: `declared ${figure(declared, 1)}` },
      { at: site, words: `at this site ${figure(site, 1)}` },
      {
        at: measured,
        words: `measured ${figure(measured, 1)}`,
        strong: true,
        spread: spreadOf(reckoned.results.measured?.u),
      },
    ],
  });
  const powers = numberLine({
    title: 'Power',
    description: `Declared ${figure(declaredPower, 2)} kW, at this site ${lettered(reckoned, 'site-power')}.`,
    unit: 'kW',
    marks: [
      { at: declaredPower, words: `declared ${figure(declaredPower, 2)}` },
      { at: sitePower, words: `at this site ${figure(sitePower, 2)}`, strong: true },
      { at: power, words: `measured ${figure(power, 2)}` },
    ],
  });
  return sideBySide('Fuel and power at this site', [fuel, powers], 1);
};
