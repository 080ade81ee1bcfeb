/** @module Timing of fuel pumps by shims as the core uses it: place, sign, rate, cam and second check. */
import { type Millimetres, mm, type Radians } from '../quantity/brand.ts';
import type { CamLaw } from './cam-law.ts';

/** How a fitted pump is proved by a second spill. */
export interface TimingCheck {
  /** The characteristic read at each pump. */
  readonly of: string;
  /** What it reads when the pump is right: radians, or mm where a length on the rim is read. */
  readonly nominal: number;
  readonly largerIs: 'earlier' | 'later';
  /** Of a length on the rim: mm for each radian of crank. */
  readonly rim?: number;
  /** How far apart the pumps of one engine may be. */
  readonly spread?: Radians;
}

export interface PumpTiming {
  readonly at: string;
  readonly datum: Millimetres;
  readonly depth: string;
  /** Datum less depth where it is left out. */
  readonly packIs?: 'datum less depth' | 'depth less datum';
  readonly found?: string;
  /** The characteristic that holds the lift of each pump's cam. */
  readonly lift?: string;
  readonly shimsSit: 'under the pump flange' | 'under the tappet button' | 'on the pad';
  readonly addingShims: 'retards' | 'advances';
  /** Crank angle per millimetre of shim, unsigned: as given, else by the cam. */
  readonly rate: Radians;
  /** As the manual gives it, where it does. */
  readonly rateGiven?: Radians;
  readonly cam?: CamLaw;
  readonly tolerance: Millimetres;
  readonly mostShims: number;
  readonly range: { readonly least?: number; readonly greatest?: number };
  readonly shims: readonly Millimetres[];
  readonly check?: TimingCheck;
}

/** The pack that a pump needs, by the depth measured at the timing point. */
export const packNeeded = ({ datum, packIs }: PumpTiming, depth: number): Millimetres =>
  mm(packIs === 'depth less datum' ? depth - datum : datum - depth);
