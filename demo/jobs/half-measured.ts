/** @module The engine on the bench, half measured: a thimble was read one turn out, and two shim packs came back swapped. */
import { askedAsFound, bookIn, bringInstruments, readFrom, signAll } from '../bench-work.ts';
import { apprentice, fitter } from '../people.ts';
import { scoredBore } from '../pictures.ts';
import { type Story, story, storyId } from '../story.ts';

const readings = './readings/quillfeather-half.csv';

const begins = '2026-10-19T08:10:00Z';
export const halfMeasuredId = storyId(1, begins);

export const halfMeasured = async (): Promise<Story> => {
  const job = story(1, begins);
  await bookIn(job, './engines/quillfeather-3w.yaml', {
    number: 'J-1',
    owner: 'Gullwick Sluice Company',
    plate: 'QF-0522',
    hoursRun: { text: '2150', unit: 'h' },
    complaint: 'runs unevenly since another shop had the pumps off; oil in the coolant',
    hoursWanted: { text: '3000', unit: 'h' },
  });
  bringInstruments(job, ['mic-0-25', 'mic-25-50', 'mic-50-75', 'bore-35-160', 'depth-0-100', 'dial-0-12']);
  const asFound = askedAsFound(job);
  await readFrom(job, fitter, readings, asFound);
  signAll(job, fitter, ['strip']);
  await readFrom(job, apprentice, readings, (characteristic) => !asFound(characteristic));
  job.tell(apprentice, 3, {
    kind: 'note finding',
    place: 'bore.2',
    component: 'bores',
    finding: 'scored',
    grade: 'marked',
    mayGoBack: false,
    says: 'two scores down the thrust side, a nail catches in them',
  });
  job.show(apprentice, 2, scoredBore, {
    of: { finding: job.job().findings.at(-1)?.id ?? '' },
    says: 'thrust side, from above',
  });
  return job;
};
