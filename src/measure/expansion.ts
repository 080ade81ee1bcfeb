/** @module How metals expand, and what a size taken warm is at 20 °C. */
import type { Material } from '../engine/engine-type.ts';

interface Expansion {
  /** Per °C. */
  readonly perDegree: number;
  /** Known to lie within ± this, per °C: alloys differ, and so do tables. */
  readonly within: number;
}

/**
 * source: steel 11.5 to 11.7e-6 and grey iron 10.8e-6 in handbooks, ISO 3650 11.5e-6 for gauge steel; ductile iron
 * 10.6 to 11.2e-6, aluminium 356.0 21.5e-6 and 6061 23.6e-6, bearing bronze 18.0e-6 (Callister, Materials Science and
 * Engineering, Appendix B). One table has grey iron at 9e-6, and piston alloys rich in silicon lie near 19e-6 (from
 * memory): the widths hold these too.
 */
const expansions: Readonly<Record<Material, Expansion>> = {
  steel: { perDegree: 11.5e-6, within: 1.5e-6 },
  'cast iron': { perDegree: 10.8e-6, within: 1.8e-6 },
  aluminium: { perDegree: 21.5e-6, within: 2.5e-6 },
  bronze: { perDegree: 18e-6, within: 1e-6 },
};

/** How a metal expands, with the half width of what is known of it. */
export const expansionOf = (material: Material): Expansion => expansions[material];

/**
 * How far a part of no stated material may expand from the way its instrument does, per °C: a light alloy
 * against steel. From memory.
 */
const apart = 12e-6;
/** ISO 1. */
const reference = 20;
/** A part and an instrument that lay side by side differ by no more, °C: common practice, no source. */
const sideBySide = 1;
/** A thermometer on a part is no better than this, °C: common practice, no source. */
const thermometer = 0.5;
const third = 1 / Math.sqrt(3);

/** What is known of the heat at a reading; temperatures in °C, missing where none was typed. */
interface Heat {
  readonly part?: number | undefined;
  readonly instrument?: number | undefined;
  readonly partOf?: Material | undefined;
  readonly instrumentOf?: Material | undefined;
}

interface AtReference {
  /** Times the size as read gives the size at 20 °C. */
  readonly factor: number;
  /** Standard uncertainty from how the metals expand, per mm of size; with the sign of the part's heat. */
  readonly expansion: number;
  /** Standard uncertainty from the temperatures, per mm of size. */
  readonly temperature: number;
}

/** The usual case, no temperature typed and no material named, needs no sum at each reading. */
const unheated: AtReference = {
  factor: 1,
  expansion: 0,
  temperature: expansions.steel.perDegree * sideBySide * third,
};

/**
 * What brings a size as read to 20 °C, and what is not known of that.
 *
 * size at 20 °C = size as read × (1 + αi (Ti - 20)) / (1 + αp (Tp - 20)), p the part, i the instrument.
 *
 * - Of one temperature the other is taken to be the same within ± 1 °C, of two each is known to ± 0.5 °C.
 * - Where the part's material is not stated it is taken to expand as its instrument does, within ± 12e-6 per °C:
 *   a part and an instrument equally warm are then known less well, never wrongly moved.
 * - Where no temperature was typed 20 °C is taken, part and instrument within ± 1 °C of one another.
 *
 * @param heat  temperatures in °C, -50 to 200 sensible, and materials (the instrument's is steel unless given)
 * @returns a factor and two standard uncertainties per mm of size
 * @source  ISO 1; JCGM 100:2008, H.1, equation (H.3), in closed form; 4.3.7 for the widths
 * @example atReference({ part: 30, partOf: 'aluminium' }).factor // 0.99990
 */
export const atReference = ({ part, instrument, partOf, instrumentOf }: Heat): AtReference => {
  if (part === undefined && instrument === undefined && partOf === undefined && instrumentOf === undefined) {
    return unheated;
  }
  const tool = expansions[instrumentOf ?? 'steel'];
  const metal = partOf ? expansions[partOf] : { perDegree: tool.perDegree, within: apart };
  const partOff = (part ?? instrument ?? reference) - reference;
  const toolOff = (instrument ?? part ?? reference) - reference;
  const difference = metal.perDegree - tool.perDegree;
  const measured = part !== undefined && instrument !== undefined;
  const typed = part !== undefined || instrument !== undefined;
  return {
    factor: (1 + tool.perDegree * toolOff) / (1 + metal.perDegree * partOff),
    expansion:
      Math.sign(partOff) * third * Math.hypot(metal.within * partOff, partOf ? tool.within * toolOff : 0),
    temperature: measured
      ? third * thermometer * Math.hypot(metal.perDegree, tool.perDegree)
      : third * Math.hypot(metal.perDegree * sideBySide, typed ? difference * thermometer : 0),
  };
};
