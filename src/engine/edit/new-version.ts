/** @module An engine type's next version: its number, who typed it in, and whether its check still stands. */
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { type CriticalFigure, criticalFigures } from './critical-figures.ts';
import { fileData } from './edit-engine.ts';
import { valueAt, withHeading } from './file-data.ts';
import { rewriteFile } from './rewrite-file.ts';

const figuresText = (figures: readonly CriticalFigure[]): string =>
  figures
    .map(({ at, figure }) => `${at} ${figure}`)
    .sort()
    .join('\n');

/** Differences that stand until their figure is touched. */
const standing = (before: unknown, after: unknown): unknown => {
  const differs = valueAt(after, ['differs']);
  if (!Array.isArray(differs)) return undefined;
  const path = (one: unknown) =>
    String(valueAt(one, ['at']))
      .split('/')
      .map((key) => (/^\d+$/.test(key) ? Number(key) : key));
  const left = differs.filter((one) => valueAt(before, path(one)) === valueAt(after, path(one)));
  return left.length === 0 ? undefined : left;
};

/**
 * The next version of an engine type that is on the shelf.
 *
 * A check stands for the figures that were checked: where a critical figure changed it is taken away, and whoever
 * changed it counts as the one who typed the figures in.
 *
 * @param before  the newest version on the shelf
 * @param after   the same type as edited
 * @returns the edited file with its version, its author and its check as they must be; refuses another type
 */
export const nextVersion = (
  before: string,
  after: string,
  { by, on }: { readonly by: string; readonly on: string },
): Answer<string> => {
  const one = fileData(before);
  if (one.kind === 'refused') return one;
  const other = fileData(after);
  if (other.kind === 'refused') return other;
  const [old, now] = [one.value.data, other.value.data];
  const id = valueAt(old, ['id']);
  if (valueAt(now, ['id']) !== id)
    return refuse('it has another id', 'id', `write ${id}, or put it on the shelf as a type of its own`);
  if (by.trim() === '') return refuse('nobody signs it', 'entered by', 'give your name');
  const same = figuresText(criticalFigures(old)) === figuresText(criticalFigures(now));
  const author = same ? (valueAt(old, ['entered']) ?? { by, on }) : { by, on };
  const changes: readonly (readonly [string, unknown])[] = [
    ['version', Number(valueAt(old, ['version'])) + 1],
    ['entered', author],
    ['checked', same ? valueAt(old, ['checked']) : undefined],
    ['differs', standing(old, now)],
  ];
  const data = changes.reduce<unknown>((data, [key, value]) => withHeading(data, key, value), now);
  return answer(rewriteFile(other.value.text, data));
};
