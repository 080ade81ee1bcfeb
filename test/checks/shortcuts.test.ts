/** @module No tool is silenced, and a test that is left out says why. */
import { describe, expect, it } from 'vitest';
import { codeFiles, fixture } from './files.ts';
import { silencings, unexplainedSkips } from './shortcuts.ts';

const shortcuts = codeFiles(fixture('shortcuts'));

describe('the checks', () => {
  it('are not silenced anywhere', () => {
    expect(codeFiles().flatMap(silencings)).toEqual([]);
  });

  it('are seen to be silenced', () => {
    expect(shortcuts.flatMap(silencings).map((text) => text.split(': ')[0])).toEqual([
      'src/silenced.ts:3',
      'src/silenced.ts:5',
    ]);
  });
});

describe('a test that is left out', () => {
  it('says why', () => {
    expect(codeFiles().flatMap(unexplainedSkips)).toEqual([]);
  });

  it('is seen not to say why', () => {
    const lines = shortcuts.flatMap(unexplainedSkips).map((text) => text.split(': ')[0]?.split(':')[1]);
    expect(lines).toEqual(['4', '5', '6', '7', '8', '9', '12']);
  });
});
