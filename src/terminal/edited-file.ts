/** @module An engine type file after an edit: its next version, written where it is asked for, with what is wrong in it. */
import type { EditedType } from '../engine/edit/edit-engine.ts';
import { nextVersion } from '../engine/edit/new-version.ts';
import { readCheckedType } from '../job/sum/checked-engine-type.ts';
import { type Answer, answer } from '../quantity/refusal.ts';
import { type Given, lastValue, type OptionSpec, type Outcome } from './command.ts';
import { troubleLine } from './engine-file.ts';
import { writeWhole } from './output-file.ts';
import { plain } from './plain.ts';

export const editedOptions: readonly OptionSpec[] = [
  { name: 'to', value: 'PATH', says: 'the file to write, the same or another; else it goes to stdout' },
  { name: 'by', value: 'NAME', says: 'who types it in, else ENDFLOAT_BY, else the user of this machine' },
];

/**
 * Nothing is written where the edit leaves the type with an error. A changed figure takes the second person's check
 * away, and whoever changed it stands for it.
 */
export const editedOutcome = async (
  given: Given,
  path: string,
  before: string,
  edited: EditedType,
  says: string,
  warnings: readonly string[] = [],
): Promise<Answer<Outcome>> => {
  const { world } = given;
  const by = lastValue(given, 'by') ?? world.env.ENDFLOAT_BY ?? world.user();
  const next = nextVersion(before, edited.text, { by, on: world.now().slice(0, 10) });
  if (next.kind === 'refused') return next;
  const text = edited.engine === undefined ? edited.text : next.value;
  const { engine, troubles } = readCheckedType(text);
  const lines = [...warnings, ...troubles.map((trouble) => troubleLine(path, trouble))];
  if (!engine)
    return answer({
      text: '',
      json: { usable: false, troubles },
      warnings: [...lines, `endfloat: nothing was written: with this edit ${plain(path)} has errors`],
      no: true,
    });
  const to = lastValue(given, 'to');
  if (to === undefined) return answer({ text, json: { text, troubles }, warnings: lines });
  const written = await writeWhole(to, text, given.world);
  if (written.kind === 'refused') return written;
  return answer({
    text: `${says} Written to ${plain(written.value)}`,
    json: { file: written.value, troubles },
    warnings: lines,
  });
};
