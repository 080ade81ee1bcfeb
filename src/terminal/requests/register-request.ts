/** @module What can be asked of the register in the terminal: one record a request, with its keys and how they become it. */

import type { Typed } from '../../quantity/typed.ts';
import type { RegisterRequest } from '../../register/command.ts';
import { withinPermissible } from '../../register/deviation.ts';
import type { Register } from '../../register/register.ts';
import { instrumentBody, instrumentFigure, instrumentKeys } from './instrument-keys.ts';
import { type Key, number, optional, text, yesOrNo } from './keys.ts';
import { given, type Values, word } from './values.ts';

export interface RegisterAsk {
  /** As it is typed: `check`. */
  readonly name: string;
  readonly kind: RegisterRequest['kind'];
  readonly keys: readonly Key[];
  /** The request's body from what was typed; checked against its shape afterwards. */
  readonly body: (values: Values, register: Register) => Values;
}

const name = text('name', 'mic-50-75');
const slip = text('slip', '"thimble turn"');
const note = optional(text('note', '"after a fall"'));

/** As the figures have it, where nobody says. */
const foundGood = (values: Values, register: Register): unknown => {
  const found = register.instruments.get(word(values.name));
  if (values.good !== undefined || found === undefined) return values.good ?? true;
  const size = values.size as Typed | undefined;
  return withinPermissible(found.instrument, { showed: values.showed as Typed, ...(size && { size }) });
};

export const registerRequests: readonly RegisterAsk[] = [
  {
    name: 'enter',
    kind: 'enter instrument',
    keys: instrumentKeys,
    body: (values) => ({ instrument: instrumentBody(values) }),
  },
  {
    name: 'check',
    kind: 'check instrument',
    keys: [
      name,
      text('against', 'zero'),
      optional(instrumentFigure('size', '50.000mm')),
      instrumentFigure('showed', '0.001mm'),
      optional(yesOrNo('good')),
      note,
    ],
    body: (values, register) => ({
      ...given(values, { name: 'name', against: 'against', size: 'size', showed: 'showed' }),
      good: foundGood(values, register),
      note: word(values.note),
    }),
  },
  {
    name: 'calibrate',
    kind: 'calibrate instrument',
    keys: [
      name,
      text('certificate', 'C-1187'),
      text('on', '2026-03-02'),
      text('due', '2027-03-01'),
      optional(yesOrNo('found-good')),
      optional(instrumentFigure('correction', '0.002mm')),
      optional(instrumentFigure('uncertainty', '0.001mm')),
      note,
    ],
    body: (values) => ({
      ...given(values, { name: 'name', certificate: 'certificate', on: 'on', due: 'due' }),
      ...given(values, { correction: 'correction', uncertainty: 'uncertainty' }),
      foundGood: values['found-good'] ?? true,
      note: word(values.note),
    }),
  },
  {
    name: 'withdraw',
    kind: 'withdraw instrument',
    keys: [name, text('why', '"anvil chipped"')],
    body: (values) => values,
  },
  {
    name: 'put-back',
    kind: 'put instrument back',
    keys: [name, text('why', '"anvil ground, calibrated anew"')],
    body: (values) => values,
  },
  {
    name: 'strike-out',
    kind: 'strike out entry',
    keys: [text('entry', 'ID'), text('why', '"another micrometer was meant"')],
    body: (values) => values,
  },
  {
    name: 'slip-chance',
    kind: 'set slip chance',
    keys: [slip, number('once-in', '20'), text('why', '"scales worn faint"')],
    body: (values) => given(values, { slip: 'slip', 'once-in': 'onceIn', why: 'why' }),
  },
  {
    name: 'usual-slip-chance',
    kind: 'leave slip chance as usual',
    keys: [slip, text('why', '"new micrometers"')],
    body: (values) => values,
  },
];
