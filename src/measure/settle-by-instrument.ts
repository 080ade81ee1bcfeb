/** @module Verdicts settled by the instrument: its zero checked, a better one taken, a gauge set in the other part's micrometer. */
import { formatFigure } from '../quantity/figure.ts';
import { amountOf } from '../quantity/typed.ts';
import { unitsOf } from '../quantity/unit.ts';
import { sizeInCell } from './cell-size.ts';
import type { Instrument } from './instrument.ts';
import { kindOf } from './instrument-kind.ts';
import { type Asked, changed, named, offered, type Proposal, takes } from './proposal.ts';
import type { Cell } from './reading.ts';
import { instrumentOf, readOtherwise } from './resized.ts';
import { fewest } from './settle-by-reading.ts';

const instrumentsUsed = ({ sheet, cells }: Asked): readonly Instrument[] => [
  ...new Set(cells.flatMap((cell) => instrumentOf(sheet, cell) ?? [])),
];

const readWith = ({ sheet, cells }: Asked, used: Instrument): readonly Cell[] =>
  cells.filter((cell) => instrumentOf(sheet, cell) === used);

/** A zero that was never checked is the cheapest thing to mend. */
export const byZero = (asked: Asked): readonly Proposal[] =>
  instrumentsUsed(asked)
    .filter(({ zero, setTo }) => !zero && !setTo)
    .flatMap((used) => {
      const cells = readWith(asked, used);
      const zero = { text: '0', unit: unitsOf(kindOf(used.kind).measures)[0] ?? '' };
      const instrument = { ...used, zero };
      const then = changed(asked, cells, (cell) => readOtherwise(asked.sheet, cell, { instrument }));
      return offered(asked, then, {
        kind: 'zero',
        todo: `Check the zero of ${used.name}, which never was`,
        minutes: takes.zero,
        cells: [],
        instrument: used.name,
      });
    });

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
          const then = changed(asked, cells, (cell) => readOtherwise(asked.sheet, cell, { instrument }));
          return offered(asked, then, {
            kind: 'setting',
            todo: `Set ${gauge.name} in ${micrometer.name} and read ${named(cells)} again`,
            minutes: takes.setting + takes.reading * cells.length,
            cells,
            instrument: gauge.name,
          });
        }),
    );
};
