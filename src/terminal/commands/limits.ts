/** @module `endfloat limits`: takes a table of limits, CSV or XLSX, into an engine type file. */
import { changesBetween } from '../../engine/edit/changes.ts';
import { editEngine } from '../../engine/edit/edit-engine.ts';
import {
  type ColumnMatch,
  columnWords,
  limitColumns,
  matchColumns,
} from '../../engine/edit/limit-columns.ts';
import { readLimitsTable } from '../../engine/edit/limits-table.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import type { Given, TerminalCommand } from '../command.ts';
import { editedOptions, editedOutcome } from '../edited-file.ts';
import { engineOnFile, notUsable } from '../engine-file.ts';
import { keyValues } from '../given.ts';
import { textOf } from '../input-file.ts';
import { didYouMean } from '../nearest.ts';
import { plain } from '../plain.ts';
import { rowLines } from '../row-lines.ts';
import { tableOnFile } from '../table-on-file.ts';

/** Columns as the headers say, but for those that were matched by hand. */
const matched = (given: Given, headers: readonly string[]): Answer<ColumnMatch> => {
  const pairs = keyValues(given.values.get('column') ?? [], '--column');
  if (pairs.kind === 'refused') return pairs;
  let match = matchColumns(headers);
  for (const [meaning, header] of pairs.value) {
    const column = limitColumns.find((one) => one === meaning);
    if (!column)
      return refuse(
        `no column means ${plain(meaning)}`,
        '--column',
        didYouMean(meaning, limitColumns, `write one of ${limitColumns.join(', ')}`),
      );
    const at = headers.findIndex((one) => one.toLowerCase() === header.toLowerCase());
    if (at === -1)
      return refuse(
        `the table has no column ${plain(header)}`,
        '--column',
        didYouMean(header, headers, `its columns are ${headers.map(plain).join(', ')}`),
      );
    match = { ...match, [column]: at };
  }
  return answer(match);
};

const matchLine = (match: ColumnMatch, headers: readonly string[]): string =>
  limitColumns
    .flatMap((column) => {
      const at = match[column];
      return at === undefined ? [] : [`“${plain(headers[at] ?? '')}” is ${columnWords[column]}`];
    })
    .join('; ');

export const limits: TerminalCommand = {
  name: 'limits',
  summary: 'take a table of limits (CSV or XLSX) into an engine type file',
  usage: ['limits ENGINE-FILE TABLE'],
  about: `The first row names the columns; what each was taken for is said. Meanings are ${limitColumns.join(', ')}.\nAn empty cell leaves a limit as it is. The file becomes the next version; a changed figure takes its check away. Where a row has an error nothing is written.`,
  options: [
    {
      name: 'column',
      value: 'MEANING=HEADER',
      many: true,
      says: 'what a column means, where its header does not tell',
    },
    ...editedOptions,
  ],
  words: [2, 2],
  run: async (given) => {
    const [path = '', tablePath = ''] = given.words;
    const read = await engineOnFile(path, given.world);
    if (read.kind === 'refused') return read;
    const { engine } = read.value;
    if (!engine) return answer(notUsable(read.value));
    const text = await textOf(path, given.world);
    if (text.kind === 'refused') return text;
    const table = await tableOnFile(tablePath, given.world);
    if (table.kind === 'refused') return table;
    const headers = table.value.rows[0]?.fields ?? [];
    const match = matched(given, headers);
    if (match.kind === 'refused') return match;
    const { edits, troubles, rows } = readLimitsTable(table.value.rows, engine, match.value);
    const lines = [
      `${plain(tablePath)}: ${matchLine(match.value, headers)}`,
      ...rowLines(tablePath, [...table.value.warnings, ...troubles]),
    ];
    if (troubles.some(({ weight }) => weight === 'error'))
      return answer({
        text: '',
        json: { usable: false, match: match.value, troubles },
        warnings: [...lines, 'endfloat: nothing was written: mend the rows and ask again'],
        no: true,
      });
    const edited = editEngine(text.value, edits);
    if (edited.kind === 'refused') return edited;
    const changed = changesBetween(text.value, edited.value.text);
    const count = changed.kind === 'answer' ? changed.value.length : 0;
    return editedOutcome(
      given,
      path,
      text.value,
      edited.value,
      `${rows} rows taken, ${count} changes.`,
      lines,
    );
  },
};
