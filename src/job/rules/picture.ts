/** @module May this picture be taken, or struck out? Its bytes are the store's to have. */
import { chooseName } from '../../engine/nearest-name.ts';
import { blank, type Trouble, trouble } from '../../journal/trouble.ts';
import { mostPictureBytes, mostPixelsAcross } from '../../picture/picture.ts';
import type { RequestOf } from '../command.ts';
import type { PictureOf } from '../event.ts';
import type { OpenJob } from '../job.ts';

/** All pictures of a job together: its record carries them and must still be read whole. */
const mostBytesOfJob = 40_000_000;

/** Smaller than this shows nothing. */
const leastPixelsAcross = 16;

const where = 'picture';

const notHere = ({ sheet, findings }: OpenJob, { place, operation, finding }: PictureOf): Trouble => {
  const { engine } = sheet;
  if (place !== undefined && !engine.places.has(place))
    return trouble(`${engine.title} has no place “${place}”`, where, chooseName(place, engine.places.keys()));
  if (operation !== undefined && !engine.operations.has(operation))
    return trouble(
      `${engine.title} has no operation “${operation}”`,
      where,
      chooseName(operation, engine.operations.keys()),
    );
  return finding === undefined || findings.some(({ id }) => id === finding)
    ? undefined
    : trouble(`there is no finding ${finding} in this job`, where, 'note the finding first');
};

const poorSize = ({ picture }: RequestOf<'take picture'>): Trouble => {
  const { width, height, bytes } = picture;
  if (Math.min(width, height) < leastPixelsAcross || Math.max(width, height) > mostPixelsAcross)
    return trouble(
      `the picture is ${width} × ${height} pixels`,
      where,
      `take one of ${leastPixelsAcross} to ${mostPixelsAcross} pixels across`,
    );
  return bytes >= 1 && bytes <= mostPictureBytes
    ? undefined
    : trouble(`the picture has ${bytes} bytes`, where, `keep it within ${mostPictureBytes / 1_000_000} MB`);
};

const same = (one: PictureOf, other: PictureOf): boolean =>
  one.place === other.place && one.operation === other.operation && one.finding === other.finding;

export const takePictureTrouble = (job: OpenJob, asked: RequestOf<'take picture'>): Trouble => {
  const poor = notHere(job, asked.of) ?? poorSize(asked);
  if (poor !== undefined) return poor;
  if (job.pictures.some(({ picture, of }) => picture.hash === asked.picture.hash && same(of, asked.of)))
    return trouble('this picture is there already', where, 'nothing is left to do');
  const kept = new Map(job.pictures.map(({ picture }) => [picture.hash, picture.bytes]));
  const all = [...kept.set(asked.picture.hash, asked.picture.bytes).values()];
  return all.reduce((sum, bytes) => sum + bytes, 0) <= mostBytesOfJob
    ? undefined
    : trouble(
        `the pictures of this job would pass ${mostBytesOfJob / 1_000_000} MB`,
        where,
        'strike out one that is not needed, or take this one smaller',
      );
};

export const strikeOutPictureTrouble = (job: OpenJob, asked: RequestOf<'strike out picture'>): Trouble => {
  if (job.picturesStruckOut.some(({ picture }) => picture.id === asked.picture))
    return trouble('this picture has been struck out already', where, 'nothing is left to do');
  if (!job.pictures.some(({ id }) => id === asked.picture))
    return trouble(`there is no picture ${asked.picture} in this job`, where, 'choose one that is shown');
  return blank(asked.why, 'strike out', 'write why the picture does not count');
};
