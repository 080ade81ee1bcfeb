/** @module How fast a warm ring cools: in still air by convection and radiation, and on a cold shaft through the gap. */

/** What a ring is made of and how it lies; SI units. */
export interface WarmRing {
  /** m */
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
  /** J/K for the whole ring. */
  readonly heat: number;
  readonly emissivity: number;
}

const stefan = 5.670374419e-8;
const kelvin = 273.15;

/** Still air at a temperature: fits to a handbook table at one atmosphere, from memory; within 2 % from 0 to 400 °C. */
const air = (celsius: number) => {
  const warm = (celsius + kelvin) / 300;
  return { conduction: 0.0263 * warm ** 0.82, viscosity: 15.9e-6 * warm ** 1.72, prandtl: 0.7 };
};

/**
 * Heat that still air takes from a cylinder lying on its side.
 *
 * Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559 / Pr)^(9/16))^(8/27))²
 *
 * @param rayleigh  number on the diameter, up to 10¹²
 * @param prandtl   number of the air
 * @returns Nusselt number
 * @source  S. W. Churchill and H. H. S. Chu (1975)
 * @example cylinderNusselt(5.073e6, 0.697) // 23.1
 */
export const cylinderNusselt = (rayleigh: number, prandtl: number): number =>
  (0.6 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2;

/**
 * Heat given off by each square metre for each degree above the room: convection and radiation.
 *
 * @param surface     °C
 * @param room        °C, below the surface
 * @param diameter    of the part as a cylinder, m
 * @param emissivity  0 to 1
 * @returns W/(m²·K)
 * @source  Churchill and Chu (1975); Stefan and Boltzmann
 * @example heatLoss(200, 20, 0.06, 0) // 8.16 W/(m²·K)
 */
export const heatLoss = (surface: number, room: number, diameter: number, emissivity: number): number => {
  const mean = (surface + room) / 2;
  const { conduction, viscosity, prandtl } = air(mean);
  const rise = Math.max(0.1, surface - room);
  const rayleigh = ((9.81 * rise * diameter ** 3) / ((mean + kelvin) * viscosity ** 2)) * prandtl;
  const convected = (cylinderNusselt(rayleigh, prandtl) * conduction) / diameter;
  const [hot, cold] = [surface + kelvin, room + kelvin];
  return convected + emissivity * stefan * (hot ** 2 + cold ** 2) * (hot + cold);
};

export interface Cooling {
  readonly seconds: number;
  readonly celsius: number;
}

/** Air moves no heat through a gap that metal has closed; below this the surfaces' roughness touches, m. */
const leastGap = 5e-6;

/**
 * A ring as it cools, from a temperature to another, alone or round a shaft that stays cold.
 *
 * The whole ring has one temperature: good where it conducts far better than it gives off (Biot number below 0.1).
 *
 * @param ring   its sizes, heat and emissivity
 * @param from   °C
 * @param to     °C, above the room
 * @param room   °C of air and shaft
 * @param gapAt  gap between bore and shaft all round at a temperature of the ring, m; undefined in free air
 * @returns times and temperatures, the last at `to`; steps of a hundredth of the fall
 * @source  lumped heat: any text on heat transfer; conduction through the air of the gap
 * @example coolingCurve({ bore: 0.05, outside: 0.084, width: 0.04, heat: 500, emissivity: 0.8 }, 220, 200, 20, undefined).length // 101
 */
export const coolingCurve = (
  ring: WarmRing,
  from: number,
  to: number,
  room: number,
  gapAt: ((celsius: number) => number) | undefined,
): readonly Cooling[] => {
  const faces = (Math.PI / 2) * (ring.outside ** 2 - ring.bore ** 2);
  const [around, inside] = [Math.PI * ring.outside * ring.width, Math.PI * ring.bore * ring.width];
  const loss = (celsius: number): number => {
    const open = heatLoss(celsius, room, ring.outside, ring.emissivity);
    if (gapAt === undefined) return open * (around + faces + inside) * (celsius - room);
    const through = air((celsius + room) / 2).conduction / Math.max(leastGap, gapAt(celsius));
    return (open * (around + faces) + through * inside) * (celsius - room);
  };
  const steps = 100;
  const fall = (from - to) / steps;
  const curve: Cooling[] = [{ seconds: 0, celsius: from }];
  for (let step = 0, seconds = 0; step < steps; step += 1) {
    const hot = from - step * fall;
    // Time for each step by Simpson's rule over the temperature.
    const [a, b, c] = [hot, hot - fall / 2, hot - fall].map((celsius) => ring.heat / loss(celsius)) as [
      number,
      number,
      number,
    ];
    seconds += (fall * (a + 4 * b + c)) / 6;
    curve.push({ seconds, celsius: hot - fall });
  }
  return curve;
};
