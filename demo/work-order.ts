/** @module Signs the operations of a part of the job, in the order of the engine type. */
import type { Operation } from '../src/engine/engine-type.ts';
import type { Story } from './story.ts';

export const signAll = (
  story: Story,
  by: string,
  phases: readonly Operation['phase'][],
  before: (operation: string) => void = () => undefined,
): void => {
  for (const { name, phase } of story.job().sheet.engine.operations.values()) {
    if (!phases.includes(phase)) continue;
    before(name);
    story.tell(by, 35, { kind: 'do operation', operation: name, note: '' });
  }
};
