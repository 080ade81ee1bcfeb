/** @module Metric threads: stress area, proof load, and the tension that a torque gives. */
import { type Millimetres, mm, type NewtonMetres, type Newtons, newtons } from '../quantity/brand.ts';
import type { Fastener } from './fastener.ts';

export interface Thread {
  /** Outer diameter, mm. */
  readonly diameter: Millimetres;
  readonly pitch: Millimetres;
}

/** Coarse pitches, mm. source: ISO 261 and ISO 262, first choice and the common second choices (from memory). */
const coarsePitches: Readonly<Record<number, number>> = {
  3: 0.5,
  4: 0.7,
  5: 0.8,
  6: 1,
  8: 1.25,
  10: 1.5,
  12: 1.75,
  14: 2,
  16: 2,
  18: 2.5,
  20: 2.5,
  22: 2.5,
  24: 3,
  27: 3,
  30: 3.5,
  33: 3.5,
  36: 4,
  39: 4,
};

/** The thread that `M12` or `M12x1.25` names; none where the coarse pitch of that diameter is not on the list. */
export const threadOf = (text: string): Thread | undefined => {
  const [, diameter = '', , written] = /^M(\d+)(x(.+))?$/.exec(text) ?? [];
  const pitch = written === undefined ? coarsePitches[Number(diameter)] : Number(written);
  return pitch === undefined ? undefined : { diameter: mm(Number(diameter)), pitch: mm(pitch) };
};

/** Pitch diameter d2 = d − 0.649519 P, mm. source: ISO 724 */
export const pitchDiameter = ({ diameter, pitch }: Thread): number => diameter - 0.649519 * pitch;

/**
 * Stress area of a metric thread, As = π/4 · ((d2 + d3)/2)².
 *
 * @param thread  diameter and pitch, mm, of the ISO 60° profile
 * @returns mm²
 * @source  ISO 898-1, with d2 and d3 = d − 1.226869 P of ISO 724
 * @example stressArea({ diameter: mm(12), pitch: mm(1.75) }) // 84.27
 */
export const stressArea = (thread: Thread): number => {
  const root = thread.diameter - 1.226869 * thread.pitch;
  return (Math.PI / 4) * ((pitchDiameter(thread) + root) / 2) ** 2;
};

/** Stress under proof load, N/mm². source: ISO 898-1; class 8.8 changes above 16 mm. */
const proofStress = (diameter: Millimetres, grade: Fastener['class']): number => {
  switch (grade) {
    case '8.8':
      return diameter <= 16 ? 580 : 600;
    case '10.9':
      return 830;
    case '12.9':
      return 970;
    default:
      return grade satisfies never;
  }
};

/**
 * Proof load of a bolt or stud with a metric thread.
 *
 * @param thread  diameter and pitch, mm
 * @returns N
 * @source  ISO 898-1, tables of proof loads
 * @example proofLoad({ diameter: mm(12), pitch: mm(1.75) }, '8.8') // 48874.6 N
 */
export const proofLoad = (thread: Thread, grade: Fastener['class']): Newtons =>
  newtons(stressArea(thread) * proofStress(thread.diameter, grade));

/**
 * Tension that a torque gives at one coefficient of friction, taken alike in the thread and under the head.
 *
 * F = T / (P/2π + µ·d2/(2·cos 30°) + µ·DKm/2), with DKm, the mean diameter on which the head or nut
 * rubs, taken as 1.25 d: hexagon heads in medium clearance holes have 1.25 d to 1.29 d (ISO 4014,
 * ISO 273), so that the tension is named a little high rather than low.
 *
 * @param thread    diameter and pitch, mm
 * @param friction  coefficient of friction, 0 and up
 * @returns N
 * @source  VDI 2230 Part 1, the long form of the torque
 * @example tension({ diameter: mm(12), pitch: mm(1.75) }, newtonMetres(93), 0.14) // 42146 N
 */
export const tension = (thread: Thread, torque: NewtonMetres, friction: number): Newtons => {
  const head = 1.25 * thread.diameter;
  const arm =
    thread.pitch / (2 * Math.PI) +
    (friction * pitchDiameter(thread)) / (2 * Math.cos(Math.PI / 6)) +
    (friction * head) / 2;
  return newtons((torque * 1000) / arm);
};
