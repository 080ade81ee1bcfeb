/** @module What can be changed in an engine type: each edit is a named fact about the file, and gives values by path. */
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import type { FilePath } from '../file-path.ts';
import { chooseName } from '../nearest-name.ts';
import { valueAt } from './file-data.ts';
import { isEntries } from './value-text.ts';

export const limitSides = ['new.least', 'new.greatest', 'wear.least', 'wear.greatest'] as const;
export type LimitSide = (typeof limitSides)[number];

/** Whose limits: a characteristic's as standard, or a rework step's of a component. */
export type LimitOwner =
  | { readonly characteristic: string }
  | { readonly component: string; readonly step: string };

/** As it stands in the file, key by key; not looked at until the whole is read. */
type Entry = Readonly<Record<string, unknown>>;
type Book = 'characteristics' | 'components';

export type EngineEdit =
  /** Puts a new entry behind the others, or makes the one of that name the same as this. */
  | { readonly kind: 'set entry'; readonly in: Book; readonly name: string; readonly entry: Entry }
  | { readonly kind: 'remove entry'; readonly in: Book; readonly name: string }
  /** A figure as the manual prints it, with its unit; undefined takes it out. */
  | {
      readonly kind: 'set limit';
      readonly of: LimitOwner;
      readonly side: LimitSide;
      readonly figure: string | undefined;
    }
  | {
      readonly kind: 'set size step';
      readonly component: string;
      readonly step: Entry & { readonly name: string };
    }
  | { readonly kind: 'remove size step'; readonly component: string; readonly step: string }
  /** Without a number the offer is put behind the others; numbers count from 0. */
  | { readonly kind: 'set offer'; readonly at?: number; readonly offer: Entry }
  | { readonly kind: 'remove offer'; readonly at: number }
  /** One value anywhere in the file, such as a title or the page of the manual. */
  | { readonly kind: 'set value'; readonly path: FilePath; readonly value: unknown };

/** A value to be put at a path; undefined takes out what is there. */
export interface ValueAtPath {
  readonly path: FilePath;
  readonly value: unknown;
}

const namesIn = (data: unknown, path: FilePath): readonly string[] => {
  const book = valueAt(data, path);
  return isEntries(book) ? Object.keys(book) : [];
};

const unknownName = (data: unknown, book: Book, name: string): Answer<never> =>
  refuse(
    `there is no ${book === 'characteristics' ? 'characteristic' : 'component'} ${name.slice(0, 64)}`,
    book,
    chooseName(name, namesIn(data, [book])),
  );

const stepsOf = (data: unknown, component: string): readonly unknown[] => {
  const steps = valueAt(data, ['components', component, 'sizes', 'steps']);
  return Array.isArray(steps) ? steps : [];
};

const stepPath = (data: unknown, component: string, step: string): Answer<FilePath> => {
  if (valueAt(data, ['components', component]) === undefined)
    return unknownName(data, 'components', component);
  const names = stepsOf(data, component).map((one) => String(valueAt(one, ['name'])));
  const at = names.indexOf(step);
  return at === -1
    ? refuse(`${component} has no step ${step.slice(0, 64)}`, 'sizes', chooseName(step, names))
    : answer(['components', component, 'sizes', 'steps', at]);
};

const ownerPath = (data: unknown, owner: LimitOwner): Answer<FilePath> => {
  if ('component' in owner) return stepPath(data, owner.component, owner.step);
  const path = ['characteristics', owner.characteristic];
  return valueAt(data, path) === undefined
    ? unknownName(data, 'characteristics', owner.characteristic)
    : answer(path);
};

const offersIn = (data: unknown): readonly unknown[] => {
  const offers = valueAt(data, ['offers']);
  return Array.isArray(offers) ? offers : [];
};

const offerPath = (data: unknown, at: number): Answer<FilePath> =>
  Number.isInteger(at) && at >= 0 && at < offersIn(data).length
    ? answer(['offers', at])
    : refuse(`there is no offer no. ${at + 1}`, 'offers', `the file has ${offersIn(data).length}`);

const at = (path: Answer<FilePath>, value: unknown, ...under: FilePath): Answer<ValueAtPath> =>
  path.kind === 'refused' ? path : answer({ path: [...path.value, ...under], value });

/** Where in the file an edit puts what, or why it cannot. */
export const placeOf = (data: unknown, edit: EngineEdit): Answer<ValueAtPath> => {
  switch (edit.kind) {
    case 'set entry':
      return answer({ path: [edit.in, edit.name], value: edit.entry });
    case 'remove entry':
      return valueAt(data, [edit.in, edit.name]) === undefined
        ? unknownName(data, edit.in, edit.name)
        : answer({ path: [edit.in, edit.name], value: undefined });
    case 'set limit':
      return at(ownerPath(data, edit.of), edit.figure, 'limits', ...edit.side.split('.'));
    case 'set size step': {
      const there = stepPath(data, edit.component, edit.step.name);
      if (there.kind === 'answer') return at(there, edit.step);
      return valueAt(data, ['components', edit.component, 'sizes']) === undefined
        ? refuse(
            `${edit.component} has no sizes yet`,
            'components',
            'say first which characteristic is machined and what is left to clean up',
          )
        : answer({
            path: ['components', edit.component, 'sizes', 'steps', stepsOf(data, edit.component).length],
            value: edit.step,
          });
    }
    case 'remove size step':
      return at(stepPath(data, edit.component, edit.step), undefined);
    case 'set offer':
      return edit.at === undefined
        ? answer({ path: ['offers', offersIn(data).length], value: edit.offer })
        : at(offerPath(data, edit.at), edit.offer);
    case 'remove offer':
      return at(offerPath(data, edit.at), undefined);
    case 'set value': {
      const [book, name] = edit.path;
      const inEntry = (book === 'characteristics' || book === 'components') && edit.path.length > 2;
      return inEntry && valueAt(data, [book, String(name)]) === undefined
        ? unknownName(data, book, String(name))
        : answer(edit);
    }
    default:
      return edit satisfies never;
  }
};
