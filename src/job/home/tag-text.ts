/** @module The text of a tag: as it is printed, as a scanner types it, and as a person reads it off a bag. */
import { chooseName } from '../../engine/nearest-name.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import type { OpenJob } from '../job.ts';
import { type Tag, tagsOf } from './tag.ts';

/** `J-4/piston.3`: whose job, then which part. */
export const tagText = ({ booked }: Pick<OpenJob, 'booked'>, { id }: Pick<Tag, 'id'>): string =>
  `${booked.number}/${id}`;

/** Longer than any tag: what is longer came from another code than ours. */
const longest = 400;

const folded = (text: string): string => text.normalize('NFKC').trim().toLowerCase();

/** A keyboard scanner set to another country's keys sends other marks: letters and figures alone tell tags apart. */
const bare = (text: string): string => folded(text).replace(/[^\p{L}\p{N}]+/gu, '');

/**
 * The tag that a text means: scanned, `J-4/piston.3`; typed without the job, `piston.3` or `piston 3`; or the number
 * written on the bag, `7` or `J-4/7`.
 *
 * @returns the tag; refuses one of another job, with that job named, and one that this engine does not have
 */
export const readTag = (job: OpenJob, text: string): Answer<Tag> => {
  const tags = tagsOf(job.sheet.engine);
  const { number } = job.booked;
  const whole = folded(text.slice(0, longest));
  const remedy = 'scan the tag again, or type the number that is written on it';
  if (whole === '') return refuse('nothing was scanned', 'tag', remedy);
  const written = (named: string): Tag | undefined => {
    const exact = tags.find(
      ({ id, number: own }) => named === folded(id) || named.replace(/^(?:no\.?|#)\s*/, '') === `${own}`,
    );
    const [first, ...others] = tags.filter(({ id, title }) => [bare(id), bare(title)].includes(bare(named)));
    return exact ?? (others.length === 0 ? first : undefined);
  };
  const slash = whole.lastIndexOf('/');
  const [before, behind] =
    slash < 0 ? [undefined, whole] : [whole.slice(0, slash), whole.slice(slash + 1).trim()];
  const ours = before === undefined || bare(before) === bare(number);
  const found = ours ? written(behind) : undefined;
  if (found !== undefined) return answer(found);
  // The scanner swallowed or changed the stroke between job and part.
  const run = tags.filter((tag) => bare(tagText(job, tag)) === bare(whole));
  if (run.length === 1 && run[0] !== undefined) return answer(run[0]);
  if (!ours && written(behind) !== undefined)
    return refuse(
      `this tag is of job ${text.trim().slice(0, slash)}, and this is job ${number}`,
      'tag',
      'keep the part out of this engine, and take it back to its own bench',
    );
  return refuse(
    `“${text.trim().slice(0, 64)}” is no tag of job ${number}`,
    'tag',
    `${remedy}; ${chooseName(
      behind,
      tags.map(({ id }) => id),
    )}`,
  );
};
