/** @module Verdicts drawn together by component, from the worn demonstration engine. */
import { describe, expect, it } from 'vitest';
import { wornQuillfeather } from '../../test/engines/worn-quillfeather.ts';
import { judgedByComponent } from './judged-by.ts';

describe('the verdicts on a component', () => {
  const judged = judgedByComponent(wornQuillfeather);

  it('are those of all its places by all that it is judged by, each once', () => {
    // source: demo/engines/quillfeather-3w.yaml, counted: 4 mains by 3 characteristics, 6 valves by 2, 3 pistons by 2
    expect(['mains', 'valves', 'pistons', 'head', 'pumps'].map((name) => judged.get(name)?.length)).toEqual([
      12, 12, 6, 1, 0,
    ]);
    for (const [name, own] of judged)
      expect(new Set(own.map(({ characteristic, place }) => `${characteristic} ${place}`)).size, name).toBe(
        own.length,
      );
  });
});
