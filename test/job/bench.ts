/** @module A bench for tests: asks one thing after another of a job and keeps what came of it. */
import type { Request } from '../../src/job/command.ts';
import { decide } from '../../src/job/decide.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { blankJob, evolve } from '../../src/job/evolve.ts';
import type { Job, OpenJob } from '../../src/job/job.ts';
import type { Instrument } from '../../src/measure/instrument.ts';
import type { Answer } from '../../src/quantity/refusal.ts';
import type { Typed } from '../../src/quantity/typed.ts';
import { sparrowbill } from './sparrowbill.ts';

export const mm = (text: string): Typed => ({ text, unit: 'mm' });

const gauge = (name: string, kind: string, least: string, greatest: string): Instrument => ({
  name,
  kind,
  range: { least: mm(least), greatest: mm(greatest) },
  resolution: mm('0.001'),
  permissibleError: mm('0.002'),
  repeatability: mm('0.001'),
  zero: mm('0.000'),
  turn: mm('0.5'),
});
export const micrometer = gauge('mic-25-50', 'outside micrometer', '25', '50');
export const depthGauge = gauge('depth-0-100', 'depth gauge', '0', '100');

export const booking: Extract<Request, { kind: 'book in' }> = {
  kind: 'book in',
  number: '26-031',
  engineType: sparrowbill,
  owner: 'Heronsway Allotments',
  plate: 'SB2-118',
  hoursRun: { text: '4200', unit: 'h' },
  complaint: 'knocks when warm',
  currency: 'EUR',
  conformance: 0.95,
};

export class Bench {
  job: Job = blankJob;
  readonly events: JobEvent[] = [];
  #commands = 0;

  /** Asks, and carries on from what came of it. */
  ask(request: Request, id?: string, on = '2026-03-02', actor = 'Ilse Quarrow'): Answer<JobEvent> {
    this.#commands += 1;
    const answer = decide(this.job, {
      id: id ?? `ask-${this.#commands}`,
      job: this.job.head.event?.job ?? 'job-1',
      at: `${on}T08:${String(Math.floor(this.#commands / 60) % 60).padStart(2, '0')}:${String(this.#commands % 60).padStart(2, '0')}Z`,
      actor,
      bench: 'bench 2',
      request,
    });
    if (answer.kind === 'answer' && answer.value.sequence > this.job.head.sequence) {
      this.events.push(answer.value);
      this.job = evolve(this.job, answer.value);
    }
    return answer;
  }

  /** Asks what must be granted. */
  done(request: Request, by?: string): JobEvent {
    const answer = this.ask(request, undefined, undefined, by);
    if (answer.kind === 'refused') throw new Error(JSON.stringify(answer.refusal));
    return answer.value;
  }

  /** Asks what must be refused, and gives what was said. */
  refused(request: Request, on?: string): string {
    const before = this.job;
    const answer = this.ask(request, undefined, on);
    if (answer.kind === 'answer') throw new Error(`accepted: ${JSON.stringify(answer.value.fact)}`);
    if (this.job !== before) throw new Error('a refused command changed the job');
    const { what, where, remedy } = answer.refusal;
    if (remedy === '') throw new Error('a refusal without a remedy');
    return `${where} | ${what} | ${remedy}`;
  }

  get open(): OpenJob {
    if (this.job.kind !== 'open') throw new Error(`the job is ${this.job.kind}`);
    return this.job;
  }

  read(place: string, text: string, axis = ''): JobEvent {
    const pump = place.startsWith('pump');
    return this.done({
      kind: 'take reading',
      cell: { place, characteristic: pump ? 'pump-depth' : 'main-journal-diameter', plane: '', axis },
      typed: mm(text),
      instrument: pump ? depthGauge.name : micrometer.name,
    });
  }
}

/** A bench with the engine booked in and its instruments brought; another engine type where the test is of one. */
export const bookedIn = (engineType = booking.engineType): Bench => {
  const bench = new Bench();
  bench.done({ ...booking, engineType });
  bench.done({ kind: 'bring instrument', instrument: micrometer });
  bench.done({ kind: 'bring instrument', instrument: depthGauge });
  return bench;
};

/** As `bookedIn`, with every journal read and sound. */
export const measured = (engineType?: string, journal = '49.975'): Bench => {
  const bench = bookedIn(engineType);
  for (const place of ['main.1', 'main.2'])
    for (const axis of ['vertical', 'horizontal']) bench.read(place, journal, axis);
  return bench;
};

/** A plan for sound journals: all put back but the shells, which come new with their carriage. */
export const plan: Extract<Request, { kind: 'choose plan' }> = {
  kind: 'choose plan',
  choices: [
    { slot: 'mains', option: 'mains:put back:standard:', says: 'put back', cents: 0 },
    {
      slot: 'main-shells',
      option: 'main-shells:replace:standard:Ashlar Parts',
      says: 'replace, standard',
      cents: 4000,
    },
    { slot: 'pumps@pump.1', option: 'pumps@pump.1:put back:standard:', says: 'put back', cents: 0 },
    { slot: 'pumps@pump.2', option: 'pumps@pump.2:put back:standard:', says: 'put back', cents: 0 },
  ],
  cents: 4600,
  days: 1,
  hours: 6000,
};

/** As `measured`, with the plan agreed. */
export const agreed = (engineType?: string, journal?: string): Bench => {
  const bench = measured(engineType, journal);
  bench.done(plan);
  bench.done({ kind: 'note agreement', name: 'W. Heron', how: 'by telephone' });
  return bench;
};
