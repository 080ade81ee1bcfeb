/** @module What sizes an honest reading may show: wear from the limits as made, seldom far, and no growth. */
import type { Bounds, Characteristic, Limits } from '../engine/engine-type.ts';

/** Density of honest sizes, per mm. */
export interface Expectation {
  readonly density: (size: number) => number;
  /** No greater density than this. */
  readonly peak: number;
  /** The density of a size that is nothing out of the ordinary. */
  readonly usual: number;
  /** A wear that would be nothing out of the ordinary, mm: how far places may lie apart. */
  readonly ordinary: number;
  /** A size that is nothing out of the ordinary, mm. */
  readonly middle: number;
  /** How far a size lies past where any part was made, on the side to which none wears, mm; 0 where it does not. */
  readonly grownBy: (size: number) => number;
  /** How readily a size that its neighbours ask for is believed for all that: 1, and less where it has grown. */
  readonly room: (size: number) => number;
  /** The same where it is other places that ask for it. */
  readonly roomByOthers: (size: number) => number;
  /** Whether machining may have brought a size here that nobody noted. */
  readonly machinedTo: (size: number) => boolean;
}

/** One way of wear: the edge as made that it leaves behind, and which way it goes (+1 to larger sizes). */
interface Way {
  readonly from: number;
  readonly sign: 1 | -1;
  /** Width of the limits as made, mm. */
  readonly tolerance: number;
  /** From the limits as made to the wear limit, mm. */
  readonly wear: number;
  /** Share of it that the hours run lead to expect at most. */
  readonly run: number;
}

/*
 * Shares of the mixture: common practice, no source. A quarter of the parts that come to the bench are hardly
 * worn; most are worn, and one in seven of those past the limit; one in thirty is seized or ruined and may be
 * anywhere beyond; and a part that seems to have grown, one in two hundred, is dirt, a burr or plating.
 */
const unworn = 0.24;
const worn = 0.725;
const ruined = 0.03;
const grown = 0.005;
/** Anything can happen, per mm near the size and less far from it, so that no odds are endless. */
const anything = 1e-5;
const anythingAt = (off: number, size: number): number =>
  anything / (1 + (off / Math.max(1, Math.abs(size))) ** 2);

/** Ruin goes as far as several wears, and hardly further: half a bell, of deviation scale. */
const ruinDensity = (y: number, scale: number): number =>
  y < 0 ? 0 : (Math.exp(-0.5 * (y / scale) ** 2) * Math.sqrt(2 / Math.PI)) / scale;

/** A size as made anywhere in the tolerance, less or more an exponential wear: density at y past the edge. */
const wornDensity = (y: number, tolerance: number, scale: number): number =>
  y < 0
    ? 0
    : y < tolerance
      ? (1 - Math.exp(-y / scale)) / tolerance
      : (Math.exp((tolerance - y) / scale) - Math.exp(-y / scale)) / tolerance;

const growthOf = ({ tolerance }: Way, blur: number): number => Math.max(Math.min(tolerance / 4, burr), blur);

const densityAlong = (way: Way, size: number, blur: number): number => {
  const y = way.sign * (size - way.from);
  const growth = growthOf(way, blur);
  return (
    (y >= 0 && y <= way.tolerance ? unworn / way.tolerance : 0) +
    worn * wornDensity(y, way.tolerance, (way.wear * way.run) / 2) +
    ruined * ruinDensity(y, way.wear * 2) +
    (y < 0 ? (grown / growth) * Math.exp(y / growth) : 0) +
    anythingAt(y, way.from)
  );
};

/** Least wear worth the name, of the size, where the manual gives no wear limit: common practice, no source. */
const usualWear = 0.001;
const finest = 0.002;
/** Dirt and burrs stand up by so much at most, mm: common practice, no source. */
const burr = 0.01;
/** A whole place may lie past its limits as made for some other reason, once in fifty: common practice, no source. */
const seldomGrown = 0.02;
/** Undersizes and oversizes end at about a millimetre: common practice, no source. */
const machined = 1.1;

const isGiven = ({ least, greatest }: Bounds): boolean => least !== undefined || greatest !== undefined;

/** An edge that the manual does not give: no size is below nothing, and a part is made within what it may wear. */
const wayOf = ({ new: made, goesBack }: Limits, sign: 1 | -1, run: number): Way | undefined => {
  const bounds = isGiven(made) ? made : goesBack;
  const [near, far, last] =
    sign === 1
      ? [bounds.least, bounds.greatest, goesBack.greatest]
      : [bounds.greatest, bounds.least, goesBack.least];
  const given = far ?? near;
  if (given === undefined) return undefined;
  const usual = Math.max(usualWear * Math.abs(given), 0.02);
  const from = near ?? (sign === 1 && given > 0 ? 0 : given - sign * usual);
  const edge = far ?? from + sign * usual;
  const tolerance = Math.max(sign * (edge - from), finest);
  const room = last === undefined ? 0 : sign * (last - edge);
  return { from, sign, tolerance, wear: room > 0 ? room : Math.max(2 * tolerance, usual), run };
};

/** Parts wear up to twice as fast as the manual counts on, and a young engine may have parts that are not: at least this share. */
const leastRun = 0.3;

/**
 * Share of the wear allowed that is nothing out of the ordinary after so many hours.
 *
 * @param hours  run; undefined where nobody knows
 * @param life   hours in which the manual counts on the wear allowed
 * @returns 0.3 to 1; 1 from half the life on
 * @source  common practice, no source
 * @example runShare(1500, 6000) // 0.5
 */
export const runShare = (hours: number | undefined, life: number | undefined): number =>
  hours === undefined || life === undefined || !(hours >= 0) || !(life > 0)
    ? 1
    : Math.min(1, Math.max(leastRun, (2 * hours) / life));

/**
 * What an honest reading may show, before anything else has been read.
 *
 * @param limits  as made and as may go back, mm
 * @param wears   which way wear takes the size
 * @param blur    standard uncertainty of a reading, mm
 * @param run     share of the wear allowed that the hours run lead to expect at most
 * @returns density per mm; undefined where there are no limits to go by
 */
export const expectationOf = (
  limits: Limits | undefined,
  wears: Characteristic['wears'],
  blur: number,
  run = 1,
): Expectation | undefined => {
  if (!limits) return undefined;
  const signs: readonly (1 | -1)[] = wears === 'either' ? [1, -1] : [wears === 'larger' ? 1 : -1];
  const ways = signs.flatMap((sign) => wayOf(limits, sign, run) ?? []);
  const [first] = ways;
  if (!first) return undefined;
  const edge = Math.max(blur, finest);
  const room = (size: number): number =>
    Math.max(
      seldomGrown,
      ...ways.map((way) => Math.exp(-Math.max(0, way.sign * (way.from - size)) / growthOf(way, edge))),
    );
  return {
    density: (size) => ways.reduce((sum, way) => sum + densityAlong(way, size, edge), 0) / ways.length,
    peak:
      Math.max(
        ...ways.map(
          ({ tolerance, wear }) =>
            unworn / tolerance + worn / Math.max(tolerance, (wear * run) / 2) + ruined / wear,
        ),
      ) +
      grown / edge +
      anything,
    usual: Math.min(...ways.map(({ tolerance, wear }) => 1 / (tolerance + wear))),
    ordinary: Math.max(...ways.map(({ wear }) => wear)),
    middle:
      ways.reduce((sum, { from, sign, tolerance }) => sum + from + (sign * tolerance) / 2, 0) / ways.length,
    grownBy: (size) => (ways.length > 1 ? 0 : Math.max(0, first.sign * (first.from - size))),
    room,
    roomByOthers: room,
    machinedTo: (size) =>
      ways.some(({ from, sign }) => sign * (size - from) > 0 && sign * (size - from) < machined),
  };
};
