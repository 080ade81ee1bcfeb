/** @module May this instrument be brought to the bench? One that is overdue may: it is said, never refused. */
import { type Trouble, trouble } from '../../journal/trouble.ts';
import { instrumentTrouble } from '../../register/instrument-trouble.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';

/** A gauge is worth no more than what it was set in, and its sizes cannot be had without it. */
const masterTrouble = (
  job: OpenJob,
  { name, setTo }: RequestOf<'bring instrument'>['instrument'],
): Trouble =>
  setTo && setTo.master !== name && !job.sheet.instruments.has(setTo.master)
    ? trouble(
        `it was set in ${setTo.master}, which has not been brought to this job`,
        name,
        `bring ${setTo.master} first`,
      )
    : undefined;

export const bringInstrumentTrouble = (
  job: OpenJob,
  { instrument }: RequestOf<'bring instrument'>,
): Trouble => instrumentTrouble(instrument) ?? masterTrouble(job, instrument);
