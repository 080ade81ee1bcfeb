/** @module The record's pictures: what each shows, who took it and when, and the hash that the journal has of it. */
import type { OpenJob } from '../../job/job.ts';
import { pictureOfWords } from '../../job/picture-of.ts';
import { timeText } from '../figure-text.ts';
import type { RecordPicture, RecordSection } from '../record-model.ts';

/** Sixty-four digits are no line for a table. */
const inGroups = (hash: string): string => (hash.match(/.{1,16}/g) ?? []).join(' ');

export const picturesName = 'pictures';

/** Numbered in the order in which they were taken. */
export const recordPictures = ({ pictures, findings, sheet }: OpenJob): readonly RecordPicture[] =>
  pictures.map(({ picture, of, says }, at) => ({
    number: at + 1,
    of: pictureOfWords(sheet.engine, findings, of),
    says,
    hash: picture.hash,
    mediaType: picture.mediaType,
    width: picture.width,
    height: picture.height,
  }));

/** `pictures 2, 5` of a finding; nothing where there is none. */
export const picturesOfFinding = ({ pictures }: OpenJob, finding: string): string => {
  const numbers = pictures.flatMap(({ of }, at) => (of.finding === finding ? [at + 1] : []));
  return numbers.length === 0 ? '' : `picture ${numbers.join(', ')}`;
};

/** Left out where no picture was taken. */
export const pictureSections = (job: OpenJob): readonly RecordSection[] => {
  const { pictures, picturesStruckOut, findings, sheet } = job;
  if (pictures.length === 0 && picturesStruckOut.length === 0) return [];
  const section: RecordSection = {
    name: picturesName,
    title: 'Pictures',
    says: picturesStruckOut.map(
      ({ picture, why, by, at }) =>
        `Struck out, ${pictureOfWords(sheet.engine, findings, picture.of)}: ${why} (${timeText(at)}, ${by}).`,
    ),
    table: {
      heads: ['No.', 'Of', 'In words', 'Pixels', 'When, who', 'SHA-256'],
      rows: recordPictures(job).map(({ number, of, says, width, height, hash }, at) => ({
        of: `picture ${number}`,
        cells: [
          String(number),
          of,
          says,
          `${width} × ${height}`,
          `${timeText(pictures[at]?.at ?? '')}, ${pictures[at]?.by ?? ''}`,
          inGroups(hash),
        ],
      })),
    },
    derived: false,
  };
  return [section];
};
