/** @module Reads a command from JSON, as the server and the terminal get it: its shape, not yet its sense. */
import { z } from 'zod';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { Command, Request } from './command.ts';
import type { Fact, FactKind } from './event.ts';
import { firstIssue, readFact, versionNow } from './fact-shape.ts';
import { signature } from './upcast.ts';

/** The kind of fact that each request, once accepted, becomes. */
const factOfRequest: { readonly [Kind in Request['kind']]: FactKind } = {
  'book in': 'booked in',
  'bring instrument': 'instrument brought',
  'take reading': 'reading taken',
  'strike out reading': 'reading struck out',
  'answer doubt': 'doubt answered',
  'note size found': 'size found',
  'note finding': 'finding noted',
  'count shims': 'shims counted',
  'choose plan': 'plan chosen',
  'note agreement': 'owner agreed',
  'fit pack': 'pack fitted',
  'do operation': 'operation done',
  'log run step': 'run step logged',
  'hand over': 'handed over',
};

export const requestKinds = Object.keys(factOfRequest) as readonly Request['kind'][];

/** The fact that a request becomes when it is accepted. */
export const factOf = (request: Request): Fact => ({ ...request, kind: factOfRequest[request.kind] }) as Fact;

const envelope = z.strictObject({ ...signature, request: z.looseObject({ kind: z.string() }) });

/** Reads a request, such as `{ "kind": "take reading", … }`. */
export const readRequest = (json: unknown): Answer<Request> => {
  const read = z.looseObject({ kind: z.string() }).safeParse(json);
  if (!read.success) return refuse('this is not a request', 'request', 'send a kind and what belongs to it');
  const { kind, ...body } = read.data;
  const known = requestKinds.find((name) => name === kind);
  if (known === undefined)
    return refuse(`nothing can be asked by “${kind}”`, 'request', `ask one of: ${requestKinds.join(', ')}`);
  const fact = readFact(factOfRequest[known], versionNow(factOfRequest[known]), body, known);
  return fact.kind === 'refused' ? fact : answer({ ...fact.value, kind: known } as Request);
};

/** Reads a command: a request with who, when and where. */
export const readCommand = (json: unknown): Answer<Command> => {
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
