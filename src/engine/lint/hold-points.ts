/** @module Rule: what a hold point asks to be proved has limits to be proved against, and one that reads again asks for something. */
import type { EngineType } from '../engine-type.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';

export const holdPoints = ({ operations, characteristics }: EngineType): readonly Finding[] =>
  [...operations.values()].flatMap(({ name, title, needs, readAgain }) => [
    ...(readAgain && needs.length === 0
      ? [
          wrong(
            ['operations', name, 'read-again'],
            `'${title}' reads again, and names nothing that it needs`,
            'put what is read again under its `needs`, or take `read-again` out',
          ),
        ]
      : []),
    ...needs.flatMap((of, index) => {
      const characteristic = characteristics.get(of);
      if (characteristic === undefined || characteristic.limits !== undefined) return [];
      return [
        doubtful(
          ['operations', name, 'needs', index],
          `the hold point '${title}' asks for ${characteristic.title}, which has no limits`,
          `give ${of} its limits, or take it from the list`,
        ),
      ];
    }),
  ]);
