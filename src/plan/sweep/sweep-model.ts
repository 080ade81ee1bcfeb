/** @module The exact method of our own for the plan's model: swept part by part, each question asked of a part only once. */
import type { Best, Open } from '../best.ts';
import type { Model } from '../model.ts';
import type { Slot } from '../slot.ts';
import { type Part, partsOf } from './part.ts';
import type { Choice } from './problem.ts';
import { problemOf } from './read-problem.ts';
import type { Step } from './steps.ts';
import { stepsOf } from './steps.ts';
import { openOf, type Swept, sweep } from './sweep.ts';

/** States that may be open at once: past this a general solver is quicker. */
const widestSweep = 20_000;

type Answered = Swept | 'none' | 'too wide';
type Allowed = (choice: Choice) => boolean;
/** The best of one part, of the choices that are allowed. */
type Asked = (allowed: Allowed) => Answered;

/** The same choices open give the same answer, whatever was asked. */
const asked = (part: Part, steps: readonly Step[], widest: number): Asked => {
  const known = new Map<string, Answered>();
  return (allowed) => {
    const open = openOf(part, steps, allowed);
    const name = open.map((own) => own.join(',')).join(';');
    const found = known.get(name) ?? sweep(part, steps, open, widest);
    known.set(name, found);
    return found;
  };
};

const daysOf = ({ choices }: Swept): number => choices.reduce((most, { days }) => Math.max(most, days), 0);

/** Fewest days, of those that any choice takes, in which the part costs no more. */
const leastDays = (ask: Asked, swept: Swept, allowed: Allowed, atLeast: number): number => {
  let best = daysOf(swept);
  while (best > atLeast) {
    const sooner = ask((choice) => choice.days < best && allowed(choice));
    if (typeof sooner === 'string' || sooner.cents > swept.cents) return best;
    best = daysOf(sooner);
  }
  return best;
};

/** Undefined where the sweep cannot answer; otherwise the best of what is open, at once. */
export type SweepModel = (open: Open) => Best | 'no plan' | 'too wide';

const sweptAll = (parts: readonly Asked[], allowed: Allowed): readonly Swept[] | 'no plan' | 'too wide' => {
  const all: Swept[] = [];
  let none = false;
  for (const ask of parts) {
    const found = ask(allowed);
    if (found === 'too wide') return found;
    if (found === 'none') none = true;
    else all.push(found);
  }
  return none ? 'no plan' : all;
};

const total = (all: readonly Swept[]): number => all.reduce((sum, { cents }) => sum + cents, 0);

/**
 * @param widest  states that may be open at once, by which the work is bounded
 * @returns undefined where the model has rows of a form that cannot be swept, or would be too wide
 */
export const sweepModel = (
  slots: readonly Slot[],
  model: Model,
  widest = widestSweep,
): SweepModel | undefined => {
  const problem = problemOf(slots, model);
  if (problem === undefined) return undefined;
  if (problem === 'impossible') return () => 'no plan';
  const parts: Asked[] = [];
  for (const part of partsOf(problem)) {
    const steps = stepsOf(part, widest);
    if (!steps) return undefined;
    parts.push(asked(part, steps, widest));
  }
  return (open) => {
    const isOpen = model.options.map((option) => open(option));
    const allowed: Allowed = ({ option }) => option < 0 || isOpen[option] === true;
    const first = sweptAll(parts, allowed);
    if (typeof first === 'string') return first;
    if (total(first) > problem.cap) return 'no plan';
    // The slowest parts first: once they are as quick as they get, the others are mostly quicker already.
    const bySlowest = first
      .map((swept, index) => ({ swept, index }))
      .sort((a, b) => daysOf(b.swept) - daysOf(a.swept));
    let days = 0;
    for (const { swept, index } of bySlowest) {
      const ask = parts[index];
      if (ask) days = Math.max(days, leastDays(ask, swept, allowed, days));
    }
    const last = sweptAll(parts, (choice) => choice.days <= days && allowed(choice));
    if (typeof last === 'string') return last;
    const taken = new Set(last.flatMap(({ choices }) => choices.map(({ option }) => option)));
    return {
      kind: 'best',
      chosen: model.options.filter((_, index) => taken.has(index)),
      cents: total(last),
      provedBy: 'sweep',
    };
  };
};
