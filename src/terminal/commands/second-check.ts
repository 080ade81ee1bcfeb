/** @module `endfloat second-check`: a second person types critical figures in unseen, and they are held against the file. */
import { criticalFigures } from '../../engine/edit/critical-figures.ts';
import { fileData } from '../../engine/edit/edit-engine.ts';
import { type FigureApart, secondCheck } from '../../engine/edit/second-check.ts';
import { csvField } from '../../measure/csv.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { answerNo, type Given, lastValue, type Outcome, type TerminalCommand } from '../command.ts';
import { engineOnFile, notUsable } from '../engine-file.ts';
import { textOf } from '../input-file.ts';
import { writeWhole } from '../output-file.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';
import { tableOnFile } from '../table-on-file.ts';

const columns = ['at', 'title', 'page', 'reads'] as const;

/** A table to fill in from the manual: every critical figure, and none of their values. */
const blank = (text: string): Answer<Outcome> => {
  const file = fileData(text);
  if (file.kind === 'refused') return file;
  const figures = criticalFigures(file.value.data);
  const rows = [columns, ...figures.map(({ at, title, source = '' }) => [at, title, source, ''])];
  return answer({
    text: rows.map((row) => row.map(csvField).join(',')).join('\n'),
    json: { figures: figures.map(({ at, title, source }) => ({ at, title, source })) },
  });
};

const typedIn = async (path: string, given: Given): Promise<Answer<ReadonlyMap<string, string>>> => {
  const rows = await tableOnFile(path, given.world);
  if (rows.kind === 'refused') return rows;
  const [head, ...body] = rows.value.rows;
  const [at, reads] = ['at', 'reads'].map(
    (name) => head?.fields.findIndex((field) => field.toLowerCase() === name) ?? -1,
  );
  if (at === undefined || reads === undefined || at < 0 || reads < 0)
    return refuse(
      'the columns at and reads are missing',
      plain(path),
      'fill in the table that endfloat second-check ENGINE-FILE writes',
    );
  const wrong = body.map((row) => row.wrong?.get(reads)).find((one) => one !== undefined);
  if (wrong) return { kind: 'refused', refusal: wrong };
  return answer(new Map(body.map(({ fields }) => [fields[at] ?? '', fields[reads] ?? ''])));
};

const apartText = (apart: readonly FigureApart[]): string =>
  table(
    ['Figure', 'Page', 'In the file', 'Read unseen'].map((head) => ({ head })),
    apart.map(({ title, source = '', figure, reads }) => [title, source, figure, reads].map(plain)),
  );

const held = async (given: Given, text: string, path: string): Promise<Answer<Outcome>> => {
  const { world } = given;
  const typed = await typedIn(path, given);
  if (typed.kind === 'refused') return typed;
  const by = lastValue(given, 'by') ?? world.env.ENDFLOAT_BY ?? world.user();
  const checked = secondCheck(text, typed.value, { by, on: world.now().slice(0, 10) });
  if (checked.kind === 'refused') return answerNo(checked.refusal);
  const apart = checked.value.kind === 'differs' ? checked.value.apart : [];
  const to = lastValue(given, 'to');
  const written = to === undefined ? undefined : await writeWhole(to, checked.value.text, world);
  if (written?.kind === 'refused') return written;
  const where = written === undefined ? '' : ` Written to ${plain(written.value)}`;
  return answer({
    text:
      apart.length === 0
        ? `All ${typed.value.size} figures agree: checked by ${plain(by)}.${where}`
        : `${apartText(apart)}\nNothing is signed: ${apart.length} read differently.${where}`,
    json: { checked: apart.length === 0, apart, ...(written && { file: written.value }) },
    ...(apart.length === 0 ? {} : { no: true as const }),
  });
};

export const secondCheckCommand: TerminalCommand = {
  name: 'second-check',
  summary: 'have a second person type critical figures in unseen, and hold them against the file',
  usage: ['second-check ENGINE-FILE', 'second-check ENGINE-FILE FIGURES-FILE'],
  about:
    'Without figures it writes the table to fill in from the manual (CSV): limits, torques, what sums are held to, the datum of the pumps, and none of their values.\nWith them, where all agree and the person is another than typed them in, the next version says who checked it; a figure that differs stands in it for both to see.',
  options: [
    { name: 'by', value: 'NAME', says: 'who checks, else ENDFLOAT_BY, else the user of this machine' },
    { name: 'to', value: 'PATH', says: 'where the next version of the engine type is written' },
  ],
  words: [1, 2],
  run: async (given) => {
    const [path = '', figures] = given.words;
    const read = await engineOnFile(path, given.world);
    if (read.kind === 'refused') return read;
    if (!read.value.engine) return answer(notUsable(read.value));
    const text = await textOf(path, given.world);
    if (text.kind === 'refused') return text;
    return figures === undefined ? blank(text.value) : held(given, text.value, figures);
  },
};
