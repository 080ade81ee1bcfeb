/** @module Runs one command line: finds the command, sorts out what was typed, prints its outcome, returns the exit code. */
import { refusalText } from '../quantity/refusal.ts';
import { Refused } from '../store/refused.ts';
import type { Outcome, TerminalCommand } from './command.ts';
import { commands } from './commands.ts';
import { sortOut } from './given.ts';
import { commandHelp, programHelp } from './help.ts';
import { didYouMean } from './nearest.ts';
import { plain } from './plain.ts';
import { programVersion } from './version.ts';
import type { World } from './world.ts';

const done = 0;
const answerIsNo = 1;
const wrongUse = 2;

const ended = (text: string): string => (text === '' || text.endsWith('\n') ? text : `${text}\n`);

const print = (outcome: Outcome, json: boolean, world: World): number => {
  for (const warning of outcome.warnings ?? []) world.err(ended(warning));
  world.out(json ? `${JSON.stringify(outcome.json, null, 2)}\n` : ended(outcome.text));
  return outcome.no ? answerIsNo : done;
};

const help = (command: TerminalCommand, subject: string | undefined, world: World): number => {
  if (subject === undefined || !command.helpOn) {
    world.out(commandHelp(command));
    return done;
  }
  const text = command.helpOn(subject);
  if (text.kind === 'refused') {
    world.err(`endfloat: ${refusalText(text.refusal)}\n`);
    return wrongUse;
  }
  world.out(ended(text.value));
  return done;
};

const runCommand = async (name: string, typed: readonly string[], world: World): Promise<number> => {
  const command = commands.find((known) => known.name === name);
  if (!command) {
    const names = commands.map((known) => known.name);
    const remedy = didYouMean(name, names, 'endfloat --help lists the commands');
    world.err(`endfloat: there is no command ${plain(name).slice(0, 60)}: ${remedy}\n`);
    return wrongUse;
  }
  const given = sortOut(command, typed, world);
  if (given.kind === 'refused') {
    world.err(`endfloat: ${refusalText(given.refusal)}\n`);
    return wrongUse;
  }
  if (given.value.switches.has('help')) return help(command, given.value.words[0], world);
  const outcome = await command.run(given.value);
  if (outcome.kind === 'refused') {
    world.err(`endfloat: ${refusalText(outcome.refusal)}\n`);
    return wrongUse;
  }
  return print(outcome.value, given.value.switches.has('json'), world);
};

export const runTerminal = async (typed: readonly string[], world: World): Promise<number> => {
  const [first, second, ...rest] = typed;
  try {
    if (
      first === undefined ||
      first === '--help' ||
      first === '-h' ||
      (first === 'help' && second === undefined)
    ) {
      world.out(programHelp(commands));
      return done;
    }
    if (first === '--version') {
      world.out(`endfloat ${programVersion()}\n`);
      return done;
    }
    if (first === 'help') return await runCommand(second ?? '', [...rest, '--help'], world);
    return await runCommand(first, typed.slice(1), world);
  } catch (error) {
    if (error instanceof Refused) {
      world.err(`endfloat: ${plain(error.message)}\n`);
      return wrongUse;
    }
    const says = error instanceof Error ? error.message : String(error);
    world.err(
      `endfloat: a fault in the program itself (${plain(says)}): please report it with the line that you typed\n`,
    );
    return wrongUse;
  }
};
