/** @module Reads a command from JSON, as the server and the terminal get it: its shape, not yet its sense. */
import { type FactOfRequest, readCommandWith, readRequestOf } from '../journal/read-command.ts';
import type { Answer } from '../quantity/refusal.ts';
import type { Command, Request } from './command.ts';
import type { Fact } from './event.ts';
import { facts } from './fact-shape.ts';

/** The kind of fact that each request, once accepted, becomes. */
const factOfRequest: FactOfRequest<Request, Fact> = {
  'book in': 'booked in',
  'bring slip chances': 'slip chances brought',
  'bring former overhaul': 'former overhaul brought',
  'set scope': 'scope set',
  'bring instrument': 'instrument brought',
  'take reading': 'reading taken',
  'strike out reading': 'reading struck out',
  'answer doubt': 'doubt answered',
  'note size found': 'size found',
  'note finding': 'finding noted',
  'take picture': 'picture taken',
  'strike out picture': 'picture struck out',
  'count shims': 'shims counted',
  'choose plan': 'plan chosen',
  'make offer': 'offer made',
  'note agreement': 'owner agreed',
  'place order': 'order placed',
  'receive delivery': 'delivery received',
  'note certificate': 'certificate noted',
  'send back': 'line sent back',
  'accept line': 'line accepted',
  'measure part': 'part measured',
  'set part aside': 'part set aside',
  'assign parts': 'parts assigned',
  'fit pack': 'pack fitted',
  'answer ask': 'ask answered',
  'note sum': 'sum noted',
  'do operation': 'operation done',
  'tighten stage': 'stage tightened',
  'begin work': 'work begun',
  'stop work': 'work stopped',
  'reopen operation': 'operation reopened',
  'home part': 'part homed',
  'note part strayed': 'part strayed',
  'decide home': 'home decided',
  'log run step': 'run step logged',
  'begin run step': 'run step begun',
  'take run reading': 'run reading taken',
  'strike out run reading': 'run reading struck out',
  'note fault': 'fault noted',
  'put fault right': 'fault put right',
  'hand over': 'handed over',
};

export const requestKinds = Object.keys(factOfRequest) as readonly Request['kind'][];

/** The fact that a request becomes when it is accepted. */
export const factOf = (request: Request): Fact => ({ ...request, kind: factOfRequest[request.kind] }) as Fact;

/** Reads a request, such as `{ "kind": "take reading", … }`. */
export const readRequest = (json: unknown): Answer<Request> => readRequestOf(factOfRequest, facts, json);

/** Reads a command: a request with who, when and where. */
export const readCommand = (json: unknown): Answer<Command> => readCommandWith(readRequest, json);
