/** @module A table of limits, from CSV or a workbook, to edits of an engine type, with what is wrong row by row. */

import { parseDecimal } from '../../quantity/decimal.ts';
import { type Answer, answer, type Refusal, refuse } from '../../quantity/refusal.ts';
import { readTyped } from '../../quantity/typed.ts';
import type { Characteristic, EngineType, Quantity } from '../engine-type.ts';
import { chooseName } from '../nearest-name.ts';
import { pairTyped } from '../printed-pair.ts';
import { quantityOf } from '../shown-in.ts';
import type { RowTrouble, TableRow } from '../table-row.ts';
import { type EngineEdit, type LimitOwner, type LimitSide, limitSides } from './engine-edit.ts';
import { type ColumnMatch, columnWords, type LimitColumn, matchColumns } from './limit-columns.ts';

export interface LimitsTable {
  /** Headers as they stand in the first row. */
  readonly headers: readonly string[];
  /** What each was taken to mean. */
  readonly match: ColumnMatch;
  /** Of the rows without an error. */
  readonly edits: readonly EngineEdit[];
  /** By row. */
  readonly troubles: readonly RowTrouble[];
  /** Rows that were understood. */
  readonly rows: number;
}

/** More troubles help nobody; the rest shows when these are mended. */
const mostTroubles = 100;

const short = (text: string): string => text.slice(0, 60);

type Fields = (column: LimitColumn) => string;

/** A column's cell holds no figure and no text. */
const unread = (row: TableRow, match: ColumnMatch): Refusal | undefined =>
  Object.values(match)
    .map((at) => row.wrong?.get(at))
    .find((one) => one !== undefined);

const bare = (text: string): boolean => parseDecimal(text).kind === 'answer';

/** A figure as the file will hold it: with its own unit, or with that of the row. */
const figureIn = (text: string, unit: string, quantity: Quantity): Answer<string> => {
  const typed = unit !== '' && bare(text) ? `${text} ${unit}` : text;
  const { figure, also } = pairTyped(typed);
  for (const one of [figure, also]) {
    const read = one === undefined ? undefined : readTyped(one, quantity);
    if (read?.kind === 'refused')
      return refuse(`'${short(text)}': ${read.refusal.what}`, '', read.refusal.remedy);
  }
  return answer(typed);
};

/** By name, else by title, in whatever letters. */
const characteristicNamed = (engine: EngineType, said: string): Answer<Characteristic> => {
  const all = [...engine.characteristics.values()];
  const lower = said.toLowerCase();
  const found = all.filter(({ name, title }) => name === lower || title.toLowerCase() === lower);
  const [first, second] = found;
  if (first && !second) return answer(first);
  return first
    ? refuse(
        `${found.length} characteristics are called so`,
        short(said),
        `write ${found.map(({ name }) => name).join(' or ')}`,
      )
    : refuse(
        'there is no such characteristic',
        short(said),
        chooseName(lower, engine.characteristics.keys()),
      );
};

const nameFrom = (title: string): string =>
  title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[^a-z]+|-+$/g, '')
    .slice(0, 64)
    .replace(/-+$/, '');

interface Meant {
  readonly owner: LimitOwner;
  readonly wears: string;
  /** A length where it is left out. */
  readonly quantity?: Quantity;
  /** Puts a characteristic that is not there yet. */
  readonly before: readonly EngineEdit[];
}

const newCharacteristic = (engine: EngineType, said: string, field: Fields): Answer<Meant> => {
  const name = nameFrom(said);
  const at = field('place').toLowerCase();
  const wears = field('wears').toLowerCase();
  const kinds = [...engine.placeKinds.keys()];
  if (name === '') return refuse('no name can be made of it', short(said), 'begin with a letter');
  if (!kinds.includes(at))
    return refuse(
      'there is no such kind of place',
      short(field('place')),
      `write one of ${kinds.join(', ')}`,
    );
  if (!['smaller', 'larger', 'either'].includes(wears))
    return refuse(
      'which way a new characteristic wears is not said',
      short(field('wears')),
      'write smaller, larger or either',
    );
  const instrument = field('instrument').toLowerCase();
  const entry = { title: said, at, wears, ...(instrument === '' ? {} : { instrument }) };
  return answer({
    owner: { characteristic: name },
    wears,
    before: [{ kind: 'set entry', in: 'characteristics', name, entry }],
  });
};

const stepOf = (engine: EngineType, of: Characteristic, step: string): Answer<LimitOwner> => {
  const sized = [...engine.components.values()].filter(({ sizes }) => sizes?.of === of.name);
  const names = sized.flatMap(({ sizes }) => sizes?.steps.map(({ name }) => name) ?? []);
  const found = sized.find(({ sizes }) => sizes?.steps.some(({ name }) => name === step));
  if (found) return answer({ component: found.name, step });
  return names.length === 0
    ? refuse(
        `${of.name} has no rework steps`,
        short(step),
        'leave the step empty, or add the step to its component first',
      )
    : refuse(`${of.name} has no such step`, short(step), `write one of ${names.join(', ')}`);
};

const meantBy = (engine: EngineType, field: Fields): Answer<Meant> => {
  const said = field('characteristic');
  if (said === '')
    return refuse('the characteristic is missing', '', 'name it, or leave the whole row empty');
  const known = characteristicNamed(engine, said);
  if (known.kind === 'refused')
    return field('place') === '' || field('wears') === '' ? known : newCharacteristic(engine, said, field);
  const of = known.value;
  const kind = field('place').toLowerCase();
  if (kind !== '' && kind !== of.at)
    return refuse(
      `${of.name} is at ${of.at}`,
      short(field('place')),
      `write ${of.at}, or look at the characteristic`,
    );
  const step = field('step');
  if (step === '' || step.toLowerCase() === 'standard')
    return answer({
      owner: { characteristic: of.name },
      wears: of.wears,
      quantity: quantityOf(of),
      before: [],
    });
  const owner = stepOf(engine, of, step);
  return owner.kind === 'refused'
    ? owner
    : answer({ owner: owner.value, wears: of.wears, quantity: quantityOf(of), before: [] });
};

const sideOf = (column: LimitSide | 'wear', wears: string): Answer<LimitSide> => {
  if (column !== 'wear') return answer(column);
  if (wears === 'either')
    return refuse(
      'it wears either way, and one wear limit does not say which side',
      '',
      'give the limits at least and at most',
    );
  return answer(wears === 'smaller' ? 'wear.least' : 'wear.greatest');
};

const figureColumns = [...limitSides, 'wear'] as const;

const editsOf = (
  engine: EngineType,
  field: Fields,
): Answer<{ readonly key: string; readonly edits: readonly EngineEdit[] }> => {
  const meant = meantBy(engine, field);
  if (meant.kind === 'refused') return meant;
  const { owner, wears, quantity = 'length', before } = meant.value;
  const edits: EngineEdit[] = [...before];
  for (const column of figureColumns) {
    const text = field(column);
    if (text === '') continue;
    const side = sideOf(column, wears);
    const figure = side.kind === 'refused' ? side : figureIn(text, field('unit'), quantity);
    if (side.kind === 'refused' || figure.kind === 'refused') {
      const { refusal } =
        side.kind === 'refused' ? side : (figure as Extract<typeof figure, { kind: 'refused' }>);
      return refuse(refusal.what, columnWords[column], refusal.remedy);
    }
    edits.push({ kind: 'set limit', of: owner, side: side.value, figure: figure.value });
  }
  if (edits.length === before.length)
    return refuse(
      'the row gives no figure',
      short(field('characteristic')),
      'give one, or leave the row out',
    );
  const source = field('source');
  if (source !== '' && 'characteristic' in owner)
    edits.push({
      kind: 'set value',
      path: ['characteristics', owner.characteristic, 'source'],
      value: source,
    });
  return answer({ key: Object.values(owner).join(' '), edits });
};

const headTroubles = (head: TableRow | undefined, match: ColumnMatch): readonly RowTrouble[] => {
  const whole = (what: string, remedy: string): RowTrouble => ({
    row: head?.line ?? 0,
    weight: 'error',
    what,
    where: 'the first row',
    remedy,
  });
  if (!head) return [whole('the table is empty', 'begin with a row of headers')];
  return [
    ...(match.characteristic === undefined
      ? [whole('no column names the characteristic', 'call one “characteristic”, or match it')]
      : []),
    ...(figureColumns.every((column) => match[column] === undefined)
      ? [
          whole(
            'no column gives a limit',
            'call them “new least”, “new greatest”, “wear limit”, or match them',
          ),
        ]
      : []),
  ];
};

/**
 * Reads a table of limits.
 *
 * The first row names the columns; what each means is told by its words, or by `match`. A row sets the limits of one
 * characteristic, or of one of its rework steps; an empty cell leaves a limit as it is. A characteristic that the
 * engine type does not have is put in where the row says its kind of place and which way it wears. Figures are kept
 * as they stand. A row with an error gives no edit.
 *
 * @param table   rows of CSV or of a workbook
 * @param engine  the type that the limits are for
 * @param match   columns by what they mean; guessed from the headers where it is missing
 */
export const readLimitsTable = (
  table: readonly TableRow[],
  engine: EngineType,
  match?: ColumnMatch,
): LimitsTable => {
  const [head, ...body] = table;
  const headers = head?.fields ?? [];
  const columns = match ?? matchColumns(headers);
  const troubles = [...headTroubles(head, columns)];
  if (troubles.length > 0) return { headers, match: columns, edits: [], troubles, rows: 0 };
  const edits: EngineEdit[] = [];
  const seen = new Map<string, number>();
  let rows = 0;
  for (const row of body) {
    const wrong = unread(row, columns);
    const field: Fields = (column) => {
      const at = columns[column];
      return at === undefined ? '' : (row.fields[at]?.trim() ?? '');
    };
    const read = wrong ? { kind: 'refused' as const, refusal: wrong } : editsOf(engine, field);
    if (read.kind === 'refused') {
      troubles.push({ row: row.line, weight: 'error', ...read.refusal });
      continue;
    }
    const { key } = read.value;
    const before = seen.get(key);
    if (before !== undefined)
      troubles.push({
        row: row.line,
        weight: 'error',
        what: `${key} stands in row ${before} too`,
        where: key,
        remedy: 'keep one of the two rows',
      });
    else {
      seen.set(key, row.line);
      edits.push(...read.value.edits);
      rows += 1;
    }
  }
  return { headers, match: columns, edits, troubles: troubles.slice(0, mostTroubles), rows };
};
