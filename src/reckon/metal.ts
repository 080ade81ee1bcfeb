/** @module What the metals of an engine's parts do under load and heat. */
import type { Material } from '../engine/engine-type.ts';

export interface Elastic {
  /** MPa */
  readonly modulus: number;
  readonly poisson: number;
}

interface Metal extends Elastic {
  /** kg/m³ */
  readonly density: number;
  /** J/(kg·K) */
  readonly heat: number;
  /** W/(m·K) */
  readonly conduction: number;
}

/* source: handbook tables of engineering metals, from memory. */
const table: Readonly<Record<Material, Metal>> = {
  steel: { modulus: 207_000, poisson: 0.3, density: 7850, heat: 470, conduction: 45 },
  'cast iron': { modulus: 105_000, poisson: 0.25, density: 7200, heat: 500, conduction: 50 },
  aluminium: { modulus: 71_000, poisson: 0.33, density: 2700, heat: 900, conduction: 150 },
  bronze: { modulus: 103_000, poisson: 0.34, density: 8800, heat: 380, conduction: 60 },
};

export const metals = Object.keys(table) as readonly Material[];

/**
 * The metal that was named.
 *
 * @param name  one of the metals known
 * @returns it; a name that is not known is a mistake in the program, since the inputs let no other through
 * @source  none: it looks up
 * @example metalNamed('steel') // 'steel'
 */
export const metalNamed = (name: string | undefined): Material => {
  const found = metals.find((known) => known === name);
  if (found === undefined) throw new Error(`no metal ${name}`);
  return found;
};

/**
 * What a metal does under load and heat.
 *
 * @param name  one of the metals known
 * @returns modulus, MPa; Poisson's ratio; density, kg/m³; heat, J/(kg·K); conduction, W/(m·K)
 * @source  handbook tables, from memory
 * @example metal('steel').density // 7850 kg/m³
 */
export const metal = (name: Material): Metal => table[name];
