/** @module The columns of a table of limits: which header means which, as far as its words tell. */

export const limitColumns = [
  'characteristic',
  'step',
  'new.least',
  'new.greatest',
  'wear.least',
  'wear.greatest',
  'wear',
  'unit',
  'source',
  'place',
  'wears',
  'instrument',
] as const;
export type LimitColumn = (typeof limitColumns)[number];

/** What each is, for whoever matches columns by hand. */
export const columnWords: Readonly<Record<LimitColumn, string>> = {
  characteristic: 'characteristic, by its name or its title',
  step: 'rework step, empty for standard',
  'new.least': 'as made, at least',
  'new.greatest': 'as made, at most',
  'wear.least': 'may go back, at least',
  'wear.greatest': 'may go back, at most',
  wear: 'wear limit, on the side to which it wears',
  unit: 'unit of the figures in the row',
  source: 'page of the manual',
  place: 'kind of place, for a new characteristic',
  wears: 'which way it wears, for a new characteristic',
  instrument: 'instrument, for a new characteristic',
};

/** Column of the table, from 0, by what it means. */
export type ColumnMatch = Readonly<Partial<Record<LimitColumn, number>>>;

const words = (header: string): readonly string[] =>
  header
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');

const least = /^(least|min|minimum|lower|from)$/;
const greatest = /^(greatest|most|max|maximum|upper|to)$/;
const made = /^(new|made|standard|nominal|manufactured)$/;
const worn = /^(wear|worn|service|limit|limits|reuse|back|used)$/;

const meaningOf = (header: string): LimitColumn | undefined => {
  const said = words(header);
  const has = (form: RegExp) => said.some((word) => form.test(word));
  if (has(/^(unit|units)$/)) return 'unit';
  if (has(/^(source|page|sheet|reference|manual)$/)) return 'source';
  if (has(/^wears$/)) return 'wears';
  if (has(/^(instrument|gauge)$/)) return 'instrument';
  if (has(/^(step|undersize|oversize|size)$/)) return 'step';
  if (has(least) !== has(greatest)) {
    const side = has(least) ? 'least' : 'greatest';
    return `${has(worn) && !has(made) ? 'wear' : 'new'}.${side}`;
  }
  if (has(worn) && !has(made)) return 'wear';
  if (has(/^(place|at|component|part)$/)) return 'place';
  return has(/^(characteristic|name|title|item|what|description|dimension)$/) ? 'characteristic' : undefined;
};

/** What the headers seem to mean; of two that seem to mean the same, the first. */
export const matchColumns = (headers: readonly string[]): ColumnMatch => {
  const match: Partial<Record<LimitColumn, number>> = {};
  for (const [at, header] of headers.entries()) {
    const meaning = meaningOf(header);
    if (meaning !== undefined && match[meaning] === undefined) match[meaning] = at;
  }
  return match;
};
