/** @module What this bench asks of the workshop's server. */
import type { Command } from '../../job/command.ts';
import type { JobEvent } from '../../job/event.ts';
import { readEvents } from '../../job/upcast.ts';
import type { Picture } from '../../picture/picture.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import type { PictureBox } from './picture-box.ts';

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
/** A picture takes its time where the network is slow. */
const picturePatience = 60_000;

/** Puts a picture into the workshop's store; nothing where it is there then, else why it is not. */
export const putPicture = async (
  { hash, mediaType }: Picture,
  bytes: Uint8Array,
): Promise<Exclude<Heard, { kind: 'events' }> | undefined> => {
  try {
    const answer = await fetch(`/api/pictures/${hash}`, {
      method: 'PUT',
      headers: { 'content-type': mediaType },
      body: Uint8Array.from(bytes),
      signal: AbortSignal.timeout(picturePatience),
    });
    if (answer.ok) return undefined;
    const body = (await answer.json()) as { readonly refusal?: Refusal };
    return answer.status >= 500 || !body.refusal
      ? { kind: 'no answer' }
      : { kind: 'refused', refusal: body.refusal };
  } catch {
    return { kind: 'no answer' };
  }
};

/** The picture that a command names goes before it, as long as this bench has it and not yet the store. */
const pictureFirst = async (box: PictureBox, { request }: Command): Promise<Heard | undefined> => {
  if (request.kind !== 'take picture') return undefined;
  const bytes = await box.bytes(request.picture.hash);
  return bytes && putPicture(request.picture, bytes);
};

export const workshop = (box: PictureBox): Workshop => ({
  eventsAfter: (job, after) =>
    heard(
      fetch(`/api/jobs/${encodeURIComponent(job)}/events?after=${after}`, {
        signal: AbortSignal.timeout(patience),
      }),
    ),
  send: async (command, after) => {
    const stopped = await pictureFirst(box, command);
    if (stopped) return stopped;
    const answer = await heard(
      fetch(`/api/jobs/${encodeURIComponent(command.job)}/commands`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ command, after }),
        signal: AbortSignal.timeout(patience),
      }),
    );
    if (answer.kind === 'events' && command.request.kind === 'take picture')
      await box.drop(command.request.picture.hash);
    return answer;
  },
});
