/** @module A shop with one micrometer in its register: asks one thing after another of the register. */

import type { Instrument } from '../../src/measure/instrument.ts';
import type { Answer } from '../../src/quantity/refusal.ts';
import type { RegisterRequest } from '../../src/register/command.ts';
import { decideRegister } from '../../src/register/decide.ts';
import {
  type Described,
  type RegisterEvent,
  type RegisterFact,
  registerId,
} from '../../src/register/event.ts';
import { emptyRegister, evolveRegister } from '../../src/register/evolve.ts';
import type { Register, Registered } from '../../src/register/register.ts';

const mm = (text: string) => ({ text, unit: 'mm' });

export const mic: Described = {
  name: 'mic-50-75',
  kind: 'outside micrometer',
  range: { least: mm('50'), greatest: mm('75') },
  resolution: mm('0.001'),
  permissibleError: mm('0.004'),
  repeatability: mm('0.001'),
  turn: mm('0.5'),
};

type Ask<Kind extends RegisterRequest['kind']> = Extract<RegisterRequest, { kind: Kind }>;

const requestKind: Readonly<Record<RegisterFact['kind'], RegisterRequest['kind']>> = {
  'instrument entered': 'enter instrument',
  'instrument checked': 'check instrument',
  'instrument calibrated': 'calibrate instrument',
  'instrument withdrawn': 'withdraw instrument',
  'instrument put back': 'put instrument back',
  'entry struck out': 'strike out entry',
  'workshop described': 'describe workshop',
  'slip chance set': 'set slip chance',
  'slip chance left as usual': 'leave slip chance as usual',
};

export class Shop {
  register: Register = emptyRegister;
  readonly events: RegisterEvent[] = [];
  readonly checking: Ask<'check instrument'> = {
    kind: 'check instrument',
    name: mic.name,
    against: 'zero',
    showed: mm('0.000'),
    good: true,
    note: '',
  };
  #asked = 0;

  constructor() {
    this.done('2026-02-01', { kind: 'enter instrument', instrument: mic });
  }

  /** @param on  a day, taken at noon, or a moment */
  ask(on: string, request: RegisterRequest, id?: string): Answer<RegisterEvent> {
    this.#asked += 1;
    const answer = decideRegister(this.register, {
      id: id ?? `entry-${this.#asked}`,
      job: registerId,
      at: on.includes('T') ? on : `${on}T12:00:00Z`,
      actor: 'Ilse Quarrow',
      bench: 'bench 2',
      request,
    });
    if (answer.kind === 'answer' && answer.value.sequence > this.register.head.sequence) {
      this.events.push(answer.value);
      this.register = evolveRegister(this.register, answer.value);
    }
    return answer;
  }

  /** Asks for a fact whatever it holds, sensible or not. */
  askFact(fact: RegisterFact, minute: number): Answer<RegisterEvent> {
    const at = `2026-03-02T09:${String(minute).padStart(2, '0')}:00Z`;
    return this.ask(at, { ...fact, kind: requestKind[fact.kind] } as RegisterRequest);
  }

  done(on: string, request: RegisterRequest): RegisterEvent {
    const answer = this.ask(on, request);
    if (answer.kind === 'refused') throw new Error(JSON.stringify(answer.refusal));
    return answer.value;
  }

  refused(on: string, request: RegisterRequest): string {
    const answer = this.ask(on, request);
    if (answer.kind === 'answer') throw new Error(`accepted: ${JSON.stringify(answer.value.fact)}`);
    const { what, where, remedy } = answer.refusal;
    if (remedy === '') throw new Error('a refusal without a remedy');
    return `${where} | ${what} | ${remedy}`;
  }

  check(on: string, found: Partial<Ask<'check instrument'>> = {}): RegisterEvent {
    return this.done(on, { ...this.checking, ...found });
  }

  calibrate(
    noted: string,
    found: Pick<Ask<'calibrate instrument'>, 'on' | 'due'> & Partial<Ask<'calibrate instrument'>>,
  ): RegisterEvent {
    return this.done(noted, {
      kind: 'calibrate instrument',
      name: mic.name,
      certificate: 'K-1',
      foundGood: true,
      note: '',
      ...found,
    });
  }

  registered(name = mic.name): Registered {
    const found = this.register.instruments.get(name);
    if (found === undefined) throw new Error(`${name} is not in the register`);
    return found;
  }

  instrument(name = mic.name): Instrument {
    return this.registered(name).instrument;
  }
}
