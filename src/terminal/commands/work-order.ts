/** @module `endfloat work-order`: in which order an engine is stripped and built, and what it takes to reach a place. */
import type { EngineType, Operation } from '../../engine/engine-type.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { fewestChanges } from '../../work/fewest-changes.ts';
import { openNow } from '../../work/open-now.ts';
import { orderOf } from '../../work/order.ts';
import { precedenceOf } from '../../work/precedence.ts';
import { type Reach, reach } from '../../work/reach.ts';
import { inShifts } from '../../work/shifts.ts';
import { sideBySide } from '../../work/side-by-side.ts';
import { type Given, lastValue, type Outcome, type TerminalCommand } from '../command.ts';
import { counted } from '../counted.ts';
import { engineOnFile, notUsable } from '../engine-file.ts';
import { didYouMean } from '../nearest.ts';
import { plain } from '../plain.ts';
import {
  changesText,
  inShiftsText,
  nowText,
  operationTable,
  reachText,
  shiftsText,
} from '../work-order-text.ts';

const where = 'endfloat work-order';

/** Pairs of options that ask for two different things. */
const apart = [
  ['strip', 'build'],
  ['to', 'strip'],
  ['to', 'build'],
  ['to', 'now'],
  ['to', 'fewest-changes'],
  ['fitters', 'fewest-changes'],
  ['fitters', 'now'],
  ['fitters', 'to'],
  ['now', 'fewest-changes'],
  ['shift', 'fewest-changes'],
  ['shift', 'fitters'],
  ['shift', 'now'],
  ['shift', 'to'],
] as const;

const isGiven = ({ switches, values }: Given, option: string): boolean =>
  switches.has(option) || values.has(option);

const unfit = (given: Given): Answer<undefined> => {
  const pair = apart.find((both) => both.every((option) => isGiven(given, option)));
  if (pair) return refuse(`--${pair[0]} and --${pair[1]} do not go together`, where, 'write one of them');
  if (isGiven(given, 'away') && !isGiven(given, 'now'))
    return refuse('--away says nothing without --now', where, 'write --now too');
  return answer(undefined);
};

/** Names behind an option, each of them known. */
const namesOf = (
  given: Given,
  option: string,
  what: string,
  known: readonly string[],
): Answer<ReadonlySet<string>> => {
  const names = (given.values.get(option) ?? []).flatMap((text) => text.split(','));
  const unknown = names.find((name) => !known.includes(name));
  if (unknown === undefined) return answer(new Set(names));
  const listed = `the engine type knows ${known.slice(0, 8).join(', ')}${known.length > 8 ? ' …' : ''}`;
  return refuse(
    `there is no ${what} ${plain(unknown).slice(0, 64)}`,
    `--${option}`,
    didYouMean(unknown, known, listed),
  );
};

const phasesOf = ({ switches }: Given): readonly Operation['phase'][] => {
  if (switches.has('strip')) return ['strip'];
  return switches.has('build') ? ['build', 'set'] : ['strip', 'build', 'set', 'run'];
};

const named = (operations: readonly Operation[]): readonly string[] => operations.map(({ name }) => name);

const reachJson = (found: Reach) => ({
  strip: found.strip,
  off: found.off,
  spoilt: found.spoilt.map(({ item, count }) => ({ name: item.name, title: item.title, count })),
  renew: found.renew.map(({ name, title }) => ({ name, title })),
  again: found.again,
  prove: found.prove,
});

const fittersOf = (text: string): Answer<number> =>
  /^[1-4]$/.test(text)
    ? answer(Number(text))
    : refuse(
        `${plain(text).slice(0, 20)} is no number of fitters`,
        '--fitters',
        'write a number from 1 to 4',
      );

const minutesOf = (text: string): Answer<number> =>
  /^\d{1,4}$/.test(text) && Number(text) > 0
    ? answer(Number(text))
    : refuse(
        `${plain(text).slice(0, 20)} is no length of a shift`,
        '--shift',
        'write its minutes as a whole number, 480 for eight hours',
      );

const reached = (engine: EngineType, place: string, done: ReadonlySet<string>): Answer<Outcome> => {
  const found = reach(engine, place, done);
  return found.kind === 'refused'
    ? found
    : answer({ text: reachText(found.value), json: reachJson(found.value) });
};

const now = (engine: EngineType, given: Given, done: ReadonlySet<string>): Answer<Outcome> => {
  const parts = [...engine.operations.values()].flatMap(({ removes, fits }) => [...removes, ...fits]);
  const known = [...new Set([...engine.placeKinds.keys(), ...parts])];
  const away = namesOf(given, 'away', 'part', known);
  if (away.kind === 'refused') return away;
  const phases = phasesOf(given);
  const { open, waiting } = openNow(precedenceOf(engine.operations), done, away.value);
  const shown = {
    open: open.filter(({ phase }) => phases.includes(phase)),
    waiting: waiting.filter(({ operation }) => phases.includes(operation.phase)),
  };
  return answer({
    text: nowText(shown),
    json: {
      open: shown.open,
      waiting: shown.waiting.map((one) => ({ operation: one.operation.name, away: one.away })),
    },
  });
};

const ordered = (engine: EngineType, given: Given, done: ReadonlySet<string>): Answer<Outcome> => {
  const phases = phasesOf(given);
  const work = precedenceOf(
    engine.operations,
    ({ name, phase }) => phases.includes(phase) && !done.has(name),
  );
  const hands = lastValue(given, 'fitters');
  if (hands !== undefined) {
    const fitters = fittersOf(hands);
    if (fitters.kind === 'refused') return fitters;
    const found = sideBySide(work, fitters.value);
    if (found.kind === 'refused') return found;
    const shifts = found.value.shifts.map(({ operation, ...shift }) => ({
      operation: operation.name,
      ...shift,
    }));
    return answer({ text: shiftsText(found.value), json: { ...found.value, shifts } });
  }
  const shift = lastValue(given, 'shift');
  if (shift !== undefined) {
    const minutes = minutesOf(shift);
    if (minutes.kind === 'refused') return minutes;
    const found = inShifts(work, minutes.value);
    if (found.kind === 'refused') return found;
    const { shifts } = found.value;
    return answer({
      text: inShiftsText(found.value, minutes.value),
      json: { ...found.value, shifts: shifts.map((one) => ({ ...one, operations: named(one.operations) })) },
    });
  }
  if (given.switches.has('fewest-changes')) {
    const found = fewestChanges(work);
    return answer({ text: changesText(found), json: { ...found, order: named(found.order) } });
  }
  const order = orderOf(work);
  const total = order.reduce((sum, { minutes }) => sum + (minutes ?? 0), 0);
  const timed = total === 0 ? '' : `, ${total} minutes where they are said`;
  return answer({
    text: `${operationTable(order)}\n${counted(order.length, 'operation')}${timed}`,
    json: { order },
  });
};

export const workOrder: TerminalCommand = {
  name: 'work-order',
  summary: 'say in which order an engine is stripped and built, and what it takes to reach a place',
  usage: [
    'work-order ENGINE-FILE [--strip | --build]',
    'work-order ENGINE-FILE --to PLACE [--done OPERATION,…]',
    'work-order ENGINE-FILE [--strip | --build] --fewest-changes',
    'work-order ENGINE-FILE [--strip | --build] --fitters 2',
    'work-order ENGINE-FILE [--strip | --build] --shift 480',
    'work-order ENGINE-FILE --now [--done OPERATION,…] [--away PART,…]',
  ],
  about:
    'The order keeps to what the engine type puts before what. --to names the least that must come off, the parts that are spoilt by it, and what is fitted and set again.\n--fewest-changes turns the engine on its stand as seldom as can be and then fetches the fewest special tools; --fitters shares the work out so that it is done soonest; --shift divides it into the fewest shifts, no operation cut in two. Each says whether that is proved to be the best, or what no order can do with less than.',
  options: [
    { name: 'strip', says: 'the strip alone' },
    { name: 'build', says: 'building and setting alone' },
    { name: 'to', value: 'PLACE', says: 'what must come off to reach it: main.2, or main for all of them' },
    { name: 'fewest-changes', says: 'turn the engine and fetch special tools as seldom as can be' },
    { name: 'fitters', value: 'NUMBER', says: 'share the work among so many, to be done soonest' },
    { name: 'shift', value: 'MINUTES', says: 'divide the work into the fewest shifts of so long' },
    { name: 'now', says: 'what can be done now' },
    { name: 'done', value: 'OPERATION', many: true, says: 'take it as done; several with commas' },
    { name: 'away', value: 'PART', many: true, says: 'with --now: a part that is not in the shop' },
  ],
  words: [1, 1],
  run: async (given) => {
    const fault = unfit(given);
    if (fault.kind === 'refused') return fault;
    const read = await engineOnFile(given.words[0] ?? '', given.world);
    if (read.kind === 'refused') return read;
    const { engine, troubles } = read.value;
    if (engine === undefined || troubles.some(({ weight }) => weight === 'error'))
      return answer(notUsable(read.value));
    if (engine.operations.size === 0)
      return refuse(
        'it has no operations',
        plain(engine.title),
        'put them into the engine type under `operations`',
      );
    const done = namesOf(given, 'done', 'operation', [...engine.operations.keys()]);
    if (done.kind === 'refused') return done;
    const place = lastValue(given, 'to');
    if (place !== undefined) return reached(engine, place, done.value);
    return given.switches.has('now') ? now(engine, given, done.value) : ordered(engine, given, done.value);
  },
};
