/** @module How often each slip happens: the usual figures, in a list that a shop can see and change. */
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
].map(({ name, says, chance }) => ({ name, says, chance }));

export const usualPriors: Priors = Object.fromEntries(knownSlips.map(({ name, chance }) => [name, chance]));
