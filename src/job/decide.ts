/** @module Decides a command: accepted, it becomes one sealed event; else it is refused in words of the trade. */
import type { Refusal } from '../quantity/refusal.ts';
import { type Answer, answer } from '../quantity/refusal.ts';
import { seal } from './chain.ts';
import type { Command, Request } from './command.ts';
import type { JobEvent } from './event.ts';
import { versionNow } from './fact-shape.ts';
import type { Job, OpenJob } from './job.ts';
import { factOf } from './read-command.ts';
import { bookInTrouble } from './rules/booking.ts';
import { answerDoubtTrouble } from './rules/doubt.ts';
import { noteFindingTrouble, noteSizeTrouble } from './rules/finding.ts';
import { handOverTrouble } from './rules/hand-over.ts';
import { bringInstrumentTrouble } from './rules/instrument.ts';
import { doOperationTrouble, logRunStepTrouble } from './rules/operation.ts';
import { countShimsTrouble, fitPackTrouble } from './rules/pack.ts';
import { choosePlanTrouble, noteAgreementTrouble } from './rules/plan.ts';
import { strikeOutTrouble, takeReadingTrouble } from './rules/reading.ts';
import { blank, type Trouble, trouble } from './rules/trouble.ts';
import { readEvent } from './upcast.ts';

const troubleIn = (job: OpenJob, request: Request): Trouble => {
  switch (request.kind) {
    case 'book in':
      return trouble(
        `this job is booked in already, as ${job.booked.number}`,
        'book in',
        'book another engine in as a job of its own',
      );
    case 'bring instrument':
      return bringInstrumentTrouble(request);
    case 'take reading':
      return takeReadingTrouble(job, request);
    case 'strike out reading':
      return strikeOutTrouble(job, request);
    case 'answer doubt':
      return answerDoubtTrouble(job, request);
    case 'note size found':
      return noteSizeTrouble(job, request);
    case 'note finding':
      return noteFindingTrouble(job, request);
    case 'count shims':
      return countShimsTrouble(job, request);
    case 'choose plan':
      return choosePlanTrouble(job, request);
    case 'note agreement':
      return noteAgreementTrouble(job, request);
    case 'fit pack':
      return fitPackTrouble(job, request);
    case 'do operation':
      return doOperationTrouble(job, request);
    case 'log run step':
      return logRunStepTrouble(job, request);
    case 'hand over':
      return handOverTrouble(job, request);
    default:
      return request satisfies never;
  }
};

const troubleFor = (job: Job, { request }: Command): Trouble => {
  switch (job.kind) {
    case 'blank':
      return request.kind === 'book in'
        ? bookInTrouble(request)
        : trouble('there is no such job', request.kind, 'book the engine in first');
    case 'unreadable':
      return job.why;
    case 'open':
      return job.handedOver === undefined
        ? troubleIn(job, request)
        : trouble(
            `the engine was handed over to ${job.handedOver.to}`,
            request.kind,
            'nothing can be added; book it in as a new job',
          );
    default:
      return job satisfies never;
  }
};

/** A command sent again right away: the event that it became. */
const sentAgain = ({ head }: Job, { id }: Command): JobEvent | undefined =>
  head.event?.id === id ? head.event : undefined;

const wrongJob = ({ head }: Job, command: Command): Refusal | undefined =>
  head.event !== undefined && head.event.job !== command.job
    ? trouble('this command is for another job', 'job', `send it to job ${command.job}`)
    : undefined;

/**
 * What a command comes to on a job as it stands: one event to append, or a refusal. A reading that looks strange is
 * taken: doubts say so afterwards.
 *
 * @returns the sealed event that follows the job's head; for a command sent twice in a row the event it had become
 */
export const decide = (job: Job, command: Command): Answer<JobEvent> => {
  const again = sentAgain(job, command);
  if (again !== undefined) return answer(again);
  const refusal =
    wrongJob(job, command) ??
    blank(command.actor, 'name', 'say who you are before you write in the journal') ??
    troubleFor(job, command);
  if (refusal !== undefined) return { kind: 'refused', refusal };
  const fact = factOf(command.request);
  const event = seal({
    id: command.id,
    job: command.job,
    sequence: job.head.sequence + 1,
    at: command.at,
    actor: command.actor,
    bench: command.bench,
    version: versionNow(fact.kind),
    fact,
    before: job.head.hash,
  });
  // What is written must be read for ever: an event that could not be is refused before it is one.
  return event.kind === 'refused' ? event : readEvent(event.value);
};
