/** @module May a part be confirmed home, be said to have strayed, or be given a home by a named person? */
import { chooseName } from '../../engine/nearest-name.ts';
import { blank, orList, type Trouble, trouble } from '../../journal/trouble.ts';
import type { RequestOf } from '../command.ts';
import { homeWords, stateWords } from '../home/home-words.ts';
import { type PartHome, partHomesOf } from '../home/part-home.ts';
import { tagText } from '../home/tag-text.ts';
import type { OpenJob } from '../job.ts';

const homeNamed = (job: OpenJob, part: string): PartHome | undefined =>
  partHomesOf(job).find(({ tag }) => tag.id === part);

const noPart = (job: OpenJob, part: string): Trouble =>
  trouble(
    `job ${job.booked.number} has no part with the tag “${part.slice(0, 64)}”`,
    'tag',
    chooseName(
      part,
      partHomesOf(job).map(({ tag }) => tag.id),
    ),
  );

/** What belongs at a place, in words; the tag that hangs on it, or that it is a part without one. */
const belongsAt = (job: OpenJob, place: string): string => {
  const own = partHomesOf(job).find((home) => home.place === place && home.state.kind !== 'replaced');
  const there = homeNamed(job, place);
  if (own !== undefined) return `${there?.tag.home ?? place} takes ${own.tag.title}, tag ${own.tag.number}`;
  return there === undefined
    ? `choose ${orList(
        partHomesOf(job)
          .slice(0, 6)
          .map(({ tag }) => tag.id),
      )}`
    : `${there.tag.home} takes a part without a tag: ${stateWords(there)}`;
};

const heldBack = (home: PartHome): Trouble => {
  const { state, tag, off, fits } = home;
  const where = `${tag.title}, tag ${tag.number}`;
  switch (state.kind) {
    case 'on the engine':
      return trouble(`${tag.title} was not taken off`, where, `sign “${off?.title}” first, if it is off`);
    case 'in question':
      return trouble(
        `${tag.title} is in question: ${stateWords(home)}`,
        where,
        'have a named person decide where it goes',
      );
    case 'replaced':
      return trouble(
        `${tag.title} does not go back: ${state.says}`,
        where,
        'keep the old part out of the engine and fit the other one',
      );
    case 'fitted':
      return trouble(
        `“${fits?.title}” is signed, and with it ${tag.title}`,
        where,
        'nothing is left to do; open the operation again if it is apart',
      );
    case 'away':
      return trouble(`${tag.title} is not here: ${state.says}`, where, 'receive it and check it first');
    case 'home':
      return trouble(`${tag.title} is ${stateWords(home)}`, where, 'scan the next part');
    case 'off':
    case 'to go back':
      return undefined;
    default:
      return state satisfies never;
  }
};

/** Another part that was confirmed at a place. */
const alreadyAt = (job: OpenJob, place: string, part: string): PartHome | undefined =>
  partHomesOf(job).find(({ tag, told }) => tag.id !== part && told.homed?.place === place);

export const homePartTrouble = (job: OpenJob, asked: RequestOf<'home part'>): Trouble => {
  const home = homeNamed(job, asked.part);
  if (home === undefined) return noPart(job, asked.part);
  const held = heldBack(home);
  if (held !== undefined) return held;
  const { tag, place } = home;
  const there = homeNamed(job, asked.place);
  if (asked.place !== place)
    return trouble(
      `${tag.title} does not belong at ${there?.tag.title ?? asked.place}`,
      `tag ${tag.number}, ${tagText(job, tag)}`,
      `take it to ${homeWords(job, home)}; ${belongsAt(job, asked.place)}`,
    );
  const other = alreadyAt(job, place, tag.id);
  if (other !== undefined)
    return trouble(
      `${other.tag.title} was confirmed there`,
      place,
      'look which of the two is in, and note the other as strayed',
    );
  const { operation } = asked;
  if (operation === undefined || job.sheet.engine.operations.get(operation)?.fits.includes(tag.part) === true)
    return undefined;
  return trouble(
    `“${job.sheet.engine.operations.get(operation)?.title ?? operation}” does not fit ${tag.title}`,
    tag.title,
    home.fits === undefined ? 'leave the operation out' : `confirm it at “${home.fits.title}”`,
  );
};

export const notePartStrayedTrouble = (job: OpenJob, asked: RequestOf<'note part strayed'>): Trouble => {
  const homes = asked.parts.map((part) => homeNamed(job, part));
  const unknown = homes.indexOf(undefined);
  if (unknown >= 0) return noPart(job, asked.parts[unknown] ?? '');
  const known = homes.flatMap((home) => home ?? []);
  if (new Set(asked.parts).size !== known.length)
    return trouble('a part is named twice', 'parts', 'name each part once');
  if (asked.how === 'swapped' && (known.length < 2 || new Set(known.map(({ tag }) => tag.part)).size > 1))
    return trouble(
      'one part alone cannot be mixed up',
      'parts',
      'name every part of a kind that it may be mixed up with',
    );
  if (known.length === 0) return trouble('no part is named', 'parts', 'name the part by its tag');
  const fitted = known.find(({ state }) => state.kind === 'fitted');
  if (fitted !== undefined)
    return trouble(
      `“${fitted.fits?.title}” is signed, and with it ${fitted.tag.title}`,
      fitted.tag.title,
      'open the operation again, and look',
    );
  return blank(
    asked.says,
    'what is known',
    'write what is known of it: where it was last, who noticed, what marks it has',
  );
};

export const decideHomeTrouble = (job: OpenJob, asked: RequestOf<'decide home'>): Trouble => {
  const home = homeNamed(job, asked.part);
  if (home === undefined) return noPart(job, asked.part);
  const { tag, state } = home;
  if (state.kind !== 'in question')
    return trouble(
      `${tag.title} is not in question: ${stateWords(home)}`,
      tag.title,
      'note it as lost, unmarked or mixed up first',
    );
  const nobody =
    blank(asked.decidedBy, 'who decides', 'name the person who decides') ??
    blank(asked.why, 'why', 'write by what it was told: marks, wear, size, shims');
  if (nobody !== undefined || asked.place === undefined) return nobody;
  const there = homeNamed(job, asked.place);
  if (there === undefined || there.tag.part !== tag.part)
    return trouble(
      `${tag.title} cannot go to “${asked.place.slice(0, 64)}”`,
      tag.title,
      `choose ${orList(
        partHomesOf(job)
          .filter((one) => one.tag.part === tag.part)
          .map((one) => one.tag.id),
      )}`,
    );
  const rival = partHomesOf(job).find(
    (one) =>
      one.tag.id !== tag.id &&
      one.place === asked.place &&
      one.state.kind !== 'in question' &&
      one.state.kind !== 'replaced',
  );
  return rival === undefined
    ? undefined
    : trouble(
        `${rival.tag.title} goes there`,
        asked.place,
        'note it as mixed up with this one, if that is so, and then decide on both',
      );
};
