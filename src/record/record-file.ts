/** @module The exported job: its journal, the figures computed from it and its pictures, as one JSON text. */
import { figuresOf } from './figures.ts';
import { noPictures, type PicturesHeld, picturesAsText } from './picture-figures.ts';
import type { RecordModel } from './record-model.ts';

export const recordFormat = 'endfloat record 1';

/** The text of an exported job. */
export const recordFile = (
  model: RecordModel,
  journal: readonly unknown[],
  pictures: PicturesHeld = noPictures,
): string => {
  // A picture that was struck out since it was fetched is not the record's any more.
  const named = new Map([...pictures].filter(([hash]) => model.pictures.some((one) => one.hash === hash)));
  const held = {
    format: recordFormat,
    journal,
    figures: figuresOf(model),
    ...(named.size > 0 && { pictures: picturesAsText(named) }),
  };
  return `${JSON.stringify(held, null, 2)}\n`;
};
