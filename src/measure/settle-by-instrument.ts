/** @module Verdicts settled by the instrument: its zero checked, a better one taken, a gauge set in the other part's micrometer. */

import { kindOf } from '../engine/instrument-kind.ts';
import { formatFigure } from '../quantity/figure.ts';
import { amountOf } from '../quantity/typed.ts';
import { unitsOf } from '../quantity/unit.ts';
import { sizeInCell } from './cell-size.ts';
import type { Instrument } from './instrument.ts';
import { type Asked, among, changed, named, offered, type Proposal, takes } from './proposal.ts';
import type { Cell } from './reading.ts';
import { instrumentOf, readOtherwise } from './resized.ts';
import { fewest, timesText } from './settle-by-reading.ts';

const instrumentsUsed = ({ sheet, cells }: Asked): readonly Instrument[] => [
  ...new Set(cells.flatMap((cell) => instrumentOf(sheet, cell) ?? [])),
];

const readWith = ({ sheet, cells }: Asked, used: Instrument): readonly Cell[] =>
  cells.filter((cell) => instrumentOf(sheet, cell) === used);

/** An instrument as it would be had its zero been checked and found right. */
const zeroed = (used: Instrument): Instrument => ({
  ...used,
  zero: { text: '0', unit: unitsOf(kindOf(used.kind).measures)[0] ?? '' },
});

const checked = (asked: Asked, unchecked: readonly Instrument[]): readonly Proposal[] => {
  const { sheet, deciding } = asked;
  const cells = unchecked.flatMap((used) => readWith(asked, used));
  const again = deciding.filter(among(cells));
  const isAgain = among(again);
  const then = (more: number) =>
    changed(asked, cells, (cell) => {
      const used = instrumentOf(sheet, cell);
      return used && readOtherwise(sheet, cell, { instrument: zeroed(used), more: isAgain(cell) ? more : 0 });
    });
  const more = fewest(then, 0);
  if (more === undefined) return [];
  const names = unchecked.map(({ name }) => name).join(' and ');
  const reading = more === 0 ? '' : `, and read ${named(again)} ${timesText(more)}`;
  return offered(asked, then(more), {
    kind: 'zero',
    todo: `Check the zero of ${names}, which never was${reading}`,
    minutes: takes.zero * unchecked.length + takes.reading * more * again.length,
    cells: more === 0 ? [] : again,
    ...(more > 0 && { times: more }),
    instrument: names,
  });
};

/** A zero that was never checked is the cheapest thing to mend: of one instrument, or of all that were used. */
export const byZero = (asked: Asked): readonly Proposal[] => {
  const unchecked = instrumentsUsed(asked).filter(({ zero, setTo }) => !zero && !setTo);
  const each = unchecked.flatMap((used) => checked(asked, [used]));
  return each.length > 0 || unchecked.length < 2 ? each : checked(asked, unchecked);
};

const reaches = ({ range, kind }: Instrument, size: number): boolean => {
  const [from, to] = [range.least, range.greatest].map((end) => amountOf(end, kindOf(kind).measures));
  return from?.kind === 'answer' && to?.kind === 'answer' && from.value <= size && size <= to.value;
};

/** Others of the same kind in the register, each as often as it takes. */
export const byInstrument = (asked: Asked, register: readonly Instrument[]): readonly Proposal[] => {
  const { sheet, deciding, characteristic } = asked;
  return instrumentsUsed(asked).flatMap((used) => {
    // A form or a clearance lives from what its sizes share: all taken with one instrument are taken anew.
    const cells = characteristic.derived
      ? readWith(asked, used)
      : deciding.filter((cell) => instrumentOf(sheet, cell) === used);
    const size = cells[0] && sizeInCell(sheet, cells[0]);
    if (!size) return [];
    const others = register.filter(
      (other) => other.name !== used.name && other.kind === used.kind && reaches(other, size.value),
    );
    return others.flatMap((instrument) => {
      const then = (times: number) =>
        changed(asked, cells, (cell) => readOtherwise(sheet, cell, { instrument, times }));
      const times = fewest(then);
      if (times === undefined) return [];
      return offered(asked, then(times), {
        kind: 'instrument',
        todo: `Read ${named(cells)} with ${instrument.name}${times === 1 ? '' : `, ${times} times`}`,
        minutes: takes.fetching + takes.reading * times * cells.length,
        cells,
        times,
        instrument: instrument.name,
      });
    });
  });
};

/** A gauge set in the very micrometer that took the other part loses that micrometer's error from the clearance. */
export const bySetting = (asked: Asked): readonly Proposal[] => {
  const used = instrumentsUsed(asked);
  return used
    .filter(({ kind }) => kind === 'bore gauge')
    .flatMap((gauge) =>
      used
        .filter(({ kind, name }) => kind === 'outside micrometer' && gauge.setTo?.master !== name)
        .flatMap((micrometer) => {
          const cells = readWith(asked, gauge);
          const size = cells[0] && sizeInCell(asked.sheet, cells[0]);
          if (!size) return [];
          const stood = { text: formatFigure(size.value, 3), unit: 'mm' };
          const shown = { text: '0.000', unit: 'mm' };
          const instrument = { ...gauge, setTo: { master: micrometer.name, size: stood, shown } };
          const then = (times: number) =>
            changed(asked, cells, (cell) => readOtherwise(asked.sheet, cell, { instrument, times }));
          const times = fewest(then);
          if (times === undefined) return [];
          return offered(asked, then(times), {
            kind: 'setting',
            todo: `Set ${gauge.name} in ${micrometer.name} and read ${named(cells)} again${times === 1 ? '' : `, ${times} times`}`,
            minutes: takes.setting + takes.reading * times * cells.length,
            cells,
            times,
            instrument: gauge.name,
          });
        }),
    );
};
