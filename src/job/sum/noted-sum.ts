/** @module How a noted sum stands: what came of it, whether it keeps its limits, what has changed since. */
import { chooseName } from '../../engine/nearest-name.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { reckonTyped } from '../../reckon/given.ts';
import { reckonings } from '../../reckon/list.ts';
import type { Reckoned } from '../../reckon/reckoning.ts';
import type { RequestOf } from '../command.ts';
import type { NotedSum, OpenJob } from '../job.ts';
import { type KeptHere, keptHere, resultText } from './keeping.ts';
import { reckonHere, type SumHere, sumAt, type Texts } from './sum-at.ts';
import { type SumPlace, sumPlaces } from './sum-places.ts';

export interface NotedHere {
  readonly noted: NotedSum;
  readonly keeps: readonly KeptHere[];
  readonly changed: readonly string[];
}

/** A noted sum never changes: what came of it stays so. */
const known = new WeakMap<NotedSum, Answer<Reckoned>>();

/** What comes of the inputs that a sum was noted with. */
const reckonedAgain = (reckon: string, noted: NotedSum): Answer<Reckoned> => {
  const before = known.get(noted);
  if (before) return before;
  const reckoning = reckonings.find(({ name }) => name === reckon);
  const texts = Object.fromEntries(noted.inputs.map(({ key, text }) => [key, text]));
  const done = reckoning
    ? reckonTyped(reckoning, texts)
    : refuse(`there is no sum ${reckon}`, reckon, 'correct the engine type');
  const reckoned = done.kind === 'answer' ? answer(done.value.reckoned) : done;
  known.set(noted, reckoned);
  return reckoned;
};

/** A sum as it was noted; undefined where it is not. */
export const notedAt = (job: OpenJob, at: SumPlace): NotedHere | undefined => {
  const here = sumAt(job, at);
  if (!here?.noted) return undefined;
  const reckoned = reckonedAgain(at.sum.reckon, here.noted);
  return {
    noted: here.noted,
    keeps: reckoned.kind === 'answer' ? keptHere(job, at, reckoned.value) : [],
    changed: here.changed,
  };
};

/** What a sum is found by. */
export interface SumNamed {
  readonly operation: string;
  readonly sum: string;
  readonly place?: string;
}

/** The sum that is meant, where there is one. */
export const sumNamed = (
  job: OpenJob,
  { operation: name, sum: wanted, place }: SumNamed,
): Answer<SumPlace> => {
  const { engine } = job.sheet;
  const operation = engine.operations.get(name);
  if (operation === undefined)
    return refuse(
      `${engine.title} has no operation “${name}”`,
      'operation',
      chooseName(name, engine.operations.keys()),
    );
  const sum = operation.sums.find((one) => one.name === wanted);
  if (sum === undefined) {
    const names = operation.sums.map((one) => one.name);
    return refuse(`“${operation.title}” has no sum “${wanted}”`, 'sum', chooseName(wanted, names));
  }
  const places = sumPlaces(engine, sum);
  const at = places.find((one) => one?.id === place);
  if (at === undefined && (place !== undefined || sum.at !== undefined)) {
    const ids = places.flatMap((one) => one?.id ?? []);
    return refuse(
      place === undefined ? 'it is done at each place, and none is named' : `it is not done at ${place}`,
      'place',
      ids.length === 0 ? 'leave the place out' : chooseName(place ?? '', ids),
    );
  }
  return answer({ operation, sum, place: at });
};

/** The inputs of a sum as they are noted: what was typed, what the job gave and where it came from. */
export const notedInputs = ({ inputs, texts }: SumHere): RequestOf<'note sum'>['inputs'] =>
  inputs.flatMap(({ input: { key }, given }) => {
    const text = texts[key];
    if (text === undefined) return [];
    return [{ key, text, ...(given?.kind === 'given' && { from: given.from }) }];
  });

export const notedResults = ({ results }: Reckoned): RequestOf<'note sum'>['found'] =>
  Object.entries(results).map(([key, result]) => ({ key, text: resultText(result) }));

/**
 * The request that writes a sum into the journal.
 *
 * @param typed  inputs that the job does not give
 * @returns refuses what is no sum here, what is given and typed too, and what cannot be reckoned
 */
export const noteSum = (
  job: OpenJob,
  named: SumNamed,
  typed: Texts,
  said: { readonly fitted?: string; readonly note: string },
): Answer<RequestOf<'note sum'>> => {
  const at = sumNamed(job, named);
  if (at.kind === 'refused') return at;
  const here = sumAt(job, at.value, typed);
  if (!here) return refuse(`there is no sum ${at.value.sum.reckon}`, named.sum, 'correct the engine type');
  const keys = here.inputs.map(({ input }) => input.key);
  const stray = Object.keys(typed).find(
    (key) => !keys.includes(key) || here.inputs.some(({ input, given }) => input.key === key && given),
  );
  if (stray !== undefined)
    return keys.includes(stray)
      ? refuse('it is given here and not asked', stray, 'measure again where it is not right')
      : refuse(
          `${here.reckoning.name} does not take ${stray.slice(0, 40)}`,
          stray.slice(0, 40),
          `give it ${keys.join(', ')}`,
        );
  const reckoned = reckonHere(here);
  if (reckoned.kind === 'refused') return reckoned;
  return answer({
    kind: 'note sum',
    ...named,
    inputs: notedInputs(here),
    found: notedResults(reckoned.value.reckoned),
    ...(said.fitted !== undefined && said.fitted !== '' && { fitted: said.fitted }),
    note: said.note,
  });
};
