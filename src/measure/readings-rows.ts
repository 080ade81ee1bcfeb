/** @module The rows of a readings file before they mean anything: from a table, or from JSON. */
import { z } from 'zod';
import { chooseName } from '../engine/nearest-name.ts';
import { controlCharacter } from '../engine/source-text.ts';
import type { RowTrouble, TableRow } from '../engine/table-row.ts';
import { readCsv } from './csv.ts';

export const columns = [
  'place',
  'characteristic',
  'plane',
  'axis',
  'reading',
  'unit',
  'instrument',
  'temperature',
  'box',
] as const;
type Column = (typeof columns)[number];
/** Where to and what: a box of the printed sheet stands for its whole cell. */
const neededOf = (names: readonly string[]): readonly Column[] =>
  names.includes('box') ? ['reading'] : ['place', 'characteristic', 'reading'];

export interface Row {
  readonly row: number;
  readonly fields: Readonly<Record<Column, string>>;
}

export interface Rows {
  readonly rows: readonly Row[];
  /** As they stand in the file; not yet looked at. */
  readonly instruments: readonly unknown[];
  readonly sizesFound: ReadonlyMap<string, string>;
  readonly troubles: readonly RowTrouble[];
}

export const error = (row: number, what: string, where: string, remedy: string): RowTrouble => ({
  row,
  weight: 'error',
  what,
  where,
  remedy,
});

const onlyTrouble = (...trouble: Parameters<typeof error>): Rows => ({
  rows: [],
  instruments: [],
  sizesFound: new Map(),
  troubles: [error(...trouble)],
});

const isColumn = (name: string): name is Column => columns.some((column) => column === name);

const blank: Readonly<Record<Column, string>> = {
  place: '',
  characteristic: '',
  plane: '',
  axis: '',
  reading: '',
  unit: '',
  instrument: '',
  temperature: '',
  box: '',
};

const headTroubles = (names: readonly string[], row: number): readonly RowTrouble[] => {
  const missing = neededOf(names).filter((column) => !names.includes(column));
  const twice = columns.filter((column) => names.indexOf(column) !== names.lastIndexOf(column));
  return [
    ...missing.map((column) =>
      error(
        row,
        `the column ${column} is missing`,
        `line ${row}`,
        `begin with the line ${columns.join(',')}`,
      ),
    ),
    ...twice.map((column) => error(row, `the column ${column} stands twice`, `line ${row}`, 'leave one out')),
  ];
};

const fromCsv = (text: string): Rows => {
  const table = readCsv(text);
  if (table.kind === 'answer') return fromTable(table.value.rows);
  const { what, where, remedy } = table.refusal;
  return onlyTrouble(Number(/\d+/.exec(where)?.[0] ?? 0), what, where, remedy);
};

const fromTable = ([head, ...body]: readonly TableRow[]): Rows => {
  if (!head) return onlyTrouble(0, 'the file is empty', '', `begin with the line ${columns.join(',')}`);
  const names = head.fields.map((field) => field.toLowerCase());
  const faults = headTroubles(names, head.line);
  if (faults.length > 0) return { rows: [], instruments: [], sizesFound: new Map(), troubles: faults };
  const troubles: RowTrouble[] = names
    .filter((name) => name !== '' && !isColumn(name))
    .map((name) => ({
      ...error(
        head.line,
        `the column ${name.slice(0, 60)} is not known and is not read`,
        `line ${head.line}`,
        chooseName(name, columns),
      ),
      weight: 'warning',
    }));
  const rows = body.flatMap(({ line, fields, wrong }): readonly Row[] => {
    if (fields.slice(names.length).some((field) => field !== '')) {
      troubles.push(
        error(
          line,
          `the row has ${fields.length} fields and the first line names ${names.length}`,
          `line ${line}`,
          'a decimal with a comma needs quotes, or semicolons between the fields',
        ),
      );
      return [];
    }
    // A cell in a column that is not read may hold what it likes.
    const unread = names.flatMap((name, index) => (isColumn(name) ? (wrong?.get(index) ?? []) : []));
    if (unread.length > 0) {
      troubles.push(...unread.map(({ what, where, remedy }) => error(line, what, where, remedy)));
      return [];
    }
    const named = names.flatMap((name, index) =>
      isColumn(name) ? [[name, fields[index] ?? ''] as const] : [],
    );
    return [{ row: line, fields: { ...blank, ...Object.fromEntries(named) } }];
  });
  return { rows, instruments: [], sizesFound: new Map(), troubles };
};

const jsonFile = z.union([
  z.array(z.unknown()),
  z.strictObject({
    readings: z.array(z.unknown()),
    instruments: z.array(z.unknown()).default([]),
    'sizes-found': z.record(z.string(), z.string()).default({}),
  }),
]);

const word = z.string().max(1000);
const jsonRow = z.strictObject({
  place: word.default(''),
  characteristic: word.default(''),
  plane: word.default(''),
  axis: word.default(''),
  reading: word,
  unit: word.default(''),
  instrument: word.default(''),
  temperature: word.default(''),
  box: word.default(''),
});

const rowFault = (row: number, value: unknown, issue: z.core.$ZodIssue | undefined): RowTrouble => {
  const key = String(issue?.path[0] ?? '');
  const isNumber = typeof value === 'object' && value !== null && typeof Reflect.get(value, key) === 'number';
  return isNumber
    ? error(
        row,
        `${key} is a bare number, which loses its last zeros`,
        `reading ${row}`,
        `write it in quotes, as read: "54.980"`,
      )
    : error(
        row,
        issue?.message ?? 'it is no reading',
        [`reading ${row}`, key].filter(Boolean).join(', '),
        `give ${columns.join(', ')} as texts`,
      );
};

const fromJson = (text: string): Rows => {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch (fault) {
    const says = fault instanceof SyntaxError ? fault.message.slice(0, 200) : '';
    return onlyTrouble(
      0,
      'the file begins like JSON and is none',
      says,
      'correct it, or give a table in CSV',
    );
  }
  const file = jsonFile.safeParse(parsed);
  if (!file.success) {
    return onlyTrouble(
      0,
      'the file is JSON and holds no readings',
      '',
      'give a list of readings, or { "readings": [...], "instruments": [...], "sizes-found": {...} }',
    );
  }
  const {
    readings,
    instruments,
    'sizes-found': sizes,
  } = Array.isArray(file.data) ? { readings: file.data, instruments: [], 'sizes-found': {} } : file.data;
  const troubles: RowTrouble[] = [];
  const rows = readings.flatMap((value, index): readonly Row[] => {
    const read = jsonRow.safeParse(value);
    if (read.success) return [{ row: index + 1, fields: read.data }];
    troubles.push(rowFault(index + 1, value, read.error.issues[0]));
    return [];
  });
  return { rows, instruments, sizesFound: new Map(Object.entries(sizes)), troubles };
};

/** Characters: some forty thousand readings. A file beyond it is something else. */
const greatestSize = 4 * 1024 * 1024;

/** Rows of a readings file, whichever form it has; never throws, and looks at nothing that is far too large. */
export const rowsOf = (source: string | readonly TableRow[]): Rows =>
  typeof source === 'string' ? fromText(source) : fromTable(source);

const fromText = (text: string): Rows => {
  if (text.length > greatestSize) {
    return onlyTrouble(0, 'the file is larger than 4 MiB', '', 'give the readings of one engine');
  }
  const bare = text.replace(/^\ufeff/, '');
  const control = controlCharacter(bare);
  if (control) {
    const line = bare.slice(0, control.at).split('\n').length;
    return onlyTrouble(
      line,
      `a control character (${control.name}) stands in the text`,
      `line ${line}`,
      'save the file as plain text in UTF-8',
    );
  }
  return /^\s*[[{]/.test(bare) ? fromJson(bare) : fromCsv(bare);
};
