/** @module What changes from one plan to another, in words: what more it costs, what that buys, and by what. */
import type { EngineType } from '../engine/engine-type.ts';
import { formatFigure } from '../quantity/figure.ts';
import type { Option, Plan } from './plan-model.ts';

export interface Difference {
  readonly cents: number;
  readonly days: number;
  readonly hours: number;
  /** `for 310.00 more and 3 more days: 4000 h more, since bores go to 0.50`. */
  readonly says: string;
}

/** More than these are counted, not named. */
const mostNamed = 4;

const list = (words: readonly string[]): string =>
  words.length < 2 ? words.join() : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

const isPlural = (title: string, count: number): boolean =>
  count > 1 || / ?[^ ]*[^s]s$/.test(title.split(/ (?:of|on|in|at|under|with) /)[0] ?? '');

/** `go to 0.50`, for one or for several. */
const deedWords = ({ does, size }: Option, plural: boolean): string => {
  const are = plural ? 'are' : 'is';
  const sized = size === 'standard' ? '' : ` at ${size}`;
  switch (does) {
    case 'put back':
      return plural ? 'go back' : 'goes back';
    case 'machine':
      return `${plural ? 'go' : 'goes'} to ${size}`;
    case 'replace':
      return `${are} renewed${sized}`;
    case 'exchange':
      return `${are} exchanged${sized}`;
    case 'sleeve':
      return `${are} sleeved${sized}`;
    case 'build up':
      return `${are} built up${sized}`;
    default:
      return does satisfies never;
  }
};

interface Change {
  readonly from: Option;
  readonly to: Option;
  /** Alike in this: told together. */
  readonly deed: string;
}

const changesOf = (from: Plan, to: Plan): readonly Change[] => {
  const before = new Map(from.choices.map((option) => [option.slot, option]));
  return to.choices.flatMap((option): readonly Change[] => {
    const other = before.get(option.slot);
    if (!other || other.id === option.id) return [];
    const same = other.does === option.does && other.size === option.size;
    const deed = same ? `from ${option.supplier}` : `${option.does} ${option.size}`;
    return [{ from: other, to: option, deed }];
  });
};

/** Where: nothing where it is all of the component, else its places, or how many they are. */
const placesWords = (engine: EngineType, changes: readonly Change[], all: number): string => {
  const places = changes.flatMap(({ to }) => to.place ?? []);
  if (places.length === 0 || places.length === all) return '';
  return places.length <= 2
    ? ` at ${list(places.map((place) => engine.places.get(place)?.title ?? place))}`
    : ` at ${places.length} of ${all} places`;
};

interface Phrase {
  readonly subject: string;
  readonly plural: boolean;
  readonly change: Change;
}

const phraseOf = (engine: EngineType, changes: readonly Change[]): Phrase | undefined => {
  const [change] = changes;
  if (!change) return undefined;
  const component = engine.components.get(change.to.component);
  const title = component?.title ?? change.to.component;
  const all = [...engine.places.values()].filter(({ kind }) => kind === component?.at).length;
  const plural = isPlural(title, component?.together ? 1 : changes.length);
  return { subject: `${title}${placesWords(engine, changes, all)}`, plural, change };
};

/** One phrase for all that the same is done to. */
const together = (phrases: readonly Phrase[]): string => {
  const [first] = phrases;
  if (!first) return '';
  const plural = first.plural || phrases.length > 1;
  const { from, to } = first.change;
  const supplied = from.does === to.does && from.size === to.size;
  const words = supplied ? `${plural ? 'come' : 'comes'} from ${to.supplier}` : deedWords(to, plural);
  return `${list(phrases.map(({ subject }) => subject))} ${words}`;
};

/** What would not have lasted comes first: it is what had to change. */
const needed = ({ from }: Change, to: Plan): number => (from.hours < to.hours ? 0 : 1);

const sinceWords = (engine: EngineType, from: Plan, to: Plan): string => {
  const changes = changesOf(from, to).toSorted((a, b) => needed(a, to) - needed(b, to));
  const byDeed = Map.groupBy(changes, ({ deed }) => deed);
  const phrases = [...byDeed.values()].map((alike) =>
    together(
      [...Map.groupBy(alike, (change) => change.to.component).values()].flatMap(
        (own) => phraseOf(engine, own) ?? [],
      ),
    ),
  );
  const left = phrases.length - mostNamed;
  const named = left > 1 ? [...phrases.slice(0, mostNamed), `${left} more things change`] : phrases;
  return list(named);
};

const figure = (value: number): string => formatFigure(value, Number.isInteger(value) ? 0 : 1);

/** In the order in which they are read: what is paid for it, and what is had for it. */
const sides = (cents: number, days: number, hours: number) => {
  const money = formatFigure(Math.abs(cents) / 100, 2);
  const time = figure(Math.abs(days));
  const unit = Math.abs(days) === 1 ? 'day' : 'days';
  const life = `${formatFigure(Math.abs(hours), 0)} h`;
  return {
    paid: [
      ...(cents > 0 ? [`${money} more`] : []),
      ...(days > 0 ? [`${time} more ${unit}`] : []),
      ...(hours < 0 ? [`${life} less`] : []),
    ],
    had: [
      ...(cents < 0 ? [`${money} less`] : []),
      ...(days < 0 ? [`ready ${time} ${unit} sooner`] : []),
      ...(hours > 0 ? [`${life} more`] : []),
    ],
  };
};

/**
 * What one plan costs more than another, in money, days or hours, what is had for it, and what is done otherwise.
 *
 * @param engine  for the names of its components and places
 * @returns differences, `to` less `from`, and one line of words
 */
export const differenceOf = (engine: EngineType, from: Plan, to: Plan): Difference => {
  const cents = to.cents - from.cents;
  const days = to.days - from.days;
  const hours = to.hours - from.hours;
  const { paid, had } = sides(cents, days, hours);
  const gives = had.length > 0 ? list(had) : 'nothing more';
  const worth =
    paid.length > 0
      ? `for ${list(paid)}: ${gives}`
      : had.length > 0
        ? gives
        : 'for the same: no other figures';
  const since = sinceWords(engine, from, to);
  return { cents, days, hours, says: since === '' ? worth : `${worth}, since ${since}` };
};
