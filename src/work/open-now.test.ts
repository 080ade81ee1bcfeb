/** @module What can be done now, while parts are away. */
import { describe, expect, it } from 'vitest';
import { quillfeather as readQuillfeather } from '../../test/engines/demo-engines.ts';
import { openNow } from './open-now.ts';
import { precedenceOf } from './precedence.ts';

const quillfeather = readQuillfeather();

const work = precedenceOf(quillfeather.operations);
const strip = [...quillfeather.operations.values()].filter(({ phase }) => phase === 'strip');

const now = (done: readonly string[], away: readonly string[]) => {
  const { open, waiting } = openNow(work, new Set(done), new Set(away));
  return {
    open: open.map(({ name }) => name),
    waiting: waiting.map(({ operation, away: parts }) => `${operation.name} for ${parts.join()}`),
  };
};

describe('what can be done now', () => {
  it('begins with what waits for nothing', () => {
    expect(now([], [])).toEqual({ open: ['isolate-and-drain'], waiting: [] });
  });

  it('leaves out what is done', () => {
    expect(now(['isolate-and-drain', 'lift-onto-stand'], []).open).toEqual(['mark-parts', 'lift-flywheel']);
  });

  it('goes on elsewhere while the crankshaft and the pistons are away', () => {
    const done = [...strip.map(({ name }) => name), 'close-galleries'];
    expect(now(done, ['piston', 'main'])).toEqual({
      open: ['fit-camshaft', 'fit-valves'],
      waiting: ['fit-main-shells for main', 'fit-crank-pinion for main', 'ring-pistons for piston'],
    });
  });

  it('strips a place though its parts are said to be away', () => {
    expect(
      now(['isolate-and-drain', 'lift-onto-stand', 'mark-parts', 'strip-manifolds'], ['pump']).open,
    ).toContain('lift-pumps');
  });
});
