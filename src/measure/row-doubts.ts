/** @module Doubts about many readings at once: all of one instrument off by the same, a row read wrong throughout. */
import { lengthOf, typedText } from '../quantity/typed.ts';
import { trustIn } from './honest.ts';
import type { Known } from './known.ts';
import { machinedWords } from './machined-words.ts';
import { believed, median, type Neighbours, nearness, othersOf } from './neighbours.ts';
import { greatestOdds, oddsAgain, oddsText, raisedAt } from './odds.ts';
import { madeOrLeft, placesApart } from './reading-doubts.ts';
import { constantOffset, offsetOf, overdueSince, overdueTimes } from './slips/constant-offset.ts';
import { grownOdds, grownPart } from './slips/grown-part.ts';
import { shifted } from './slips/shifted.ts';
import { type Suspect, suspectsOf } from './suspicion.ts';
import { confirmations, pastWords, type Taken } from './taken.ts';
import type { Doubt } from './verdict-model.ts';

/** Of the slips that a hand makes, the share that it makes over a whole row: common practice, no source. */
const wholeRow = 0.1;
const likeOthers = 0.8;

export interface RowDoubts {
  readonly rows: readonly (readonly Taken[])[];
  readonly doubts: readonly Doubt[];
  /** Readings that are in doubt. */
  readonly doubted: ReadonlySet<string>;
}

const levelOf = (row: readonly { readonly size: number }[]): number => median(row.map(({ size }) => size));

/** Numbered lines and turns by which a zero is set wrong, mm. */
const stepsOf = (rows: readonly (readonly Taken[])[]): readonly number[] => {
  const turn = rows[0]?.[0]?.instrument.turn;
  const length = turn && lengthOf(turn);
  return [0.1, 0.2, ...(length?.kind === 'answer' ? [length.value] : [])];
};

const partsMadeOrLeft = ({ own, sheet }: Known, read: readonly (readonly Taken[])[]): string =>
  sheet.former && read.some((row) => own.grownBy(levelOf(row)) === 0)
    ? `what the parts were made to or left at by the former overhaul, ${sheet.former.number}`
    : 'what the parts were made to';

const offsetDoubt = (known: Known, rows: readonly (readonly Taken[])[], instrument: string): RowDoubts => {
  const { priors, characteristic } = known;
  const read = rows.filter((row) => row.every((taken) => taken.instrument.name === instrument));
  const readings = read.flat();
  const [first] = readings;
  const due = readings.map(overdueSince).find((day) => day !== undefined);
  const none = { rows, doubts: [], doubted: new Set<string>() };
  const offset =
    first &&
    offsetOf(
      read.map((row) => ({ own: known.ownOfRow(row), level: levelOf(row) })),
      stepsOf(read),
      (priors[constantOffset.name] ?? 0) * (due === undefined ? 1 : overdueTimes),
      first.u,
    );
  if (!first || !offset || offset.odds < raisedAt) return none;
  const off = { text: Math.abs(offset.by).toFixed(3), unit: 'mm' };
  const likely = readings.map(
    ({ reading }) => shifted(reading.typed, off, -Math.sign(offset.by)) ?? reading.typed,
  );
  const odds = Math.min(greatestOdds, offset.odds);
  const moved = (taken: Taken): Taken => ({ ...taken, size: taken.size - offset.by });
  return {
    rows: rows.map((row) => (read.includes(row) ? row.map(moved) : row)),
    doubted: new Set(readings.map(({ reading }) => reading.id)),
    doubts: [
      {
        id: `${constantOffset.name}:${instrument}|${characteristic.name}`,
        slip: constantOffset.name,
        says: `${characteristic.title}: all ${readings.length} readings with ${instrument} lie past ${partsMadeOrLeft(known, read)}, and worn parts do not grow; its zero or its master looks about ${typedText(off)} wrong, ${oddsText(odds)}.${due === undefined ? '' : ` It was due for calibration by ${due}.`} Check the zero and measure again, look at which size the parts were machined to, or say why they stand.${machinedWords(known.sheet, characteristic, first.place, first.size)}`,
        readings: readings.map(({ reading }) => reading.id),
        places: read.flatMap(([taken]) => taken?.place.id ?? []),
        likely,
        odds,
      },
    ],
  };
};

interface RowSuspicion {
  readonly suspects: readonly Suspect[];
  readonly odds: number;
}

const suspicionOf = (
  known: Known,
  row: readonly Taken[],
  others: Neighbours | undefined,
): RowSuspicion | undefined => {
  const { priors, sheet } = known;
  const own = known.ownOfRow(row);
  const byOthers = others ? likeOthers * believed(others) : 0;
  const density = (size: number): number =>
    (1 - byOthers) * own.density(size) + (others ? likeOthers * nearness(size, others) : 0);
  const asItStands = density(levelOf(row));
  const again = Math.min(...row.map((taken) => confirmations(sheet, taken)));
  const [first, ...rest] = row.map((taken) => suspectsOf(sheet, taken).filter(({ slip }) => slip.sticks));
  let worst: RowSuspicion | undefined;
  for (const suspect of first ?? []) {
    const same = rest.flatMap(
      (all) => all.find(({ slip, way }) => slip === suspect.slip && way === suspect.way) ?? [],
    );
    const suspects = [suspect, ...same];
    const { slip, candidate } = suspect;
    const fits = suspects.every(({ size }, at) => density(size) > density(row[at]?.size ?? Number.NaN));
    if (suspects.length < row.length || !fits) continue;
    const chance = (priors[slip.name] ?? 0) * wholeRow * candidate.share * candidate.stretch;
    const odds = oddsAgain((chance * density(levelOf(suspects))) / asItStands, again);
    if (odds >= raisedAt && odds > (worst?.odds ?? 0)) worst = { suspects, odds };
  }
  return worst;
};

const wholeRowDoubt = (known: Known, row: readonly Taken[], { suspects, odds }: RowSuspicion): Doubt => {
  const [first] = row;
  const [suspect] = suspects;
  const slip = suspect?.slip.name ?? '';
  const figures = row.map(({ reading }) => typedText(reading.typed)).join(', ');
  const would = suspects.map(({ candidate }) => typedText(candidate.likely)).join(', ');
  return {
    id: `${slip}:row ${first?.place.id}|${known.characteristic.name}`,
    slip,
    says: `${first?.place.title}, ${known.characteristic.title}: the whole row, ${figures}, looks like ${suspect?.slip.says}; ${would} would fit, ${oddsText(odds)}. Measure it again, or say why it stands.${first ? machinedWords(known.sheet, known.characteristic, first.place, levelOf(row)) : ''}`,
    readings: row.map(({ reading }) => reading.id),
    places: first ? [first.place.id] : [],
    likely: suspects.map(({ candidate }) => candidate.likely),
    odds,
    onScale: suspect?.slip.onScale ?? false,
  };
};

/** A row of which every reading lies past what the part was made to, and no slip that would account for all of it. */
const grownRowDoubt = (known: Known, row: readonly Taken[]): Doubt | undefined => {
  const { priors, sheet, characteristic } = known;
  const own = known.ownOfRow(row);
  const [first] = row;
  const chance = priors[grownPart.name] ?? 0;
  const each = row.map(({ size, u }) => grownOdds(own, size, u, chance));
  const odds = oddsAgain(Math.min(...each), Math.min(...row.map((taken) => confirmations(sheet, taken))));
  if (!first || odds < raisedAt) return undefined;
  const grown = Math.min(...row.map(({ size }) => own.grownBy(size)));
  const figures = row.map(({ reading }) => typedText(reading.typed)).join(', ');
  return {
    id: `${grownPart.name}:row ${first.place.id}|${characteristic.name}`,
    slip: grownPart.name,
    says: `${first.place.title}, ${characteristic.title}: the whole row, ${figures}, is ${pastWords(grown, first, ' and more')} ${madeOrLeft(known, levelOf(row))}, and worn parts do not grow, ${oddsText(odds)} that something is wrong. Clean it, look at which size it was machined to, measure it again, or say why it stands.`,
    readings: row.map(({ reading }) => reading.id),
    places: [first.place.id],
    likely: row.map(({ reading }) => reading.typed),
    odds,
  };
};

/** Doubts about sets of readings that are off together; single readings are looked at after them. */
export const rowDoubts = (known: Known, given: readonly (readonly Taken[])[]): RowDoubts => {
  const { own } = known;
  const instruments = new Set(given.flat().map(({ instrument }) => instrument.name));
  let found: RowDoubts = { rows: given, doubts: [], doubted: new Set() };
  for (const instrument of instruments) {
    const { rows, doubts, doubted } = offsetDoubt(known, found.rows, instrument);
    found = { rows, doubts: [...found.doubts, ...doubts], doubted: new Set([...found.doubted, ...doubted]) };
  }
  const levels = found.rows.map(levelOf);
  const u = given[0]?.[0]?.u ?? 0;
  const others = othersOf(levels, placesApart(own, u), (size) => trustIn(size, own));
  const rows = [...found.rows];
  const doubts = [...found.doubts];
  const doubted = new Set(found.doubted);
  for (const [at, row] of found.rows.entries()) {
    if (row.length < 2 || row.some(({ reading }) => doubted.has(reading.id))) continue;
    const suspicion = suspicionOf(known, row, others[at]);
    const doubt = suspicion ? wholeRowDoubt(known, row, suspicion) : grownRowDoubt(known, row);
    if (!doubt) continue;
    doubts.push(doubt);
    for (const { reading } of row) doubted.add(reading.id);
    if (suspicion) {
      rows[at] = row.map((taken, index) => ({
        ...taken,
        size: suspicion.suspects[index]?.size ?? taken.size,
      }));
    }
  }
  return { rows, doubts, doubted };
};
