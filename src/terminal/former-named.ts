/** @module The former overhaul whose sizes a job takes with it, as it is named in the terminal. */
import type { EngineType } from '../engine/engine-type.ts';
import { fittingTo } from '../measure/former.ts';
import type { FormerOverhaul } from '../measure/former-overhaul.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { formerOverhauls } from '../store/former-overhauls.ts';
import type { Store } from '../store/sql-store.ts';
import { didYouMean } from './nearest.ts';
import { plain } from './plain.ts';

/**
 * The last overhaul of the same engine, or the one named.
 *
 * @param named  its job's number; `none` for none; the last one where nothing is said
 */
export const formerNamed = async (
  store: Store,
  engine: EngineType,
  plate: string,
  named: unknown,
): Promise<Answer<FormerOverhaul | undefined>> => {
  if (named === 'none') return answer(undefined);
  const formers = await formerOverhauls(store, { engine: engine.title, plate });
  const found = named === undefined ? formers[0] : formers.find(({ number }) => number === named);
  if (found) return answer(fittingTo(found, engine));
  if (named === undefined) return answer(undefined);
  return refuse(
    `this engine was not handed over as ${plain(String(named))}`,
    'former',
    didYouMean(
      String(named),
      formers.map(({ number }) => number),
      formers.length === 0 ? 'it has not been here before: leave former out' : 'write former=none',
    ),
  );
};
