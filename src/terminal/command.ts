/** @module What a terminal command is: a named record that says what it does, what it takes and how it is run. */
import { type Answer, answer, type Refusal, refusalText } from '../quantity/refusal.ts';
import { plain } from './plain.ts';
import type { World } from './world.ts';

export interface OptionSpec {
  readonly name: string;
  /** What stands after it, for the help; missing for a switch. */
  readonly value?: string;
  /** May be given several times. */
  readonly many?: boolean;
  readonly says: string;
}

/** What was typed behind the command's name, sorted out. */
export interface Given {
  readonly words: readonly string[];
  readonly switches: ReadonlySet<string>;
  readonly values: ReadonlyMap<string, readonly string[]>;
  readonly world: World;
}

export interface Outcome {
  /** For a person, on stdout; empty where there is nothing to say. */
  readonly text: string;
  /** The same for a machine, under `--json`. */
  readonly json: unknown;
  /** Lines for stderr. */
  readonly warnings?: readonly string[];
  /** Set when the answer is no: lint errors, not verified, not feasible, refused by the job. */
  readonly no?: true;
}

export interface TerminalCommand {
  readonly name: string;
  readonly summary: string;
  /** How it is called, each way on its line, without the program's name. */
  readonly usage: readonly string[];
  /** Further words for its help. */
  readonly about?: string;
  readonly options?: readonly OptionSpec[];
  /** Least and greatest number of words behind the name. */
  readonly words: readonly [number, number];
  /** A refusal is wrong use; what the program decides is an outcome. */
  readonly run: (given: Given) => Promise<Answer<Outcome>>;
  /** Help of one of its subjects: `reckon piston-travel --help`. */
  readonly helpOn?: (subject: string) => Answer<string>;
}

export const lastValue = (given: Given, option: string): string | undefined =>
  given.values.get(option)?.at(-1);

/** The answer no, with why: on stderr for a person, on stdout under `--json`. */
export const answerNo = (refusal: Refusal): Answer<Outcome> =>
  answer({
    text: '',
    json: { answer: 'no', ...refusal },
    warnings: [`endfloat: ${plain(refusalText(refusal))}`],
    no: true,
  });
