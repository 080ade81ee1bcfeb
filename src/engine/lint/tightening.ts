/** @module Rule: torques rise stage by stage, and none strains its thread beyond the proof load. */
import type { EngineType, Fastener } from '../engine-type.ts';
import { type Finding, wrong } from '../finding.ts';
import { proofLoad, tension } from '../thread.ts';

const kilonewtons = (force: number): string => `${(force / 1000).toFixed(1)} kN`;

const rising = ({ name, title, stages }: Fastener): readonly Finding[] =>
  stages.flatMap((stage, index) => {
    if (stage > (stages[index - 1] ?? 0)) return [];
    return [
      wrong(
        ['fasteners', name, 'stages', index],
        `stage ${index + 1} of ${title} is not above the one before`,
        'list the torques in the order in which they are pulled, each higher than the last',
      ),
    ];
  });

/** Nothing that is bolted up at a bench lies outside: greased steel is near 0.08, dry rough steel near 0.3. */
const frictionRange = [0.04, 0.5] as const;

const friction = ({ name, title, friction: [least, greatest] }: Fastener): readonly Finding[] =>
  least >= frictionRange[0] && greatest <= frictionRange[1] && least <= greatest
    ? []
    : [
        wrong(
          ['fasteners', name, 'friction'],
          `the coefficients of friction of ${title}, ${least} and ${greatest}, cannot be right`,
          `give the least and the greatest, between ${frictionRange[0]} and ${frictionRange[1]}`,
        ),
      ];

const proof = (fastener: Fastener): readonly Finding[] => {
  const load = proofLoad(fastener, fastener.class);
  const least = Math.max(fastener.friction[0], frictionRange[0]);
  return fastener.stages.flatMap((stage, index) => {
    const force = tension(fastener, stage, least);
    if (force <= load) return [];
    return [
      wrong(
        ['fasteners', fastener.name, 'stages', index],
        `${Number(stage.toFixed(1))} N·m would pull ${fastener.title} with ${kilonewtons(force)} at a friction of ${least}, and the proof load of its thread in class ${fastener.class} is ${kilonewtons(load)}`,
        'compare thread, class, thread state and torque with the manual',
      ),
    ];
  });
};

export const tightening = ({ fasteners }: EngineType): readonly Finding[] =>
  [...fasteners.values()].flatMap((fastener) => [
    ...rising(fastener),
    ...friction(fastener),
    ...proof(fastener),
  ]);
