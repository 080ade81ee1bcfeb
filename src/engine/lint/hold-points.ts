/** @module Rule: what a hold point asks to be proved has limits to be proved against. */
import type { EngineType } from '../engine-type.ts';
import { doubtful, type Finding } from '../finding.ts';

export const holdPoints = ({ operations, characteristics }: EngineType): readonly Finding[] =>
  [...operations.values()].flatMap(({ name, title, needs }) =>
    needs.flatMap((of, index) => {
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
  );
