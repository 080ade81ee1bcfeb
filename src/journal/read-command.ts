/** @module Reads what is asked of a journal from JSON, as the server and the terminal get it: its shape, not its sense. */
import { z } from 'zod';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { AnyFact, CommandOf } from './event.ts';
import type { FactReader } from './fact-reader.ts';
import { firstIssue, signature } from './shape.ts';

/** The kind of fact that each request, once accepted, becomes. */
export type FactOfRequest<Request extends AnyFact, Fact extends AnyFact> = {
  readonly [Kind in Request['kind']]: Fact['kind'];
};

const envelope = z.strictObject({ ...signature, request: z.looseObject({ kind: z.string() }) });

/** Reads a request, such as `{ "kind": "take reading", … }`. */
export const readRequestOf = <Request extends AnyFact, Fact extends AnyFact>(
  factOfRequest: FactOfRequest<Request, Fact>,
  facts: FactReader<Fact>,
  json: unknown,
): Answer<Request> => {
  const read = z.looseObject({ kind: z.string() }).safeParse(json);
  if (!read.success) return refuse('this is not a request', 'request', 'send a kind and what belongs to it');
  const { kind, ...body } = read.data;
  const kinds = Object.keys(factOfRequest) as readonly Request['kind'][];
  const known = kinds.find((name) => name === kind);
  if (known === undefined)
    return refuse(`nothing can be asked by “${kind}”`, 'request', `ask one of: ${kinds.join(', ')}`);
  const becomes = factOfRequest[known];
  const fact = facts.read(becomes, facts.versionNow(becomes), body, known);
  return fact.kind === 'refused' ? fact : answer({ ...fact.value, kind: known } as unknown as Request);
};

/** Reads a command: a request with who, when and where. */
export const readCommandWith = <Request extends AnyFact>(
  readRequest: (json: unknown) => Answer<Request>,
  json: unknown,
): Answer<CommandOf<Request>> => {
  const read = envelope.safeParse(json);
  if (!read.success)
    return refuse(
      `this is not a command (${firstIssue(read.error)})`,
      'command',
      'send id, job, at, actor, bench and request',
    );
  const request = readRequest(read.data.request);
  return request.kind === 'refused' ? request : answer({ ...read.data, request: request.value });
};
