/** @module The limits and the probability asked for, as sums about verdicts take them. */
import { type Answer, answer, type Refusal, refuse } from '../quantity/refusal.ts';
import { type Input, quantityOf, type Values } from './reckoning.ts';

interface Limited {
  readonly least?: number;
  readonly greatest?: number;
}

export const limitInputs: readonly Input[] = [
  {
    kind: 'quantity',
    key: 'least',
    title: 'least size allowed',
    dimension: 'length',
    range: 'not above the greatest; one of the two may be left out',
    example: '54.980mm',
    optional: true,
  },
  {
    kind: 'quantity',
    key: 'greatest',
    title: 'greatest size allowed',
    dimension: 'length',
    range: 'not below the least; one of the two may be left out',
    example: '55.000mm',
    optional: true,
  },
  {
    kind: 'quantity',
    key: 'conformance',
    title: 'probability asked for before it is called within (or outside)',
    dimension: 'ratio',
    range: 'above 50 % and below 100 %',
    example: '95%',
    unlessGiven: '95 %',
  },
];

/**
 * The limits, of which there must be one at least.
 *
 * @internal
 */
export const limitsGiven = (values: Values): Answer<Limited> => {
  const least = values.quantities.least?.value;
  const greatest = values.quantities.greatest?.value;
  if (least === undefined && greatest === undefined) {
    return refuse('there is no limit to judge by', 'least, greatest', 'give least, greatest or both');
  }
  if (least !== undefined && greatest !== undefined && least > greatest) {
    return refuse(
      `the least, ${least} mm, is more than the greatest, ${greatest} mm`,
      'least, greatest',
      'check both against the manual',
    );
  }
  return answer({ ...(least !== undefined && { least }), ...(greatest !== undefined && { greatest }) });
};

/**
 * What is wrong with the probability asked for, or with a limit that is given as if it were measured.
 *
 * @internal
 */
export const misasked = (values: Values): Refusal | undefined => {
  const asked = quantityOf(values, 'conformance').value;
  if (!(asked > 0.5 && asked < 1)) {
    return {
      what: `a probability of ${asked} is out of range`,
      where: 'conformance',
      remedy: 'give one above 50 % and below 100 %, such as 95 %',
    };
  }
  const unsure = ['least', 'greatest', 'conformance'].find(
    (key) => (values.quantities[key]?.terms.length ?? 0) > 0,
  );
  return unsure === undefined
    ? undefined
    : { what: 'it is agreed and not measured', where: unsure, remedy: 'leave out the ±' };
};
