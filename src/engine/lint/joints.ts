/** @module Rule: the holes of a joint are all there, each by a name and in a place of its own, and its order takes each bolt once. */
import type { EngineType } from '../engine-type.ts';
import type { Fastener } from '../fastener.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';

const holes = ({ name, title, count, holes: at = [] }: Fastener): readonly Finding[] => {
  if (at.length === 0) return [];
  const path = ['fasteners', name, 'holes'];
  const few =
    at.length === count
      ? []
      : [
          wrong(
            path,
            `${at.length} holes are given for ${count} ${title}`,
            'give each hole of one place once, or mend the count',
          ),
        ];
  const twins = at.flatMap((hole, index) => {
    const twin = at
      .slice(0, index)
      .find((other) => other.name === hole.name || Math.hypot(other.x - hole.x, other.y - hole.y) < 0.5);
    return twin === undefined
      ? []
      : [
          wrong(
            path,
            `holes ${twin.name} and ${hole.name} of ${title} are one and the same`,
            'give each hole its own name and its own place, mm',
          ),
        ];
  });
  return [...few, ...twins.slice(0, 1)];
};

const order = ({ name, title, count, holes: at, order: said }: Fastener): readonly Finding[] => {
  const path = ['fasteners', name, 'order'];
  if (said === undefined)
    return at !== undefined || count <= 2
      ? []
      : [
          doubtful(
            ['fasteners', name, 'count'],
            `nothing says where the ${count} ${title} stand, nor in which order they are tightened`,
            'give their `holes`, and the `order` where the manual has one',
          ),
        ];
  if (typeof said === 'string')
    return at !== undefined
      ? []
      : [
          wrong(
            path,
            `the order of ${title} cannot be reckoned: nothing says where they stand`,
            'give their `holes`',
          ),
        ];
  const bolts = at?.map((hole) => hole.name) ?? Array.from({ length: count }, (_, index) => `${index + 1}`);
  const strange = said.filter((bolt, index) => !bolts.includes(bolt) || said.indexOf(bolt) !== index);
  const lacking = bolts.filter((bolt) => !said.includes(bolt));
  return strange.length === 0 && lacking.length === 0
    ? []
    : [
        wrong(
          path,
          strange.length > 0
            ? `the order of ${title} names ${strange[0]} twice, or there is no such bolt`
            : `the order of ${title} leaves out ${lacking.join(', ')}`,
          `name each once: ${bolts.slice(0, 40).join(', ')}`,
        ),
      ];
};

export const joints = ({ fasteners }: EngineType): readonly Finding[] =>
  [...fasteners.values()].flatMap((fastener) => [...holes(fastener), ...order(fastener)]);
