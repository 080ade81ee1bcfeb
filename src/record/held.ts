/** @module Finds the journal, the figures and the pictures that a record page or an exported file carries. */
import { z } from 'zod';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { type PicturesHeld, picturesFromText, picturesInPage } from './picture-figures.ts';
import { recordFormat } from './record-file.ts';

const held = z.strictObject({
  format: z.literal(recordFormat),
  journal: z.array(z.unknown()).min(1),
  figures: z.record(z.string(), z.string()),
  pictures: z.record(z.string().regex(/^[0-9a-f]{64}$/), z.string()).exactOptional(),
});

export interface Held {
  readonly journal: readonly unknown[];
  readonly figures: Readonly<Record<string, string>>;
  readonly pictures: PicturesHeld;
  /** The page's whole text, line ends made one, where it is a page. */
  readonly page?: string;
}

const opening = '<script type="application/json" id="endfloat-record">';
const closing = '</script>';

const parsed = (text: string, where: string): Answer<z.infer<typeof held>> => {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return refuse(
      'the record inside cannot be read as JSON',
      where,
      'take the file again from where it was made',
    );
  }
  const read = held.safeParse(json);
  if (read.success) return answer(read.data);
  const path = read.error.issues[0]?.path.join('.') ?? '';
  return refuse(
    `it is not a record that this program knows${path === '' ? '' : ` (${path})`}`,
    where,
    `give a record page or an exported file of the format ${recordFormat}`,
  );
};

/** @param text  a record page or an exported file, whole */
export const heldIn = (text: string): Answer<Held> => {
  const clean = text.replace(/^\ufeff/, '').replaceAll('\r\n', '\n');
  if (clean.trimStart().startsWith('{')) {
    const read = parsed(clean, 'file');
    return read.kind === 'refused'
      ? read
      : answer({
          journal: read.value.journal,
          figures: read.value.figures,
          pictures: picturesFromText(read.value.pictures ?? {}),
        });
  }
  const from = clean.indexOf(opening);
  const to = clean.indexOf(closing, from + opening.length);
  if (from < 0 || to < 0)
    return refuse('there is no record in this file', 'file', 'give a record page or an exported file');
  const read = parsed(clean.slice(from + opening.length, to), 'page');
  return read.kind === 'refused'
    ? read
    : answer({
        journal: read.value.journal,
        figures: read.value.figures,
        pictures: picturesInPage(clean),
        page: clean,
      });
};
