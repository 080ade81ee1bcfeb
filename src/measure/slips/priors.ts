/** @module How often each slip happens: the usual figures, in a list that a shop can see and change. */
import { chooseName } from '../../engine/nearest-name.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { constantOffset } from './constant-offset.ts';
import { copiedRow } from './copied-row.ts';
import { failedCheck } from './failed-check.ts';
import { grownPart } from './grown-part.ts';
import { slips } from './list.ts';
import { noZeroCheck } from './no-zero-check.ts';
import { outsideRange } from './outside-range.ts';
import { ringGapApart } from './ring-gap-apart.ts';
import type { KnownSlip } from './slip.ts';
import { swappedRows } from './swapped-rows.ts';

/** Chances by the name of the slip; one that is missing or 0 is not looked for. */
export type Priors = Readonly<Record<string, number>>;

/** How often a slip happens, as a shop writes it. */
export interface SlipChance {
  /** Its name. */
  readonly slip: string;
  /** Of so many it befalls one; 0 where it is not looked for. */
  readonly onceIn: number;
}

/** Every slip that is looked for, with its words and how often it usually happens. */
export const knownSlips: readonly KnownSlip[] = [
  ...slips,
  outsideRange,
  grownPart,
  copiedRow,
  swappedRows,
  ringGapApart,
  constantOffset,
  failedCheck,
  noZeroCheck,
].map(({ name, says, chance, of }) => ({ name, says, chance, of }));

export const usualPriors: Priors = Object.fromEntries(knownSlips.map(({ name, chance }) => [name, chance]));

/** One that is asked about or not, whatever its chance: an instrument was checked or it was not. */
export const isAskedOrNot = ({ chance }: KnownSlip): boolean => chance === 1;

/** The usual chances, but for those that a shop has set otherwise; names that nobody knows change nothing. */
export const priorsWith = (set: readonly SlipChance[]): Priors =>
  set.length === 0
    ? usualPriors
    : Object.fromEntries(
        knownSlips.map(({ name, chance }) => {
          const own = set.findLast(({ slip }) => slip === name);
          return [name, own === undefined ? chance : own.onceIn > 0 ? 1 / own.onceIn : 0];
        }),
      );

/** More often than once in four, reading alone tells nothing any more; more seldom than once in a million, nobody could know. */
const oftenest = 4;
const seldomest = 1_000_000;

/** A chance as a shop may set it, or why it may not. */
export const soundChance = ({ slip, onceIn }: SlipChance): Answer<KnownSlip> => {
  const known = knownSlips.find(({ name }) => name === slip);
  if (known === undefined)
    return refuse(
      `no slip is called “${slip}”`,
      'slips looked for',
      chooseName(
        slip,
        knownSlips.map(({ name }) => name),
      ),
    );
  if (isAskedOrNot(known))
    return onceIn === 0 || onceIn === 1
      ? answer(known)
      : refuse(
          `${slip} is no matter of chance: an instrument was checked or it was not`,
          slip,
          'look for it, or not',
        );
  if (onceIn === 0 || (onceIn >= oftenest && onceIn <= seldomest)) return answer(known);
  return refuse(
    `once in ${onceIn} ${known.of} is no chance that can be reckoned with`,
    slip,
    `give a number from ${oftenest} to ${seldomest}, or do not look for it at all`,
  );
};

/** `once in 67 readings`, `not looked for`. */
export const chanceWords = ({ of }: Pick<KnownSlip, 'of'>, chance: number): string => {
  if (!(chance > 0)) return 'not looked for';
  return chance === 1 ? 'looked for' : `once in ${Math.round(1 / chance)} ${of}`;
};
