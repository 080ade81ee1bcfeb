/** @module What can be asked while an engine runs in: begin a step, take a reading, strike one out, faults. */
import { type Gauge, type GaugeName, limitedGauges } from '../../engine/gauge.ts';
import type { RunInStep } from '../../engine/run-in.ts';
import type { RequestOf } from '../../job/command.ts';
import type { OpenJob } from '../../job/job.ts';
import { type Answer, refuse } from '../../quantity/refusal.ts';
import { readTyped, type Typed, unitTyped } from '../../quantity/typed.ts';
import type { Action } from '../shell/action.ts';

const stillHere = (job: OpenJob): boolean => job.handedOver === undefined;

export const beginRunStep: Action<Omit<RequestOf<'begin run step'>, 'kind'>> = {
  name: 'begin-run-step',
  label: 'It runs so: begin the step',
  enabled: stillHere,
  request: (asked) => ({ kind: 'begin run step', ...asked }),
};

export const takeRunReading: Action<Omit<RequestOf<'take run reading'>, 'kind'>> = {
  name: 'take-run-reading',
  label: 'Note this reading',
  enabled: stillHere,
  request: (asked) => ({ kind: 'take run reading', ...asked }),
};

export const strikeOutRunReading: Action<Omit<RequestOf<'strike out run reading'>, 'kind'>> = {
  name: 'strike-out-run-reading',
  label: 'Misread: strike it out',
  enabled: stillHere,
  request: (asked) => ({ kind: 'strike out run reading', ...asked }),
};

export const noteFault: Action<Omit<RequestOf<'note fault'>, 'kind'>> = {
  name: 'note-fault',
  label: 'Note the fault',
  enabled: stillHere,
  request: (asked) => ({ kind: 'note fault', ...asked }),
};

export const putFaultRight: Action<Omit<RequestOf<'put fault right'>, 'kind'>> = {
  name: 'put-fault-right',
  label: 'It is put right',
  enabled: stillHere,
  request: (asked) => ({ kind: 'put fault right', ...asked }),
};

/** The unit that a bare figure is taken in: that of the limit, or of what is to be set. */
export const unitOfGauge = (step: RunInStep, gauge: Gauge): string => {
  if (gauge.name === 'speed' || gauge.name === 'load') return step[gauge.name].unit;
  const name = limitedGauges.find((one: GaugeName) => one === gauge.name);
  const printed = name && step.limits.get(name)?.printed;
  return (printed?.greatest ?? printed?.least)?.unit ?? gauge.unit;
};

/** A figure as typed, in one of the kinds of unit that the gauge may show. */
export const readGauge = (text: string, unit: string, gauge: Gauge): Answer<Typed> => {
  const whole = unitTyped(text) === '' ? `${text.trim()} ${unit}` : text;
  const [first, ...others] = gauge.of.map((dimension) => readTyped(whole, dimension));
  return (
    [first, ...others].find((one) => one?.kind === 'answer') ??
    first ??
    refuse('there is no such gauge', gauge.title, 'take it out')
  );
};
