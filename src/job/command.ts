/** @module What a person asks of a job: each command, accepted, becomes one event. */
import type { CommandOf } from '../journal/event.ts';
import type { Fact } from './event.ts';

type Asked<Kind extends Fact['kind'], Name extends string> = { readonly kind: Name } & Omit<
  Extract<Fact, { kind: Kind }>,
  'kind'
>;

export type Request =
  | Asked<'booked in', 'book in'>
  | Asked<'slip chances brought', 'bring slip chances'>
  | Asked<'former overhaul brought', 'bring former overhaul'>
  | Asked<'scope set', 'set scope'>
  | Asked<'instrument brought', 'bring instrument'>
  | Asked<'reading taken', 'take reading'>
  | Asked<'reading struck out', 'strike out reading'>
  | Asked<'doubt answered', 'answer doubt'>
  | Asked<'size found', 'note size found'>
  | Asked<'finding noted', 'note finding'>
  | Asked<'picture taken', 'take picture'>
  | Asked<'picture struck out', 'strike out picture'>
  | Asked<'shims counted', 'count shims'>
  | Asked<'plan chosen', 'choose plan'>
  | Asked<'offer made', 'make offer'>
  | Asked<'owner agreed', 'note agreement'>
  | Asked<'order placed', 'place order'>
  | Asked<'delivery received', 'receive delivery'>
  | Asked<'certificate noted', 'note certificate'>
  | Asked<'line sent back', 'send back'>
  | Asked<'line accepted', 'accept line'>
  | Asked<'part measured', 'measure part'>
  | Asked<'part set aside', 'set part aside'>
  | Asked<'parts assigned', 'assign parts'>
  | Asked<'pack fitted', 'fit pack'>
  | Asked<'ask answered', 'answer ask'>
  | Asked<'sum noted', 'note sum'>
  | Asked<'operation done', 'do operation'>
  | Asked<'stage tightened', 'tighten stage'>
  | Asked<'work begun', 'begin work'>
  | Asked<'work stopped', 'stop work'>
  | Asked<'operation reopened', 'reopen operation'>
  | Asked<'part homed', 'home part'>
  | Asked<'part strayed', 'note part strayed'>
  | Asked<'home decided', 'decide home'>
  | Asked<'run step logged', 'log run step'>
  | Asked<'run step begun', 'begin run step'>
  | Asked<'run reading taken', 'take run reading'>
  | Asked<'run reading struck out', 'strike out run reading'>
  | Asked<'fault noted', 'note fault'>
  | Asked<'fault put right', 'put fault right'>
  | Asked<'handed over', 'hand over'>;

export type RequestOf<Kind extends Request['kind']> = Extract<Request, { kind: Kind }>;

export type Command = CommandOf<Request>;
