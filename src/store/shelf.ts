/** @module The shelf beside the journal: engine type files, from which jobs copy. */

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
  /** Every version of one engine type, the newest first; none where the shelf has no such type. */
  readonly engineTypeVersions: (id: string) => Promise<readonly ShelvedType[]>;
  /** Puts an engine type on the shelf; the same version again replaces it there, jobs keep their own. */
  readonly putEngineType: (type: ShelvedType) => Promise<void>;
  /** Puts a version on the shelf that is not there yet; false, and nothing changed, where it is. */
  readonly addEngineType: (type: ShelvedType) => Promise<boolean>;
}
