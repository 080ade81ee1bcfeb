/** @module Reads the stored events of a job, of any version ever written, into what they mean now. */
import { readEventOf, readEventsOf } from '../journal/read-event.ts';
import type { Answer } from '../quantity/refusal.ts';
import type { JobEvent } from './event.ts';
import { facts } from './fact-shape.ts';

/** Reads one event from JSON; refuses what is no event of a job, a kind or a version that is not known. */
export const readEvent = (json: unknown): Answer<JobEvent> => readEventOf(facts, json);

/** Reads a journal; the first event that cannot be read is named. */
export const readEvents = (json: unknown): Answer<readonly JobEvent[]> => readEventsOf(facts, json);
