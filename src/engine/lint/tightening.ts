/** @module Rule: torques rise stage by stage, angles follow a torque, and no torque strains its thread beyond the proof load. */
import type { EngineType } from '../engine-type.ts';
import type { Fastener } from '../fastener.ts';
import { type Finding, wrong } from '../finding.ts';
import { proofLoad, tension } from '../thread.ts';

const kilonewtons = (force: number): string => `${(force / 1000).toFixed(1)} kN`;

const rising = ({ name, title, stages }: Fastener): readonly Finding[] => {
  let before = 0;
  return stages.flatMap((stage, index) => {
    if (stage.kind === 'angle') return [];
    const higher = stage.torque > before;
    before = stage.torque;
    return higher
      ? []
      : [
          wrong(
            ['fasteners', name, 'stages', index],
            `stage ${index + 1} of ${title} is not above the one before`,
            'list the torques in the order in which they are pulled, each higher than the last',
          ),
        ];
  });
};

/** An angle tells the pull only from where the joint is already home; nobody turns a bolt on by more than a turn. */
const angles = ({ name, title, stages }: Fastener): readonly Finding[] =>
  stages.flatMap((stage, index) => {
    if (stage.kind === 'torque') return [];
    const path = ['fasteners', name, 'stages', index];
    if (index === 0)
      return [
        wrong(
          path,
          `${title} begin with an angle, and nothing says from where it is turned`,
          'put the torque to which they are pulled home before it',
        ),
      ];
    return stage.angle > 0 && stage.angle <= 2 * Math.PI
      ? []
      : [
          wrong(
            path,
            `stage ${index + 1} of ${title} cannot be turned`,
            'give an angle of more than 0 and at most 360 deg',
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
    if (stage.kind === 'angle') return [];
    const force = tension(fastener, stage.torque, least);
    if (force <= load) return [];
    return [
      wrong(
        ['fasteners', fastener.name, 'stages', index],
        `${Number(stage.torque.toFixed(1))} N·m would pull ${fastener.title} with ${kilonewtons(force)} at a friction of ${least}, and the proof load of its thread in class ${fastener.class} is ${kilonewtons(load)}`,
        'compare thread, class, thread state and torque with the manual',
      ),
    ];
  });
};

export const tightening = ({ fasteners }: EngineType): readonly Finding[] =>
  [...fasteners.values()].flatMap((fastener) => [
    ...rising(fastener),
    ...angles(fastener),
    ...friction(fastener),
    ...proof(fastener),
  ]);
