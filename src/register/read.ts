/** @module Reads the register's events and what is asked of it from JSON, as the store, the server and the terminal get it. */
import { type FactOfRequest, readCommandWith, readRequestOf } from '../journal/read-command.ts';
import { readEventOf, readEventsOf } from '../journal/read-event.ts';
import type { Answer } from '../quantity/refusal.ts';
import type { RegisterCommand, RegisterRequest } from './command.ts';
import type { RegisterEvent, RegisterFact } from './event.ts';
import { registerFacts } from './fact-shape.ts';

/** The kind of fact that each request, once accepted, becomes. */
const factOfRequest: FactOfRequest<RegisterRequest, RegisterFact> = {
  'enter instrument': 'instrument entered',
  'check instrument': 'instrument checked',
  'calibrate instrument': 'instrument calibrated',
  'withdraw instrument': 'instrument withdrawn',
  'put instrument back': 'instrument put back',
  'strike out entry': 'entry struck out',
  'describe workshop': 'workshop described',
  'set slip chance': 'slip chance set',
  'leave slip chance as usual': 'slip chance left as usual',
};

/** The fact that a request becomes when it is accepted. */
export const registerFactOf = (request: RegisterRequest): RegisterFact =>
  ({ ...request, kind: factOfRequest[request.kind] }) as RegisterFact;

export const readRegisterRequest = (json: unknown): Answer<RegisterRequest> =>
  readRequestOf(factOfRequest, registerFacts, json);

export const readRegisterCommand = (json: unknown): Answer<RegisterCommand> =>
  readCommandWith(readRegisterRequest, json);

export const readRegisterEvent = (json: unknown): Answer<RegisterEvent> => readEventOf(registerFacts, json);

export const readRegisterEvents = (json: unknown): Answer<readonly RegisterEvent[]> =>
  readEventsOf(registerFacts, json);
