/** @module Edits carried out on an engine type file: its text again, with what is then wrong in it. */
import { type Answer, answer, type Refusal } from '../../quantity/refusal.ts';
import { readDocument } from '../file-document.ts';
import { type EngineReading, readEngineType } from '../read-engine-type.ts';
import { sourceText } from '../source-text.ts';
import { type EngineEdit, placeOf } from './engine-edit.ts';
import { withValue } from './file-data.ts';
import { rewriteFile } from './rewrite-file.ts';

export interface FileData {
  /** Without its byte order mark. */
  readonly text: string;
  /** What it holds, not looked at any further. */
  readonly data: unknown;
}

/** The plain data of a file that can be read as YAML or JSON at all, whatever is wrong in it otherwise. */
export const fileData = (source: string): Answer<FileData> => {
  const text = sourceText(source);
  if (text.kind === 'refused') return { kind: 'refused', refusal: text.trouble };
  const { document, troubles } = readDocument(text.text);
  if (document) return answer({ text: text.text, data: document.value });
  const [first] = troubles;
  const refusal: Refusal = {
    what: first?.what ?? 'the file cannot be read',
    where: `line ${first?.line ?? 1}`,
    remedy: first?.remedy ?? 'compare it with an engine type file that is known to be good',
  };
  return { kind: 'refused', refusal };
};

export interface EditedType extends EngineReading {
  readonly text: string;
}

/**
 * Carries out edits one after another.
 *
 * Comments, the order of the file and every figure that is not edited stay as they were typed. An edit may leave
 * the type with troubles: they are told, and no engine comes of it. One that names what is not there is refused,
 * and nothing is changed.
 *
 * @param source  an engine type file, YAML or JSON
 * @param edits   in order
 */
export const editEngine = (source: string, edits: readonly EngineEdit[]): Answer<EditedType> => {
  const file = fileData(source);
  if (file.kind === 'refused') return file;
  let { data } = file.value;
  for (const edit of edits) {
    const set = placeOf(data, edit);
    if (set.kind === 'refused') return set;
    data = withValue(data, set.value.path, set.value.value);
  }
  const text = rewriteFile(file.value.text, data);
  return answer({ text, ...readEngineType(text) });
};
