/** @module What this bench asks of the workshop's server. */
import type { Command } from '../../job/command.ts';
import type { JobEvent } from '../../job/event.ts';
import { readEvents } from '../../job/upcast.ts';
import type { Refusal } from '../../quantity/refusal.ts';

export type Heard =
  | { readonly kind: 'events'; readonly events: readonly JobEvent[] }
  | { readonly kind: 'refused'; readonly refusal: Refusal }
  /** The network or the server is away; nothing is known of what it did. */
  | { readonly kind: 'no answer' };

export interface Workshop {
  readonly eventsAfter: (job: string, after: number) => Promise<Heard>;
  readonly send: (command: Command, after: number) => Promise<Heard>;
}

const heard = async (asked: Promise<Response>): Promise<Heard> => {
  try {
    const answer = await asked;
    if (answer.status >= 500) return { kind: 'no answer' };
    const body = (await answer.json()) as { readonly events?: unknown; readonly refusal?: Refusal };
    if (body.refusal) return { kind: 'refused', refusal: body.refusal };
    const events = readEvents(body.events);
    return events.kind === 'refused' ? events : { kind: 'events', events: events.value };
  } catch {
    return { kind: 'no answer' };
  }
};

const patience = 15_000;

export const workshop = (): Workshop => ({
  eventsAfter: (job, after) =>
    heard(
      fetch(`/api/jobs/${encodeURIComponent(job)}/events?after=${after}`, {
        signal: AbortSignal.timeout(patience),
      }),
    ),
  send: (command, after) =>
    heard(
      fetch(`/api/jobs/${encodeURIComponent(command.job)}/commands`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ command, after }),
        signal: AbortSignal.timeout(patience),
      }),
    ),
});
