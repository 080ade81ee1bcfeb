/** @module Before the first browser test: the app is built, where its sources are newer than what was built. */
import { buildWebIfStale } from '../../scripts/web.mjs';

export default async (): Promise<void> => {
  const failure = await buildWebIfStale();
  if (failure) throw new Error(`the browser app does not build:\n${failure}`);
};
