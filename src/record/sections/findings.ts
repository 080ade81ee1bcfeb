/** @module The record's findings: what was seen rather than measured, and the rework sizes at which parts stand. */
import type { EngineType } from '../../engine/engine-type.ts';
import { findingWords } from '../../job/finding-words.ts';
import type { OpenJob } from '../../job/job.ts';
import type { Sizes } from '../../measure/sheet.ts';
import { timeText } from '../figure-text.ts';
import type { RecordSection } from '../record-model.ts';
import { componentTitle, placeTitle } from './named.ts';
import { picturesOfFinding } from './pictures.ts';

const sizeWords = (engine: EngineType, sizes: Sizes, words: string): readonly string[] =>
  [...sizes].map(([key, size]) => {
    const [component = '', place] = key.split('@');
    const where = place === undefined ? '' : `, ${placeTitle(engine, place)}`;
    return `${componentTitle(engine, component)}${where}: ${words} ${size}.`;
  });

export const findingSection = (job: OpenJob): RecordSection => {
  const { sheet } = job;
  const { engine } = sheet;
  return {
    name: 'findings',
    title: 'Findings',
    says: [
      ...(job.findings.length === 0 ? ['Nothing was noted by eye.'] : []),
      ...sizeWords(engine, sheet.sizesFound, 'stands at size'),
      ...sizeWords(engine, sheet.sizesReceived ?? new Map(), 'what has come is of size'),
      ...(sheet.former?.sizes ?? []).map(
        ({ component, place, size }) =>
          `${componentTitle(engine, component)}, ${placeTitle(engine, place)}: left at size ${size} by the former overhaul.`,
      ),
    ],
    table: {
      heads: ['Place', 'Component', 'Finding', 'May go back', 'In words', 'When, who'],
      rows: job.findings.map((finding) => ({
        of: `${finding.place} ${finding.component}`,
        cells: [
          placeTitle(engine, finding.place),
          componentTitle(engine, finding.component),
          findingWords(finding),
          finding.mayGoBack ? 'yes' : 'no',
          [finding.says, picturesOfFinding(job, finding.id)].filter((words) => words !== '').join('; '),
          `${timeText(finding.at)}, ${finding.by}`,
        ],
        ...(finding.mayGoBack ? {} : { marked: true as const }),
      })),
    },
    derived: false,
  };
};
