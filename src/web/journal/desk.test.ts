/** @module Checks of one job on a bench: answered at once, sent in order, the store's events having the last word. */
import { describe, expect, it } from 'vitest';
import engineType from '../../../demo/engines/mudlark-1.yaml?raw';
import { instruments } from '../../../demo/instruments.ts';
import type { Command, Request } from '../../job/command.ts';
import { decide } from '../../job/decide.ts';
import type { JobEvent } from '../../job/event.ts';
import { replay } from '../../job/evolve.ts';
import { entryOrder } from '../../measure/scheme.ts';
import { type DeskKeeper, type DeskPorts, deskKeeper } from './desk.ts';
import { waitingLine } from './waiting-line.ts';
import type { Heard } from './workshop.ts';

const booking: Request = {
  kind: 'book in',
  number: 'J-7',
  engineType,
  owner: 'Gullwick Sluice Company',
  plate: '',
  hoursRun: { text: '100', unit: 'h' },
  complaint: '',
  currency: 'crowns',
  conformance: 0.95,
};

/** Storage as a browser has it, in memory. */
const memory = (): Storage => {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    clear: () => kept.clear(),
    getItem: (key) => kept.get(key) ?? null,
    key: (index) => [...kept.keys()][index] ?? null,
    removeItem: (key) => kept.delete(key),
    setItem: (key, value) => kept.set(key, value),
  };
};

/** A store that decides as the server does, and can be unplugged. */
const fakeStore = () => {
  const events: JobEvent[] = [];
  const store = {
    events,
    plugged: true,
    /** Unplugged after it has written, before it answers: the worst moment. */
    losesAnswers: false,
    refuses: (_: Command): boolean => false,
    take: (command: Command): Heard | undefined => {
      if (events.some(({ id }) => id === command.id)) return undefined;
      if (store.refuses(command))
        return { kind: 'refused', refusal: { what: 'no', where: 'store', remedy: 'ask again' } };
      const decided = decide(replay(events), command);
      if (decided.kind === 'refused') return decided;
      events.push(decided.value);
      return undefined;
    },
    after: (sequence: number): Heard => ({ kind: 'events', events: events.slice(sequence) }),
  };
  return store;
};

/** Ids and times counted, timers turned by hand. */
const bench = (store: ReturnType<typeof fakeStore>, name: string, storage = memory()) => {
  let count = 0;
  let timer: (() => void) | undefined;
  const gone: Heard = { kind: 'no answer' };
  const ports: DeskPorts = {
    workshop: {
      eventsAfter: async (_, after) => (store.plugged ? store.after(after) : gone),
      send: async (command, after) => {
        if (!store.plugged) return gone;
        const heard = store.take(command);
        if (store.losesAnswers) return gone;
        return heard ?? store.after(after);
      },
    },
    line: waitingLine(storage),
    cache: { read: async () => [], keep: async () => {}, drop: async () => {} },
    sign: () => {
      count += 1;
      const id = `01a00000-${name}-7000-8000-${String(count).padStart(12, '0')}`;
      return { id, at: `2026-05-04T08:00:${String(count).padStart(2, '0')}Z`, actor: name, bench: name };
    },
    after: (_, work) => {
      timer = work;
      return () => {
        timer = undefined;
      };
    },
  };
  const keeper = deskKeeper('job-7', ports);
  /** Lets everything that is under way come to rest. */
  const turn = async () => {
    const work = timer;
    timer = undefined;
    work?.();
    for (let step = 0; step < 200; step += 1) await Promise.resolve();
  };
  return { keeper, turn, storage };
};

const micrometer = instruments.find(({ name }) => name === 'mic-25-50');
if (!micrometer) throw new Error('the register lacks the micrometer of this test');

const read = (keeper: DeskKeeper, text: string) => {
  const { job } = keeper.desk();
  if (job.kind !== 'open') throw new Error('the job is not open');
  const [cell] = entryOrder(job.sheet.engine);
  if (!cell) throw new Error('there is nothing to measure');
  return keeper.ask({ kind: 'take reading', cell, typed: { text, unit: 'mm' }, instrument: 'mic-25-50' });
};

const begun = async (name = 'aaaa') => {
  const store = fakeStore();
  const one = bench(store, name);
  await one.keeper.open();
  one.keeper.ask(booking);
  one.keeper.ask({ kind: 'bring instrument', instrument: micrometer });
  await one.turn();
  return { store, ...one };
};

describe('a job on this bench', () => {
  it('answers at once and sends afterwards, in order', async () => {
    const { store, keeper, turn } = await begun();
    read(keeper, '41.960');
    read(keeper, '41.961');
    expect(keeper.desk().waiting).toBe(2);
    expect(store.events).toHaveLength(2);
    const shown = keeper.desk().job;
    await turn();
    expect(keeper.desk().waiting).toBe(0);
    expect(store.events.map(({ fact }) => fact.kind)).toEqual([
      'booked in',
      'instrument brought',
      'reading taken',
      'reading taken',
    ]);
    // Nothing is drawn again when the store says what was foreseen.
    expect(keeper.desk().job).toBe(shown);
    expect(keeper.desk().events).toEqual(store.events);
  });

  it('refuses at once what the core refuses, and sends nothing', async () => {
    const { store, keeper, turn } = await begun();
    expect(keeper.ask({ kind: 'note agreement', name: 'A', how: '' }).kind).toBe('refused');
    await turn();
    expect(store.events).toHaveLength(2);
    expect(keeper.desk().waiting).toBe(0);
  });

  it('keeps what it could not send through a page loaded anew', async () => {
    const { store, keeper, turn, storage } = await begun();
    store.plugged = false;
    read(keeper, '41.960');
    await turn();
    expect(keeper.desk()).toMatchObject({ waiting: 1, reach: 'away' });
    store.plugged = true;
    const anew = bench(store, 'bbbb', storage);
    await anew.keeper.open();
    expect(anew.keeper.desk().waiting).toBe(0);
    expect(store.events).toHaveLength(3);
    expect(anew.keeper.desk().events).toEqual(store.events);
  });

  it('counts a command once though its answer was lost and it is sent again', async () => {
    const { store, keeper, turn } = await begun();
    store.losesAnswers = true;
    read(keeper, '41.960');
    await turn();
    expect(store.events).toHaveLength(3);
    expect(keeper.desk().waiting).toBe(1);
    store.losesAnswers = false;
    await turn();
    expect(store.events).toHaveLength(3);
    expect(keeper.desk()).toMatchObject({ waiting: 0, reach: 'joined' });
  });

  it('follows the store where another bench was first', async () => {
    const { store, keeper, turn } = await begun();
    const two = bench(store, 'cccc');
    await two.keeper.open();
    read(two.keeper, '41.970');
    await two.turn();
    read(keeper, '41.960');
    await turn();
    expect(store.events.slice(2).map(({ actor }) => actor)).toEqual(['cccc', 'aaaa']);
    expect(keeper.desk().events).toEqual(store.events);
    const { job } = keeper.desk();
    expect(job.head.hash).toBe(store.events.at(-1)?.hash);
  });

  it('keeps what the store would not take until it has been read', async () => {
    const { store, keeper, turn } = await begun();
    store.refuses = ({ request }) => request.kind === 'take reading';
    read(keeper, '41.960');
    await turn();
    expect(keeper.desk().waiting).toBe(0);
    const [turned] = keeper.desk().turnedBack;
    expect(turned?.refusal.remedy).toBe('ask again');
    const { job } = keeper.desk();
    expect(job.kind === 'open' && job.sheet.readings.size).toBe(0);
    if (turned) keeper.forget(turned);
    expect(keeper.desk().turnedBack).toEqual([]);
  });

  it('begins again where the store is another than it was, and loses nothing of its own', async () => {
    const { store, keeper, turn } = await begun();
    const other = await begun('dddd');
    read(other.keeper, '41.950');
    await other.turn();
    store.events.splice(0, store.events.length, ...other.store.events);
    read(keeper, '41.940');
    await turn();
    expect(keeper.desk()).toMatchObject({ waiting: 0, events: store.events });
    expect(store.events.map(({ actor }) => actor)).toEqual(['dddd', 'dddd', 'dddd', 'aaaa']);
  });

  it('begins again, too, where the store knows less than this bench', async () => {
    const { store, keeper, turn } = await begun();
    read(keeper, '41.955');
    read(keeper, '41.956');
    await turn();
    const other = await begun('dddd');
    store.events.splice(0, store.events.length, ...other.store.events);
    read(keeper, '41.940');
    await turn();
    expect(keeper.desk()).toMatchObject({ waiting: 0, events: store.events });
    expect(store.events).toHaveLength(3);
  });
});
