/** @module `endfloat edit`: sets limits and words of one characteristic in an engine type file, which else stays as typed. */
import { editEngine } from '../../engine/edit/edit-engine.ts';
import { type EngineEdit, type LimitOwner, limitSides } from '../../engine/edit/engine-edit.ts';
import { readEngineType } from '../../engine/read-engine-type.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { lastValue, type TerminalCommand } from '../command.ts';
import { editedOptions, editedOutcome } from '../edited-file.ts';
import { keyValues } from '../given.ts';
import { textOf } from '../input-file.ts';
import { didYouMean } from '../nearest.ts';
import { plain } from '../plain.ts';

const worded = ['title', 'source', 'instrument', 'wears'] as const;

const isOneOf = <T extends string>(names: readonly T[], name: string): name is T =>
  names.some((one) => one === name);

const editOf = (owner: LimitOwner, name: string, key: string, value: string): Answer<EngineEdit> => {
  if (isOneOf(limitSides, key))
    return answer({ kind: 'set limit', of: owner, side: key, figure: value === '' ? undefined : value });
  if (isOneOf(worded, key) && 'characteristic' in owner)
    return answer({
      kind: 'set value',
      path: ['characteristics', name, key],
      value: value === '' ? undefined : value,
    });
  const known = [...limitSides, ...('characteristic' in owner ? worded : [])];
  return refuse(
    `${plain(key)} cannot be set`,
    'endfloat edit',
    didYouMean(key, known, `set one of ${known.join(', ')}`),
  );
};

/** The component whose step it is: the one that is machined at this characteristic. */
const ownerOf = (text: string, name: string, step: string | undefined): Answer<LimitOwner> => {
  if (step === undefined) return answer({ characteristic: name });
  const { engine } = readEngineType(text);
  const component = [...(engine?.components.values() ?? [])].find(
    ({ sizes }) => sizes?.of === name && sizes.steps.some((one) => one.name === step),
  );
  return component
    ? answer({ component: component.name, step })
    : refuse(`${plain(name)} has no step ${plain(step)}`, '--step', 'look at the sizes of its component');
};

export const edit: TerminalCommand = {
  name: 'edit',
  summary: 'set limits of a characteristic in an engine type file',
  usage: ['edit ENGINE-FILE CHARACTERISTIC KEY=VALUE …'],
  about:
    'Keys are new.least, new.greatest, wear.least, wear.greatest, title, source, instrument, wears; an empty value takes it out.\nA figure carries its unit, and the second one where the manual prints two: wear.least="54.930 mm (2.1626 in)".\nComments, order and every other figure stay as typed. The file becomes the next version; a changed figure takes its check away. Nothing is written where errors would be left.',
  options: [
    { name: 'step', value: 'NAME', says: 'a rework step of the characteristic, else the size as standard' },
    ...editedOptions,
  ],
  words: [3, 20],
  run: async (given) => {
    const [path = '', name = '', ...sets] = given.words;
    const text = await textOf(path, given.world);
    if (text.kind === 'refused') return text;
    const pairs = keyValues(sets, 'endfloat edit');
    if (pairs.kind === 'refused') return pairs;
    const owner = ownerOf(text.value, name, lastValue(given, 'step'));
    if (owner.kind === 'refused') return owner;
    const edits: EngineEdit[] = [];
    for (const [key, value] of pairs.value) {
      const one = editOf(owner.value, name, key, value);
      if (one.kind === 'refused') return one;
      edits.push(one.value);
    }
    const edited = editEngine(text.value, edits);
    if (edited.kind === 'refused') return edited;
    return editedOutcome(given, path, text.value, edited.value, `${plain(name)} is set.`);
  },
};
