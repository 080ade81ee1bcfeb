/** @module May the overhaul go so far, and no further? */
import { blank, type Trouble, trouble } from '../../journal/trouble.ts';
import { type Extent, extentOf } from '../../work/extent.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';
import { scopeOf } from '../scope.ts';

/** What is off already and would be left out, in words. */
const leftOut = (job: OpenJob, wanted: Extent): readonly string[] => {
  const { operations, places } = job.sheet.engine;
  const now = scopeOf(job);
  return [...operations.values()]
    .filter(({ name, phase }) => phase === 'strip' && job.done.has(name))
    .flatMap(({ name, title, at = '' }) => {
      if (!wanted.operations.has(name)) return [`“${title}”`];
      const then = wanted.placesAt(name, at);
      const lost = [...now.placesAt(name, at)].filter((place) => !then.has(place));
      return lost.map((place) => `“${title}” at ${places.get(place)?.title ?? place}`);
    });
};

const listed = (names: readonly string[]): string => [...names].sort().join('\n');

export const setScopeTrouble = (job: OpenJob, asked: RequestOf<'set scope'>): Trouble => {
  const wanted = extentOf(job.sheet.engine, asked);
  if (wanted.kind === 'refused') return wanted.refusal;
  const { reach, also = [] } = job.scopes.at(-1) ?? { reach: [] };
  if (listed(reach) === listed(asked.reach) && listed(also) === listed(asked.also ?? []))
    return trouble('the scope is this already', 'scope', 'nothing is left to do');
  const lost = leftOut(job, wanted.value);
  if (lost.length > 0)
    return trouble(
      `what is done already would be left out: ${lost.slice(0, 5).join(', ')}${lost.length > 5 ? ' …' : ''}`,
      'scope',
      'name these places too: what is off goes back on in this job',
    );
  return blank(asked.says, 'scope', 'write why it goes so far and no further, and who wanted it so');
};
