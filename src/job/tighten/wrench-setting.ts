/** @module What the torque wrench is set to for a stage: the figure itself, or less where an adapter makes it longer. */
import type { Stage } from '../../engine/fastener.ts';
import { type Answer, answer } from '../../quantity/refusal.ts';
import { typedText } from '../../quantity/typed.ts';
import { reckonTyped } from '../../reckon/given.ts';
import { torqueAdapterReckoning } from '../../reckon/torque-adapter.ts';
import type { WrenchAdapter } from '../event.ts';

/** N·m on the scale of the wrench; refuses an adapter that no wrench can have. */
export const wrenchSetting = (
  { torque, printed }: Extract<Stage, { kind: 'torque' }>,
  adapter: WrenchAdapter | undefined,
): Answer<number> => {
  if (adapter === undefined) return answer(torque);
  const done = reckonTyped(torqueAdapterReckoning, {
    torque: typedText(printed),
    wrench: typedText(adapter.wrench),
    adapter: typedText(adapter.adapter),
    ...(adapter.angle && { angle: typedText(adapter.angle) }),
  });
  if (done.kind === 'refused') return done;
  const setting = done.value.reckoned.results.setting?.value;
  return answer(typeof setting === 'number' ? setting : torque);
};
