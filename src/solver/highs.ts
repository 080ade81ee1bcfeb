/** @module The solver in Node: HiGHS, loaded once. */
import loadHighs from 'highs';
import type { Solve } from '../plan/plan-model.ts';
import { solveWith } from './solve-with-highs.ts';

let loaded: Promise<Solve> | undefined;

export const highsSolver = (): Promise<Solve> => {
  loaded ??= loadHighs().then(solveWith);
  return loaded;
};
