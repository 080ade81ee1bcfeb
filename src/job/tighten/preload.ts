/** @module The tension that a stage leaves in each bolt, for information: least, greatest, and the proof load of its thread. */
import type { Fastener, Stage } from '../../engine/fastener.ts';
import { typedText } from '../../quantity/typed.ts';
import { reckonTyped } from '../../reckon/given.ts';
import { preloadReckoning } from '../../reckon/preload.ts';

export interface StagePreload {
  /** kN. */
  readonly least: number;
  readonly greatest: number;
  readonly proofLoad: number;
}

/** None of an angle: it is turned on from a torque, and by how much that pulls nobody here can tell. */
export const stagePreload = (fastener: Fastener, stage: Stage): StagePreload | undefined => {
  if (stage.kind === 'angle') return undefined;
  const { diameter, pitch, threadState, friction } = fastener;
  const done = reckonTyped(preloadReckoning, {
    thread: `M${diameter}x${pitch}`,
    class: fastener.class,
    torque: typedText(stage.printed),
    state: threadState,
    'least-friction': String(friction[0]),
    'greatest-friction': String(friction[1]),
  });
  if (done.kind === 'refused') return undefined;
  const { least, greatest, 'proof-load': proof } = done.value.reckoned.results;
  return {
    least: Number(least?.value),
    greatest: Number(greatest?.value),
    proofLoad: Number(proof?.value),
  };
};
