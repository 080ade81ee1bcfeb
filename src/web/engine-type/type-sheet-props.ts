/** @module What every sheet of an engine type is given. */
import type { EngineTypeListed } from '../jobs/workshop-lists.ts';
import type { Draft } from './draft.ts';

export interface TypeSheetProps {
  readonly newest: EngineTypeListed;
  /** The newest first. */
  readonly versions: readonly EngineTypeListed[];
  readonly draft: Draft;
}
