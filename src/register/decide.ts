/** @module Decides a command on the register: accepted, it becomes one sealed event; else it is refused. */

import { kindOf } from '../engine/instrument-kind.ts';
import { chooseName } from '../engine/nearest-name.ts';
import { decideBy, type Rules } from '../journal/decide.ts';
import { badFigure, blank, type Trouble, trouble } from '../journal/trouble.ts';
import type { Answer } from '../quantity/refusal.ts';
import { typedText } from '../quantity/typed.ts';
import type { RegisterCommand, RegisterRequest } from './command.ts';
import { deviationOf, withinPermissible } from './deviation.ts';
import { type RegisterEvent, type RegisterFact, registerId } from './event.ts';
import { registerFacts } from './fact-shape.ts';
import { instrumentTrouble } from './instrument-trouble.ts';
import { registerFactOf } from './read.ts';
import type { Register, Registered } from './register.ts';
import { slipChanceTrouble } from './slip-chance.ts';
import { workshopTrouble } from './workshop.ts';

type Ask<Kind extends RegisterRequest['kind']> = Extract<RegisterRequest, { kind: Kind }>;

const checkTrouble = ({ instrument }: Registered, asked: Ask<'check instrument'>): Trouble => {
  const { name } = asked;
  const { measures } = kindOf(instrument.kind);
  const wrong =
    blank(asked.against, `${name}, check`, 'write zero, or what it was held against') ??
    badFigure(asked.size, measures, `${name}, size held against`) ??
    badFigure(asked.showed, measures, `${name}, what it showed`);
  if (wrong !== undefined || !asked.good || withinPermissible(instrument, asked)) return wrong;
  const off = deviationOf(asked, measures);
  return trouble(
    `it showed ${off ? typedText(off) : 'something'} off and is allowed ± ${typedText(instrument.permissibleError)}`,
    `${name}, check`,
    'note the check as not good, or look at the figures again',
  );
};

const calibrationTrouble = (
  { instrument }: Registered,
  asked: Ask<'calibrate instrument'>,
  today: string,
): Trouble => {
  const { name } = asked;
  const { measures } = kindOf(instrument.kind);
  return (
    blank(asked.certificate, `${name}, certificate`, 'write the number of the certificate') ??
    (asked.on > today
      ? trouble(`${asked.on} is still to come`, `${name}, calibrated on`, 'give the day of the certificate')
      : undefined) ??
    (asked.due < asked.on
      ? trouble(`it is due before it was calibrated`, `${name}, due`, 'give the day it is due next')
      : undefined) ??
    badFigure(asked.correction, measures, `${name}, correction`) ??
    badFigure(asked.uncertainty, measures, `${name}, uncertainty`, { from: 0 })
  );
};

const strikeOutTrouble = ({ instruments }: Register, asked: Ask<'strike out entry'>): Trouble => {
  const entry = [...instruments.values()]
    .flatMap(({ history }) => history)
    .find(({ id }) => id === asked.entry);
  if (entry === undefined)
    return trouble(`the register has no entry ${asked.entry}`, 'entry', 'choose one from its history');
  if (entry.struckOut !== undefined)
    return trouble('this entry has been struck out already', 'entry', 'nothing is left to do');
  if (entry.fact.kind !== 'instrument checked' && entry.fact.kind !== 'instrument calibrated')
    return trouble(
      'only checks and calibrations are struck out',
      'entry',
      'enter the instrument again, withdraw it or put it back',
    );
  return blank(asked.why, 'strike out', 'write why the entry does not count');
};

const troubleWith = (found: Registered, request: RegisterRequest, today: string): Trouble => {
  switch (request.kind) {
    case 'check instrument':
      return checkTrouble(found, request);
    case 'calibrate instrument':
      return calibrationTrouble(found, request, today);
    case 'withdraw instrument':
      return found.withdrawn === undefined
        ? blank(request.why, 'withdraw', 'write why it is withdrawn')
        : trouble(`${request.name} is withdrawn already`, 'withdraw', 'nothing is left to do');
    case 'put instrument back':
      return found.withdrawn === undefined
        ? trouble(`${request.name} is in use`, 'put back', 'nothing is left to do')
        : blank(request.why, 'put back', 'write why it may be used again');
    default:
      return undefined;
  }
};

const troubleFor = (register: Register, { request, at, job }: RegisterCommand): Trouble => {
  if (job !== registerId)
    return trouble('this command is not for the register', 'register', `send it to ${registerId}`);
  if (request.kind === 'enter instrument') return instrumentTrouble(request.instrument);
  if (request.kind === 'describe workshop') return workshopTrouble(request.workshop);
  if (request.kind === 'strike out entry') return strikeOutTrouble(register, request);
  if (request.kind === 'set slip chance' || request.kind === 'leave slip chance as usual')
    return slipChanceTrouble(register, request);
  const found = register.instruments.get(request.name);
  if (found === undefined)
    return trouble(
      `there is no instrument “${request.name}” in the register`,
      'register',
      chooseName(request.name, register.instruments.keys()),
    );
  return troubleWith(found, request, at.slice(0, 10));
};

const rules: Rules<Register, RegisterRequest, RegisterFact> = {
  called: 'register',
  troubleFor,
  factOf: registerFactOf,
  facts: registerFacts,
};

/** What a command comes to on the register as it stands: one event to append, or a refusal. */
export const decideRegister = (register: Register, command: RegisterCommand): Answer<RegisterEvent> =>
  decideBy(rules, register, command);
