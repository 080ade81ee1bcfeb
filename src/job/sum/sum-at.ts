/** @module A sum within its operation: what the job gives to it, what is still to be typed, what comes of it. */

import { type Answer, refuse } from '../../quantity/refusal.ts';
import { reckonTyped } from '../../reckon/given.ts';
import { reckonings } from '../../reckon/list.ts';
import type { Input, Reckoned, Reckoning, Values } from '../../reckon/reckoning.ts';
import type { NotedSum, OpenJob } from '../job.ts';
import type { GivenText } from './given-lists.ts';
import { givenText } from './given-text.ts';
import { type SumPlace, sumKey } from './sum-places.ts';

export interface SumInput {
  readonly input: Input;
  /** From the job; missing where the fitter is asked. */
  readonly given?: GivenText;
}

export interface SumHere extends SumPlace {
  readonly title: string;
  readonly reckoning: Reckoning;
  readonly inputs: readonly SumInput[];
  /** All that goes in: what is given, and what was typed. */
  readonly texts: Readonly<Record<string, string>>;
  readonly noted?: NotedSum;
  /** What has changed since it was noted, in words; none where it still stands. */
  readonly changed: readonly string[];
}

export interface ReckonedHere {
  readonly values: Values;
  readonly reckoned: Reckoned;
}

export type Texts = Readonly<Record<string, string>>;

/** What an input was noted with, where the job gives it, against what the job gives now. */
const changedSince = (noted: NotedSum | undefined, inputs: readonly SumInput[]): readonly string[] =>
  (noted?.inputs ?? []).flatMap(({ key, text, from }) => {
    const now = inputs.find(({ input }) => input.key === key)?.given;
    if (now === undefined ? from === undefined : now.kind === 'given' && now.text === text) return [];
    if (now?.kind === 'given') return [`${key} was ${text} and is ${now.text}`];
    return [`${key} was ${text} and is ${now ? 'not known any more' : 'asked of you now'}`];
  });

const titleOf = ({ sum, place }: SumPlace, reckoning: Reckoning): string =>
  [sum.title ?? reckoning.title, place?.title ?? ''].filter((part) => part !== '').join(', ');

const inputsOf = (job: OpenJob, at: SumPlace, reckoning: Reckoning): readonly SumInput[] =>
  reckoning.inputs.map((input) => {
    const given = givenText(job, at, input.key);
    return given ? { input, given } : { input };
  });

const textsOf = (inputs: readonly SumInput[], typed: Texts): Texts =>
  Object.fromEntries(
    inputs.flatMap(({ input: { key }, given }) => {
      const text = given ? (given.kind === 'given' ? given.text : '') : (typed[key] ?? '').trim();
      return text === '' ? [] : [[key, text]];
    }),
  );

const waitsFor = ({ sum, inputs }: SumHere): Answer<never> | undefined => {
  const missing = inputs.flatMap(({ given }) => (given?.kind === 'first' ? [given] : []));
  const [one] = missing;
  return one && refuse(missing.map(({ says }) => says).join('; '), sum.name, one.remedy);
};

/**
 * A sum of an operation as it stands.
 *
 * @param at     operation, sum and, where it is done once a place, the place
 * @param typed  by the sum's own keys; what the job gives goes before what is typed
 * @returns undefined where the program has no such sum
 */
export const sumAt = (job: OpenJob, at: SumPlace, typed: Texts = {}): SumHere | undefined => {
  const reckoning = reckonings.find(({ name }) => name === at.sum.reckon);
  if (reckoning === undefined) return undefined;
  const inputs = inputsOf(job, at, reckoning);
  const noted = job.sums.get(sumKey(at.operation.name, at.sum.name, at.place?.id));
  return {
    ...at,
    title: titleOf(at, reckoning),
    reckoning,
    inputs,
    texts: textsOf(inputs, typed),
    ...(noted && { noted }),
    changed: changedSince(noted, inputs),
  };
};

/** What comes of a sum as it stands; refused, with what is missing or wrong, until it can be reckoned. */
export const reckonHere = (here: SumHere): Answer<ReckonedHere> =>
  waitsFor(here) ?? reckonTyped(here.reckoning, here.texts);

/** What was typed when a sum was noted last, as far as it is still asked: there to be put right. */
export const typedBefore = ({ noted, inputs }: SumHere): Texts =>
  Object.fromEntries(
    (noted?.inputs ?? []).flatMap(({ key, text, from }) =>
      from === undefined && inputs.some(({ input, given }) => input.key === key && !given)
        ? [[key, text] as const]
        : [],
    ),
  );
