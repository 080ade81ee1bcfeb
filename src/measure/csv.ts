/** @module A table as text (RFC 4180, and the semicolons and tabs that spreadsheets write), read row by row. */
import type { TableRow } from '../engine/table-row.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';

export interface CsvTable {
  readonly separator: ';' | '\t' | ',';
  readonly rows: readonly TableRow[];
}

const separators = [';', '\t', ','] as const;
/** More than any job has; a file beyond it is something else. */
const mostRows = 50_000;
const longestField = 1000;

/** What separates the fields of the first line: whichever of the three stands there most outside quotes. */
const separatorOf = (text: string): CsvTable['separator'] => {
  const [first = ''] = text.slice(0, 10_000).split(/[\r\n]/, 1);
  const bare = first.replace(/"[^"]*"/g, '');
  const counted = separators.map((separator) => ({ separator, count: bare.split(separator).length - 1 }));
  return counted.reduce((best, each) => (each.count > best.count ? each : best)).separator;
};

const refuseField = (line: number): Answer<never> =>
  refuse(
    'a field is longer than anything that belongs in a table of readings; a quote may never be closed',
    `line ${line}`,
    'close the quote, or leave quotes out',
  );

/** End of a field in quotes, its text with doubled quotes made single, and the lines that it spans. */
const quoted = (text: string, from: number) => {
  let at = from + 1;
  let value = '';
  while (at - from <= longestField) {
    const close = text.indexOf('"', at);
    if (close === -1 || close - from > longestField) return undefined;
    value += text.slice(at, close);
    if (text[close + 1] !== '"') return { value, end: close + 1 };
    value += '"';
    at = close + 2;
  }
  return undefined;
};

const linesIn = (text: string): number => text.split(/\r\n|\r|\n/).length - 1;

/**
 * Reads a table. The separator is found from the first line; fields may stand in double quotes, in which a
 * quote is written twice; lines end as on any system; empty lines are passed over.
 *
 * @param text  the whole file, its byte order mark taken off
 * @returns rows with the line on which each begins, fields with blanks at the ends taken off; refuses a quote
 *   that is never closed, text after a closing quote, and more rows than any job has
 * @source  RFC 4180
 */
export const readCsv = (text: string): Answer<CsvTable> => {
  const separator = separatorOf(text);
  const end = new RegExp(`[${separator}\\r\\n]`, 'g');
  const rows: TableRow[] = [];
  let fields: string[] = [];
  let line = 1;
  let begun = 1;
  let at = 0;
  while (at <= text.length) {
    if (text[at] === '"') {
      const field = quoted(text, at);
      if (!field) return refuseField(begun);
      line += linesIn(field.value);
      fields.push(field.value.trim());
      at = field.end;
      if (at < text.length && ![separator, '\r', '\n'].includes(text[at] ?? '')) {
        return refuse(
          'text stands after a closing quote',
          `line ${line}`,
          'write a quote inside quotes twice',
        );
      }
    } else {
      end.lastIndex = at;
      const stop = end.exec(text)?.index ?? text.length;
      if (stop - at > longestField) return refuseField(begun);
      fields.push(text.slice(at, stop).trim());
      at = stop;
    }
    if (text[at] === separator) {
      at += 1;
      continue;
    }
    if (fields.some((field) => field !== '')) rows.push({ line: begun, fields });
    if (rows.length > mostRows || line > 4 * mostRows) {
      return refuse(`more than ${mostRows} rows`, `line ${line}`, 'give the readings of one engine');
    }
    fields = [];
    at += text[at] === '\r' && text[at + 1] === '\n' ? 2 : 1;
    line += 1;
    begun = line;
  }
  return answer({ separator, rows });
};

/** A field as it must be written: in quotes where it holds the separator, a quote or a line end. */
export const csvField = (text: string): string =>
  /[",;\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
