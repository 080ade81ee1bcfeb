/** @module Of what kind the figure is that an input of a sum is given. */
import type { EngineType, Operation } from '../../engine/engine-type.ts';
import type { GivenInput, OperationSum } from '../../engine/operation-sum.ts';
import { quantityOf } from '../../engine/shown-in.ts';
import { type Dimension, findUnit } from '../../quantity/unit.ts';
import { reckonings } from '../../reckon/list.ts';
import type { Reckoning } from '../../reckon/reckoning.ts';
import { exampleOf } from './check-kept.ts';

/** The reckoning of a sum, where the program knows it. */
export const reckoningOf = (sum: OperationSum | undefined): Reckoning | undefined =>
  reckonings.find(({ name }) => name === sum?.reckon);

/** Of what kind the figure is that a source gives; undefined where it gives words or a list. */
export const sourceDimension = (
  engine: EngineType,
  operation: Operation,
  source: GivenInput,
): Dimension | undefined => {
  switch (source.kind) {
    case 'characteristic':
    case 'limit':
      return quantityOf(engine.characteristics.get(source.name));
    case 'engine':
      if (source.of === 'firing-order') return undefined;
      return source.of === 'cylinders' ? 'count' : 'length';
    case 'fastener':
      if (source.of === 'torque') return 'torque';
      if (source.of === 'diameter') return 'length';
      return source.of.endsWith('friction') ? 'ratio' : undefined;
    case 'pumps':
      if (source.of === 'most') return 'count';
      if (source.of === 'rate') return 'angle-per-length';
      if (source.of === 'spill') return 'angle';
      return source.of === 'datum' ? 'length' : undefined;
    case 'valves':
      return source.of === 'events' ? undefined : 'angle';
    case 'instrument':
    case 'shared':
      return 'length';
    case 'sum': {
      const reckoning = reckoningOf(operation.sums.find(({ name }) => name === source.name));
      if (source.takes === 'input') {
        const input = reckoning?.inputs.find(({ key }) => key === source.key);
        return input?.kind === 'quantity' ? input.dimension : undefined;
      }
      const unit = findUnit((reckoning && exampleOf(reckoning)?.results[source.key]?.unit) ?? '');
      return unit.kind === 'answer' ? unit.value.dimension : undefined;
    }
    case 'text':
    case 'list':
      return undefined;
    default:
      return source satisfies never;
  }
};
