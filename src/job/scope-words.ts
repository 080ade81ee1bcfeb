/** @module How far a job goes, in words: what it reaches, what it does not open, and what alone is known of that. */
import type { EngineType, Place } from '../engine/engine-type.ts';
import type { OpenJob, SetScope } from './job.ts';
import { scopeOf } from './scope.ts';

type Scoped = Pick<OpenJob, 'sheet' | 'scopes' | 'done'>;

const titled = ({ places, placeKinds }: EngineType, asked: string): string =>
  places.get(asked)?.title ?? placeKinds.get(asked)?.title ?? asked;

const whole = 'the whole engine';

/** `fuel pump 1, cylinder head; and “Take off the flywheel”`. */
export const scopeWords = (
  engine: EngineType,
  { reach, also = [] }: Pick<SetScope, 'reach' | 'also'>,
): string => {
  const beside = also.map((name) => `“${engine.operations.get(name)?.title ?? name}”`);
  const parts = [reach.map((one) => titled(engine, one)).join(', '), beside.join(', ')];
  return parts.every((part) => part === '') ? whole : parts.filter((part) => part !== '').join('; and ');
};

/** How far the job goes now. */
export const scopeNow = (job: Scoped): string =>
  scopeOf(job).whole ? whole : scopeWords(job.sheet.engine, job.scopes.at(-1) ?? { reach: [] });

/** Kind by kind: `main bearing, all 4`, `piston 1, piston 3`. */
const byKind = (
  { placeKinds, places }: EngineType,
  wanted: (place: Place) => boolean,
): readonly { readonly says: string; readonly places: readonly Place[] }[] =>
  [...placeKinds.values()].flatMap(({ name, title, count }) => {
    const here = [...places.values()].filter((place) => place.kind === name && wanted(place));
    if (here.length === 0) return [];
    const all = here.length === count && count > 1;
    return [{ says: all ? `${title}, all ${count}` : here.map((one) => one.title).join(', '), places: here }];
  });

/** What is asked of each place that is not opened, or was read or seen there all the same; by the place. */
const askedAtShut = (job: Scoped & Partial<Pick<OpenJob, 'findings'>>): ReadonlyMap<string, Set<string>> => {
  const { engine, readings } = job.sheet;
  const { open, inQuestion } = scopeOf(job);
  const asked = new Map<string, Set<string>>();
  const add = (place: string, says: string): void => {
    if (!open.has(place)) asked.set(place, (asked.get(place) ?? new Set()).add(says));
  };
  for (const { name, title, at } of engine.characteristics.values())
    for (const { kind, id } of engine.places.values())
      if (kind === at && inQuestion(name, id)) add(id, title);
  for (const [last] of readings.values()) {
    const title = last && engine.characteristics.get(last.cell.characteristic)?.title;
    if (last && title !== undefined) add(last.cell.place, title);
  }
  for (const { place } of job.findings ?? []) add(place, 'a finding');
  return asked;
};

/** What it does not open, and of which nothing is read or proved. */
export const notOpened = (job: Scoped & Partial<Pick<OpenJob, 'findings'>>): readonly string[] => {
  const { open } = scopeOf(job);
  const asked = askedAtShut(job);
  return byKind(job.sheet.engine, ({ id }) => !open.has(id) && !asked.has(id)).map(({ says }) => says);
};

/** What it does not open, but where something is read or proved: `inlet rocker, all 3 (valve clearance, inlet)`. */
export const knownInPart = (job: Scoped & Partial<Pick<OpenJob, 'findings'>>): readonly string[] => {
  const asked = askedAtShut(job);
  return byKind(job.sheet.engine, ({ id }) => asked.has(id)).map(({ says, places }) => {
    const known = new Set(places.flatMap(({ id }) => [...(asked.get(id) ?? [])]));
    return `${says} (${[...known].join(', ')})`;
  });
};
