/** @module Rule: every fastener with a torque is tightened by an operation, which is done only once all are tight. */
import type { EngineType } from '../engine-type.ts';
import { doubtful, type Finding } from '../finding.ts';

export const tightenedBy = ({ fasteners, operations }: EngineType): readonly Finding[] =>
  [...fasteners.values()].flatMap(({ name, title, again }) => {
    const later = again.flatMap(({ by }) => by ?? []);
    const by = [...operations.values()].some(
      (operation) => operation.tightens.includes(name) && !later.includes(operation.name),
    );
    return by || operations.size === 0
      ? []
      : [
          doubtful(
            ['fasteners', name, 'title'],
            `no operation tightens ${title}`,
            `put ${name} under \`tightens\` of the operation that does`,
          ),
        ];
  });
