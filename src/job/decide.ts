/** @module Decides a command: accepted, it becomes one sealed event; else it is refused in words of the trade. */
import { decideBy, type Rules } from '../journal/decide.ts';
import { type Trouble, trouble } from '../journal/trouble.ts';
import type { Answer } from '../quantity/refusal.ts';
import type { Command, Request } from './command.ts';
import type { Fact, JobEvent } from './event.ts';
import { facts } from './fact-shape.ts';
import type { Job, OpenJob } from './job.ts';
import { factOf } from './read-command.ts';
import { answerAskTrouble } from './rules/ask.ts';
import { bookInTrouble } from './rules/booking.ts';
import {
  acceptLineTrouble,
  noteCertificateTrouble,
  receiveDeliveryTrouble,
  sendBackTrouble,
} from './rules/delivery.ts';
import { answerDoubtTrouble } from './rules/doubt.ts';
import { noteFindingTrouble, noteSizeTrouble } from './rules/finding.ts';
import { bringFormerTrouble } from './rules/former.ts';
import { handOverTrouble } from './rules/hand-over.ts';
import { decideHomeTrouble, homePartTrouble, notePartStrayedTrouble } from './rules/home.ts';
import { bringInstrumentTrouble } from './rules/instrument.ts';
import { makeOfferTrouble, noteAgreementTrouble } from './rules/offer.ts';
import { doOperationTrouble, logRunStepTrouble, reopenOperationTrouble } from './rules/operation.ts';
import { placeOrderTrouble } from './rules/order.ts';
import { countShimsTrouble, fitPackTrouble } from './rules/pack.ts';
import { assignPartsTrouble, measurePartTrouble, setPartAsideTrouble } from './rules/part.ts';
import { strikeOutPictureTrouble, takePictureTrouble } from './rules/picture.ts';
import { choosePlanTrouble } from './rules/plan.ts';
import { strikeOutTrouble, takeReadingTrouble } from './rules/reading.ts';
import {
  beginRunStepTrouble,
  noteFaultTrouble,
  putFaultRightTrouble,
  strikeOutRunReadingTrouble,
  takeRunReadingTrouble,
} from './rules/run.ts';
import { setScopeTrouble } from './rules/scope.ts';
import { bringSlipChancesTrouble } from './rules/slip-chances.ts';
import { noteSumTrouble } from './rules/sum.ts';
import { tightenStageTrouble } from './rules/tighten.ts';
import { beginWorkTrouble, stopWorkTrouble } from './rules/work.ts';

const troubleIn = (job: OpenJob, { request, at, actor }: Command): Trouble => {
  switch (request.kind) {
    case 'book in':
      return trouble(
        `this job is booked in already, as ${job.booked.number}`,
        'book in',
        'book another engine in as a job of its own',
      );
    case 'bring slip chances':
      return bringSlipChancesTrouble(request);
    case 'bring former overhaul':
      return bringFormerTrouble(job, request);
    case 'set scope':
      return setScopeTrouble(job, request);
    case 'bring instrument':
      return bringInstrumentTrouble(job, request);
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
    case 'take picture':
      return takePictureTrouble(job, request);
    case 'strike out picture':
      return strikeOutPictureTrouble(job, request);
    case 'count shims':
      return countShimsTrouble(job, request);
    case 'choose plan':
      return choosePlanTrouble(job, request);
    case 'note agreement':
      return noteAgreementTrouble(job, request, at);
    case 'make offer':
      return makeOfferTrouble(job, request, at);
    case 'place order':
      return placeOrderTrouble(job, request);
    case 'receive delivery':
      return receiveDeliveryTrouble(job, request);
    case 'note certificate':
      return noteCertificateTrouble(job, request);
    case 'send back':
      return sendBackTrouble(job, request);
    case 'accept line':
      return acceptLineTrouble(job, request);
    case 'measure part':
      return measurePartTrouble(job, request);
    case 'set part aside':
      return setPartAsideTrouble(job, request);
    case 'assign parts':
      return assignPartsTrouble(job, request);
    case 'fit pack':
      return fitPackTrouble(job, request);
    case 'answer ask':
      return answerAskTrouble(job, request);
    case 'note sum':
      return noteSumTrouble(job, request);
    case 'do operation':
      return doOperationTrouble(job, request, actor);
    case 'tighten stage':
      return tightenStageTrouble(job, request);
    case 'begin work':
      return beginWorkTrouble(job, request, actor);
    case 'stop work':
      return stopWorkTrouble(job, request, actor, at);
    case 'reopen operation':
      return reopenOperationTrouble(job, request);
    case 'home part':
      return homePartTrouble(job, request);
    case 'note part strayed':
      return notePartStrayedTrouble(job, request);
    case 'decide home':
      return decideHomeTrouble(job, request);
    case 'log run step':
      return logRunStepTrouble(job, request);
    case 'begin run step':
      return beginRunStepTrouble(job, request);
    case 'take run reading':
      return takeRunReadingTrouble(job, request);
    case 'strike out run reading':
      return strikeOutRunReadingTrouble(job, request);
    case 'note fault':
      return noteFaultTrouble(job, request);
    case 'put fault right':
      return putFaultRightTrouble(job, request);
    case 'hand over':
      return handOverTrouble(job, request);
    default:
      return request satisfies never;
  }
};

const troubleFor = (job: Job, command: Command): Trouble => {
  const { request } = command;
  switch (job.kind) {
    case 'blank':
      return request.kind === 'book in'
        ? bookInTrouble(request)
        : trouble('there is no such job', request.kind, 'book the engine in first');
    case 'unreadable':
      return job.why;
    case 'open':
      return job.handedOver === undefined
        ? troubleIn(job, command)
        : trouble(
            `the engine was handed over to ${job.handedOver.to}`,
            request.kind,
            'nothing can be added; book it in as a new job',
          );
    default:
      return job satisfies never;
  }
};

const rules: Rules<Job, Request, Fact> = { called: 'job', troubleFor, factOf, facts };

/**
 * What a command comes to on a job as it stands: one event to append, or a refusal. A reading that looks strange is
 * taken: doubts say so afterwards.
 *
 * @returns the sealed event that follows the job's head; for a command sent twice in a row the event it had become
 */
export const decide = (job: Job, command: Command): Answer<JobEvent> => decideBy(rules, job, command);
