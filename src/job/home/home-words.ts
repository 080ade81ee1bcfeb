/** @module A tagged part in words: where it belongs, how it stands, what is next for it. */
import type { OpenJob } from '../job.ts';
import { type PartHome, partHomesOf } from './part-home.ts';

/** Where it goes: `cylinder 3`, or the place that a named person decided on. */
export const homeWords = (job: OpenJob, { tag, place }: Pick<PartHome, 'tag' | 'place'>): string => {
  if (place === tag.id) return tag.home;
  return partHomesOf(job).find(({ tag: other }) => other.id === place)?.tag.home ?? place;
};

export const stateWords = ({ state, told }: PartHome): string => {
  switch (state.kind) {
    case 'on the engine':
      return 'on the engine';
    case 'off':
      return 'off, nothing decided of it yet';
    case 'away':
      return `away: ${state.says}`;
    case 'to go back':
      return 'off, to go back';
    case 'in question':
      return `${told.strayed?.how ?? 'in question'}: ${state.says}`;
    case 'replaced':
      return `not going back: ${state.says}`;
    case 'home':
      return `home, confirmed by ${state.signed.by}, ${state.signed.at.slice(0, 10)}`;
    case 'fitted':
      return `fitted, signed by ${state.signed.by}, ${state.signed.at.slice(0, 10)}`;
    default:
      return state satisfies never;
  }
};

/** What is to be done with it now. */
export const nextFor = (home: PartHome): string => {
  const { state, off, fits, told } = home;
  const fitting = fits === undefined ? 'put it back' : `“${fits.title}” fits it`;
  switch (state.kind) {
    case 'on the engine':
      return off === undefined
        ? 'leave it where it is'
        : `“${off.title}” takes it off: hang the tag on it then`;
    case 'off':
      return 'clean it, look it over and measure it, then choose a plan';
    case 'away':
      return 'receive it and check it';
    case 'to go back':
      return fitting;
    case 'in question':
      return told.strayed?.how === 'lost'
        ? 'look for it; a named person decides what goes there in its place'
        : 'a named person decides where it goes';
    case 'replaced':
      return 'take the tag off, and keep the old part out of the engine';
    case 'home':
      return fits === undefined ? 'nothing' : `sign “${fits.title}” when all of its parts are in`;
    case 'fitted':
      return 'nothing';
    default:
      return state satisfies never;
  }
};
