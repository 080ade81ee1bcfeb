/** @module Selective fitting of a job: loose parts that were measured, and the place to which each goes best. */
import type { Component, Fitting, Place } from '../engine/engine-type.ts';
import { operandPlace } from '../measure/expression.ts';
import { judge } from '../measure/judge.ts';
import { limitsOf } from '../measure/limits.ts';
import { ruleOf } from '../measure/sheet.ts';
import { sizeOf } from '../measure/size.ts';
import type { Verdict } from '../measure/verdict-model.ts';
import { weigh } from '../measure/weigh.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { combine, expanded, type Uncertain } from '../quantity/uncertain.ts';
import { clearanceOf, type FitSet, type Fitted, fitParts } from '../reckon/fit.ts';
import type { Lacking } from '../reckon/fit-lacking.ts';
import type { FitPlace } from '../reckon/fit-question.ts';
import { cellTitle } from './cell-title.ts';
import type { AssignedParts, OpenJob, StockPart } from './job.ts';
import { sizeToFit } from './size-at.ts';

export interface LoosePart {
  readonly name: string;
  readonly size: string;
  readonly half?: string;
  /** Mean of its readings at 20 °C, mm; missing where one of them gives no size. */
  readonly measured?: Uncertain;
  /** Where it is to go. */
  readonly place?: string;
}

/** A clearance as reckoned from part and room, against its limits. */
export interface AssignedFit {
  readonly parts: readonly string[];
  readonly clearance?: Uncertain;
  readonly expanded?: number;
  /** From the middle of the limits, mm. */
  readonly off?: number;
  readonly verdict: Verdict;
}

export interface PlaceFit {
  readonly place: string;
  readonly title: string;
  /** The size that goes there: as planned, else as it stands. */
  readonly size: string;
  /** Of the clearance there, mm. */
  readonly limits: { readonly least: number; readonly greatest: number };
  readonly room?: Uncertain;
  /** What must be read first, in words. */
  readonly missing: readonly string[];
  /** From the best set for all places together. */
  readonly proposed?: Fitted;
  readonly assigned?: AssignedFit;
}

export interface ComponentFit {
  readonly component: Component;
  readonly fitting: Fitting;
  readonly stock: readonly LoosePart[];
  readonly places: readonly PlaceFit[];
  /** Refused, with what is missing, until it can be reckoned. */
  readonly set: Answer<FitSet | Lacking>;
}

/** Sizes of a loose part as its readings give them; the part stands for a place, so that readings of two share no more than they do. */
const sizesOf = ({ sheet }: OpenJob, fitting: Fitting, name: string, part: StockPart): readonly Uncertain[] =>
  part.readings.flatMap((reading, at) => {
    const instrument = sheet.instruments.get(reading.instrument);
    if (!instrument) return [];
    const cell = { place: `part ${name}`, characteristic: fitting.measured, plane: '', axis: '' };
    const size = sizeOf({ ...reading, id: `${part.id} ${at + 1}`, cell }, instrument, {
      register: sheet.instruments,
      material: fitting.material,
    });
    return size.kind === 'answer' ? [size.value] : [];
  });

const loosePart = (
  job: OpenJob,
  fitting: Fitting,
  [name, part]: readonly [string, StockPart],
  placeOf: ReadonlyMap<string, string>,
): LoosePart => {
  const sizes = sizesOf(job, fitting, name, part);
  const place = placeOf.get(name);
  return {
    name,
    size: part.size,
    ...(part.half !== undefined && { half: part.half }),
    ...(sizes.length === part.readings.length && {
      measured: combine(sizes.map((size) => [1 / sizes.length, size] as const)),
    }),
    ...(place !== undefined && { place }),
  };
};

/** The room at a place, or what must be read before it is known. */
const roomAt = ({ sheet }: OpenJob, fitting: Fitting, place: Place): Pick<PlaceFit, 'room' | 'missing'> => {
  const at = sheet.engine.characteristics.get(fitting.room)?.at ?? place.kind;
  const { value, missing } = judge(sheet, fitting.room, operandPlace(sheet.engine, place, at));
  return value && missing.length === 0
    ? { room: value, missing: [] }
    : { missing: missing.map((cell) => `read ${cellTitle(sheet.engine, cell)}`) };
};

/** What the clearance at a place comes to with some parts of the stock. */
export const clearanceWith = (
  job: OpenJob,
  { fitting, stock }: Pick<ComponentFit, 'fitting' | 'stock'>,
  { room, limits }: Pick<PlaceFit, 'room' | 'limits'>,
  names: readonly string[],
): AssignedFit => {
  const sizes = names.flatMap((name) => stock.find((part) => part.name === name)?.measured ?? []);
  if (!room || sizes.length !== names.length) return { parts: names, verdict: 'not yet known' };
  const clearance = clearanceOf(fitting, room, sizes);
  const { verdict } = weigh(clearance, { new: limits, goesBack: limits, printed: {} }, ruleOf(job.sheet));
  return {
    parts: names,
    clearance,
    expanded: expanded(clearance, 0.95),
    off: clearance.value - (limits.least + limits.greatest) / 2,
    verdict,
  };
};

type Asked = Pick<ComponentFit, 'component' | 'fitting' | 'stock' | 'places'>;

/** The best set for the places that take one size. */
const setOfSize = (
  job: OpenJob,
  { component, fitting, stock, places }: Asked,
  size: string,
): ComponentFit['set'] => {
  const parts = stock.flatMap(({ name, half, measured, size: of }) =>
    measured && of === size ? [{ name, size: measured, ...(half !== undefined && { half }) }] : [],
  );
  if (parts.length === 0)
    return refuse(
      `no part of size ${size} is measured`,
      component.title,
      `measure the loose parts: ${fitting.measured}`,
    );
  const rooms = places.flatMap(({ place, room, limits, size: asked }): readonly FitPlace[] =>
    room && asked === size ? [{ name: place, room, limits }] : [],
  );
  const { goes, takes } = fitting;
  return fitParts({ places: rooms, parts, goes, takes, rule: ruleOf(job.sheet) });
};

/** Sets of several sizes as one: no part of one size competes for a place of another. */
const bothSets = (one: FitSet, other: FitSet): FitSet => ({
  kind: 'fitted',
  fits: [...one.fits, ...other.fits],
  greatestOff: Math.max(one.greatestOff, other.greatestOff),
  sumOff: one.sumOff + other.sumOff,
  proved: one.proved && other.proved,
});

const setOf = (job: OpenJob, asked: Asked): ComponentFit['set'] => {
  const missing = asked.places.flatMap((place) => place.missing);
  const [first] = missing;
  if (first !== undefined)
    return refuse(
      `${missing.length} ${missing.length === 1 ? 'size is' : 'sizes are'} not yet measured`,
      asked.component.title,
      first,
    );
  const sizes = [...new Set(asked.places.map(({ size }) => size))];
  const sets = sizes.map((size) => setOfSize(job, asked, size));
  return sets.reduce((one, other) => {
    if (one.kind === 'refused' || one.value.kind === 'lacking') return one;
    if (other.kind === 'refused' || other.value.kind === 'lacking') return other;
    return answer(bothSets(one.value, other.value));
  });
};

/** Without limits there is nothing to fit to. */
const placeFit = (
  job: OpenJob,
  component: Component,
  fitting: Fitting,
  place: Place,
): Omit<PlaceFit, 'assigned' | 'proposed'> | undefined => {
  const { engine } = job.sheet;
  const of = engine.characteristics.get(fitting.clearance);
  const at = operandPlace(engine, place, of?.at ?? place.kind);
  const { least, greatest } = limitsOf(job.sheet, fitting.clearance, at)?.new ?? {};
  if (least === undefined || greatest === undefined) return undefined;
  const size = sizeToFit(job, component.name, place.id);
  const limits = { least, greatest };
  return { place: place.id, title: place.title, size, limits, ...roomAt(job, fitting, place) };
};

const fitOf = (job: OpenJob, component: Component, fitting: Fitting): ComponentFit | undefined => {
  const assigned: ReadonlyMap<string, AssignedParts> = job.assigned.get(component.name) ?? new Map();
  const placeOf = new Map(
    [...assigned].flatMap(([place, { parts }]) => parts.map((part) => [part, place] as const)),
  );
  const stock = [...(job.stock.get(component.name) ?? [])].map((entry) =>
    loosePart(job, fitting, entry, placeOf),
  );
  const known = [...job.sheet.engine.places.values()]
    .filter(({ kind }) => kind === component.at)
    .map((place) => placeFit(job, component, fitting, place));
  const places = known.flatMap((place): readonly PlaceFit[] => {
    if (!place) return [];
    const names = assigned.get(place.place)?.parts;
    return [{ ...place, ...(names && { assigned: clearanceWith(job, { fitting, stock }, place, names) }) }];
  });
  if (places.length === 0 || places.length < known.length) return undefined;
  const set = setOf(job, { component, fitting, stock, places });
  const proposed = new Map(
    set.kind === 'answer' && set.value.kind === 'fitted' ? set.value.fits.map((fit) => [fit.place, fit]) : [],
  );
  return {
    component,
    fitting,
    stock,
    places: places.map((place) => {
      const fit = proposed.get(place.place);
      return fit ? { ...place, proposed: fit } : place;
    }),
    set,
  };
};

/** The limits of the clearance in words, each once: `0.065 to 0.107`. */
export const fitLimits = ({ places }: Pick<ComponentFit, 'places'>): readonly PlaceFit['limits'][] => [
  ...new Map(places.map(({ limits }) => [`${limits.least}|${limits.greatest}`, limits])).values(),
];

/** Jobs never change: what was reckoned of one stays so. */
const reckoned = new WeakMap<OpenJob, readonly ComponentFit[]>();

/**
 * Every component of a job whose parts are fitted by their sizes, with its stock and the best part for each place.
 *
 * @returns none where the engine type describes no fitting; lengths in mm
 * @source  the choice is fitParts; the engine type says what is measured and which clearance is to be met
 */
export const fittingsOf = (job: OpenJob): readonly ComponentFit[] => {
  const before = reckoned.get(job);
  if (before) return before;
  const fits = [...job.sheet.engine.components.values()].flatMap((component) => {
    const { fitting } = component;
    return (fitting && fitOf(job, component, fitting)) ?? [];
  });
  reckoned.set(job, fits);
  return fits;
};

/** Of one component; refuses one whose parts are not fitted by their sizes. */
export const fittingOf = (job: OpenJob, name: string): Answer<ComponentFit> => {
  const fits = fittingsOf(job);
  const found = fits.find(({ component }) => component.name === name);
  if (found) return answer(found);
  const names = fits.map(({ component }) => component.name);
  return refuse(
    `${job.sheet.engine.components.get(name)?.title ?? `“${name}”`} are not fitted from stock by their sizes here`,
    job.sheet.engine.title,
    names.length === 0
      ? 'say in the engine type how they are: fitting, under the component'
      : `choose ${names.join(' or ')}`,
  );
};
