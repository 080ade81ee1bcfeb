/** @module What must be kept in mind of a slot while slots that touch it are still to come: which of its choices differ to them. */
import type { Part } from './part.ts';

/** A later neighbour, and which of the two slots' choices go together. */
export interface Neighbour {
  readonly slot: number;
  readonly allows: (own: number, other: number) => boolean;
}

/** Neighbours of a slot that come after it, the nearest first. */
export const laterNeighbours = (part: Part, order: readonly number[]): readonly (readonly Neighbour[])[] => {
  const turn = new Map(order.map((slot, index) => [slot, index]));
  const later: Neighbour[][] = part.slots.map(() => []);
  for (const { first, second, allows } of part.pairs) {
    const width = part.slots[second]?.length ?? 0;
    if ((turn.get(first) ?? 0) < (turn.get(second) ?? 0))
      later[first]?.push({ slot: second, allows: (own, other) => allows[own * width + other] === 1 });
    else later[second]?.push({ slot: first, allows: (own, other) => allows[other * width + own] === 1 });
  }
  return later.map((own) => own.sort((a, b) => (turn.get(a.slot) ?? 0) - (turn.get(b.slot) ?? 0)));
};

/** Classes of choices that are alike to all neighbours still to come. */
export interface Classes {
  readonly of: readonly number[];
  readonly count: number;
}

/** At `[n]` the classes to the last n neighbours: at 0 nothing is kept any more. */
export const classesOf = (
  choices: number,
  neighbours: readonly Neighbour[],
  widthOf: (slot: number) => number,
): readonly Classes[] => {
  let classes: Classes = { of: new Array<number>(choices).fill(0), count: 1 };
  const stages = [classes];
  for (const { slot, allows } of neighbours.toReversed()) {
    const known = new Map<string, number>();
    const width = widthOf(slot);
    const of = classes.of.map((before, own) => {
      let sign = `${before}:`;
      for (let other = 0; other < width; other += 1) sign += allows(own, other) ? '1' : '0';
      const found = known.get(sign) ?? known.size;
      known.set(sign, found);
      return found;
    });
    classes = { of, count: known.size };
    stages.push(classes);
  }
  return stages;
};
