/** @module The shelf beside the journal: engine type files and the register of instruments, from which jobs copy. */
import type { Instrument } from '../measure/instrument.ts';

export interface ShelvedType {
  readonly id: string;
  readonly title: string;
  readonly version: number;
  /** The file as it was given. */
  readonly text: string;
}

export interface Shelf {
  /** The newest version of each engine type, by title. */
  readonly engineTypes: () => Promise<readonly ShelvedType[]>;
  /** Puts an engine type on the shelf; the same version again replaces it there, jobs keep their own. */
  readonly putEngineType: (type: ShelvedType) => Promise<void>;
  /** By name. */
  readonly instruments: () => Promise<readonly Instrument[]>;
  /** Puts an instrument in the register, in place of the one of the same name. */
  readonly putInstrument: (instrument: Instrument) => Promise<void>;
}
