/** @module The engine fully measured, whose owner waits to hear what it needs, what it costs and how long it takes. */
import { askedAsFound, bookIn, bringInstruments, readFrom, signAll } from '../bench-work.ts';
import { instruments } from '../instruments.ts';
import { apprentice, fitter } from '../people.ts';
import { type Story, story, storyId } from '../story.ts';

const readings = './readings/quillfeather-worn.csv';

const begins = '2026-10-05T08:10:00Z';
export const awaitingDecisionId = storyId(2, begins);

export const awaitingDecision = async (): Promise<Story> => {
  const job = story(2, begins);
  await bookIn(job, './engines/quillfeather-3w.yaml', {
    number: 'J-2',
    owner: 'Nether Sallowby Drainage Board',
    plate: 'QF-0417',
    hoursRun: { text: '7400', unit: 'h' },
    complaint: 'low oil pressure when hot, hard to start, uses oil',
    hoursWanted: { text: '4000', unit: 'h' },
  });
  bringInstruments(
    job,
    instruments.map(({ name }) => name),
  );
  const asFound = askedAsFound(job);
  await readFrom(job, fitter, readings, asFound);
  signAll(job, fitter, ['strip']);
  await readFrom(job, apprentice, readings, (characteristic) => !asFound(characteristic));
  job.tell(fitter, 4, {
    kind: 'note finding',
    place: 'thrust.1',
    component: 'thrust-washers',
    finding: 'scored',
    mayGoBack: false,
    says: 'rear washer scored through its lining over a third of its face',
  });
  job.tell(fitter, 3, {
    kind: 'note finding',
    place: 'head.1',
    component: 'head',
    finding: 'sound',
    mayGoBack: true,
    says: 'crack-tested dry, seats sound',
  });
  job.tell(fitter, 12, {
    kind: 'count shims',
    shims: [
      { thickness: { text: '0.10', unit: 'mm' }, count: 5 },
      { thickness: { text: '0.15', unit: 'mm' }, count: 2 },
      { thickness: { text: '0.20', unit: 'mm' }, count: 4 },
      { thickness: { text: '0.25', unit: 'mm' }, count: 2 },
      { thickness: { text: '0.30', unit: 'mm' }, count: 3 },
      { thickness: { text: '0.50', unit: 'mm' }, count: 1 },
    ],
  });
  return job;
};
