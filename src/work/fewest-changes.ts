/** @module The order of work with the fewest turns of the engine on its stand and, among those, the fewest special tools fetched. */
import type { Operation } from '../engine/engine-type.ts';
import { leastFirst } from './least.ts';
import { orderOf } from './order.ts';
import type { Precedence } from './precedence.ts';
import { type SettingUp, settingUp } from './setting-up.ts';

export interface FewestChanges {
  readonly order: readonly Operation[];
  /** How often the engine is turned; how it lies at first costs nothing. */
  readonly turns: number;
  /** How often a special tool is fetched that the operation before did not leave in hand. */
  readonly fetches: number;
  /** No order has fewer turns than this, nor, with as many turns, fewer fetches. */
  readonly atLeast: { readonly turns: number; readonly fetches: number };
  /** Whether this order is proved to be among the best. */
  readonly proved: boolean;
}

/** How far the work has come: what is done, how the engine lies, what is in hand, and what it took. */
interface Stage {
  readonly done: Uint8Array;
  readonly count: number;
  readonly stand: number;
  readonly tools: number;
  readonly spent: number;
  readonly least: number;
  readonly last: readonly number[];
  readonly from?: Stage;
}

const traced = (stage: Stage): readonly number[] => {
  const pieces: (readonly number[])[] = [];
  for (let at: Stage | undefined = stage; at !== undefined; at = at.from) pieces.push(at.last);
  return pieces.reverse().flat();
};

/** What the changes along an order sum up to. */
const changesAlong = (order: readonly number[], { asks, cost }: SettingUp): number => {
  let held = -1;
  let sum = 0;
  for (const at of order) {
    const ask = asks[at] ?? -1;
    if (ask < 0) continue;
    sum += cost(held, ask);
    held = ask;
  }
  return sum;
};

const keyOf = ({ done, stand, tools }: Stage): string => {
  let key = `${stand},${tools},`;
  for (let at = 0; at < done.length; at += 15) {
    let bits = 0;
    for (let bit = 0; bit < 15; bit += 1) bits = bits * 2 + (done[at + bit] ?? 0);
    key += String.fromCharCode(bits);
  }
  return key;
};

interface Search {
  readonly start: () => Stage;
  /** The stages that one change leads to, those that set the same up only once. */
  readonly next: (stage: Stage) => readonly Stage[];
}

/** @param turn  what a turn weighs against a fetch: more than all fetches together */
const searchOf = (work: Precedence, stands: SettingUp, tools: SettingUp, turn: number): Search => {
  const free = (done: Uint8Array): readonly number[] => {
    const found: number[] = [];
    for (let at = 0; at < done.length; at += 1)
      if (done[at] === 0 && (work.before[at] ?? []).every((one) => done[one] === 1)) found.push(at);
    return found;
  };
  const still = ({ left, chains, cost }: SettingUp, held: number, done: Uint8Array): number => {
    let most = left(held, (at) => done[at] === 1);
    for (const at of free(done))
      for (const [ask, dear] of chains[at] ?? []) most = Math.max(most, dear + cost(held, ask));
    return most;
  };
  /** Does at once whatever is free and changes nothing: no order is the worse for it. */
  const settled = (begun: Omit<Stage, 'least' | 'from'>, from?: Stage): Stage => {
    const { done, stand, tools: held, spent } = begun;
    const last = [...begun.last];
    const fits = (at: number): boolean => {
      const [lie, asked] = [stands.asks[at] ?? -1, tools.asks[at] ?? -1];
      return (lie < 0 || lie === stand) && (asked < 0 || asked === held);
    };
    for (let ready = free(done).filter(fits); ready.length > 0; ready = free(done).filter(fits))
      for (const at of ready) {
        done[at] = 1;
        last.push(at);
      }
    const count = begun.count + last.length - begun.last.length;
    const least = spent + turn * still(stands, stand, done) + still(tools, held, done);
    return { ...begun, count, last, least, ...(from && { from }) };
  };
  const done = (stage: Stage, at: number): Stage => {
    const lie = stands.asks[at] ?? -1;
    const asked = tools.asks[at] ?? -1;
    const changed = stage.done.slice();
    changed[at] = 1;
    return settled(
      {
        done: changed,
        count: stage.count + 1,
        stand: lie < 0 ? stage.stand : lie,
        tools: asked < 0 ? stage.tools : asked,
        spent:
          stage.spent +
          (lie < 0 ? 0 : turn * stands.cost(stage.stand, lie)) +
          (asked < 0 ? 0 : tools.cost(stage.tools, asked)),
        last: [at],
      },
      stage,
    );
  };
  return {
    start: () =>
      settled({
        done: new Uint8Array(work.operations.length),
        count: 0,
        stand: -1,
        tools: -1,
        spent: 0,
        last: [],
      }),
    next: (stage) => {
      const seen = new Set<string>();
      return free(stage.done).flatMap((at) => {
        const key = `${stands.asks[at]} ${tools.asks[at]}`;
        if (seen.has(key)) return [];
        seen.add(key);
        return [done(stage, at)];
      });
    },
  };
};

/** A good order soon: the most promising stages only, level by level. */
const quickly = (search: Search, size: number, width: number): Stage | undefined => {
  let best: Stage | undefined;
  for (let level = [search.start()]; level.length > 0; ) {
    for (const stage of level)
      if (stage.count === size && stage.spent < (best?.spent ?? Infinity)) best = stage;
    const kept = new Map<string, Stage>();
    for (const stage of level.filter(({ count }) => count < size).flatMap((one) => search.next(one))) {
      if (stage.least >= (best?.spent ?? Infinity)) continue;
      const key = keyOf(stage);
      if (stage.spent < (kept.get(key)?.spent ?? Infinity)) kept.set(key, stage);
    }
    level = [...kept.values()].sort((a, b) => a.least - b.least || b.count - a.count).slice(0, width);
  }
  return best;
};

/** Best first, until the best is proved or so many stages were looked at. */
const thoroughly = (
  search: Search,
  size: number,
  known: Stage | undefined,
  stages: number,
): { readonly best: Stage | undefined; readonly atLeast: number } => {
  let best = known;
  const ahead = leastFirst<Stage>((a, b) => a.least - b.least || b.count - a.count);
  const cheapest = new Map<string, number>();
  const put = (stage: Stage): void => {
    if (stage.least >= (best?.spent ?? Infinity)) return;
    const key = keyOf(stage);
    if ((cheapest.get(key) ?? Infinity) <= stage.spent) return;
    cheapest.set(key, stage.spent);
    if (stage.count === size) best = stage;
    else ahead.put(stage);
  };
  put(search.start());
  for (let looked = 0; looked < stages; looked += 1) {
    const stage = ahead.take();
    if (stage === undefined || stage.least >= (best?.spent ?? Infinity))
      return { best, atLeast: best?.spent ?? 0 };
    for (const one of search.next(stage)) put(one);
  }
  return { best, atLeast: Math.min(best?.spent ?? Infinity, ahead.peek()?.least ?? Infinity) };
};

/**
 * The order with the fewest turns of the engine and then the fewest special tools fetched.
 *
 * Exact as long as the search ends within `stages`; beyond that the best order found, and a proved least.
 *
 * @param work    operations free of circles
 * @param stages  how many stages of the work may be looked at before it settles for a proved least
 */
export const fewestChanges = (work: Precedence, stages = 20_000): FewestChanges => {
  const size = work.operations.length;
  const index = new Map(work.operations.map(({ name }, at) => [name, at]));
  const backwards = orderOf(work)
    .map(({ name }) => index.get(name) ?? 0)
    .reverse();
  const { operations } = work;
  const lies = operations.map(({ stand }) => (stand === undefined ? [] : [stand]));
  const stands = settingUp(work, lies, true, backwards);
  const tools = settingUp(
    work,
    operations.map((operation) => operation.tools),
    false,
    backwards,
  );
  const turn = 1 + operations.reduce((sum, operation) => sum + operation.tools.length, 0);
  const search = searchOf(work, stands, tools, turn);
  const { best, atLeast } = thoroughly(search, size, quickly(search, size, 40), stages);
  const order = best === undefined ? [] : traced(best);
  const [turns, fetches] = [changesAlong(order, stands), changesAlong(order, tools)];
  return {
    order: order.flatMap((at) => operations[at] ?? []),
    turns,
    fetches,
    atLeast: { turns: Math.floor(atLeast / turn), fetches: atLeast % turn },
    proved: atLeast === turns * turn + fetches,
  };
};
