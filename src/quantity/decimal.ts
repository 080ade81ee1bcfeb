/** @module A decimal as a person types it: its value, and the step of its last digit. */
import { type Answer, answer, refuse } from './refusal.ts';

export interface Decimal {
  /** As typed, blanks at the ends taken off. */
  readonly text: string;
  readonly value: number;
  /** One step of the last digit typed: 0.01 for `12.50`, 1/16 for `2 9/16`. */
  readonly resolution: number;
}

/** Sign, then a whole part or a decimal with one mark, then an exponent. Bounded, so that no text takes long. */
const decimalForm = /^([+\-−]?)(\d{0,40})(?:[.,](\d{1,40}))?(?:[eE]([+\-−]?\d{1,2}))?$/;
const fractionForm = /^([+\-−]?)(?:(\d{1,6})[ \u00a0]+)?(\d{1,3})\/(\d{1,3})$/;
const inThousands = /^[+\-−]?\d{1,3}(?:[.,\u00a0 '’]\d{3})+(?:[.,]\d*)?$/;
const divisions = [2, 4, 8, 16, 32, 64, 128];

/** Nothing at a bench is larger in any unit on the list (an elastic modulus in Pa is some 2e11). */
const greatest = 1e13;

/** No figure is longer; a text that is must not be searched. */
const longest = 100;

const steps = [1, 0.1, 0.01, 0.001, 0.0001, 0.00001, 0.000001];
const powers = [1, 10, 100, 1000, 10_000, 100_000, 1_000_000];

/**
 * What is typed nearly always, `54.980` or `0,15`, without a search: whole digits over a power of ten, which rounds
 * just as the decimal itself does.
 */
const plain = (text: string): Decimal | undefined => {
  if (text.length === 0 || text.length > 13) return undefined;
  let digits = 0;
  let places = -1;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code >= 48 && code <= 57) {
      digits = digits * 10 + code - 48;
      if (places >= 0) places += 1;
    } else if ((code === 46 || code === 44) && places < 0) places = 0;
    else return undefined;
  }
  const power = powers[Math.max(0, places)];
  const resolution = steps[Math.max(0, places)];
  return places === 0 || power === undefined || resolution === undefined
    ? undefined
    : { text, value: digits / power, resolution };
};

const remedy = 'type a number such as 54.980, 54,980 or 2 9/16';

const readFraction = (text: string, parts: RegExpExecArray): Answer<Decimal> => {
  const [, sign, whole, top, bottom] = parts;
  const over = Number(bottom);
  if (!divisions.includes(over)) {
    return refuse(`a rule is not divided in ${bottom} parts`, text, 'type halves to 128ths, or a decimal');
  }
  if (Number(top) >= over) {
    return refuse(
      `${top}/${bottom} is not less than one`,
      text,
      'type it as whole and fraction, like 2 9/16',
    );
  }
  const size = Number(whole ?? 0) + Number(top) / over;
  return answer({ text, value: sign === '' || sign === '+' ? size : -size, resolution: 1 / over });
};

const whyNot = (text: string): Answer<never> => {
  if (text.length > longest) return refuse('it is too long for a number', `${text.slice(0, 30)} …`, remedy);
  if (text === '') return refuse('nothing was typed', '', remedy);
  if (/^[+\-−]$/.test(text)) return refuse('a sign without a number', text, remedy);
  if (inThousands.test(text)) {
    return refuse(
      'it can be read in two ways',
      text,
      'leave out the marks between thousands: type 1234.5 or 1234,5',
    );
  }
  if (/^[+\-−]?\d+[.,]$/.test(text)) return refuse('the digits after the mark are missing', text, remedy);
  if (/^[+\-−]?(nan|inf)/i.test(text)) return refuse('it is no number', text, remedy);
  if (/^[+\-−]?[\d.,]+[eE]\+?\d{3,}$/.test(text))
    return refuse('it is far too large for anything on a bench', text, remedy);
  return refuse('it cannot be read as a number', text, remedy);
};

/**
 * Reads a decimal as typed.
 *
 * Point or comma as the mark, a sign, an exponent (`1.2e-5`), or a rule's fraction (`9/16`, `2 9/16`).
 * A mark between thousands is refused, since `1,234.5` and `1.234,5` cannot both be honoured.
 */
export const parseDecimal = (typed: string): Answer<Decimal> => {
  const text = typed.trim();
  const usual = plain(text);
  if (usual !== undefined) return answer(usual);
  const parts = decimalForm.exec(text);
  if (parts === null) {
    const fraction = fractionForm.exec(text);
    return fraction === null ? whyNot(text) : readFraction(text, fraction);
  }
  const [, sign, whole, part = '', power = '0'] = parts;
  if (whole === '' && part === '') return whyNot(text);
  const exponent = Number(power.replace('−', '-'));
  const size = Number(`${whole}.${part}e${exponent}`);
  if (size > greatest) return refuse('it is far too large for anything on a bench', text, remedy);
  const resolution = Number(`1e${exponent - part.length}`);
  return answer({ text, value: sign === '' || sign === '+' ? size : 0 - size, resolution });
};
