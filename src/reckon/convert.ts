/** @module A figure in another unit. */
import { tidy } from '../quantity/figure.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import { findUnit, fromCore, stepFromCore, type Unit, unitOf } from '../quantity/unit.ts';
import { readGiven, unitGiven } from './given.ts';
import type { Reckoning, Result } from './reckoning.ts';

const absoluteZero = -273.15;

/** In a unit of the same dimension, with its uncertainty, which a shifted zero such as that of °F does not touch. */
const inUnit = (x: Uncertain, unit: Unit): Result => {
  const value = tidy(fromCore(x.value, unit));
  const u = standardUncertainty(x);
  return { value, unit: unit.symbol, ...(u > 0 && { u: tidy(stepFromCore(u, unit)) }) };
};

const readAny = (text: string): Answer<{ readonly value: Uncertain; readonly unit: Unit }> => {
  const symbol = unitGiven(text);
  const unit = findUnit(symbol);
  if (unit.kind === 'refused') {
    const { what, remedy } = unit.refusal;
    return symbol === ''
      ? refuse('the unit is missing', `value=${text}`, 'write it after the figure, for example 1in')
      : refuse(what, `value=${text}`, remedy);
  }
  const value = readGiven('value', text, unit.value.dimension);
  return value.kind === 'refused' ? value : answer({ value: value.value, unit: unit.value });
};

export const convertReckoning: Reckoning = {
  name: 'convert',
  title: 'A figure in another unit',
  inputs: [
    {
      kind: 'text',
      key: 'value',
      title: 'the figure with its unit',
      range: 'any; temperatures from absolute zero up',
      example: '2.165in',
    },
    {
      kind: 'text',
      key: 'to',
      title: 'the unit wanted',
      range: 'a unit of the same kind',
      example: 'mm',
    },
  ],
  formula: 'value × factor of its unit / factor of the unit wanted; °F and K are shifted first',
  source: 'exact factors by definition: ISO 80000, NIST SP 811 Appendix B (from memory)',
  reckon: ({ texts }) => {
    const { value: text = '', to = '' } = texts;
    const given = readAny(text);
    if (given.kind === 'refused') return given;
    const { value, unit } = given.value;
    const wanted = unitOf(to, unit.dimension);
    if (wanted.kind === 'refused') return refuse(wanted.refusal.what, `to=${to}`, wanted.refusal.remedy);
    if (unit.dimension === 'temperature' && value.value < absoluteZero - 1e-9) {
      return refuse(
        `${text} is out of range`,
        'value',
        'nothing is colder than absolute zero, -273.15 °C: check the sign and the unit',
      );
    }
    return answer({ results: { value: inUnit(value, wanted.value) }, notes: [] });
  },
};
