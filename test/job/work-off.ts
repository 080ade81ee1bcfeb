/** @module Operations worked off one after another in a story: what each needs read in the middle of its limits, reckoned, tightened, signed. */
import { signAll, tightenAll } from '../../demo/bench-work.ts';
import { noteSums } from '../../demo/noted-sums.ts';
import { fitter } from '../../demo/people.ts';
import type { Story } from '../../demo/story.ts';
import type { Operation } from '../../src/engine/engine-type.ts';
import { measuredFor } from '../../src/engine/measured-for.ts';
import { operationsIn, scopeOf } from '../../src/job/scope.ts';
import { cellKey } from '../../src/measure/reading.ts';
import { entryOrder } from '../../src/measure/scheme.ts';
import { readingOf } from '../browser/sound-engine.ts';

/** Works off every operation of some phases that is not signed, in the order of the engine type. */
export const workOff = (told: Story, phases: readonly Operation['phase'][]): void => {
  for (const operation of operationsIn(told.job())) {
    const { name, phase, needs, readAgain } = operation;
    const { engine } = told.job().sheet;
    if (!phases.includes(phase) || told.job().done.has(name)) continue;
    // What it reads anew is read once its joints are tight.
    if (readAgain) tightenAll(told, fitter, operation);
    for (const [at, cell] of entryOrder(engine).entries())
      if (
        measuredFor(engine, needs).has(cell.characteristic) &&
        scopeOf(told.job()).inQuestion(cell.characteristic, cell.place) &&
        !told.job().sheet.readings.has(cellKey(cell))
      )
        told.tell(fitter, 2, readingOf(engine, cell, at));
    noteSums(told, fitter, name);
    signAll(told, fitter, [phase], name);
  }
};
