/** @module Reads the facts of one kind of journal, in every version ever written, into what they mean now. */
import type { z } from 'zod';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { AnyFact } from './event.ts';
import { firstIssue } from './shape.ts';

export type ReadBody = (body: unknown) => z.ZodSafeParseResult<object>;

/** The reader of a fact that is written now as its shape has it. */
export const now =
  (shape: z.ZodType<object>): ReadBody =>
  (body) =>
    shape.safeParse(body);

/** Readers of each kind of fact by version, version 1 first. Nothing is ever taken out. */
export type ReadersOf<Fact extends AnyFact> = {
  readonly [Kind in Fact['kind']]: readonly [ReadBody, ...ReadBody[]];
};

export interface FactReader<Fact extends AnyFact> {
  readonly kinds: readonly Fact['kind'][];
  /** The version in which a kind of fact is written now. */
  readonly versionNow: (kind: Fact['kind']) => number;
  /** Reads the body of a fact (all but its kind) as it was written in a version, into what it means now. */
  readonly read: (kind: string, version: number, body: object, where: string) => Answer<Fact>;
}

export const factReader = <Fact extends AnyFact>(readers: ReadersOf<Fact>): FactReader<Fact> => {
  const kinds = Object.keys(readers) as readonly Fact['kind'][];
  const versionNow = (kind: Fact['kind']): number => readers[kind].length;
  return {
    kinds,
    versionNow,
    read: (kind, version, body, where) => {
      const known = kinds.find((name) => name === kind);
      if (known === undefined)
        return refuse(
          `a kind of event that this program does not know: “${kind}”`,
          where,
          'use a newer Endfloat',
        );
      const read = readers[known][version - 1];
      if (read === undefined)
        return refuse(
          `version ${version} of “${kind}”, and this program knows versions up to ${versionNow(known)}`,
          where,
          'use a newer Endfloat',
        );
      const found = read(body);
      return found.success
        ? answer({ kind: known, ...found.data } as unknown as Fact)
        : refuse(firstIssue(found.error), where, 'send it again as the event’s shape has it');
    },
  };
};
