/** @module The way to a place on the engine's map: what comes off on it, each with its step and how far that is. */
import type { EngineType, PlaceId } from '../engine/engine-type.ts';
import type { WayStep, WayToPlace } from '../job/way-to-place.ts';
import { type Box, boxed, lettering, pens } from './ink.ts';
import { type SvgNode, svg } from './svg.ts';

export type OffStanding = 'off' | 'now' | 'later';

/** When what is at a place comes off. */
export interface WaySign {
  /** 1 and up. */
  readonly step: number;
  readonly standing: OffStanding;
}

export interface MapWay {
  /** Where it leads: `main bearing 2`. */
  readonly to: string;
  readonly signs: ReadonlyMap<PlaceId, WaySign>;
}

const standings: Readonly<Record<WayStep['standing'], OffStanding>> = {
  done: 'off',
  'open now': 'now',
  'not yet': 'later',
};

/** What of a way can be seen on the map: parts that belong to a place. */
export const mapWayOf = (
  { placeKinds }: Pick<EngineType, 'placeKinds'>,
  { title, steps, placesAt }: WayToPlace,
): MapWay => ({
  to: title,
  signs: new Map(
    steps.flatMap(({ operation: { name, removes }, standing }, at) =>
      removes
        .filter((part) => placeKinds.has(part))
        .flatMap((kind) => placesAt(name, kind))
        .map((place) => [place, { step: at + 1, standing: standings[standing] }] as const),
    ),
  ),
});

const high = 18;

/** Where a flag has room for a word it has it; its ground tells the same. */
const wordsOf = ({ step, standing }: WaySign, wide: boolean): string =>
  wide && standing !== 'later' ? `${step} ${standing}` : String(step);

const flag = (box: Box, sign: WaySign): readonly SvgNode[] => {
  const words = wordsOf(sign, box.width >= 44);
  const width = 8 + 8 * words.length;
  const ground = { off: pens.ink, now: pens.accent, later: pens.paper }[sign.standing];
  const at = { x: box.x + (box.width - width) / 2, y: box.y + box.height - high, width, height: high };
  return [
    boxed(at, { fill: ground, stroke: sign.standing === 'now' ? pens.accent : pens.ink }),
    lettering(words, at.x + width / 2, at.y + 14, {
      'font-weight': 700,
      'text-anchor': 'middle',
      fill: sign.standing === 'later' ? pens.ink : pens.paper,
    }),
  ];
};

/** Over a place: its outline, broken unless it is off, and the flag of its step. What is chosen is the place beneath. */
export const flagOver = (box: Box, sign: WaySign): SvgNode =>
  svg(
    'g',
    { 'data-way': sign.standing, 'aria-hidden': 'true', 'pointer-events': 'none' },
    boxed(
      { x: box.x - 2, y: box.y - 2, width: box.width + 4, height: box.height + 4 },
      {
        fill: 'none',
        stroke: sign.standing === 'off' ? pens.ink : pens.accent,
        'stroke-width': 3,
        ...(sign.standing !== 'off' && { 'stroke-dasharray': '7 4' }),
      },
    ),
    ...flag(box, sign),
  );

/** `comes off at step 7, can be done now`. */
export const signWords = ({ step, standing }: WaySign): string =>
  ({
    off: `came off at step ${step}`,
    now: `comes off at step ${step}, which can be done now`,
    later: `comes off at step ${step}, later`,
  })[standing];

/** Two lines of lettering below the map's own legend. */
export const legendHigh = 52;

export const legendOfWay = (y: number, width: number, { to }: MapWay): readonly SvgNode[] => {
  const samples: readonly (readonly [WaySign, string])[] = [
    [{ step: 1, standing: 'off' }, 'is off'],
    [{ step: 2, standing: 'now' }, 'can come off'],
    [{ step: 3, standing: 'later' }, 'at that step'],
  ];
  return [
    lettering(`the way to ${to}`, 4, y + 16, { 'font-size': 16 }),
    ...samples.flatMap(([sign, says], at) => {
      const x = 4 + ((width - 8) / samples.length) * at;
      return [
        ...flag({ x, y: y + 26, width: 44, height: high }, sign),
        lettering(says, x + 50, y + 40, { 'font-size': 14 }),
      ];
    }),
  ];
};
