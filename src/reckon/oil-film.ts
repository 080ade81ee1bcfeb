/** @module The oil film of a plain bearing that runs steadily: where the journal lies, how thin the film, how warm the oil. */
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { type FilmFigures, filmFigures } from './film-figures.ts';
import type { Oil } from './oil.ts';

export interface Bearing {
  /** mm */
  readonly diameter: number;
  /** mm */
  readonly length: number;
  /** Of the bearing over the journal, on the diameter, mm. */
  readonly clearance: number;
  /** N, steady */
  readonly load: number;
  /** Turns a minute. */
  readonly speed: number;
  /** Of the oil as it comes to the bearing, °C. */
  readonly inlet: number;
}

export interface OilFilm {
  readonly figures: FilmFigures;
  readonly eccentricity: number;
  /** mm */
  readonly leastFilm: number;
  /** Mean of the oil in the film, °C. */
  readonly temperature: number;
  /** Of the oil from coming in to leaving, °C. */
  readonly rise: number;
  /** Pa·s at that mean. */
  readonly viscosity: number;
  /** Out at both edges, mm³/s. */
  readonly leak: number;
  /** N·m at the journal. */
  readonly drag: number;
  /** W */
  readonly lost: number;
  /** Load over projected area, Pa. */
  readonly meanPressure: number;
  /** Pa */
  readonly greatestPressure: number;
}

const leastEccentricity = 0.01;
const greatestEccentricity = 0.985;
/** Heat that a cubic metre of mineral oil takes for each degree, J/(m³·K): 870 kg/m³ × 1950 J/(kg·K). */
const heatCapacity = 1.7e6;
const coldest = -40;
const hottest = 300;

/** The temperature at which an oil is so thick; oils only thin as they warm. */
const temperatureOf = (oil: Oil, viscosity: number): number => {
  let [low, high] = [coldest, hottest];
  for (let turn = 0; turn < 50; turn += 1) {
    const middle = (low + high) / 2;
    if (oil(middle) > viscosity) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

const filmAt = (bearing: Bearing, oil: Oil, eccentricity: number): OilFilm => {
  const [radius, length, gap] = [bearing.diameter / 2000, bearing.length / 1000, bearing.clearance / 2000];
  const turns = bearing.speed / 60;
  const figures = filmFigures({ eccentricity, lengthOverDiameter: bearing.length / bearing.diameter });
  const meanPressure = bearing.load / (2 * radius * length);
  const viscosity = (figures.sommerfeld * meanPressure * (gap / radius) ** 2) / turns;
  const drag = figures.friction * (gap / radius) * bearing.load * radius;
  const lost = drag * 2 * Math.PI * turns;
  const flow = figures.flow * radius * gap * turns * length;
  return {
    figures,
    eccentricity,
    leastFilm: (bearing.clearance / 2) * (1 - eccentricity),
    temperature: temperatureOf(oil, viscosity),
    rise: lost / (heatCapacity * flow * (1 - figures.sideFlow / 2)),
    viscosity,
    leak: flow * figures.sideFlow * 1e9,
    drag,
    lost,
    meanPressure,
    greatestPressure: meanPressure / figures.evenness,
  };
};

/**
 * The film of a bearing under a steady load, its oil warmed by its own friction.
 *
 * At each eccentricity the load asks for one viscosity, the viscosity for one temperature, and the friction warms the
 * oil to one temperature: the film runs where both are the same, with the mean of the oil half the rise above what
 * comes in. All heat goes with the oil; what leaves at the edges has taken half of the rise.
 *
 * @param bearing  diameter, length, clearance on the diameter, mm; load, N; speed, rpm; oil as it comes, °C; all above
 *   0, length 0.1 to 4 diameters
 * @param oil      dynamic viscosity by temperature, Pa·s at °C
 * @returns the film; refuses a load so small that the journal runs in the middle, and one under which the film is
 *   thinner than the sum can follow
 * @source  A. A. Raimondi and J. Boyd (1958) for the heat balance; the Reynolds equation
 * @example oilFilm({ diameter: 38.1, length: 38.1, clearance: 0.0762, load: 0, speed: 1800, inlet: 60 }, () => 0.0276) // refused
 */
export const oilFilm = (bearing: Bearing, oil: Oil): Answer<OilFilm> => {
  const where = 'load, speed, clearance';
  if (!(bearing.load > 0))
    return refuse('a bearing without load has no film to reckon', 'load', 'give its load');
  /** Above 0 where the friction would warm the oil past the temperature at which it carries the load. */
  const overheated = (film: OilFilm) => bearing.inlet + film.rise / 2 - film.temperature;
  let low = filmAt(bearing, oil, leastEccentricity);
  let high = filmAt(bearing, oil, greatestEccentricity);
  if (overheated(high) > 0) {
    return refuse(
      'the film would be thinner than a hundredth of the clearance: metal would touch',
      where,
      'check load, speed and oil; no sum of a full film holds there',
    );
  }
  if (overheated(low) < 0) {
    return refuse(
      'the journal runs in the middle of its clearance: the load is too small for this sum',
      where,
      'check the load: it is in newtons, kilonewtons or pounds-force',
    );
  }
  // The load asks for ever thinner oil as the journal moves out: one place is right. False position, with the weight of
  // an end that stays halved each time (the Illinois rule), so that neither end is left behind.
  let [above, below] = [overheated(low), overheated(high)];
  let film = low;
  for (let turn = 0; turn < 100 && high.eccentricity - low.eccentricity > 1e-9; turn += 1) {
    const part = above / (above - below);
    film = filmAt(bearing, oil, low.eccentricity + part * (high.eccentricity - low.eccentricity));
    const off = overheated(film);
    if (Math.abs(off) < 1e-7) break;
    if (off > 0) {
      low = film;
      above = off;
      below /= 2;
    } else {
      high = film;
      below = off;
      above /= 2;
    }
  }
  return answer(film);
};
