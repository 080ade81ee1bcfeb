/** @module What is written of an instrument, in words. */
import type { Instrument } from '../measure/instrument.ts';
import { chanceWords, knownSlips } from '../measure/slips/priors.ts';
import { typedText } from '../quantity/typed.ts';
import type { RegisterFact } from './event.ts';
import type { Noted, Registered, SlipFact } from './register.ts';

const behind = (text: string): string => (text.trim() === '' ? '' : `: ${text.trim()}`);

/** `checked against ring-80: showed 0.001 mm, good`. */
export const entryWords = (fact: Noted): string => {
  switch (fact.kind) {
    case 'instrument entered':
      return `entered as ${fact.instrument.kind}, ${rangeWords(fact.instrument)}`;
    case 'instrument checked': {
      const at = fact.size ? ` at ${typedText(fact.size)}` : '';
      const found = fact.good ? 'good' : 'not good';
      return `checked against ${fact.against}${at}: showed ${typedText(fact.showed)}, ${found}${behind(fact.note)}`;
    }
    case 'instrument calibrated': {
      const correction = fact.correction ? `, correction ${typedText(fact.correction)}` : '';
      const known = fact.uncertainty ? ` ± ${typedText(fact.uncertainty)} (k = 2)` : '';
      const found = fact.foundGood ? 'found good' : 'found out of tolerance';
      return `calibrated ${fact.on}, ${fact.certificate}, due ${fact.due}, ${found}${correction}${known}${behind(fact.note)}`;
    }
    case 'instrument withdrawn':
      return `withdrawn${behind(fact.why)}`;
    case 'instrument put back':
      return `put back into use${behind(fact.why)}`;
    default:
      return fact satisfies never;
  }
};

/** `once in 20 readings: scales hard to read`. */
export const slipChanceWords = (fact: SlipFact): string => {
  const known = knownSlips.find(({ name }) => name === fact.slip);
  const of = known?.of ?? 'readings';
  if (fact.kind === 'slip chance set')
    return `${chanceWords({ of }, fact.onceIn > 0 ? 1 / fact.onceIn : 0)}${behind(fact.why)}`;
  const usual = known ? `, ${chanceWords(known, known.chance)}` : '';
  return `as usual${usual}${behind(fact.why)}`;
};

/** What a fact of the register says, with what it is about. */
export const registerWords = (fact: RegisterFact): string => {
  switch (fact.kind) {
    case 'entry struck out':
      return 'Entry struck out.';
    case 'workshop described':
      return 'Workshop described.';
    case 'slip chance set':
    case 'slip chance left as usual':
      return `${fact.slip}: ${slipChanceWords(fact)}.`;
    case 'instrument entered':
      return `${fact.instrument.name}: ${entryWords(fact)}.`;
    default:
      return `${fact.name}: ${entryWords(fact)}.`;
  }
};

/** `35 mm to 160 mm`; of a ring or a bar its one size. */
export const rangeWords = ({ range: { least, greatest } }: Pick<Instrument, 'range'>): string =>
  least.text === greatest.text && least.unit === greatest.unit
    ? typedText(least)
    : `${typedText(least)} to ${typedText(greatest)}`;

/** When it is due, and what was last found of it: `due 2027-02-15, checked 2026-09-07 against zero`. */
export const checkedWords = ({ instrument: { calibration, checked, zero } }: Registered): string =>
  [
    ...(calibration ? [`due ${calibration.due}`] : ['no certificate']),
    ...(checked ? [`checked ${checked.on} against ${checked.against}`] : []),
    ...(checked || zero === undefined ? [] : [`zero ${typedText(zero)}, its day not known`]),
  ].join(', ');
