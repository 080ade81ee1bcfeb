/** @module Each tagged part of a job: where it belongs, how it stands, what was found and decided, what is next for it. */

import type { Component, Operation } from '../../engine/engine-type.ts';
import type { Signed } from '../../journal/event.ts';
import { decided } from '../decided.ts';
import type { NotedFinding, OpenJob } from '../job.ts';
import { openLines } from '../order/open-lines.ts';
import type { LineAt } from '../order/standing.ts';
import { standingWords } from '../order/standing-words.ts';
import { scopeOf } from '../scope.ts';
import { strippedOf } from '../stripped.ts';
import { type Homed, homedOf } from './homing.ts';
import { type Tag, tagsOf } from './tag.ts';

export type PartState =
  | { readonly kind: 'on the engine' }
  /** Nothing is decided of it yet. */
  | { readonly kind: 'off' }
  /** Being machined, or awaited from there. */
  | { readonly kind: 'away'; readonly says: string }
  | { readonly kind: 'to go back' }
  /** Lost, unmarked or mixed up, and nobody has decided yet. */
  | { readonly kind: 'in question'; readonly says: string }
  /** Another part goes there: the tag counts no more. */
  | { readonly kind: 'replaced'; readonly says: string }
  /** Its tag was scanned at its place. */
  | { readonly kind: 'home'; readonly signed: Signed }
  /** What fits it is signed. */
  | { readonly kind: 'fitted'; readonly signed: Signed };

export interface PartHome {
  readonly tag: Tag;
  /** Where it goes: its own place, unless a named person decided otherwise. */
  readonly place: string;
  readonly state: PartState;
  /** Whether this job goes so far as to take it off. */
  readonly comesOff: boolean;
  /** What takes it off, and what fits it. */
  readonly off?: Operation;
  readonly fits?: Operation;
  readonly findings: readonly NotedFinding[];
  /** What the plan does with the components there: `pistons: put back`. */
  readonly planned: readonly string[];
  readonly told: Homed;
}

const isNew = (does: string | undefined): boolean => does === 'replace' || does === 'exchange';

/** What one job says of all its parts. */
interface Known {
  readonly job: OpenJob;
  readonly told: ReadonlyMap<string, Homed>;
  readonly stripped: (operation: string) => boolean;
  readonly awaited: readonly LineAt[];
}

const componentsAt = ({ sheet }: OpenJob, { part }: Tag): readonly Component[] =>
  [...sheet.engine.components.values()].filter(({ at }) => at === part);

/** Why another part goes there; undefined where the tagged one comes back. */
const replacedBy = ({ job }: Known, tag: Tag, { decided: word }: Homed): string | undefined => {
  if (word !== undefined) return word.place === undefined ? `${word.decidedBy}: ${word.why}` : undefined;
  const hanging = componentsAt(job, tag).filter(({ tagged }) => tagged);
  if (hanging.length === 0) return undefined;
  const chosen = hanging.flatMap(({ name }) => job.assigned.get(name)?.get(tag.id)?.parts ?? []);
  if (chosen.length > 0) return `${chosen.join(' and ')} from stock goes there`;
  return hanging.every(({ name }) => isNew(decided(job, name, tag.id)))
    ? 'the plan has another part there'
    : undefined;
};

/** What is awaited of the very part, as long as the plan does not have another. */
const awayAt = ({ job, awaited }: Known, tag: Tag): string | undefined => {
  const hanging = componentsAt(job, tag).filter(({ tagged }) => tagged);
  const line = awaited.find(
    ({ line: { component, places, does } }) =>
      !isNew(does) && hanging.some(({ name }) => name === component) && places.includes(tag.id),
  );
  return line && `${line.line.says}, ${standingWords(line.standing)}`;
};

/** Whether it comes off in this job at all, as far as its scope goes. */
const comesOff = (job: OpenJob, { id, part }: Tag, off: Operation | undefined): boolean => {
  const { whole, operations, placesAt } = scopeOf(job);
  if (whole || off === undefined) return true;
  return operations.has(off.name) && (!job.sheet.engine.places.has(id) || placesAt(off.name, part).has(id));
};

const stateOf = (known: Known, tag: Tag, told: Homed, off?: Operation, fits?: Operation): PartState => {
  const { job, stripped } = known;
  if (told.strayed !== undefined) return { kind: 'in question', says: told.strayed.says };
  if (!comesOff(job, tag, off)) return { kind: 'on the engine' };
  const replaced = replacedBy(known, tag, told);
  if (replaced !== undefined) return { kind: 'replaced', says: replaced };
  const fitted = fits && job.done.get(fits.name);
  if (fitted !== undefined) return { kind: 'fitted', signed: fitted };
  if (told.homed !== undefined) return { kind: 'home', signed: told.homed };
  if (off !== undefined && !stripped(off.name)) return { kind: 'on the engine' };
  const away = awayAt(known, tag);
  if (away !== undefined) return { kind: 'away', says: away };
  return { kind: job.plan === undefined ? 'off' : 'to go back' };
};

const partHome = (known: Known, tag: Tag): PartHome => {
  const { job } = known;
  const told = known.told.get(tag.id) ?? {};
  const operations = [...job.sheet.engine.operations.values()];
  const off = operations.find(({ removes }) => removes.includes(tag.part));
  const fits = operations.find((one) => one.fits.includes(tag.part));
  const here = componentsAt(job, tag);
  const own = (place: string) => (tag.keeps ? place === tag.id : place.startsWith(`${tag.part}.`));
  return {
    tag,
    place: told.decided?.place ?? tag.id,
    state: stateOf(known, tag, told, off, fits),
    comesOff: comesOff(job, tag, off),
    ...(off && { off }),
    ...(fits && { fits }),
    findings: job.findings.filter(({ place }) => own(place)),
    planned: (job.plan?.choices ?? [])
      .filter(({ slot }) => {
        const [component = '', place] = slot.split('@');
        return here.some(({ name }) => name === component) && (place === undefined || own(place));
      })
      .map(
        ({ slot, says }) => `${job.sheet.engine.components.get(slot.split('@')[0] ?? '')?.title}: ${says}`,
      ),
    told,
  };
};

/** Jobs never change: what was put together of one stays so. */
const known = new WeakMap<OpenJob, readonly PartHome[]>();

/** Every tagged part of a job, by the numbers of their tags. */
export const partHomesOf = (job: OpenJob): readonly PartHome[] => {
  const before = known.get(job);
  if (before !== undefined) return before;
  const all: Known = { job, told: homedOf(job.homing), stripped: strippedOf(job), awaited: openLines(job) };
  const homes = tagsOf(job.sheet.engine).map((tag) => partHome(all, tag));
  known.set(job, homes);
  return homes;
};
