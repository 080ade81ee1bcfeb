/** @module What an engine gives and burns in the air of its site, by ISO 3046-1. */

/** a, m, n, s of the formula. source: ISO 3046-1, Table 2 (from memory). */
const rows = {
  'naturally aspirated, limited by air': [1, 1, 0.75, 0],
  'naturally aspirated, limited by heat': [0, 1, 1, 0],
  turbocharged: [0, 0.7, 2, 0],
  'turbocharged, charge cooled': [0, 0.7, 1.2, 1],
} as const;
type EngineKind = keyof typeof rows;
export const engineKinds = Object.keys(rows) as readonly EngineKind[];

interface SiteAir {
  /** Barometer at the site, Pa. */
  readonly pressure: number;
  /** Of the water in it, Pa. */
  readonly vapour: number;
  /** °C. */
  readonly temperature: number;
  /** Coolant into the charge cooler, °C; of no account without one. */
  readonly coolant: number;
}

/** Standard reference conditions: 100 kPa, of which 1 kPa vapour (30 % at 25 °C); 298 K for air and charge coolant. */
const reference = { pressure: 100e3, vapour: 1e3, kelvin: 298 };

/**
 * Ratio of indicated powers, k.
 *
 * k = ((px − a φx psx) / (pr − a φr psr))^m (Tr / Tx)^n (Tcr / Tcx)^s
 *
 * @param kind  of engine: sets a, m, n, s
 * @param air   of the site: Pa, °C
 * @returns 1 at reference conditions, less in thin or hot air
 * @source  ISO 3046-1, 10 (1995: 14), exponents from memory
 * @example indicatedRatio('turbocharged', { pressure: 100000, vapour: 0, temperature: 24.85, coolant: 0 }) // 1
 */
export const indicatedRatio = (
  kind: EngineKind,
  { pressure, vapour, temperature, coolant }: SiteAir,
): number => {
  const [a, m, n, s] = rows[kind];
  const [air, cooled] = [temperature + 273.15, s === 0 ? reference.kelvin : coolant + 273.15];
  return (
    ((pressure - a * vapour) / (reference.pressure - a * reference.vapour)) ** m *
    (reference.kelvin / air) ** n *
    (reference.kelvin / cooled) ** s
  );
};

/**
 * Power adjustment, α: brake power at the site over that at reference conditions.
 *
 * α = k − 0.7 (1 − k)(1 / ηm − 1)
 *
 * @param k           ratio of indicated powers
 * @param efficiency  mechanical efficiency, above 0 to 1; 0.8 where none is stated
 * @returns 1 where k is 1
 * @source  ISO 3046-1, formula for α
 * @example powerAdjustment(0.8721, 0.8) // 0.8497
 */
export const powerAdjustment = (k: number, efficiency: number): number =>
  k - 0.7 * (1 - k) * (1 / efficiency - 1);

/**
 * Recalculated specific fuel consumption over that at reference conditions, β.
 *
 * @param k           ratio of indicated powers
 * @param efficiency  mechanical efficiency, above 0 to 1
 * @returns β = k / α; 1 where k is 1, more in thin or hot air
 * @source  ISO 3046-1, formula for β
 * @example fuelAdjustment(0.8721, 0.8) // 1.0263
 */
export const fuelAdjustment = (k: number, efficiency: number): number => k / powerAdjustment(k, efficiency);
