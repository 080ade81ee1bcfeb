/** @module Doubts about single readings of a characteristic, the surest first, each looked at without those before. */
import { typedText } from '../quantity/typed.ts';
import type { Expectation } from './expectation.ts';
import { honestOf, type PlaceSays, trustIn } from './honest.ts';
import type { Known } from './known.ts';
import { machinedWords } from './machined-words.ts';
import { type Neighbours, neighboursOf } from './neighbours.ts';
import { oddsAgain, oddsText, raisedAt } from './odds.ts';
import { type Bells, type Spread, shapeOf, type Template } from './place-shape.ts';
import { grownOdds, grownPart } from './slips/grown-part.ts';
import { outsideRange, reachedBy } from './slips/outside-range.ts';
import { type Suspicion, weighed } from './suspicion.ts';
import { confirmations, pastWords, type Taken, whereTaken } from './taken.ts';
import type { Doubt } from './verdict-model.ts';

/** How far places honestly lie apart, of an ordinary wear: common practice, no source. */
const apart = 0.25;
/** A cell that is believed less says nothing of its neighbours. */
const leastTrust = 0.01;

/** How far places honestly lie apart, mm. */
export const placesApart = (own: Expectation, u: number): number => Math.max(own.ordinary * apart, u);

const sameCell = (row: readonly Taken[], { reading: { cell } }: Taken): Taken | undefined =>
  row.find(({ reading }) => reading.cell.plane === cell.plane && reading.cell.axis === cell.axis);

/** How far cells of a place that is evenly worn honestly differ, standard deviation, mm. */
export const cellsApart = (u: number): number => Math.max(0.7 * u, 0.0015);

const spreadOf = (own: Expectation, u: number): Spread => ({
  middle: own.middle,
  level: 1 + 3 * own.ordinary,
  wear: own.ordinary,
  noise: cellsApart(u),
});

/** Other places that were read in all these cells, to be followed in their shape; three speak for all. */
const templatesFor = (
  heard: readonly Taken[],
  rows: readonly (readonly Taken[])[],
  row: readonly Taken[],
): readonly Template[] =>
  rows
    .flatMap((other) => {
      if (other === row) return [];
      const sizes = heard.flatMap((one) => sameCell(other, one)?.size ?? []);
      return sizes.length === heard.length ? [sizes] : [];
    })
    .slice(0, 3);

/** Cells that agree are hardly all wrong: each more is fifty times less likely to be. Common practice, no source. */
const togetherWrong = 0.02;

const sayings = (
  row: readonly Taken[],
  rows: readonly (readonly Taken[])[],
  known: Known,
): readonly (PlaceSays | undefined)[] => {
  const { own, characteristic } = known;
  const trust = new Map(
    row.map((one) => [one, Math.max(trustIn(one.size, own), trustIn(one.size, known.ownAt(one)))]),
  );
  const trusted = row.filter((one) => (trust.get(one) ?? 0) >= leastTrust);
  const bellsOf = (heard: readonly Taken[]): ReadonlyMap<Taken, Bells> => {
    if (heard.length < 2) return new Map();
    const cells = heard.map(({ size, reading }) => ({
      size,
      plane: characteristic.planes.indexOf(reading.cell.plane),
      axis: characteristic.axes.indexOf(reading.cell.axis),
    }));
    const u = Math.max(...heard.map((one) => one.u));
    const bells = shapeOf(cells, spreadOf(own, u), templatesFor(heard, rows, row));
    return new Map(heard.flatMap((one, at) => (bells[at] ? [[one, bells[at]] as const] : [])));
  };
  const together = bellsOf(trusted);
  return row.map((one) => {
    const others = trusted.filter((other) => other !== one);
    const bells = (trusted.includes(one) ? together : bellsOf([...others, one])).get(one);
    const mean = others.reduce((sum, other) => sum + (trust.get(other) ?? 0), 0) / others.length;
    const believable = mean / (mean + (1 - mean) * togetherWrong ** (others.length - 1));
    return bells && { bells, cells: others.length, trust: believable };
  });
};

/** What other places say of each cell: their same cell where it was read, else what was read there. */
const othersAt = (
  rows: readonly (readonly Taken[])[],
  known: Known,
): readonly (readonly (Neighbours | undefined)[])[] => {
  const { own } = known;
  return rows.map((row) =>
    row.map((one) => {
      const heard = rows.flatMap((other) => (other === row ? [] : (sameCell(other, one) ?? other[0] ?? [])));
      const trust = new Map(heard.map((other) => [other.size, trustIn(other.size, known.ownAt(other))]));
      return neighboursOf(
        heard.map(({ size }) => size),
        placesApart(own, one.u),
        (size) => trust.get(size) ?? 0,
      );
    }),
  );
};

interface Found {
  readonly row: number;
  readonly at: number;
  readonly suspicion: Suspicion;
}

const surest = (
  rows: readonly (readonly Taken[])[],
  known: Known,
  done: ReadonlySet<string>,
): Found | undefined => {
  const others = othersAt(rows, known);
  let worst: Found | undefined;
  for (const [row, taken] of rows.entries()) {
    const places = sayings(taken, rows, known);
    for (const [at, one] of taken.entries()) {
      if (done.has(one.reading.id)) continue;
      const honest = honestOf(known.ownAt(one), places[at], others[row]?.[at]);
      const found = weighed(known.sheet, one, honest, known.priors);
      const odds = found ? oddsAgain(found.odds, confirmations(known.sheet, one)) : 0;
      if (found && odds >= raisedAt && odds > (worst?.suspicion.odds ?? 0)) {
        worst = { row, at, suspicion: { ...found, odds } };
      }
    }
  }
  return worst;
};

const doubtOf = (known: Known, taken: Taken, { slip, candidate, odds }: Suspicion): Doubt => {
  const { reading, place } = taken;
  return {
    id: `${slip.name}:${reading.id}`,
    slip: slip.name,
    says: `${whereTaken(known.characteristic, taken)}: ${typedText(reading.typed)} looks like ${slip.says}; ${typedText(candidate.likely)} would fit, ${oddsText(odds)}. Measure it again, or say why it stands.${machinedWords(known.sheet, known.characteristic, place, taken.size)}`,
    readings: [reading.id],
    places: [place.id],
    likely: [candidate.likely],
    odds,
    onScale: slip.onScale,
  };
};

/** What a size has grown past: what its part was made to, or else what it was left at. */
export const madeOrLeft = ({ own, sheet }: Known, size: number): string =>
  own.grownBy(size) > 0 || !sheet.former
    ? 'what it was made to'
    : `what it was left at by the former overhaul, ${sheet.former.number}`;

/** What can be said of a figure for which no slip accounts: that it cannot be. */
const unaccounted = (known: Known, taken: Taken): Doubt | undefined => {
  const { reading, place, instrument, size, u } = taken;
  const { priors, sheet } = known;
  const own = known.ownAt(taken);
  const where = whereTaken(known.characteristic, taken);
  const base = { readings: [reading.id], places: [place.id], likely: [reading.typed] };
  const outside = reachedBy(instrument, reading.typed) ? 0 : (priors[outsideRange.name] ?? 0) * 1000;
  if (outside >= raisedAt) {
    const { least, greatest } = instrument.range;
    return {
      ...base,
      id: `${outsideRange.name}:${reading.id}`,
      slip: outsideRange.name,
      says: `${where}: ${typedText(reading.typed)} cannot be read on ${instrument.name}, which reaches from ${typedText(least)} to ${typedText(greatest)}, ${oddsText(outside)} that another instrument was used. Name the right one, measure it again, or say why it stands.`,
      odds: outside,
    };
  }
  const grown = oddsAgain(grownOdds(own, size, u, priors[grownPart.name] ?? 0), confirmations(sheet, taken));
  if (grown < raisedAt) return undefined;
  return {
    ...base,
    id: `${grownPart.name}:${reading.id}`,
    slip: grownPart.name,
    says: `${where}: ${typedText(reading.typed)} is ${pastWords(own.grownBy(size), taken)} ${madeOrLeft(known, size)}, and worn parts do not grow, ${oddsText(grown)} that something is wrong. Clean it, look at which size it was machined to, measure it again, or say why it stands.`,
    odds: grown,
  };
};

/** Rows with what each doubted reading probably was in its stead. */
export interface Believed {
  readonly rows: readonly (readonly Taken[])[];
  readonly doubts: readonly Doubt[];
}

export const readingDoubts = (
  known: Known,
  given: readonly (readonly Taken[])[],
  already: ReadonlySet<string>,
): Believed => {
  const doubts = new Map<string, Doubt>();
  const done = new Set(already);
  let rows = given;
  for (let found = surest(rows, known, done); found; found = surest(rows, known, done)) {
    const { row, at, suspicion } = found;
    const taken = rows[row]?.[at];
    if (!taken) break;
    done.add(taken.reading.id);
    doubts.set(taken.reading.id, doubtOf(known, taken, suspicion));
    rows = rows.map((each, index) =>
      index === row ? each.with(at, { ...taken, size: suspicion.size }) : each,
    );
  }
  const inOrder = rows.flat().flatMap((taken) => {
    const doubt =
      doubts.get(taken.reading.id) ?? (done.has(taken.reading.id) ? undefined : unaccounted(known, taken));
    return doubt ?? [];
  });
  return { rows, doubts: inOrder };
};
