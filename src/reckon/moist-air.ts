/** @module The water vapour in the air that an engine breathes, from its temperature and relative humidity. */

/**
 * Pressure of saturated water vapour over water.
 *
 * ps = 611.21 exp((18.678 − t / 234.5) t / (257.14 + t))
 *
 * @param temperature  °C, -40 to 60
 * @returns Pa, to about 0.1 %
 * @source  A. L. Buck 1981, constants of 1996
 * @example saturationPressure(25) // 3169 Pa
 */
export const saturationPressure = (temperature: number): number =>
  611.21 * Math.exp(((18.678 - temperature / 234.5) * temperature) / (257.14 + temperature));

/**
 * Pressure of the air less that of the water vapour in it.
 *
 * @param pressure     barometer at the engine, not reduced to sea level, Pa
 * @param humidity     relative, 0 to 1
 * @param temperature  °C, -40 to 60, where the humidity was read
 * @returns Pa
 * @source  Dalton's law of partial pressures
 * @example dryPressure(95000, 0.4, 35) // 92749 Pa
 */
export const dryPressure = (pressure: number, humidity: number, temperature: number): number =>
  pressure - humidity * saturationPressure(temperature);
