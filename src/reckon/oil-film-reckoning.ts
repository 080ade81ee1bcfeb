/** @module The oil film asked for by name: one clearance with what is not known of it, others beside it. */
import { formatFigure } from '../quantity/figure.ts';
import { type Answer, answer, type Refusal, refuse } from '../quantity/refusal.ts';
import { lengthOf } from '../quantity/typed.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { lengthRows } from './length-list.ts';
import { type Oil, readOil } from './oil.ts';
import { type Bearing, type OilFilm, oilFilm } from './oil-film.ts';
import { quantityOf, type Reckoning, type Result, type Values } from './reckoning.ts';

const sizes = ['diameter', 'length', 'clearance', 'load', 'speed', 'inlet'] as const;

/** No bearing runs with less than a hundred-thousandth of its diameter, or with more than a fiftieth. */
const clearanceTrouble = (clearance: number, diameter: number, where: string): Refusal | undefined =>
  clearance >= 1e-5 * diameter && clearance <= 0.02 * diameter
    ? undefined
    : {
        what: `a clearance of ${clearance} mm is no bearing clearance on ${diameter} mm`,
        where,
        remedy: 'give it on the diameter, at most a fiftieth of it: a unit or a decimal may be wrong',
      };

/** The bearing that was asked about, or which figure is out of range. */
const bearingGiven = (values: Values): Answer<Bearing> => {
  const [diameter = 0, length = 0, clearance = 0, load = 0, speed = 0, inlet = 0] = sizes.map(
    (key) => quantityOf(values, key).value,
  );
  const small = { diameter, length, clearance, load, speed };
  for (const [key, value] of Object.entries(small)) {
    if (!(value > 0 && value < 1e7)) return refuse(`${key} must be above 0`, key, 'give it with its unit');
  }
  if (length < 0.1 * diameter || length > 4 * diameter) {
    return refuse(
      'the bearing is too short or too long for its diameter',
      'length, diameter',
      'give a length of 0.1 to 4 diameters, without the oil groove',
    );
  }
  const narrow = clearanceTrouble(clearance, diameter, 'clearance');
  if (narrow) return { kind: 'refused', refusal: narrow };
  if (inlet < -30 || inlet > 200) {
    return refuse('no oil is pumped at that temperature', 'inlet', 'give -30 °C to 200 °C');
  }
  return answer({ diameter, length, clearance, load, speed, inlet });
};

type Shown = readonly [key: string, unit: string, of: (film: OilFilm) => number];

const shown: readonly Shown[] = [
  ['least-film', 'mm', ({ leastFilm }) => leastFilm],
  ['eccentricity', '1', ({ eccentricity }) => eccentricity],
  ['attitude', 'deg', ({ figures }) => (figures.attitude * 180) / Math.PI],
  ['oil-temperature', '°C', ({ temperature }) => temperature],
  ['temperature-rise', 'K', ({ rise }) => rise],
  ['viscosity', 'mPa·s', ({ viscosity }) => viscosity * 1000],
  ['oil-leaving', 'mL/min', ({ leak }) => (leak * 60) / 1000],
  ['friction-torque', 'N·m', ({ drag }) => drag],
  ['power-lost', 'W', ({ lost }) => lost],
  ['mean-pressure', 'MPa', ({ meanPressure }) => meanPressure / 1e6],
  ['greatest-pressure', 'MPa', ({ greatestPressure }) => greatestPressure / 1e6],
  ['sommerfeld', '1', ({ figures }) => figures.sommerfeld],
];
const compared = new Set(['least-film', 'oil-temperature', 'oil-leaving', 'power-lost']);

/** Half the difference between an input a standard uncertainty up and down, for each input that has one (JCGM 100, 5.1.3, note 2). */
const spreads = (values: Values, bearing: Bearing, oil: Oil): ReadonlyMap<string, number> => {
  const squares = new Map<string, number>();
  for (const key of sizes) {
    const u = standardUncertainty(quantityOf(values, key));
    if (u === 0) continue;
    const [up, down] = [1, -1].map((way) => oilFilm({ ...bearing, [key]: bearing[key] + way * u }, oil));
    if (up?.kind !== 'answer' || down?.kind !== 'answer') continue;
    for (const [name, , of] of shown)
      squares.set(name, (squares.get(name) ?? 0) + ((of(up.value) - of(down.value)) / 2) ** 2);
  }
  return new Map([...squares].map(([name, square]) => [name, Math.sqrt(square)]));
};

const figures = (value: number): number => Number(value.toPrecision(6));

/** Turning oil stays in layers below this (G. I. Taylor, 1923), gap and speed taken at the radius. */
const isTurbulent = (bearing: Bearing, film: OilFilm): boolean => {
  const [radius, gap] = [bearing.diameter / 2, bearing.clearance / 2];
  const surface = (2 * Math.PI * bearing.speed * radius) / 60 / 1000;
  return (870 * surface * (gap / 1000)) / film.viscosity > 41.1 * Math.sqrt(radius / gap);
};

const notesOn = (bearing: Bearing, film: OilFilm): readonly string[] => {
  const floor = 0.005 + 0.00004 * bearing.diameter;
  return [
    ...(film.leastFilm < floor
      ? [
          `A film below ${formatFigure(floor, 4)} mm is thinner than designers allow for a bearing of this diameter (0.005 mm and 0.00004 of the diameter).`,
        ]
      : []),
    ...(film.temperature > 121 ? ['Oil above 121 °C ages fast and films fail.'] : []),
    ...(isTurbulent(bearing, film) ? ['The flow is no longer in layers: this sum does not hold.'] : []),
    'A steady load on a full, round, aligned bearing fed at its widest gap. An engine’s load turns and beats: compare clearances by this, and rate no engine.',
  ];
};

export const oilFilmReckoning: Reckoning = {
  name: 'oil-film',
  title: 'Oil film of a plain bearing under a steady load: thickness, flow, friction, heat',
  inputs: [
    {
      kind: 'quantity',
      key: 'diameter',
      title: 'journal diameter',
      dimension: 'length',
      range: 'above 0',
      example: '55mm',
    },
    {
      kind: 'quantity',
      key: 'length',
      title: 'bearing length that carries',
      dimension: 'length',
      range: '0.1 to 4 diameters',
      example: '27.5mm',
    },
    {
      kind: 'quantity',
      key: 'clearance',
      title: 'clearance, on the diameter',
      dimension: 'length',
      range: 'above 0, to a fiftieth of the diameter',
      example: '0.065±0.005mm',
    },
    {
      kind: 'quantity',
      key: 'load',
      title: 'steady load',
      dimension: 'force',
      range: 'above 0',
      example: '4kN',
    },
    {
      kind: 'quantity',
      key: 'speed',
      title: 'speed',
      dimension: 'speed',
      range: 'above 0',
      example: '1500rpm',
    },
    {
      kind: 'text',
      key: 'oil',
      title: 'oil: a single grade, or two figures of its data sheet',
      range: 'SAE 10 to SAE 60; or two viscosities with their temperatures',
      example: '105 mm²/s at 40 °C, 14 mm²/s at 100 °C',
    },
    {
      kind: 'quantity',
      key: 'inlet',
      title: 'temperature of the oil as it comes',
      dimension: 'temperature',
      range: '-30 °C to 200 °C',
      example: '75°C',
    },
    {
      kind: 'text',
      key: 'compare',
      title: 'other clearances to set beside it: as new, as found, as planned',
      range: 'up to six, with commas between',
      example: '0.040, 0.090, 0.140 mm',
      optional: true,
    },
  ],
  formula:
    '∂/∂θ (H³ ∂p/∂θ) + (R/L)² ∂/∂ζ (H³ ∂p/∂ζ) = 6 dH/dθ, H = 1 + ε cos θ, p ≥ 0 (Reynolds condition); S = (R/c)² µ N / P; rise = friction power / (ρ c Q (1 − Qs / 2 Q)); log log (ν + 0.7) = A − B log T',
  source: 'O. Reynolds (1886); A. A. Raimondi and J. Boyd (1958); ASTM D341; A. Seireg and S. Dandage (1982)',
  reckon: (values) => {
    const bearing = bearingGiven(values);
    if (bearing.kind === 'refused') return bearing;
    const oil = readOil(values.texts.oil ?? '');
    if (oil.kind === 'refused') return oil;
    const film = oilFilm(bearing.value, oil.value);
    if (film.kind === 'refused') return film;
    const spread = spreads(values, bearing.value, oil.value);
    const results: Record<string, Result> = Object.fromEntries(
      shown.map(([key, unit, of]) => {
        const u = spread.get(key);
        const value = figures(of(film.value));
        return [
          key,
          u === undefined || u < 1e-9 * Math.abs(value) ? { value, unit } : { value, unit, u: figures(u) },
        ];
      }),
    );
    const others =
      values.texts.compare === undefined ? answer([]) : lengthRows('compare', values.texts.compare);
    if (others.kind === 'refused') return others;
    const beside = others.value.flat();
    if (beside.length > 6) return refuse('too many clearances to compare', 'compare', 'give six at most');
    for (const typed of beside) {
      const clearance = lengthOf(typed);
      if (clearance.kind === 'refused') return clearance;
      const trouble = clearanceTrouble(clearance.value, bearing.value.diameter, `compare, ${typed.text}`);
      if (trouble) return { kind: 'refused', refusal: trouble };
      const other = oilFilm({ ...bearing.value, clearance: clearance.value }, oil.value);
      if (other.kind === 'refused')
        return refuse(other.refusal.what, `compare, ${typed.text}`, other.refusal.remedy);
      for (const [key, unit, of] of shown)
        if (compared.has(key))
          results[`at-${clearance.value}-mm.${key}`] = { value: figures(of(other.value)), unit };
    }
    return answer({ results, notes: notesOn(bearing.value, film.value) });
  },
};
