/** @module Bump clearance of every cylinder, from stand-out and gasket or from lead wire. */
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { certain, combine, type Uncertain, uncertain } from '../quantity/uncertain.ts';
import { quantityInput, textInput } from './inputs.ts';
import { lengthTable } from './length-list.ts';
import { limitInputs, limitsGiven } from './limits-given.ts';
import { quantityOf, type Reckoning, type Result, result, type Values } from './reckoning.ts';
import { bumpClearance, standOutOf } from './stand-out.ts';

/** Mean of the squeezed wires of each cylinder: two lie in line with the pin, so that a tipped piston evens out. */
const byLead = (text: string, own: number): Answer<readonly Uncertain[]> => {
  const table = lengthTable('lead', text);
  if (table.kind === 'refused') return table;
  if (table.value.flat().some((wire) => !(wire > 0)))
    return refuse('a wire of 0 or less was not squeezed', 'lead', 'give the thickness of each wire');
  return answer(
    table.value.map((row, cylinder) =>
      combine(
        row.map((wire, at) => [1 / row.length, uncertain(wire, `lead ${cylinder + 1}.${at + 1}`, own)]),
      ),
    ),
  );
};

const byStandOut = (values: Values, text: string, own: number): Answer<readonly Uncertain[]> => {
  const gasket = values.quantities.gasket;
  if (gasket === undefined)
    return refuse(
      'the gasket’s thickness is not given',
      'gasket',
      'give it as compressed, from the manual or from a used one',
    );
  const standOut = standOutOf('stand-out', text, own);
  if (standOut.kind === 'refused') return standOut;
  const recess = values.quantities.recess ?? certain(0);
  return answer(standOut.value.greatest.map((each) => bumpClearance(gasket, recess, each)));
};

const bounded = limitInputs
  .filter(({ key }) => key !== 'conformance')
  .map((input) => ({
    ...input,
    title: `${input.key} bump clearance allowed`,
    example: input.key === 'least' ? '0.60mm' : '0.90mm',
  }));

export const bumpClearanceReckoning: Reckoning = {
  name: 'bump-clearance',
  title: 'Bump clearance of each cylinder, from stand-out and gasket or from lead wire',
  inputs: [
    textInput(
      'stand-out',
      'piston above the block face at top dead centre: readings of a cylinder parted by commas, cylinders by semicolons',
      '0.58, 0.62; 0.60, 0.61; 0.55, 0.59 mm',
      { range: 'above the face plus, below it minus; up to 20 mm', optional: true },
    ),
    quantityInput('gasket', 'length', 'head gasket, as compressed', 'above 0', '1.30±0.02mm', {
      optional: true,
    }),
    quantityInput('recess', 'length', 'head above its own face over the piston', '0 for a flat head', '0mm', {
      optional: true,
    }),
    textInput(
      'lead',
      'lead wires as squeezed: those of a cylinder parted by commas, cylinders by semicolons',
      '0.70, 0.66; 0.71, 0.69; 0.73, 0.71 mm',
      { range: 'above 0', optional: true },
    ),
    quantityInput('repeatability', 'length', 'standard deviation of one reading', '0 and up', '0.01mm', {
      unlessGiven: '0 mm',
    }),
    ...bounded,
  ],
  formula: 'gasket + recess − greatest stand-out of the cylinder; by lead: mean of its wires',
  source:
    'distances along the cylinder; TM 10-4320-310-14, p 5-22; two wires in line with the pin: common practice, no source',
  reckon: (values) => {
    const own = quantityOf(values, 'repeatability').value;
    if (own < 0)
      return refuse('a deviation less than 0 is out of range', 'repeatability', 'leave out its sign');
    const { 'stand-out': standOut, lead } = values.texts;
    if (standOut === undefined && lead === undefined)
      return refuse(
        'there is nothing to reckon from',
        'stand-out, lead',
        'give stand-out and gasket, or lead wires, or both',
      );
    const reckoned = standOut === undefined ? undefined : byStandOut(values, standOut, own);
    if (reckoned?.kind === 'refused') return reckoned;
    const squeezed = lead === undefined ? undefined : byLead(lead, own);
    if (squeezed?.kind === 'refused') return squeezed;
    if (reckoned && squeezed && reckoned.value.length !== squeezed.value.length)
      return refuse(
        'stand-out and lead are not of as many cylinders',
        'stand-out, lead',
        'give a row for each cylinder in both',
      );
    const limited = values.quantities.least ?? values.quantities.greatest;
    const bounds = limited === undefined ? answer({}) : limitsGiven(values);
    if (bounds.kind === 'refused') return bounds;
    const {
      least = -Infinity,
      greatest = Infinity,
    }: { readonly least?: number; readonly greatest?: number } = bounds.value;
    const chosen = squeezed?.value ?? reckoned?.value ?? [];
    const results: Record<string, Result> = {};
    const notes: string[] = [];
    for (const [at, bump] of chosen.entries()) {
      const name = `cylinder.${at + 1}`;
      results[`${name}.bump`] = result(bump, 'mm');
      if (bump.value <= 0) notes.push(`The piston of cylinder ${at + 1} would strike the head.`);
      else if (bump.value < least || bump.value > greatest)
        notes.push(`Cylinder ${at + 1} lies outside its limits.`);
      const other = squeezed && reckoned?.value[at];
      if (other) results[`${name}.by-stand-out`] = result(other, 'mm');
    }
    const all = chosen.map(({ value }) => value);
    results.spread = { value: Number((Math.max(...all) - Math.min(...all)).toPrecision(9)), unit: 'mm' };
    return answer({
      results,
      notes: [
        ...notes,
        'Turn the engine over twice by hand before it is started: what binds is found by the hand, not by the starter.',
      ],
    });
  },
};
