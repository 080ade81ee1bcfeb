/** @module The events of the workshop's register: its instruments, and what it says of itself. They are only ever added. */
import type { JournalEvent } from '../journal/event.ts';
import type { Calibration, Instrument } from '../measure/instrument.ts';
import type { SlipChance } from '../measure/slips/priors.ts';
import type { Typed } from '../quantity/typed.ts';
import type { WorkshopSays } from './workshop.ts';

/** What an instrument is, whatever was found of it later. */
export type Described = Omit<Instrument, 'calibration' | 'checked'>;

/** What happened, without when and who. */
export type RegisterFact =
  /** Entered again, its figures take the place of those before; what was found of it stays. */
  | { readonly kind: 'instrument entered'; readonly instrument: Described }
  | {
      readonly kind: 'instrument checked';
      readonly name: string;
      /** `zero`, the name of a master, or what else it was held against. */
      readonly against: string;
      /** The size of what it was held against; missing where it shows only how far off it is. */
      readonly size?: Typed;
      readonly showed: Typed;
      readonly good: boolean;
      readonly note: string;
    }
  | ({
      readonly kind: 'instrument calibrated';
      readonly name: string;
      /** Whether it was found good, before anything on it was set right. */
      readonly foundGood: boolean;
      /** What must be added to what it shows. */
      readonly correction?: Typed;
      /** Expanded uncertainty of that, k = 2. */
      readonly uncertainty?: Typed;
      readonly note: string;
    } & Calibration)
  | { readonly kind: 'instrument withdrawn'; readonly name: string; readonly why: string }
  | { readonly kind: 'instrument put back'; readonly name: string; readonly why: string }
  /** A check or a calibration that was written down wrongly; its id. */
  | { readonly kind: 'entry struck out'; readonly entry: string; readonly why: string }
  /** The whole of it anew: offers made before keep what they were made with. */
  | { readonly kind: 'workshop described'; readonly workshop: WorkshopSays }
  /** How often a slip happens in this shop, as jobs booked in from now on take it. */
  | ({ readonly kind: 'slip chance set'; readonly why: string } & SlipChance)
  | { readonly kind: 'slip chance left as usual'; readonly slip: string; readonly why: string };

export type RegisterEvent = JournalEvent<RegisterFact>;

/** The one register of a workshop. */
export const registerId = 'instruments';
