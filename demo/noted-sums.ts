/** @module The sums of an operation noted in a story, as whoever does it would: those asked for, and those that can be had. */
import { noteSum } from '../src/job/sum/noted-sum.ts';
import { sumsAt } from '../src/job/sum/sum-places.ts';
import { refusalText } from '../src/quantity/refusal.ts';
import type { Story } from './story.ts';
import { fittedBy, typedInto } from './typed-sums.ts';

/** Notes every sum of an operation that can be reckoned; one that must be and cannot is a fault in the story. */
export const noteSums = (story: Story, by: string, operation: string): void => {
  const { engine } = story.job().sheet;
  const known = engine.operations.get(operation);
  if (known === undefined) throw new Error(`${engine.title} has no operation ${operation}`);
  for (const { sum, place } of sumsAt(story.job(), known)) {
    const named = { operation, sum: sum.name, ...(place && { place: place.id }) };
    const asked = noteSum(story.job(), named, typedInto(engine.id, operation, sum.name), {
      fitted: fittedBy(engine.id, operation, sum.name),
      note: '',
    });
    if (asked.kind === 'answer') story.tell(by, 4, asked.value);
    else if (!sum.optional) throw new Error(`${operation}, ${sum.name}: ${refusalText(asked.refusal)}`);
  }
};
