/** @module What a board shows of one job, and how it is said: light, so that a list needs nothing else of the core. */
import { durationText } from '../quantity/moment.ts';
import type { PhaseName } from './phase.ts';
import type { Spell } from './time.ts';

export interface NextAction {
  readonly says: string;
  /** The part of the job where it is done. */
  readonly phase: PhaseName;
  /** Where it is one. */
  readonly operation?: string;
}

export interface Waiting {
  readonly for: 'the owner' | 'parts' | 'the machine shop' | 'a second person' | 'a decision';
  readonly says: string;
  /** The day by which it is to be here: 2026-03-09. */
  readonly due?: string;
}

export interface Board {
  /** How far the job goes; `''` where it is the whole engine. */
  readonly scope: string;
  /** None once it is handed over. */
  readonly next?: NextAction;
  readonly waitsFor: readonly Waiting[];
  /** Minutes of all hands that were noted and have ended. */
  readonly spent: number;
  /** Minutes of all hands still to come by the engine type, and of how many operations it says none. */
  readonly left: number;
  readonly untold: number;
  /** Who is at what now. */
  readonly running: readonly Pick<Spell, 'by' | 'operation' | 'from'>[];
}

/** Whether it should be here already. */
export const isOverdue = ({ due }: Waiting, today: string): boolean =>
  due !== undefined && due < today.slice(0, 10);

/** `parts: order O-7, Ashlar Parts, due 2026-03-09`. */
export const waitingWords = (waiting: Waiting, today: string): string => {
  const due = waiting.due === undefined ? '' : `, due ${waiting.due}`;
  return `${waiting.for}: ${waiting.says}${due}${isOverdue(waiting, today) ? ', overdue' : ''}`;
};

/** `6 h 20 min done`; where nobody noted any, that it was not noted, not that none was worked. */
export const spentWords = ({ spent, running }: Pick<Board, 'spent' | 'running'>): string =>
  spent === 0 && running.length === 0 ? 'no time noted' : `${durationText(spent)} done`;
