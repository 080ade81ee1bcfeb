/** @module Bolts, nuts and studs of an engine type as the core uses them: thread, stages, holes, order, stretch, tightening again. */
import type { Hours, Millimetres, NewtonMetres, Radians } from '../quantity/brand.ts';
import type { Typed } from '../quantity/typed.ts';

/** One stage of tightening, with its figure as the manual prints it. */
export type Stage =
  | { readonly kind: 'torque'; readonly torque: NewtonMetres; readonly printed: Typed }
  /** Turned on from where the stage before has ended. */
  | { readonly kind: 'angle'; readonly angle: Radians; readonly printed: Typed };

/** Where a bolt stands in the plane of its joint: along to the right, across downwards. */
export interface Hole {
  readonly name: string;
  readonly x: Millimetres;
  readonly y: Millimetres;
}

/** When a joint is tightened again, and what is pulled then. */
export interface TightenAgain {
  /** The operation after which it is due, and the one by which it is done. */
  readonly after?: string;
  readonly by?: string;
  /** After so much running with its owner. */
  readonly hours?: Hours;
  readonly cold: boolean;
  readonly how: string;
  readonly stages: readonly Stage[];
}

export interface Fastener {
  readonly name: string;
  readonly title: string;
  readonly at: string;
  readonly count: number;
  readonly diameter: Millimetres;
  readonly pitch: Millimetres;
  readonly class: '8.8' | '10.9' | '12.9';
  readonly threadState: 'dry' | 'oiled' | 'compound';
  readonly friction: readonly [number, number];
  readonly stages: readonly Stage[];
  readonly hand: 'right' | 'left';
  /** Of one place. */
  readonly holes?: readonly Hole[];
  /** The maker's own, bolt by bolt; or how it is reckoned from the holes. */
  readonly order?: readonly string[] | 'centre out' | 'crosswise' | 'spiral';
  /** Stretched for good as they are tightened. */
  readonly stretch?:
    | { readonly kind: 'once' }
    | { readonly kind: 'up to a length'; readonly longest: Millimetres };
  /** The one-use part that takes the place of used ones. */
  readonly renewedBy?: string;
  readonly again: readonly TightenAgain[];
  readonly source?: string;
}
