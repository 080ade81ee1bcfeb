/** @module Every stand-alone sum has a picture that is drawn to what was given. */
import { describe, expect, it } from 'vitest';
import { reckonTyped } from '../../reckon/given.ts';
import { reckonings } from '../../reckon/list.ts';
import type { Reckoning } from '../../reckon/reckoning.ts';
import { svgText } from '../svg.ts';
import { pictures } from './list.ts';

const drawn = (reckoning: Reckoning, texts: Readonly<Record<string, string>>): string => {
  const typed = reckonTyped(reckoning, texts);
  if (typed.kind === 'refused') throw new Error(typed.refusal.what);
  const picture = pictures[reckoning.name];
  if (picture === undefined) throw new Error(`no picture of ${reckoning.name}`);
  return svgText(picture(typed.value.values, typed.value.reckoned));
};

const examples = ({ inputs }: Reckoning): Readonly<Record<string, string>> =>
  Object.fromEntries(inputs.map(({ key, example }) => [key, example]));

describe('the picture of a sum', () => {
  it.each(reckonings)(
    'of $name is drawn from its examples, in finite strokes, with words for who does not see',
    (reckoning) => {
      const picture = drawn(reckoning, examples(reckoning));
      expect(picture).toMatch(/aria-label="[^"]{5,}"/);
      expect(picture).toMatch(/<desc>[^<]{5,}<\/desc>/);
      expect(picture).not.toMatch(/NaN|Infinity|undefined/);
    },
  );

  /** Where the next digit is no sensible one: something else that may be asked. */
  const otherwise: Readonly<Record<string, Readonly<Record<string, string>>>> = {
    'valve-clearance-order': { 'firing-order': '1-3-2' },
  };

  it.each(reckonings)('of $name changes with what is given', (reckoning) => {
    const asked = examples(reckoning);
    const before = drawn(reckoning, asked);
    const others = reckoning.inputs.flatMap(({ key, example }) =>
      [...example.matchAll(/\d/g)].map(({ index, 0: digit }) => ({
        ...asked,
        [key]: `${example.slice(0, index)}${(Number(digit) + 1) % 10}${example.slice(index + 1)}`,
      })),
    );
    const named = otherwise[reckoning.name];
    const changes = [...others, ...(named ? [{ ...asked, ...named }] : [])].some((texts) => {
      return reckonTyped(reckoning, texts).kind === 'answer' && drawn(reckoning, texts) !== before;
    });
    expect(changes).toBe(true);
  });
});
