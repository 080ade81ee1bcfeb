/** @module `endfloat picture`: takes a picture from a file into a job, cleaned of what the file tells beside it. */
import type { PictureOf } from '../../job/event.ts';
import type { OpenJob } from '../../job/job.ts';
import { pictureOfWords } from '../../job/picture-of.ts';
import { cleanPicture } from '../../picture/picture.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { answerNo, type Given, lastValue, type Outcome, type TerminalCommand } from '../command.ts';
import { bytesOf } from '../input-file.ts';
import { plain } from '../plain.ts';
import { carryOut, inJob, signingOptions } from '../workshop.ts';

/** The finding noted last at a place, or the one with that id. */
const findingOf = ({ findings }: OpenJob, named: string): Answer<string> => {
  const found = findings.findLast(({ id, place }) => id === named || place === named);
  return found
    ? answer(found.id)
    : refuse(
        `there is no finding at ${plain(named)}`,
        'finding',
        'note the finding first, or name its place',
      );
};

const shownIn = (given: Given, job: OpenJob): Answer<PictureOf> => {
  const [place, operation, named] = ['place', 'operation', 'finding'].map((name) => lastValue(given, name));
  const finding = named === undefined ? undefined : findingOf(job, named);
  if (finding?.kind === 'refused') return finding;
  return answer({
    ...(place !== undefined && { place }),
    ...(operation !== undefined && { operation }),
    ...(finding && { finding: finding.value }),
  });
};

export const picture: TerminalCommand = {
  name: 'picture',
  summary: 'take a picture from a file into a job',
  usage: ['picture JOB FILE [--place PLACE] [--operation OPERATION] [--finding PLACE] [--says TEXT]'],
  about:
    'JPEG, PNG or WebP, 4 MB at most. Where, when and by whom it was taken is taken out of the file before it is kept; which way up it is held stays. Without place, operation or finding it is a picture of the engine.',
  options: [
    ...signingOptions,
    { name: 'place', value: 'PLACE', says: 'the place that it shows: main.2' },
    { name: 'operation', value: 'OPERATION', says: 'the operation that it shows: lift-crankshaft' },
    { name: 'finding', value: 'PLACE', says: 'the finding noted last at that place, or a finding by its id' },
    { name: 'says', value: 'TEXT', says: 'what is to be seen' },
  ],
  words: [2, 2],
  run: async (given) => {
    const [, path = ''] = given.words;
    const file = await bytesOf(path, given.world);
    if (file.kind === 'refused') return file;
    const clean = cleanPicture(file.value, plain(path));
    if (clean.kind === 'refused') return answerNo(clean.refusal);
    return inJob<Outcome>(given, async ({ id, job }, store) => {
      const of = shownIn(given, job);
      if (of.kind === 'refused') return answerNo(of.refusal);
      const { picture: kept, bytes } = clean.value;
      const put = await store.putPicture(kept.hash, bytes);
      if (put.kind === 'refused') return answerNo(put.refusal);
      const says = lastValue(given, 'says') ?? '';
      const carried = await carryOut(store, given, id, job, [
        { kind: 'take picture', picture: kept, of: of.value, says },
      ]);
      if (carried.kind === 'refused') return carried;
      if (carried.value.kind === 'no') return answerNo(carried.value.refusal);
      const lost = file.value.length - bytes.length;
      const shown = plain(pictureOfWords(job.sheet.engine, job.findings, of.value));
      return answer({
        text: `${plain(job.booked.number)}: picture of ${shown} taken, ${kept.width} × ${kept.height} pixels, ${kept.bytes} bytes${lost > 0 ? `; ${lost} bytes of other data taken out` : ''}.`,
        json: { taken: true, picture: kept, of: of.value, says, event: carried.value.events[0] },
      });
    });
  },
};
