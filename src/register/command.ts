/** @module What a person asks of the register: each command, accepted, becomes one event. */
import type { CommandOf } from '../journal/event.ts';
import type { RegisterFact } from './event.ts';

type Asked<Kind extends RegisterFact['kind'], Name extends string> = { readonly kind: Name } & Omit<
  Extract<RegisterFact, { kind: Kind }>,
  'kind'
>;

export type RegisterRequest =
  | Asked<'instrument entered', 'enter instrument'>
  | Asked<'instrument checked', 'check instrument'>
  | Asked<'instrument calibrated', 'calibrate instrument'>
  | Asked<'instrument withdrawn', 'withdraw instrument'>
  | Asked<'instrument put back', 'put instrument back'>
  | Asked<'entry struck out', 'strike out entry'>
  | Asked<'workshop described', 'describe workshop'>
  | Asked<'slip chance set', 'set slip chance'>
  | Asked<'slip chance left as usual', 'leave slip chance as usual'>;

export type RegisterCommand = CommandOf<RegisterRequest>;
