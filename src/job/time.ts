/** @module Time at operations: who was at what, how long, what interrupted them, and what remains by the engine type. */
import type { Operation } from '../engine/engine-type.ts';
import { minutesBetween } from '../quantity/moment.ts';
import type { OpenJob } from './job.ts';
import { operationsIn } from './scope.ts';

/** One person at one operation, without a break. */
export interface Spell {
  readonly operation: string;
  readonly by: string;
  readonly from: string;
  /** Left out while it runs. */
  readonly to?: string;
  /** What interrupted it; left out where it was signed or runs. */
  readonly why?: string;
}

export interface OperationTime {
  /** By the clock: people who were at it together count once. */
  readonly minutes: number;
  /** Of all people, added up. */
  readonly personMinutes: number;
  readonly people: readonly { readonly by: string; readonly minutes: number }[];
  readonly interruptions: readonly { readonly by: string; readonly at: string; readonly why: string }[];
  readonly running: readonly { readonly by: string; readonly from: string }[];
}

export interface Remaining {
  /** As the engine type says them, less what was spent; none scaled. */
  readonly minutes: number;
  readonly personMinutes: number;
  /** Operations that are not signed. */
  readonly operations: number;
  /** Of these, how many of which the engine type does not say how long they take. */
  readonly untold: number;
}

type Logged = Pick<OpenJob, 'sheet' | 'workLog' | 'handedOver'>;

/** Clocks of two benches differ: nothing ends before it began. */
const ended = (spell: Spell, to: string, why?: string): Spell => ({
  ...spell,
  to: minutesBetween(spell.from, to) < 0 ? spell.from : to,
  ...(why !== undefined && { why }),
});

/** Every spell, in the order in which they were begun. Nobody is at two things at once. */
export const spellsOf = ({ sheet, workLog, handedOver }: Logged): readonly Spell[] => {
  const spells: Spell[] = [];
  const endWhere = (which: (spell: Spell) => boolean, to: string, why?: string): void => {
    for (const [at, spell] of spells.entries())
      if (spell.to === undefined && which(spell)) spells[at] = ended(spell, to, why);
  };
  for (const { kind, operation, by, at, why, endedAt } of workLog) {
    const here = (spell: Spell): boolean => spell.operation === operation;
    const own = (spell: Spell): boolean => spell.by === by;
    switch (kind) {
      case 'begun': {
        if (spells.some((spell) => spell.to === undefined && here(spell) && own(spell))) break;
        endWhere(own, at, `went over to “${sheet.engine.operations.get(operation)?.title ?? operation}”`);
        spells.push({ operation, by, from: at });
        break;
      }
      case 'stopped':
        endWhere((spell) => here(spell) && own(spell), endedAt ?? at, why ?? '');
        break;
      case 'signed':
        endWhere(here, at);
        break;
      default:
        kind satisfies never;
    }
  }
  if (handedOver !== undefined) endWhere(() => true, handedOver.at);
  return spells;
};

/** What intervals cover together, in minutes. */
const covered = (intervals: readonly (readonly [from: string, to: string])[]): number => {
  let sum = 0;
  let end: string | undefined;
  for (const [from, to] of intervals.toSorted(([a], [b]) => minutesBetween(b, a))) {
    const begin = end === undefined || minutesBetween(end, from) > 0 ? from : end;
    sum += Math.max(0, minutesBetween(begin, to));
    if (end === undefined || minutesBetween(end, to) > 0) end = to;
  }
  return sum;
};

/** @param now  until when spells that run are counted; left out, they are not counted */
const timeOf = (spells: readonly Spell[], now: string | undefined): OperationTime => {
  const counted = spells.flatMap(({ by, from, to = now }) =>
    to === undefined || minutesBetween(from, to) < 0 ? [] : [{ by, from, to }],
  );
  const people = [...Map.groupBy(counted, ({ by }) => by)].map(([by, own]) => ({
    by,
    // Where two benches' clocks differ, one person's spells may overlap.
    minutes: covered(own.map(({ from, to }) => [from, to] as const)),
  }));
  return {
    minutes: covered(counted.map(({ from, to }) => [from, to] as const)),
    personMinutes: people.reduce((sum, { minutes }) => sum + minutes, 0),
    people,
    interruptions: spells.flatMap(({ by, to, why }) =>
      to === undefined || why === undefined ? [] : [{ by, at: to, why }],
    ),
    running: spells.flatMap(({ by, from, to }) => (to === undefined ? [{ by, from }] : [])),
  };
};

/**
 * Time by operation, of those at which anybody was.
 *
 * @param now  until when spells that run are counted, RFC 3339; left out, they are not
 * @returns minutes by operation
 */
export const timesOf = (job: Logged, now?: string): ReadonlyMap<string, OperationTime> =>
  new Map(
    [...Map.groupBy(spellsOf(job), ({ operation }) => operation)].map(([name, spells]) => [
      name,
      timeOf(spells, now),
    ]),
  );

export interface WorkTime {
  readonly spent: Pick<OperationTime, 'minutes' | 'personMinutes'>;
  readonly remaining: Remaining;
}

/** What was spent on the operations of some phases, and what remains of those that this job takes in. */
export const workTimeOf = (job: OpenJob, phases: readonly Operation['phase'][], now?: string): WorkTime => {
  const times = timesOf(job, now);
  const all = [...job.sheet.engine.operations.values()].filter(({ phase }) => phases.includes(phase));
  const spent = all.flatMap(({ name }) => times.get(name) ?? []);
  const left = operationsIn(job).filter(({ name, phase }) => phases.includes(phase) && !job.done.has(name));
  const ahead = left.flatMap(({ name, minutes, people }) => {
    if (minutes === undefined) return [];
    const still = Math.max(0, minutes - (times.get(name)?.minutes ?? 0));
    return [{ still, people }];
  });
  return {
    spent: {
      minutes: spent.reduce((sum, { minutes }) => sum + minutes, 0),
      personMinutes: spent.reduce((sum, { personMinutes }) => sum + personMinutes, 0),
    },
    remaining: {
      minutes: ahead.reduce((sum, { still }) => sum + still, 0),
      personMinutes: ahead.reduce((sum, { still, people }) => sum + still * people, 0),
      operations: left.length,
      untold: left.length - ahead.length,
    },
  };
};
