/** @module The text of a file as it came: refused where it is too large, in another encoding or no text at all. */
import type { Trouble } from './trouble.ts';

/**
 * The one thing of the platform that the core uses: the strict UTF-8 decoder of the Encoding Standard,
 * which Node and every browser have and which depends on nothing but its input.
 */
declare const TextDecoder: new (
  label: 'utf-8',
  options: { readonly fatal: true },
) => { decode(bytes: Uint8Array): string };

/** Bytes, or characters where a string is handed in. The largest engine type seen is a thirtieth of it. */
const greatestSize = 1024 * 1024;

export type SourceText =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'refused'; readonly trouble: Trouble };

const refused = (what: string, where: string, remedy: string, line = 1, column = 1): SourceText => ({
  kind: 'refused',
  trouble: { weight: 'error', what, where, remedy, line, column },
});

const decode = (bytes: Uint8Array): string | undefined => {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
};

const startsWith = (bytes: Uint8Array, ...start: readonly number[]): boolean =>
  start.every((byte, index) => bytes[index] === byte);

const knownStarts: readonly (readonly [string, readonly number[]])[] = [
  ['a PDF document', [0x25, 0x50, 0x44, 0x46]],
  ['a ZIP archive (an office document is one too)', [0x50, 0x4b, 0x03, 0x04]],
  ['a compressed file', [0x1f, 0x8b]],
  ['a PNG picture', [0x89, 0x50, 0x4e, 0x47]],
  ['a JPEG picture', [0xff, 0xd8, 0xff]],
  ['a SQLite database', [0x53, 0x51, 0x4c, 0x69, 0x74, 0x65, 0x20, 0x66]],
];

/** UTF-16 by its mark, or by the zero that stands in every other byte of plain Latin text. */
const looksLikeUtf16 = (bytes: Uint8Array): boolean => {
  if (startsWith(bytes, 0xff, 0xfe) || startsWith(bytes, 0xfe, 0xff)) return true;
  const start = bytes.subarray(0, 64);
  const zeros = (parity: number) => start.filter((byte, index) => index % 2 === parity && byte === 0).length;
  return start.length >= 8 && Math.max(zeros(0), zeros(1)) > start.length / 4;
};

/** A line feed is never part of a longer UTF-8 sequence, so that lines can be tried one by one. */
const firstBadLine = (bytes: Uint8Array): { readonly line: number; readonly bytes: Uint8Array } => {
  let line = 1;
  let from = 0;
  while (from < bytes.length) {
    const end = bytes.indexOf(0x0a, from);
    const part = bytes.subarray(from, end === -1 ? bytes.length : end);
    if (decode(part) === undefined) return { line, bytes: part };
    if (end === -1) break;
    from = end + 1;
    line += 1;
  }
  return { line, bytes };
};

const otherEncoding = (bytes: Uint8Array): SourceText => {
  const bad = firstBadLine(bytes);
  const guess = bad.bytes.some((byte) => byte >= 0x80 && byte <= 0x9f)
    ? 'Windows-1252'
    : 'Latin-1 (ISO 8859-1) or Windows-1252';
  return refused(
    `the file is not UTF-8; it looks like ${guess}`,
    `first at line ${bad.line}`,
    'save it as UTF-8 in the editor',
    bad.line,
  );
};

const decoded = (bytes: Uint8Array): SourceText => {
  const known = knownStarts.find(([, start]) => startsWith(bytes, ...start));
  if (known !== undefined) {
    return refused(`this is ${known[0]}, not a text file`, '', 'give the engine type file, YAML or JSON');
  }
  if (looksLikeUtf16(bytes)) {
    return refused('the file is in UTF-16', 'line 1', 'save it as UTF-8 in the editor');
  }
  const text = decode(bytes);
  return text === undefined ? otherEncoding(bytes) : { kind: 'text', text };
};

/** What a text file has no use for: control characters other than tab and line ends, and marks of byte order. */
const isControl = (code: number): boolean =>
  (code < 0x20 && code !== 0x09 && code !== 0x0a && code !== 0x0d) ||
  (code >= 0x7f && code <= 0x9f && code !== 0x85) ||
  code === 0xfeff ||
  code >= 0xfffe;

/** Half a surrogate pair by itself: no file in UTF-8 can hold it. */
const isLoneHalf = (text: string, at: number): boolean => {
  const code = text.charCodeAt(at);
  if (code < 0xd800 || code > 0xdfff) return false;
  const other = code < 0xdc00 ? text.charCodeAt(at + 1) : text.charCodeAt(at - 1);
  return code < 0xdc00 ? !(other >= 0xdc00 && other <= 0xdfff) : !(other >= 0xd800 && other <= 0xdbff);
};

/** The first character of a text that no engine type has a use for, by its code point. */
export const controlCharacter = (
  text: string,
): { readonly at: number; readonly name: string } | undefined => {
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (!isControl(code) && !isLoneHalf(text, at)) continue;
    return { at, name: `U+${code.toString(16).toUpperCase().padStart(4, '0')}` };
  }
  return undefined;
};

const withoutControls = (text: string): SourceText => {
  const found = controlCharacter(text);
  if (found === undefined) return { kind: 'text', text };
  const before = text.slice(0, found.at);
  const line = before.split('\n').length;
  const column = found.at - before.lastIndexOf('\n');
  return refused(
    `a control character (${found.name}) stands in the text`,
    `line ${line}`,
    'delete it, or save the file again as plain text in UTF-8',
    line,
    column,
  );
};

/** The text of an engine type file, its byte order mark taken off. */
export const sourceText = (source: string | Uint8Array): SourceText => {
  if (source.length > greatestSize) {
    return refused(
      `the file is larger than 1 MiB (${source.length} bytes)`,
      '',
      'give an engine type file; the largest of them is a few dozen kilobytes',
    );
  }
  const read: SourceText = typeof source === 'string' ? { kind: 'text', text: source } : decoded(source);
  return read.kind === 'refused' ? read : withoutControls(read.text.replace(/^\ufeff/, ''));
};
