/** @module Which grade of head gasket brings every cylinder's bump clearance within its limits. */
import { formatFigure } from '../quantity/figure.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import { certain } from '../quantity/uncertain.ts';
import { quantityInput, textInput } from './inputs.ts';
import { limitInputs, limitsGiven } from './limits-given.ts';
import { type NamedSize, namedSizes } from './named-sizes.ts';
import { quantityOf, type Reckoning, type Result, result } from './reckoning.ts';
import { bumpClearance, standOutOf } from './stand-out.ts';

type Preferred = 'the thicker' | 'nearest the middle';
const preferences: readonly Preferred[] = ['the thicker', 'nearest the middle'];

/**
 * The grade that fits every cylinder.
 *
 * @param grades    name and thickness as compressed, mm
 * @param standOut  highest reading of each cylinder, mm
 * @param limits    of the bump clearance, mm
 * @param prefer    which is taken where several fit
 * @returns the grade; undefined where none fits all
 * @source  TM 10-4320-310-14, p 5-22: of two that fit, the thicker
 * @example gradeFor([], [0.6], { least: 0.5, greatest: 0.7 }, 'the thicker') // undefined
 */
export const gradeFor = (
  grades: readonly NamedSize[],
  standOut: readonly number[],
  limits: { readonly least: number; readonly greatest: number },
  prefer: Preferred,
): NamedSize | undefined => {
  // Binary sums must not shut out a figure that lies on its limit.
  const hair = 1e-9;
  const middle = (limits.least + limits.greatest) / 2;
  const [low, high] = [Math.min(...standOut), Math.max(...standOut)];
  const fitting = grades.filter(
    ({ size }) => size.value - high >= limits.least - hair && size.value - low <= limits.greatest + hair,
  );
  const off = ({ size }: NamedSize) => Math.abs(size.value - (low + high) / 2 - middle);
  return fitting.toSorted((a, b) =>
    prefer === 'the thicker' ? b.size.value - a.size.value : off(a) - off(b) || b.size.value - a.size.value,
  )[0];
};

const bounded = limitInputs
  .filter(({ key }) => key !== 'conformance')
  .map(({ optional: _, ...input }) => ({
    ...input,
    title: `${input.key} bump clearance allowed`,
    range: 'the least below the greatest',
    example: input.key === 'least' ? '0.55mm' : '0.75mm',
  }));

export const gasketGradeReckoning: Reckoning = {
  name: 'gasket-grade',
  title: 'Grade of head gasket, or thickness under the barrel, that every cylinder needs',
  inputs: [
    textInput(
      'stand-out',
      'piston above the block face at top dead centre: readings of a cylinder parted by commas, cylinders by semicolons',
      '0.58, 0.62; 0.60, 0.61; 0.55, 0.59 mm',
      { range: 'above the face plus, below it minus; up to 20 mm' },
    ),
    textInput(
      'grades',
      'gaskets on offer, each with its thickness as compressed',
      '1 1.20, 2 1.30, 3 1.40 mm',
      { range: 'names with thicknesses, commas between' },
    ),
    ...bounded,
    quantityInput('repeatability', 'length', 'standard deviation of one reading', '0 and up', '0.01mm', {
      unlessGiven: '0 mm',
    }),
    textInput('prefer', 'where several fit', 'the thicker', {
      oneOf: preferences,
      unlessGiven: 'the thicker',
    }),
  ],
  formula: 'thickness − greatest stand-out of each cylinder within the limits, all cylinders with one grade',
  source: 'TM 10-4320-310-14, p 5-22 (gasket = clearance wanted + stand-out; of two that fit, the thicker)',
  reckon: (values) => {
    const bounds = limitsGiven(values);
    if (bounds.kind === 'refused') return bounds;
    const { least, greatest } = bounds.value;
    if (least === undefined || greatest === undefined)
      return refuse('one limit is missing', 'least, greatest', 'give both');
    const standOut = standOutOf(
      'stand-out',
      values.texts['stand-out'] ?? '',
      quantityOf(values, 'repeatability').value,
    );
    if (standOut.kind === 'refused') return standOut;
    const grades = namedSizes('grades', values.texts.grades ?? '');
    if (grades.kind === 'refused') return grades;
    const heights = standOut.value.greatest.map(({ value }) => value);
    const prefer = preferences.find((each) => each === values.texts.prefer) ?? 'the thicker';
    const grade = gradeFor(grades.value, heights, { least, greatest }, prefer);
    const [low, high] = [Math.min(...heights), Math.max(...heights)];
    const needs = {
      'needed-least': result(certain(least + high), 'mm'),
      'needed-greatest': result(certain(greatest + low), 'mm'),
    };
    if (grade === undefined)
      return answer({
        results: { grade: { value: 'none', unit: '' }, ...needs },
        notes: [
          high - low > greatest - least
            ? `The pistons stand ${formatFigure(high - low, 3)} mm apart: no one gasket serves them. Find why they differ: rods, bores, deck.`
            : 'No grade on offer fits every cylinder.',
        ],
      });
    const bumps: Record<string, Result> = Object.fromEntries(
      standOut.value.greatest.map((each, at) => [
        `cylinder.${at + 1}.bump`,
        result(bumpClearance(grade.size, certain(0), each), 'mm'),
      ]),
    );
    return answer({
      results: {
        grade: { value: grade.name, unit: '' },
        thickness: result(grade.size, 'mm'),
        ...needs,
        ...bumps,
      },
      notes: [
        'Measure again with the gasket fitted and the head tightened, by lead wire or with a dial through the injector’s hole.',
      ],
    });
  },
};
