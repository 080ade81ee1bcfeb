/** @module Specific fuel consumption as measured, against what is declared brought to the air of the site. */
import { formatFigure } from '../quantity/figure.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { certain, propagate, type Uncertain } from '../quantity/uncertain.ts';
import { airInputs, misgivenAir } from './air-given.ts';
import { quantityInput, textInput } from './inputs.ts';
import { saturationPressure } from './moist-air.ts';
import { quantityOf, type Reckoning, result, type Values } from './reckoning.ts';
import { engineKinds, fuelAdjustment, indicatedRatio, powerAdjustment } from './site-power.ts';

const inputs = [
  quantityInput('power', 'power', 'power measured', 'above 0', '42.0±0.5kW'),
  quantityInput('fuel', 'mass', 'fuel weighed while it ran so', 'above 0', '1.020±0.005kg'),
  quantityInput('time', 'time', 'time in which it burnt', 'above 0', '6min'),
  quantityInput('declared-power', 'power', 'power at reference conditions, as declared', 'above 0', '48kW'),
  quantityInput(
    'declared-consumption',
    'mass-per-energy',
    'specific consumption at reference conditions, as declared for this load',
    '100 to 1000 g/(kW·h)',
    '235g/(kW·h)',
  ),
  textInput('engine', 'how it breathes, and what limits its power', 'naturally aspirated, limited by air', {
    oneOf: engineKinds,
  }),
  ...airInputs,
  quantityInput(
    'coolant',
    'temperature',
    'coolant into the charge cooler, if it has one',
    '0 to 80 °C',
    '30°C',
    {
      optional: true,
    },
  ),
  quantityInput(
    'efficiency',
    'ratio',
    'mechanical efficiency; the standard takes 80 % where none is stated',
    '50 to 100 %',
    '80%',
    { unlessGiven: '80 %' },
  ),
];

const misgiven = (values: Values): Answer<never> | undefined => {
  const empty = ['power', 'fuel', 'time', 'declared-power'].find(
    (key) => !(quantityOf(values, key).value > 0 && quantityOf(values, key).value < 1e12),
  );
  if (empty !== undefined) return refuse('it is out of range', empty, 'give it above 0, with its unit');
  const declared = quantityOf(values, 'declared-consumption').value;
  if (!(declared >= 100 && declared <= 1000))
    return refuse(
      'no engine burns so little or so much: a diesel is about 200 to 350 g/(kW·h)',
      'declared-consumption',
      'give 100 to 1000 g/(kW·h)',
    );
  const efficiency = quantityOf(values, 'efficiency').value;
  if (!(efficiency >= 0.5 && efficiency <= 1))
    return refuse('no engine that runs has it', 'efficiency', 'give 50 to 100 %');
  const coolant = values.quantities.coolant?.value;
  if (values.texts.engine === 'turbocharged, charge cooled' && coolant === undefined)
    return refuse('the temperature of the charge coolant is missing', 'coolant', 'add it, for example 30°C');
  if (coolant !== undefined && !(coolant >= 0 && coolant <= 80))
    return refuse('it is out of range: it would freeze or boil', 'coolant', 'give 0 to 80 °C');
  return misgivenAir(values);
};

export const fuelConsumptionReckoning: Reckoning = {
  name: 'fuel-consumption',
  title: 'Power and specific fuel consumption at a site against those declared, by ISO 3046-1',
  inputs,
  formula:
    'k = ((px − a φx psx) / (pr − a φr psr))^m (Tr / Tx)^n (Tcr / Tcx)^s; α = k − 0.7 (1 − k)(1 / ηm − 1); site power = α × declared; site consumption = (k / α) × declared; measured = fuel / (power × time)',
  source:
    'ISO 3046-1 (reference: 100 kPa of which 1 kPa vapour, 298 K, charge coolant 298 K; exponents from memory); vapour: A. L. Buck 1981, 1996',
  reckon: (values) => {
    const wrong = misgiven(values);
    if (wrong !== undefined) return wrong;
    const kind = engineKinds.find((each) => each === values.texts.engine) ?? 'turbocharged';
    const keys = ['pressure', 'temperature', 'humidity', 'efficiency'];
    const air: readonly Uncertain[] = [
      ...keys.map((key) => quantityOf(values, key)),
      values.quantities.coolant ?? certain(0),
    ];
    const kOf = ([pressure = 0, temperature = 0, humidity = 0, , coolant = 0]: readonly number[]) =>
      indicatedRatio(kind, {
        pressure,
        vapour: humidity * saturationPressure(temperature),
        temperature,
        coolant,
      });
    const alphaOf = (of: readonly number[]) => powerAdjustment(kOf(of), of[3] ?? 1);
    const betaOf = (of: readonly number[]) => fuelAdjustment(kOf(of), of[3] ?? 1);
    if (!(alphaOf(air.map(({ value }) => value)) > 0.1))
      return refuse('in such air next to nothing is left of the power', 'pressure', 'check the air as given');
    const measuredOf = ([power = 1, fuel = 0, time = 1]: readonly number[]) =>
      (fuel * 1000) / ((power / 1000) * time);
    const burnt = ['power', 'fuel', 'time'].map((key) => quantityOf(values, key));
    const declared = quantityOf(values, 'declared-consumption');
    const k = propagate(kOf, air);
    if (k.kind === 'refused') return k;
    const alpha = propagate(alphaOf, air);
    if (alpha.kind === 'refused') return alpha;
    const sitePower = propagate(
      ([power = 0, ...of]) => power * alphaOf(of),
      [quantityOf(values, 'declared-power'), ...air],
    );
    if (sitePower.kind === 'refused') return sitePower;
    const siteFuel = propagate(([fuel = 0, ...of]) => fuel * betaOf(of), [declared, ...air]);
    if (siteFuel.kind === 'refused') return siteFuel;
    const measured = propagate(measuredOf, burnt);
    if (measured.kind === 'refused') return measured;
    const over = propagate(
      ([power = 1, fuel = 0, time = 1, base = 1, ...of]) =>
        measuredOf([power, fuel, time]) / (base * betaOf(of)) - 1,
      [...burnt, declared, ...air],
    );
    if (over.kind === 'refused') return over;
    const load = quantityOf(values, 'power').value / sitePower.value.value;
    return answer({
      results: {
        measured: result(measured.value, 'g/(kW·h)'),
        'site-consumption': result(siteFuel.value, 'g/(kW·h)'),
        'measured-over-site': result(over.value, '%', 100),
        'site-power': result(sitePower.value, 'kW', 1e-3),
        'load-of-site-power': { value: Number((100 * load).toPrecision(6)), unit: '%' },
        k: result(k.value, '1'),
        alpha: result(alpha.value, '1'),
      },
      notes: [
        'Both consumptions hold for fuel of one heating value: the standard’s is 42,700 kJ/kg, lower.',
        ...(k.value.value > 1
          ? [
              'The air is better than the reference: the engine may give more, but is not to be set to it unless its maker agrees.',
            ]
          : []),
        ...(load > 1.1
          ? [
              `It gave ${formatFigure(100 * load, 0)} % of what the air of the site lets it: it is overloaded, or a figure is wrong.`,
            ]
          : []),
      ],
    });
  },
};
