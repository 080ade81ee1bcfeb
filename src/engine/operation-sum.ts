/** @module A sum bound to an operation: where its inputs come from, and what its results must keep. */
import type { Typed } from '../quantity/typed.ts';
import type { Dimension } from '../quantity/unit.ts';
import type { ofPumps, ofValves } from './sum-file.ts';

/** Which of several sizes. */
export type WhichSize = 'least' | 'greatest' | 'mean';

export type GivenInput =
  /** As the manual prints it. */
  | { readonly kind: 'text'; readonly text: string }
  | {
      readonly kind: 'characteristic';
      readonly name: string;
      /** The most worn where it is left out. */
      readonly of?: WhichSize;
      /** The place of the sum, or the one that belongs to it, where it is left out. */
      readonly where?: { readonly place: string } | 'all places';
    }
  | { readonly kind: 'limit'; readonly name: string; readonly is: 'least' | 'greatest' }
  | {
      readonly kind: 'engine';
      readonly of: 'stroke' | 'rod' | 'pin-offset' | 'cylinders' | 'firing-order';
    }
  | {
      readonly kind: 'fastener';
      readonly name: string;
      readonly of:
        | 'thread'
        | 'diameter'
        | 'class'
        | 'state'
        | 'torque'
        | 'least-friction'
        | 'holes'
        | 'order'
        | 'greatest-friction';
    }
  | { readonly kind: 'list'; readonly name: string; readonly as: 'named' | 'rows' }
  | { readonly kind: 'pumps'; readonly of: (typeof ofPumps)[number] }
  | { readonly kind: 'valves'; readonly of: (typeof ofValves)[number] }
  | {
      readonly kind: 'instrument';
      readonly of: 'permissible-error' | 'resolution' | 'repeatability';
      /** What kind of instrument. */
      readonly name: string;
    }
  /** Of a sum that was noted before: what went into it, or what came of it. */
  | { readonly kind: 'sum'; readonly name: string; readonly takes: 'input' | 'result'; readonly key: string }
  /** The error that two other inputs of this sum have in common. */
  | { readonly kind: 'shared'; readonly by: readonly [string, string] };

export interface KeptFigures {
  /** In the core's unit. */
  readonly bounds: { readonly least?: number; readonly greatest?: number };
  /** Of which kind the bounds are figures. */
  readonly dimension?: Dimension;
  readonly printed: { readonly least?: Typed; readonly greatest?: Typed };
}

/** Its own figures are of standard, where others hold for other sizes. */
export interface Kept extends KeptFigures {
  /** A result's key; `*` in it stands for anything between two points. */
  readonly result: string;
  /** The component by whose size the limits go. */
  readonly sizeOf?: string;
  /** By the name of the size. */
  readonly sizes?: ReadonlyMap<string, KeptFigures>;
  /** Of a result in words: which will do. */
  readonly is?: readonly string[];
}

export interface OperationSum {
  readonly name: string;
  /** Name of the reckoning. */
  readonly reckon: string;
  readonly title?: string;
  /** Kind of place where it is done once a place; once for the operation where it is left out. */
  readonly at?: string;
  readonly given: ReadonlyMap<string, GivenInput>;
  readonly keeps: readonly Kept[];
  /** May be left undone. */
  readonly optional: boolean;
  readonly source?: string;
}
