/** @module Verdicts settled by reading again: oftener, cold, or what is not read yet. */
import { amountOf } from '../quantity/typed.ts';
import { countingReading } from './cell-size.ts';
import { type Asked, changed, named, offered, type Proposal, takes } from './proposal.ts';
import { instrumentOf, readOftener, readOtherwise } from './resized.ts';
import type { Judged } from './verdict-model.ts';

export const timesText = (times: number): string => (times === 1 ? 'once more' : `${times} more times`);

/** Nobody reads a size more often. */
const mostRepeats = 12;

/** The fewest repeats that settle it; none where not even endless ones would. */
export const fewest = (then: (times: number) => Judged, from = 1): number | undefined => {
  if (then(1e9).verdict === 'unsure') return undefined;
  for (let times = from; times <= mostRepeats; times += 1) if (then(times).verdict !== 'unsure') return times;
  return undefined;
};

export const byRepeats = (asked: Asked): readonly Proposal[] => {
  const { sheet, deciding } = asked;
  const then = (more: number) => changed(asked, deciding, (cell) => readOftener(sheet, cell, more));
  const times = fewest(then);
  if (times === undefined) return [];
  return offered(asked, then(times), {
    kind: 'repeats',
    todo: `Read ${named(deciding)} ${timesText(times)} with the same instrument`,
    minutes: takes.reading * times * deciding.length,
    cells: deciding,
    times,
  });
};

export const byCooling = (asked: Asked): readonly Proposal[] => {
  const { sheet } = asked;
  const warm = asked.cells.filter((cell) => {
    const temperature = countingReading(sheet, cell)?.temperature;
    const degrees = temperature && amountOf(temperature, 'temperature');
    return degrees?.kind === 'answer' && Math.abs(degrees.value - 20) > 1;
  });
  if (warm.length === 0) return [];
  const then = changed(asked, warm, (cell) => {
    const instrument = instrumentOf(sheet, cell);
    return instrument && readOtherwise(sheet, cell, { instrument, cold: true });
  });
  return offered(asked, then, {
    kind: 'cool',
    todo: `Let the part come to 20 °C beside the instrument and read ${named(warm)} again`,
    minutes: takes.cooling + takes.reading * warm.length,
    cells: warm,
  });
};

/** Cells that are still unread may show by themselves that it is outside. */
export const byAxes = ({ judged }: Asked): readonly Proposal[] =>
  judged.missing.length === 0
    ? []
    : [
        {
          kind: 'axis',
          says: `Read ${named(judged.missing)} first, not read yet: any of them outside settles it.`,
          minutes: takes.reading * judged.missing.length,
          cells: judged.missing,
        },
      ];
