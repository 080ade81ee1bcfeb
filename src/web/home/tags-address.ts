/** @module Where tags and their labels stand in the app, and how a scanned text is taken there. */
import type { OpenJob } from '../../job/job.ts';
import { addressOf } from '../shell/phases.ts';

export const addressOfTags = (job: OpenJob): string =>
  `${addressOf(job.head.event?.job ?? '', 'strip')}/tags`;

export const addressOfLabels = (job: OpenJob): string =>
  `${addressOf(job.head.event?.job ?? '', 'strip')}/labels`;

/** Handed on with the address. */
export interface ScannedElsewhere {
  readonly scanned: string;
}

export const isScanned = (state: unknown): state is ScannedElsewhere =>
  typeof state === 'object' && state !== null && 'scanned' in state && typeof state.scanned === 'string';
