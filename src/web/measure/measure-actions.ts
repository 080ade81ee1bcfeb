/** @module What can be asked while measuring. */

import type { Request } from '../../job/command.ts';
import type { Answer } from '../../quantity/refusal.ts';
import { readTyped, type Typed } from '../../quantity/typed.ts';
import type { Dimension } from '../../quantity/unit.ts';
import type { Action } from '../shell/action.ts';

type Asked<Kind extends Request['kind']> = Omit<Extract<Request, { kind: Kind }>, 'kind'>;

export const takeReading: Action<Asked<'take reading'>> = {
  name: 'take-reading',
  label: 'Take it',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'take reading', ...asked }),
};

export const bringInstrument: Action<Asked<'bring instrument'>> = {
  name: 'bring-instrument',
  label: 'Bring it to this job',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'bring instrument', ...asked }),
};

export const strikeOut: Action<Asked<'strike out reading'>> = {
  name: 'strike-out-reading',
  label: 'Strike it out',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'strike out reading', ...asked }),
};

export const answerDoubt: Action<Asked<'answer doubt'>> = {
  name: 'answer-doubt',
  label: 'It stands',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'answer doubt', ...asked }),
};

/** What stands in the entry, with the unit typed or the unit meant. */
export const readEntry = (text: string, unit: string, dimension: Dimension): Answer<Typed> =>
  readTyped(/[a-zµ"°]/i.test(text.replace(/e[+-]?\d+/i, '')) ? text : `${text} ${unit}`, dimension);
