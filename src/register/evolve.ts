/** @module Folds events into the register. It takes whatever was stored: it never refuses and never throws. */

import { kindOf } from '../engine/instrument-kind.ts';
import type { Signed } from '../journal/event.ts';
import { headAt, noHead } from '../journal/head.ts';
import type { Calibration, Check, Instrument } from '../measure/instrument.ts';
import { deviationOf } from './deviation.ts';
import type { Described, RegisterEvent } from './event.ts';
import type { Entry, Noted, NotedOf, Register, Registered } from './register.ts';

export const emptyRegister: Register = { head: noHead, instruments: new Map(), slipChances: [] };

/** The day of a moment in UTC. */
const dayOf = (at: string): string => at.slice(0, 10);

const afterCheck = (instrument: Instrument, fact: NotedOf<'instrument checked'>, at: string): Instrument => {
  const { measures, master } = kindOf(instrument.kind);
  const zero = master ? undefined : deviationOf(fact, measures);
  const checked: Check = { on: dayOf(at), against: fact.against, good: fact.good };
  return { ...instrument, ...(zero && { zero }), checked };
};

const afterCalibration = (instrument: Instrument, fact: NotedOf<'instrument calibrated'>): Instrument => {
  const { zero, correction: _, correctionUncertainty: __, ...rest } = instrument;
  const { certificate, on, due } = fact;
  const calibration: Calibration = { certificate, on, due };
  const checked: Check = { on, against: `calibration ${certificate}`, good: true };
  return {
    ...rest,
    // What was found wrong was set right: the zero of before says nothing of the one now.
    ...(zero && fact.foundGood && { zero }),
    ...(fact.correction && { correction: fact.correction }),
    ...(fact.uncertainty && { correctionUncertainty: fact.uncertainty }),
    calibration,
    // A calibration written down late does not hide a check made since.
    checked: instrument.checked && instrument.checked.on > on ? instrument.checked : checked,
  };
};

/** Entered again: its new figures, with what was found of it before. */
const entered = (described: Described, before: Instrument | undefined): Instrument => ({
  ...(before?.zero && { zero: before.zero }),
  ...(before?.correction && { correction: before.correction }),
  ...(before?.correctionUncertainty && { correctionUncertainty: before.correctionUncertainty }),
  ...described,
  ...(before?.calibration && { calibration: before.calibration }),
  ...(before?.checked && { checked: before.checked }),
});

const after = (
  before: Registered | undefined,
  { fact, by, at }: Entry,
): Omit<Registered, 'history'> | undefined => {
  if (fact.kind === 'instrument entered') {
    const instrument = entered(fact.instrument, before?.instrument);
    return { instrument, ...(before?.withdrawn && { withdrawn: before.withdrawn }) };
  }
  if (before === undefined) return undefined;
  const { history: _, ...standing } = before;
  switch (fact.kind) {
    case 'instrument checked':
      return { ...standing, instrument: afterCheck(standing.instrument, fact, at) };
    case 'instrument calibrated':
      return { ...standing, instrument: afterCalibration(standing.instrument, fact) };
    case 'instrument withdrawn':
      return { ...standing, withdrawn: { by, at, why: fact.why } };
    case 'instrument put back':
      return { instrument: standing.instrument };
    default:
      return fact satisfies never;
  }
};

/** What a history comes to; nothing where it never enters the instrument. */
const standingAfter = (history: readonly Entry[]): Registered | undefined => {
  let standing: Registered | undefined;
  for (const entry of history) {
    const next = entry.struckOut === undefined ? after(standing, entry) : undefined;
    if (next !== undefined) standing = { ...next, history };
  }
  return standing && { ...standing, history };
};

const nameIn = (fact: Noted): string =>
  fact.kind === 'instrument entered' ? fact.instrument.name : fact.name;

const put = (register: Register, name: string, history: readonly Entry[]): Register => {
  const standing = standingAfter(history);
  // What is written of an instrument that nobody entered changes nothing.
  if (standing === undefined) return register;
  return { ...register, instruments: new Map(register.instruments).set(name, standing) };
};

const struckOut = (register: Register, id: string, struck: Signed & { readonly why: string }): Register => {
  for (const [name, { history }] of register.instruments)
    if (history.some((entry) => entry.id === id && entry.struckOut === undefined))
      return put(
        register,
        name,
        history.map((entry) => (entry.id === id ? { ...entry, struckOut: struck } : entry)),
      );
  return register;
};

/** The register after one more event. */
export const evolveRegister = (before: Register, event: RegisterEvent): Register => {
  const { id, fact, actor: by, at } = event;
  const register = { ...before, head: headAt(event) };
  if (fact.kind === 'workshop described') return { ...register, workshop: { ...fact.workshop, by, at } };
  if (fact.kind === 'entry struck out') return struckOut(register, fact.entry, { by, at, why: fact.why });
  if (fact.kind === 'slip chance set' || fact.kind === 'slip chance left as usual')
    return { ...register, slipChances: [...register.slipChances, { id, fact, by, at }] };
  const name = nameIn(fact);
  const history = register.instruments.get(name)?.history ?? [];
  return put(register, name, [...history, { id, fact, by, at }]);
};

/** The register that a whole journal comes to. */
export const replayRegister = (events: readonly RegisterEvent[]): Register =>
  events.reduce(evolveRegister, emptyRegister);
