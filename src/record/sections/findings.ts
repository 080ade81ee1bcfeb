/** @module The record's findings: what was seen rather than measured, and the rework sizes at which parts stand. */
import { findingWords } from '../../job/finding-words.ts';
import type { OpenJob } from '../../job/job.ts';
import { timeText } from '../figure-text.ts';
import type { RecordSection } from '../record-model.ts';
import { componentTitle, placeTitle } from './named.ts';
import { picturesOfFinding } from './pictures.ts';

export const findingSection = (job: OpenJob): RecordSection => {
  const { engine, sizesFound } = job.sheet;
  return {
    name: 'findings',
    title: 'Findings',
    says: [
      ...(job.findings.length === 0 ? ['Nothing was noted by eye.'] : []),
      ...[...sizesFound].map(
        ([component, size]) => `${componentTitle(engine, component)}: stands at size ${size}.`,
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
