/** @module Which troubles of a file belong to which field of a form. */
import { type FilePath, pathText } from '../../engine/file-path.ts';
import type { Trouble } from '../../engine/trouble.ts';

const words = ({ what, remedy }: Trouble): string => `${what}: ${remedy}`;

export interface FieldTroubles {
  readonly wrong?: string;
  readonly odd?: string;
}

/** What is wrong with the value at a path, and what is odd about it. */
export const troublesAt = (troubles: readonly Trouble[], path: FilePath): FieldTroubles => {
  const here = troubles.filter(({ where }) => where === pathText(path));
  const said = (weight: Trouble['weight']) =>
    here
      .filter((trouble) => trouble.weight === weight)
      .map(words)
      .join('; ');
  const [wrong, odd] = [said('error'), said('warning')];
  return { ...(wrong === '' ? {} : { wrong }), ...(odd === '' ? {} : { odd }) };
};

/** Everything at a path and below it. */
export const troublesUnder = (troubles: readonly Trouble[], path: FilePath): readonly Trouble[] => {
  const text = pathText(path);
  return troubles.filter(({ where }) => where === text || where.startsWith(`${text}, `));
};
