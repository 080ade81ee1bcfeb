/** @module Journal, bore of the shells and housing on one line: what the walls take up, and the clearance left. */
import { coverageFactor } from '../../quantity/coverage.ts';
import { figure, numberLine } from '../number-line.ts';
import { lettered, numberIn, type Picture } from './picture.ts';

export const shellClearancePicture: Picture = ({ quantities }, reckoned) => {
  const housing = quantities.housing?.value ?? 0;
  const journal = quantities.journal?.value ?? 0;
  const bore = numberIn(reckoned, 'shell-bore');
  const spread = coverageFactor(0.95, Infinity) * (reckoned.results['shell-bore']?.u ?? 0);
  return numberLine({
    title: 'Journal, shells and housing on the diameter',
    description: `Journal ${figure(journal)} mm in a bore of ${lettered(reckoned, 'shell-bore')}: clearance ${lettered(reckoned, 'clearance')}.`,
    unit: 'mm',
    stretches: [
      { from: bore, to: housing, words: 'both walls', hatch: 'close' },
      {
        from: Math.min(journal, bore),
        to: Math.max(journal, bore),
        words: `clearance ${lettered(reckoned, 'clearance')}`,
        hatch: 'none',
      },
    ],
    marks: [
      { at: journal, words: `journal ${figure(journal)}` },
      { at: bore, words: `shells ${figure(bore)}`, spread, strong: true },
      { at: housing, words: `housing ${figure(housing)}` },
    ],
  });
};
