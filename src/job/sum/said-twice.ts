/** @module Rule: a figure that the engine type says itself is not said again for a sum, where one day it would say another. */
import type { EngineType } from '../../engine/engine-type.ts';
import type { FilePath } from '../../engine/file-path.ts';
import { type Finding, wrong } from '../../engine/finding.ts';
import { readGiven } from '../../reckon/given.ts';
import type { Reckoning } from '../../reckon/reckoning.ts';
import { readEvents, type TimedEvent } from '../../reckon/tooth-shift.ts';
import { readFiringOrder } from '../../reckon/valve-clearance-order.ts';
import { engineText, spillText, valvesText } from './manual-text.ts';

/** Where an input's figure stands already: how the file is to take it, and what it says there. */
interface Said {
  readonly take: string;
  readonly where: string;
  readonly text: string;
}

const engineSays = (engine: EngineType, of: Parameters<typeof engineText>[1]): Said => ({
  take: `{ engine: ${of} }`,
  where: `the engine's ${of}`,
  text: engineText(engine, of),
});

const valvesSay = (engine: EngineType, of: Parameters<typeof valvesText>[1]): Said | undefined => {
  const text = valvesText(engine, of);
  return text === undefined
    ? undefined
    : { take: `{ valves: ${of} }`, where: `${of} under valve-setting`, text };
};

/** By the input's key; `margin` and `spill` mean this only in the sums named. */
const saidFor = (engine: EngineType, { name }: Reckoning, key: string): Said | undefined => {
  switch (key) {
    case 'stroke':
    case 'rod':
    case 'pin-offset':
    case 'firing-order':
      return engineSays(engine, key);
    case 'inlet-opens':
    case 'inlet-closes':
    case 'exhaust-opens':
    case 'exhaust-closes':
      return valvesSay(engine, key);
    case 'margin':
      return name === 'valve-clearance-order' ? valvesSay(engine, 'rest') : undefined;
    case 'events':
      return name === 'tooth-shift' ? valvesSay(engine, 'events') : undefined;
    case 'spill': {
      const text = spillText(engine);
      return text === undefined
        ? undefined
        : { take: '{ pumps: spill }', where: 'the check of pump-timing', text };
    }
    default:
      return undefined;
  }
};

const eventsOf = (text: string): readonly TimedEvent[] => {
  const events = readEvents(text);
  return events.kind === 'answer' ? events.value : [];
};

/** Of events, those that the valves' setting has by the same name; undefined where there are none. */
const sameEvents = (text: string, said: string): boolean | undefined => {
  const known = new Map(eventsOf(said).map(({ name, at }) => [name, at]));
  const shared = eventsOf(text).filter(({ name }) => known.has(name));
  return shared.length === 0 ? undefined : shared.every(({ name, at }) => known.get(name) === at);
};

const sameOrder = (text: string, said: string): boolean => {
  const [one, other] = [readFiringOrder(text), readFiringOrder(said)];
  return one.kind === 'answer' && other.kind === 'answer' && one.value.join() === other.value.join();
};

/** Whether both say the same; undefined where they do not speak of one thing. */
const same = ({ inputs }: Reckoning, key: string, text: string, said: string): boolean | undefined => {
  const input = inputs.find((one) => one.key === key);
  if (input?.kind !== 'quantity') return key === 'events' ? sameEvents(text, said) : sameOrder(text, said);
  const [one, other] = [readGiven(key, text, input.dimension), readGiven(key, said, input.dimension)];
  return (
    one.kind === 'answer' && other.kind === 'answer' && Math.abs(one.value.value - other.value.value) < 1e-9
  );
};

/** What is wrong with a figure given to a sum that the engine type says elsewhere. */
export const saidTwice = (
  engine: EngineType,
  reckoning: Reckoning,
  key: string,
  text: string,
  path: FilePath,
): readonly Finding[] => {
  const said = saidFor(engine, reckoning, key);
  const agree = said && same(reckoning, key, text, said.text);
  if (said === undefined || agree === undefined) return [];
  return [
    wrong(
      path,
      agree
        ? `${key} repeats ${said.where}, which says ${said.text}`
        : `${key} is given as ${text}, against ${said.where}, which says ${said.text}`,
      `${agree ? '' : 'compare both with the manual, and '}take it from there: ${key}: ${said.take}`,
    ),
  ];
};
