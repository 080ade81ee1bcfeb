/** @module The second person's check: critical figures typed in again unseen, and held against those in the file. */
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { amountOf, readTyped } from '../../quantity/typed.ts';
import type { Difference } from '../engine-type.ts';
import { pairTyped } from '../printed-pair.ts';
import { readEngineType } from '../read-engine-type.ts';
import { samePerson } from '../same-person.ts';
import { type CriticalFigure, criticalFigures } from './critical-figures.ts';
import { fileData } from './edit-engine.ts';
import { valueAt, withHeading, withValue } from './file-data.ts';
import { rewriteFile } from './rewrite-file.ts';
import { isEntries } from './value-text.ts';

export interface FigureApart extends CriticalFigure {
  /** As the second person typed it. */
  readonly reads: string;
}

export interface Checker {
  readonly by: string;
  /** ISO 8601 date. */
  readonly on: string;
}

/** Every way in which a figure may be typed and mean the same: either of a printed pair. */
const amountsOf = (text: string, kind: CriticalFigure['kind']): readonly number[] => {
  const { figure, also } = pairTyped(text);
  return [figure, also].flatMap((one) => {
    const typed = one === undefined ? undefined : readTyped(one, kind);
    const amount = typed?.kind === 'answer' ? amountOf(typed.value, kind) : undefined;
    return amount?.kind === 'answer' ? [amount.value] : [];
  });
};

/** The same figure, in the same unit or in the other that is printed; no rounding is forgiven. */
const agrees = (typed: string, { figure, kind }: CriticalFigure): boolean => {
  const here = amountsOf(figure, kind);
  const there = amountsOf(typed, kind);
  return (
    there.length > 0 &&
    there.every((one) => here.some((other) => Math.abs(one - other) <= 1e-9 * Math.abs(other)))
  );
};

/** What is wrong with a figure as typed, before anything is held against it. */
export const figureTrouble = (text: string, kind: CriticalFigure['kind']): string | undefined => {
  const { figure, also } = pairTyped(text);
  for (const one of [figure, also]) {
    const typed = one === undefined ? undefined : readTyped(one, kind);
    if (typed?.kind === 'refused') return `${typed.refusal.what}: ${typed.refusal.remedy}`;
  }
  return undefined;
};

/** Figures that the second person typed otherwise. One that was not typed is not among them. */
const figuresApart = (
  figures: readonly CriticalFigure[],
  typed: ReadonlyMap<string, string>,
): readonly FigureApart[] =>
  figures.flatMap((figure) => {
    const reads = typed.get(figure.at);
    return reads === undefined || agrees(reads, figure) ? [] : [{ ...figure, reads }];
  });

export type Checked =
  /** All agree: the file says who checked it. */
  | { readonly kind: 'checked'; readonly text: string }
  /** Some do not: the file says which, for both to see. */
  | { readonly kind: 'differs'; readonly text: string; readonly apart: readonly FigureApart[] };

const mayCheck = (data: unknown, by: string): Answer<undefined> => {
  const entered = isEntries(data) && isEntries(data.entered) ? String(data.entered.by ?? '') : '';
  if (by.trim() === '') return refuse('nobody signs the check', 'checked by', 'give your name');
  if (entered === '')
    return refuse(
      'the file does not say who typed the figures in',
      'entered',
      'let whoever typed them in save it under their name first',
    );
  return samePerson(entered, by)
    ? refuse(`${by} typed these figures in`, 'checked by', 'let somebody else check them against the manual')
    : answer(undefined);
};

/**
 * Holds figures that a second person typed in, without seeing them, against those of the file.
 *
 * @param source  an engine type file without errors
 * @param typed   the critical figures by `at`, all of them
 * @param checker who, another than typed them in first, and on what day
 * @returns the next version of the file, with `checked` in it where all agree, else with what differs; refuses a file with errors, the
 *   same person, and figures left out or unreadable
 * @source  common practice, no source: copying is checked by doing it twice
 */
export const secondCheck = (
  source: string,
  typed: ReadonlyMap<string, string>,
  { by, on }: Checker,
): Answer<Checked> => {
  const file = fileData(source);
  if (file.kind === 'refused') return file;
  const { text, data } = file.value;
  if (!readEngineType(text).engine)
    return refuse('the engine type has errors', 'the file', 'mend them before it is checked');
  const may = mayCheck(data, by);
  if (may.kind === 'refused') return may;
  const figures = criticalFigures(data);
  const missing = figures.find(({ at }) => (typed.get(at) ?? '').trim() === '');
  if (missing) return refuse('a figure has not been typed in yet', missing.title, 'look it up in the manual');
  for (const { at, kind, title } of figures) {
    const trouble = figureTrouble(typed.get(at) ?? '', kind);
    if (trouble !== undefined) return refuse(trouble, title, 'type it as the manual prints it');
  }
  const apart = figuresApart(figures, typed);
  const differs: readonly Difference[] = apart.map(({ at, reads }) => ({ at, reads, by, on }));
  const next = withHeading(data, 'version', Number(valueAt(data, ['version'])) + 1);
  const without = withValue(withValue(next, ['checked'], undefined), ['differs'], undefined);
  return answer(
    apart.length === 0
      ? { kind: 'checked', text: rewriteFile(text, withHeading(without, 'checked', { by, on })) }
      : { kind: 'differs', text: rewriteFile(text, withHeading(without, 'differs', differs)), apart },
  );
};
