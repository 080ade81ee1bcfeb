/** @module A job's story: requests one after another, with times and ids that are the same at every telling. */

import type { Request, RequestOf } from '../src/job/command.ts';
import { decide } from '../src/job/decide.ts';
import type { JobEvent } from '../src/job/event.ts';
import { blankJob, evolve } from '../src/job/evolve.ts';
import type { Job, OpenJob } from '../src/job/job.ts';
import type { PictureWithBytes } from '../src/picture/picture.ts';
import { refusalText } from '../src/quantity/refusal.ts';
import { bench } from './people.ts';

const hex = (value: number, digits: number): string => value.toString(16).padStart(digits, '0');

/** In the form of a UUIDv7: the moment, then a count and the story's own number instead of chance. */
export const idAt = (moment: number, count: number, story: number): string => {
  const time = hex(moment, 12);
  return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(count % 4096, 3)}-8000-${hex(story, 4)}${hex(count, 8)}`;
};

const shiftEnds = 17;
const shiftBegins = 8;
const minute = 60_000;

/** The next moment at the bench: some minutes on, and the next morning where the shift has ended. */
const later = (moment: number, minutes: number): number => {
  const next = new Date(moment + minutes * minute);
  if (next.getUTCHours() < shiftEnds && next.getUTCHours() >= shiftBegins) return next.getTime();
  const morning = new Date(next);
  morning.setUTCHours(shiftBegins, 5, 0, 0);
  if (next.getUTCHours() >= shiftEnds) morning.setUTCDate(morning.getUTCDate() + 1);
  // The bench is still on a Sunday.
  if (morning.getUTCDay() === 0) morning.setUTCDate(morning.getUTCDate() + 1);
  return morning.getTime();
};

/** The id of the job that a story tells. */
export const storyId = (number: number, begins: string): string => idAt(Date.parse(begins), 0, number);

export interface Story {
  readonly id: string;
  /** The job as it stands after what was told so far. */
  readonly job: () => OpenJob;
  readonly events: () => readonly JobEvent[];
  readonly pictures: () => readonly PictureWithBytes[];
  /** Takes a picture, kept beside the journal. */
  readonly show: (
    by: string,
    minutes: number,
    drawn: PictureWithBytes,
    said: Omit<RequestOf<'take picture'>, 'kind' | 'picture'>,
  ) => void;
  /** Asks for one thing; a story that is refused is a fault in the story. */
  readonly tell: (by: string, minutes: number, request: Request) => void;
}

export const story = (number: number, begins: string): Story => {
  let moment = Date.parse(begins);
  let job: Job = blankJob;
  const events: JobEvent[] = [];
  const pictures: PictureWithBytes[] = [];
  const id = storyId(number, begins);
  const tell: Story['tell'] = (by, minutes, request) => {
    moment = later(moment, minutes);
    const command = {
      id: idAt(moment, events.length + 1, number),
      job: id,
      at: new Date(moment).toISOString(),
      actor: by,
      bench,
      request,
    };
    const event = decide(job, command);
    if (event.kind === 'refused')
      throw new Error(`story ${number}, event ${events.length + 1}: ${refusalText(event.refusal)}`);
    events.push(event.value);
    job = evolve(job, event.value);
  };
  return {
    id,
    events: () => events,
    job: () => {
      if (job.kind !== 'open') throw new Error(`story ${number} has not begun`);
      return job;
    },
    pictures: () => pictures,
    tell,
    show: (by, minutes, drawn, said) => {
      pictures.push(drawn);
      tell(by, minutes, { kind: 'take picture', picture: drawn.picture, ...said });
    },
  };
};
