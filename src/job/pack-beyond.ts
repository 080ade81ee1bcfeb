/** @module A pack needed that the pump is not made to take: how far out, which way, and where to look for the cause. */
import type { PumpTiming } from '../engine/pump-timing.ts';
import { type Millimetres, mm } from '../quantity/brand.ts';
import { formatFigure } from '../quantity/figure.ts';
import { type CamLifts, pumpCamLifts } from './cam-lifts.ts';
import type { OpenJob } from './job.ts';

export interface Beyond {
  /** How far past the range of packs, above 0. */
  readonly by: Millimetres;
  readonly way: 'thicker' | 'thinner';
  /** How the tappet stands against its datum for such a pack to be needed. */
  readonly tappet: 'too deep' | 'too high';
  /** What is out, in words. */
  readonly says: string;
  /** Where to look, likeliest first. */
  readonly lookAt: readonly string[];
}

/** A lift this far below the highest of its shaft is worn: common practice, no source. */
const wornBy = 0.05;
/** Sums of decimals meet to a rounding of the machine. */
const rounding = 1e-6;

const written = (length: number): string => `${formatFigure(length, 3)} mm`;

const pastRange = ({ range }: PumpTiming, needed: number) => {
  const { least = -Infinity, greatest = Infinity } = range;
  if (needed > greatest + rounding)
    return { by: needed - greatest, way: 'thicker', bound: greatest } as const;
  if (needed < least - rounding) return { by: least - needed, way: 'thinner', bound: least } as const;
  return undefined;
};

/** What the cam says of a tappet that stands too deep. */
const ofTheCam = (cams: CamLifts | undefined, number: number): readonly string[] => {
  const cam = cams?.lifts.find((one) => one.number === number);
  if (cams === undefined || cam?.lift === undefined)
    return ['wear of cam, roller or tappet: measure the lift of its cam'];
  const low = cam.belowHighest ?? 0;
  const lifts = `${cam.title} lifts ${written(cam.lift)}`;
  if (low >= wornBy || (cam.belowAsMade ?? 0) > rounding)
    return [
      `${lifts}, ${low >= wornBy ? `${written(low)} less than the highest` : `${written(cam.belowAsMade ?? 0)} less than it is made with`}: the cam is worn`,
      'wear of its roller or tappet',
    ];
  return [`wear of its roller or tappet: ${lifts}, as much as the others`];
};

const others = 'wrong parts: a pump, tappet or camshaft of another make of this engine';

/**
 * What it points at when a pump needs a pack outside its range.
 *
 * A worn cam or tappet stands deeper at the timing point than it should. Under the flange that asks for a thinner pack,
 * under the button for a thicker one; the other way about nothing has worn, and parts, datum or timing point are wrong.
 *
 * @param needed  packs needed of all pumps, by place, mm; as far as they are known
 * @source  geometry; common practice, no source: out of range means a worn cam or tappet, or wrong parts
 */
export const beyondRange = (
  job: OpenJob,
  timing: PumpTiming,
  needed: ReadonlyMap<string, Millimetres>,
): ReadonlyMap<string, Beyond> => {
  const cams = pumpCamLifts(job);
  const out = [...needed].flatMap(([place, pack]) => {
    const past = pastRange(timing, pack);
    return past === undefined ? [] : [{ place, pack, ...past }];
  });
  const allOneWay =
    needed.size > 1 && out.length === needed.size && new Set(out.map(({ way }) => way)).size === 1;
  return new Map(
    out.map(({ place, pack, by, way, bound }) => {
      const deepens = timing.packIs === 'depth less datum';
      const tappet = (way === 'thicker') === deepens ? 'too deep' : 'too high';
      const datum = `the datum (${written(timing.datum)}) and the timing point: wrong figure, wrong stroke, or the crank not at its mark`;
      const own =
        tappet === 'too deep'
          ? ofTheCam(cams, job.sheet.engine.places.get(place)?.number ?? 0)
          : ['dirt, burrs or an old gasket on the pad or under the depth gauge'];
      const lookAt = allOneWay
        ? [`all pumps are out the same way: ${datum}`, ...own, others]
        : [...own, others, datum];
      return [
        place,
        {
          by: mm(by),
          way,
          tappet,
          says: `needs ${written(pack)}, ${written(by)} ${way === 'thicker' ? 'more than the thickest' : 'less than the thinnest'} pack that the pump is made to take (${written(bound)}): the tappet stands ${tappet}`,
          lookAt,
        } satisfies Beyond,
      ] as const;
    }),
  );
};
