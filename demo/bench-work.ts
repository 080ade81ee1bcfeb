/** @module What recurs in every story: booking in, bringing the instruments, reading from a file, signing operations. */
import type { Ask, EngineType, Operation } from '../src/engine/engine-type.ts';
import { answerKey, askedOf } from '../src/job/asked.ts';
import type { RequestOf } from '../src/job/command.ts';
import { lackingAnswers } from '../src/job/hold/asks.ts';
import { homesAt } from '../src/job/hold/home.ts';
import { operationsIn } from '../src/job/scope.ts';
import { tighteningsOf } from '../src/job/tighten/tightening.ts';
import { readReadings } from '../src/measure/import-readings.ts';
import { amountOf } from '../src/quantity/typed.ts';
import { textOf } from './files.ts';
import { instruments } from './instruments.ts';
import { noteSums } from './noted-sums.ts';
import { fitter, foreman, shop } from './people.ts';
import type { Story } from './story.ts';

type Booking = Pick<
  RequestOf<'book in'>,
  'number' | 'owner' | 'plate' | 'hoursRun' | 'complaint' | 'hoursWanted' | 'daysWanted'
> & {
  /** Instead of the file's own text. */
  readonly engineType?: string;
};

export const bookIn = async (story: Story, engineFile: string, booking: Booking): Promise<void> => {
  story.tell(foreman, 0, {
    kind: 'book in',
    engineType: await textOf(engineFile),
    shop,
    currency: 'crowns',
    conformance: 0.95,
    ...booking,
  });
};

/** The instruments that the engine type asks for, from the register. */
export const bringInstruments = (story: Story, names: readonly string[]): void => {
  for (const instrument of instruments.filter(({ name }) => names.includes(name)))
    story.tell(fitter, 1, { kind: 'bring instrument', instrument });
};

const readIn = async (file: string, engine: EngineType) => {
  const { readings, troubles } = readReadings(await textOf(file), engine, instruments);
  if (troubles.length > 0)
    throw new Error(`${file}: ${troubles.map(({ what, where }) => `${what} (${where})`).join('; ')}`);
  return readings;
};

/** Takes the readings of a file one after another, those of the characteristics wanted. */
export const readFrom = async (
  story: Story,
  by: string,
  file: string,
  wanted: (characteristic: string) => boolean = () => true,
): Promise<void> => {
  for (const { cell, typed, instrument, temperature } of await readIn(file, story.job().sheet.engine))
    if (wanted(cell.characteristic))
      story.tell(by, 2, {
        kind: 'take reading',
        cell,
        typed,
        instrument,
        ...(temperature && { temperature }),
      });
};

/** The first torque wrench at the bench that reaches a figure. */
const wrenchFor = (story: Story, torque: number): string | undefined =>
  [...story.job().sheet.instruments.values()].find(({ kind, range }) => {
    const [least, greatest] = [amountOf(range.least, 'torque'), amountOf(range.greatest, 'torque')];
    return (
      kind === 'torque wrench' &&
      least.kind === 'answer' &&
      greatest.kind === 'answer' &&
      least.value <= torque &&
      torque <= greatest.value
    );
  })?.name;

/** Pulls every joint of an operation, stage by stage and bolt by bolt in its order. */
export const tightenAll = (story: Story, by: string, operation: Operation): void => {
  for (const { fastener, place, stages } of tighteningsOf(story.job(), operation))
    for (const [at, { stage, left }] of stages.entries()) {
      if (left.length === 0) continue;
      const wrench = stage.kind === 'torque' ? wrenchFor(story, stage.torque) : undefined;
      story.tell(by, 4, {
        kind: 'tighten stage',
        operation: operation.name,
        fastener: fastener.name,
        place: place.id,
        stage: at,
        bolts: left,
        threadState: fastener.threadState,
        ...(wrench !== undefined && { wrench }),
        ...(fastener.stretch && at === 0 && { boltsAre: 'new' as const }),
        note: '',
      });
    }
};

/** Scans each part that an operation fits at its own place. */
const confirmHomes = (story: Story, by: string, operation: Operation): void => {
  for (const { tag, place, state } of homesAt(story.job(), operation))
    if (state.kind === 'to go back')
      story.tell(by, 1, { kind: 'home part', part: tag.id, place, operation: operation.name });
};

/** What is counted in the demo, by the name of what asks for it; where two counts balance, the other is taken. */
const counted: Readonly<Record<string, number>> = { 'plugs-out': 7, shims: 2, 'cover-shims': 3 };

const written: Readonly<Record<string, string>> = {
  oil: 'black, no water, a little bright dust',
  gasket: 'whole, sooted between two bores',
  shells: 'in its notch, worn on the loaded half',
  timing: 'mark to mark',
  washers: 'one came out of every pocket',
  air: 'Wilmot Tansy, with the plate at the intake',
  'oil-shown': '1.8 bar',
};

/** What an answer says beside yes or a number. */
const saidOf = ({ name, answer }: Ask): string => {
  if (answer === 'seen' || answer === 'count') return '';
  if (answer === 'reading') return 'no gauge to hand; felt by hand, nothing loose';
  return written[name] ?? (answer === 'picture' ? 'drawn on the job card' : 'nothing out of the way');
};

/** Answers what an operation asks and what is not answered by a reading or a picture. */
const answerAll = (story: Story, by: string, operation: Operation): void => {
  for (const ask of operation.asks) {
    if (lackingAnswers(story.job(), { ...operation, asks: [ask] }).length === 0) continue;
    for (const { place } of askedOf(story.job(), { ...operation, asks: [ask] })) {
      const like = ask.like && story.job().answers.get(answerKey(ask.like))?.count;
      story.tell(ask.secondPerson ? foreman : by, 1, {
        kind: 'answer ask',
        operation: operation.name,
        ask: ask.name,
        ...(place !== undefined && { place }),
        good: true,
        says: saidOf(ask),
        ...(ask.answer === 'count' && { count: like ?? counted[ask.name] ?? 1 }),
      });
    }
  }
};

/**
 * Confirms homes, notes sums, tightens, answers what is asked and signs the operations of some parts of the job, in the order of
 * the engine type.
 *
 * @param last  the one to stop after; left out, all of them
 */
export const signAll = (
  story: Story,
  by: string,
  phases: readonly Operation['phase'][],
  last?: string,
): void => {
  for (const operation of operationsIn(story.job())) {
    if (!phases.includes(operation.phase) || story.job().done.has(operation.name)) continue;
    confirmHomes(story, by, operation);
    noteSums(story, by, operation.name);
    tightenAll(story, by, operation);
    answerAll(story, by, operation);
    story.tell(by, 35, { kind: 'do operation', operation: operation.name, note: '' });
    if (operation.name === last) return;
  }
};

/** Whether the strip asks for a characteristic before it takes apart what it is read on. */
export const askedAsFound =
  (story: Story) =>
  (characteristic: string): boolean =>
    [...story.job().sheet.engine.operations.values()].some(
      ({ phase, asks }) => phase === 'strip' && asks.some(({ reads }) => reads === characteristic),
    );
