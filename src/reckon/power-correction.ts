/** @module Measured diesel power brought to reference air. */
import { formatFigure } from '../quantity/figure.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { certain, propagate, type Uncertain } from '../quantity/uncertain.ts';
import { airInputs, misgivenAir } from './air-given.ts';
import { quantityInput, textInput } from './inputs.ts';
import { dryPressure } from './moist-air.ts';
import { quantityOf, type Reckoning, result, type Values } from './reckoning.ts';

/** Exponents of (99 kPa / dry pressure) and (T / 298 K). source: ISO 1585, SAE J1349; the last from memory. */
const breathing = {
  'naturally aspirated': [1, 0.7],
  turbocharged: [0.7, 1.5],
  'turbocharged, charge cooled by liquid': [0.7, 0.7],
} as const;
const engines = Object.keys(breathing) as readonly (keyof typeof breathing)[];

/** Where the engine factor stops falling with the fuel: the editions differ. */
const plateaus = {
  '0.3 up to 40 (ISO 1585:1992)': { until: 40, factor: 0.3 },
  '0.2 up to 37.2 (SAE J1349 and later)': { until: 37.2, factor: 0.2 },
} as const;
const editions = Object.keys(plateaus) as readonly (keyof typeof plateaus)[];

/**
 * Atmospheric factor of a diesel engine.
 *
 * fa = (99 kPa / pd)^m (T / 298 K)^n; m, n = 1, 0.7 naturally aspirated; 0.7, 1.5 turbocharged; 0.7, 0.7 with a
 * charge cooler that is cooled by liquid
 *
 * @param engine       how it breathes
 * @param dry          pressure of the dry air, Pa, above 0
 * @param temperature  of the air at the inlet, °C
 * @returns 1 at 99 kPa and 24.85 °C, more in thin or hot air
 * @source  ISO 1585, SAE J1349 (compression ignition)
 * @example atmosphericFactor('naturally aspirated', 95000, 34.85) // 1.0665
 */
export const atmosphericFactor = (
  engine: keyof typeof breathing,
  dry: number,
  temperature: number,
): number => {
  const [m, n] = breathing[engine];
  return (99e3 / dry) ** m * ((temperature + 273.15) / 298) ** n;
};

/**
 * Engine factor: how strongly the air acts, by the fuel that is burnt in it.
 *
 * fm = 0.036 qc − 1.14 up to 65, 1.2 above; below the plateau of the edition the factor of that plateau
 *
 * @param fuel     qc: fuel for each litre and cycle over the pressure ratio of the charger, mg/L
 * @param edition  of the lower plateau
 * @returns 0.2 to 1.2
 * @source  ISO 1585:1992 (0.3 up to 40 mg/L); SAE J1349 (0.2 up to 37.2 mg/L)
 * @example engineFactor(50, '0.3 up to 40 (ISO 1585:1992)') // 0.66
 */
export const engineFactor = (fuel: number, edition: keyof typeof plateaus): number => {
  const { until, factor } = plateaus[edition];
  if (fuel < until) return factor;
  return fuel > 65 ? 1.2 : 0.036 * fuel - 1.14;
};

/**
 * Fuel for each litre of displacement and working cycle, over the pressure ratio of the charger.
 *
 * @param flow          fuel, kg/h
 * @param displacement  of all cylinders, mm³, above 0
 * @param speed         rpm, above 0
 * @param strokes       4 or 2
 * @param boost         charge pressure over that of the air, absolute; 1 without a charger
 * @returns qc, mg/L
 * @source  ISO 1585, SAE J1349: q = 120,000 × flow in g/s / (litres × rpm) for four strokes
 * @example fuelForEachLitre(12, 4e6, 2000, 4, 1) // 50 mg/L
 */
export const fuelForEachLitre = (
  flow: number,
  displacement: number,
  speed: number,
  strokes: 4 | 2,
  boost: number,
): number => ((strokes === 4 ? 120_000 : 60_000) * (flow / 3.6)) / ((displacement / 1e6) * speed) / boost;

const inputs = [
  quantityInput('power', 'power', 'power measured', 'above 0', '45.2±0.5kW'),
  ...airInputs,
  textInput('engine', 'how it breathes; cooled by air counts as turbocharged', 'naturally aspirated', {
    oneOf: engines,
  }),
  quantityInput('fuel', 'mass', 'fuel weighed while it ran so', 'above 0', '1.210±0.005kg'),
  quantityInput('time', 'time', 'time in which it burnt', 'above 0', '6min'),
  quantityInput('displacement', 'volume', 'of all cylinders', 'above 0', '4.0L'),
  quantityInput('speed', 'speed', 'speed of the engine', 'above 0', '2000±5rpm'),
  textInput('strokes', 'strokes of a cycle', '4', { oneOf: ['4', '2'] }),
  quantityInput(
    'boost',
    'ratio',
    'absolute charge pressure over that of the air; with a charger it must be given',
    '1 to 5',
    '1',
    { optional: true },
  ),
  textInput(
    'plateau',
    'lower end of the engine factor, which the editions draw differently',
    editions[0] ?? '',
    {
      oneOf: editions,
    },
  ),
];

const misgiven = (values: Values, engine: string): Answer<never> | undefined => {
  const empty = ['power', 'fuel', 'time', 'displacement', 'speed'].find(
    (key) => !(quantityOf(values, key).value > 0 && quantityOf(values, key).value < 1e12),
  );
  if (empty !== undefined) return refuse('it is out of range', empty, 'give it above 0, with its unit');
  const air = misgivenAir(values);
  if (air !== undefined) return air;
  const boost = values.quantities.boost?.value;
  if (boost === undefined && engine !== 'naturally aspirated')
    return refuse(
      'the pressure ratio of the charger is missing: the fuel is reckoned on the air that it gives',
      'boost',
      'give absolute charge pressure over barometer, for example boost=1.8',
    );
  return boost === undefined || (boost >= 1 && boost <= 5)
    ? undefined
    : refuse('no charger of such an engine gives that', 'boost', 'give 1 to 5');
};

export const powerCorrectionReckoning: Reckoning = {
  name: 'power-correction',
  title: 'Measured power of a diesel engine brought to reference air (99 kPa dry, 25 °C)',
  inputs,
  formula:
    'corrected = measured × fa^fm; fa = (99 kPa / pd)^m (T / 298 K)^n; fm = 0.036 qc − 1.14 between its plateaus; pd = barometer − humidity × saturation pressure; qc = fuel per litre and cycle / boost',
  source:
    'ISO 1585, SAE J1349 (compression ignition), valid for factors 0.9 to 1.1; the lower plateau by the edition chosen; vapour: A. L. Buck 1981, 1996',
  reckon: (values) => {
    const engine = engines.find((each) => each === values.texts.engine) ?? 'naturally aspirated';
    const edition = editions.find((each) => each === values.texts.plateau) ?? '0.3 up to 40 (ISO 1585:1992)';
    const wrong = misgiven(values, engine);
    if (wrong !== undefined) return wrong;
    const strokes = values.texts.strokes === '2' ? 2 : 4;
    const given: readonly Uncertain[] = [
      ...['pressure', 'temperature', 'humidity', 'fuel', 'time', 'displacement', 'speed'].map((key) =>
        quantityOf(values, key),
      ),
      values.quantities.boost ?? certain(1),
    ];
    const fuelOf = ([, , , fuel = 0, time = 1, size = 1, speed = 1, boost = 1]: readonly number[]) =>
      fuelForEachLitre(fuel / time, size, speed, strokes, boost);
    const airOf = ([pressure = 0, temperature = 0, humidity = 0]: readonly number[]) =>
      atmosphericFactor(engine, dryPressure(pressure, humidity, temperature), temperature);
    const factorOf = (of: readonly number[], by: keyof typeof plateaus) =>
      airOf(of) ** engineFactor(fuelOf(of), by);
    const fuel = propagate(fuelOf, given);
    if (fuel.kind === 'refused') return fuel;
    const air = propagate(airOf, given);
    if (air.kind === 'refused') return air;
    if (!(fuel.value.value >= 5 && fuel.value.value <= 200))
      return refuse(
        `${formatFigure(fuel.value.value, 1)} mg of fuel for each litre and cycle is out of range: a diesel burns about 10 to 120`,
        'fuel, time, displacement, speed, strokes',
        'check these and their units',
      );
    const factor = propagate((of) => factorOf(of, edition), given);
    if (factor.kind === 'refused') return factor;
    const corrected = propagate(
      ([power = 0, ...rest]) => power * factorOf(rest, edition),
      [quantityOf(values, 'power'), ...given],
    );
    if (corrected.kind === 'refused') return corrected;
    const plain = given.map(({ value }) => value);
    const other = editions.find((each) => each !== edition) ?? edition;
    const byOther = factorOf(plain, other);
    const [pressure = 0, temperature = 0] = plain;
    const beyond = factor.value.value < 0.9 || factor.value.value > 1.1;
    const odd = temperature < 10 || temperature > 40 || pressure < 80e3;
    return answer({
      results: {
        corrected: result(corrected.value, 'kW', 1e-3),
        factor: result(factor.value, '1'),
        'atmospheric-factor': result(air.value, '1'),
        'engine-factor': { value: Number(engineFactor(fuel.value.value, edition).toPrecision(6)), unit: '1' },
        'fuel-per-litre-and-cycle': result(fuel.value, 'mg/L'),
      },
      notes: [
        'Write down the power as measured beside the corrected one, the air, and the edition.',
        ...(beyond
          ? [
              'The factor lies beyond 0.9 to 1.1, where the standard holds: give the test’s air with the figure.',
            ]
          : []),
        ...(odd
          ? ['The air lies beyond what the standard tests in (10 to 40 °C, 80 kPa and more, from memory).']
          : []),
        ...(Math.abs(byOther - factor.value.value) > 5e-5
          ? [`By the other edition, ${other}, the factor is ${formatFigure(byOther, 4)}.`]
          : []),
      ],
    });
  },
};
