/** @module The invented workshop: its engine types, its register of instruments and its three jobs, put into a store. */
import { readEngineType } from '../src/engine/read-engine-type.ts';
import { registerId } from '../src/register/event.ts';
import { highsSolver } from '../src/solver/highs.ts';
import type { Store } from '../src/store/sql-store.ts';
import { textOf } from './files.ts';
import { awaitingDecision, awaitingDecisionId } from './jobs/awaiting-decision.ts';
import { finished, finishedId } from './jobs/finished.ts';
import { halfMeasured, halfMeasuredId } from './jobs/half-measured.ts';
import { registerEvents } from './register.ts';

const engineFiles = [
  './engines/quillfeather-3w.yaml',
  './engines/mudlark-1.yaml',
  './engines/brambleholt-6.yaml',
];

/** Ids of the jobs: half measured, awaiting a decision, finished. */
export const demoJobs: readonly string[] = [halfMeasuredId, awaitingDecisionId, finishedId];

/** Loads the workshop; ids and times are the same every time, so that loading it twice changes nothing. */
export const loadDemo = async (store: Store): Promise<void> => {
  for (const file of engineFiles) {
    const text = await textOf(file);
    const { engine } = readEngineType(text);
    if (engine)
      await store.putEngineType({ id: engine.id, title: engine.title, version: engine.version, text });
  }
  await store.register.append(registerId, 0, registerEvents);
  for (const job of [await finished(await highsSolver()), await awaitingDecision(), await halfMeasured()]) {
    for (const { picture, bytes } of job.pictures()) await store.putPicture(picture.hash, bytes);
    await store.append(job.id, 0, job.events());
  }
};
