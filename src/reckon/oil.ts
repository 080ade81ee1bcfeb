/** @module How thick an oil is at a temperature: from two figures of its data sheet, or from a grade. */
import { parseDecimal } from '../quantity/decimal.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';

/** Viscosity by temperature: dynamic, Pa·s, at °C. */
export type Oil = (celsius: number) => number;

/** Kinematic viscosity, mm²/s, at a temperature, °C. */
export interface ViscosityAt {
  readonly viscosity: number;
  readonly celsius: number;
}

const absolute = 273.15;

/**
 * Kinematic viscosity by the line that ASTM D341 draws through two figures of an oil's data sheet.
 *
 * log₁₀ log₁₀ (ν + 0.7) = A − B log₁₀ T
 *
 * @param at40   one figure, mm²/s at °C, above 0.21 mm²/s
 * @param at100  another, at another temperature
 * @returns viscosity at a temperature, mm²/s; good from the pour point to some 150 °C, for viscosities above 2 mm²/s
 * @source  ASTM D341, the equation for viscosities above 2 mm²/s
 * @example walther({ viscosity: 32, celsius: 40 }, { viscosity: 5.4, celsius: 100 })(80) // 8.53 mm²/s
 */
export const walther = (at40: ViscosityAt, at100: ViscosityAt): ((celsius: number) => number) => {
  const height = ({ viscosity }: ViscosityAt) => Math.log10(Math.log10(viscosity + 0.7));
  const along = (celsius: number) => Math.log10(celsius + absolute);
  const slope = (height(at40) - height(at100)) / (along(at100.celsius) - along(at40.celsius));
  const top = height(at40) + slope * along(at40.celsius);
  return (celsius) => 10 ** (10 ** (top - slope * along(celsius))) - 0.7;
};

/** Reyns of a millionth, and degrees Fahrenheit: µ = µ₀ exp(b / (t + 95)). */
const fits: Readonly<Record<string, readonly [number, number]>> = {
  '10': [0.0158, 1157.5],
  '20': [0.0136, 1271.6],
  '30': [0.0141, 1360],
  '40': [0.0121, 1474.4],
  '50': [0.017, 1509.6],
  '60': [0.0187, 1564],
};
const pascalSecondsPerMicroreyn = 6.894757e-3;

/**
 * Viscosity of an oil of one grade by a fit to its class.
 *
 * @param grade  SAE grade 10 to 60, one figure
 * @returns dynamic viscosity, Pa·s, at °C; a grade is a band, and 15 % either way is usual. Refuses other grades.
 * @source  A. Seireg and S. Dandage (1982), in 10⁻⁶ reyn and °F
 * @example gradeOil('7') // refused
 */
export const gradeOil = (grade: string): Answer<Oil> => {
  const fit = fits[grade];
  if (fit === undefined) {
    return refuse(
      `the viscosity of SAE ${grade.slice(0, 12)} does not follow from its grade`,
      'oil',
      `give two figures of its data sheet, such as 105 mm²/s at 40 °C, 14 mm²/s at 100 °C; single grades known: ${Object.keys(fits).join(', ')}`,
    );
  }
  const [base, slope] = fit;
  return answer((celsius) => base * Math.exp(slope / (celsius * 1.8 + 32 + 95)) * pascalSecondsPerMicroreyn);
};

/** Kilograms per litre: a mineral oil, 0.885 at 15 °C, swelling by 0.065 % a degree. */
const density = (celsius: number): number => 0.885 * (1 - 0.00065 * (celsius - 15));

const figureAt = /^([\d.,]+)\s*(?:mm²\/s|mm2\/s|cst)?\s*(?:at|@)\s*([\d.,]+)\s*(?:°?c|degc)?$/i;

const viscosityIn = (text: string): ViscosityAt | undefined => {
  const [, viscosity = '', celsius = ''] = figureAt.exec(text.trim()) ?? [];
  const [first, second] = [parseDecimal(viscosity), parseDecimal(celsius)];
  return first.kind === 'answer' && second.kind === 'answer'
    ? { viscosity: first.value.value, celsius: second.value.value }
    : undefined;
};

/**
 * An oil as it is written: a single grade, or two viscosities with their temperatures.
 *
 * @param text  `SAE 30`, or `105 mm²/s at 40 °C, 14 mm²/s at 100 °C`
 * @returns dynamic viscosity by temperature; a mineral oil's density is taken for one given in mm²/s. Refuses what cannot
 *   be read, and two figures between which no line can be drawn
 * @source  ASTM D341; A. Seireg and S. Dandage (1982); density: common practice, no source
 * @example readOil('105 mm²/s at 40 °C') // refused
 */
export const readOil = (text: string): Answer<Oil> => {
  const grade = /^(?:sae\s*)?(\d{1,2}(?:w(?:-\d{1,2})?)?)$/i.exec(text.trim());
  if (grade?.[1] !== undefined) return gradeOil(grade[1].toUpperCase());
  const [first, second, ...more] = text.split(/[,;](?=\s*\d)/).map(viscosityIn);
  if (!first || !second || more.length > 0) {
    return refuse(
      'the oil is not understood',
      `oil=${text.slice(0, 60)}`,
      'write a single grade (SAE 30) or two figures of its data sheet: 105 mm²/s at 40 °C, 14 mm²/s at 100 °C',
    );
  }
  const [cool, hot] = first.celsius < second.celsius ? [first, second] : [second, first];
  const sound =
    hot.celsius > cool.celsius &&
    cool.celsius > -60 &&
    hot.celsius < 300 &&
    hot.viscosity >= 1 &&
    hot.viscosity < cool.viscosity &&
    cool.viscosity < 1e6;
  if (!sound) {
    return refuse(
      'no oil thins like this',
      `oil=${text.slice(0, 60)}`,
      'give two temperatures, and at the hotter one the lower viscosity, 1 mm²/s at least',
    );
  }
  const kinematic = walther(cool, hot);
  return answer((celsius) => kinematic(celsius) * density(celsius) * 1e-3);
};
