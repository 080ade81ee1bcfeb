/** @module May this instrument be brought to the bench? One that is overdue may: it is said, never refused. */
import type { Trouble } from '../../journal/trouble.ts';
import { instrumentTrouble } from '../../register/instrument-trouble.ts';
import type { RequestOf } from '../command.ts';

export const bringInstrumentTrouble = ({ instrument }: RequestOf<'bring instrument'>): Trouble =>
  instrumentTrouble(instrument);
