/** @module Fewest changes held against glpsol on the same work. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fewestChanges } from '../../src/work/fewest-changes.ts';
import { precedenceOf } from '../../src/work/precedence.ts';
import { anyWork, bookOf } from '../work/any-work.ts';
import { changesModel } from '../work/changes-model.ts';
import { glpsol } from './glpsol.ts';
import { lacking } from './program.ts';

describe('fewest changes held against glpsol', () => {
  it('has as few on work of five to seven operations', { timeout: 120_000 }, (context) => {
    const lacks = lacking('glpsol');
    context.skip(lacks !== undefined, lacks);
    for (const work of fc.sample(anyWork(7, 0.3, 5), { seed: 19, numRuns: 12 })) {
      const { turns, fetches, proved } = fewestChanges(precedenceOf(bookOf(work)));
      const { status, objective } = glpsol(changesModel(work, 100));
      expect(status).toBe('optimal');
      expect(proved).toBe(true);
      expect(100 * turns + fetches).toBe(Math.round(objective)); // source: glpsol's optimum
    }
  });
});
