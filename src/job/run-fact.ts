/** @module What happens while an engine runs in: steps begun, gauges read, faults found and put right. */
import type { GaugeName } from '../engine/gauge.ts';
import type { Typed } from '../quantity/typed.ts';

export type Smoke = 'clear' | 'black' | 'blue' | 'white';

/** What one gauge showed. */
export interface GaugeReading {
  readonly gauge: GaugeName;
  /** From 1, where each cylinder has its own. */
  readonly cylinder?: number;
  readonly typed: Typed;
}

export type RunFact =
  | {
      readonly kind: 'run step begun';
      /** From 1, in the order of the engine type. */
      readonly step: number;
      /** How long after the start oil pressure showed, where the engine was started for it. */
      readonly oilPressureAfter?: Typed;
      readonly note: string;
    }
  | {
      /** All gauges, at one moment. */
      readonly kind: 'run reading taken';
      readonly step: number;
      /** Since the step was begun. */
      readonly minute: number;
      readonly gauges: readonly GaugeReading[];
      readonly smoke?: Smoke;
      /** Where it leaks, in words; left out where nobody looked, `none` where it is dry. */
      readonly leaks?: string;
      readonly note: string;
    }
  | { readonly kind: 'run reading struck out'; readonly reading: string; readonly why: string }
  | {
      readonly kind: 'fault noted';
      readonly says: string;
      readonly place?: string;
      /** Whether it bears on the run: then what the engine type says is run again. */
      readonly stopsRun: boolean;
    }
  /** What was done about a fault, which is named by the id of its event. */
  | { readonly kind: 'fault put right'; readonly fault: string; readonly done: string };
