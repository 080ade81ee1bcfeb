/** @module Rule: the sums of the operations are ones that the program knows, fed with what they take, held to what they give. */
import type { Characteristic, EngineType, Operation } from '../../engine/engine-type.ts';
import type { FilePath } from '../../engine/file-path.ts';
import { type Finding, wrong } from '../../engine/finding.ts';
import { chooseName } from '../../engine/nearest-name.ts';
import type { GivenInput, OperationSum } from '../../engine/operation-sum.ts';
import { operandPlace } from '../../measure/expression.ts';
import { placesOf } from '../../measure/scheme.ts';
import { dimensionText } from '../../quantity/unit.ts';
import { readGiven } from '../../reckon/given.ts';
import { reckonings } from '../../reckon/list.ts';
import type { Input, Reckoning } from '../../reckon/reckoning.ts';
import { exampleOf, keptMisfits } from './check-kept.ts';
import { spillText } from './manual-text.ts';
import { saidTwice } from './said-twice.ts';
import { reckoningOf, sourceDimension } from './source-dimension.ts';
import { sumPlaces } from './sum-places.ts';

interface Bound {
  readonly engine: EngineType;
  readonly operation: Operation;
  readonly sum: OperationSum;
  readonly reckoning: Reckoning;
  readonly path: FilePath;
}

const textMisfits = (source: Extract<GivenInput, { kind: 'text' }>, input: Input, path: FilePath) => {
  if (input.kind === 'quantity') {
    const read = readGiven(input.key, source.text, input.dimension);
    return read.kind === 'refused' ? [wrong(path, read.refusal.what, read.refusal.remedy)] : [];
  }
  return input.oneOf === undefined || input.oneOf.includes(source.text)
    ? []
    : [wrong(path, `${input.title} is not understood`, `write one of ${input.oneOf.join(', ')}`)];
};

/** A characteristic must be found where the sum is done. */
const notThere = (
  { engine, sum }: Bound,
  source: Extract<GivenInput, { kind: 'characteristic' }>,
  characteristic: Characteristic,
  path: FilePath,
): readonly Finding[] => {
  const all = placesOf(engine, characteristic);
  if (source.where === 'all places' || all.length === 1) return [];
  if (source.where) {
    const { place } = source.where;
    return all.some(({ id }) => id === place)
      ? []
      : [
          wrong(
            path,
            `${characteristic.name} is not found at ${place}`,
            chooseName(
              place,
              all.map(({ id }) => id),
            ),
          ),
        ];
  }
  if (sum.at === undefined)
    return [
      wrong(
        path,
        `it is not said at which of ${all.length} places ${characteristic.name} is taken`,
        'name a place, write places: all, or do the sum once for each place',
      ),
    ];
  const lost = sumPlaces(engine, sum).find(
    (place) => place && !engine.places.has(operandPlace(engine, place, characteristic.at)),
  );
  return lost ? [wrong(path, `${characteristic.name} is not found at ${lost.id}`, 'name its place')] : [];
};

const sourceMisfits = (bound: Bound, source: GivenInput, path: FilePath): readonly Finding[] => {
  const { engine, operation, sum } = bound;
  switch (source.kind) {
    case 'characteristic':
    case 'limit':
    case 'list': {
      const characteristic = engine.characteristics.get(source.name);
      if (!characteristic)
        return [
          wrong(
            path,
            `there is no characteristic ${source.name}`,
            chooseName(source.name, engine.characteristics.keys()),
          ),
        ];
      if (source.kind === 'characteristic') return notThere(bound, source, characteristic, path);
      if (source.kind === 'list')
        return source.as === 'rows' && characteristic.derived
          ? [wrong(path, `${source.name} is worked out and has no readings`, 'write as: named')]
          : [];
      return characteristic.limits?.new[source.is] === undefined
        ? [wrong(path, `${source.name} has no ${source.is} as made`, 'give the figure itself')]
        : [];
    }
    case 'fastener': {
      const fastener = engine.fasteners.get(source.name);
      if (!fastener)
        return [
          wrong(
            path,
            `there are no fasteners ${source.name}`,
            chooseName(source.name, engine.fasteners.keys()),
          ),
        ];
      const unsaid =
        (source.of === 'holes' && !fastener.holes) ||
        (source.of === 'order' && typeof fastener.order !== 'object');
      return unsaid
        ? [wrong(path, `${source.name} have no ${source.of}`, `say their ${source.of} under fasteners`)]
        : [];
    }
    case 'pumps':
      if (!engine.pumpTiming)
        return [
          wrong(path, 'no pumps are timed by shims here', 'say how under pump-timing, or give the figure'),
        ];
      return source.of === 'spill' && spillText(engine) === undefined
        ? [
            wrong(
              path,
              'no spill before the top is said here',
              'say it as check under pump-timing, larger-is: earlier',
            ),
          ]
        : [];
    case 'valves':
      return engine.valveSetting
        ? []
        : [
            wrong(
              path,
              'it is not said when the valves lift',
              'say it under valve-setting, or give the figure',
            ),
          ];
    case 'sum': {
      const before = operation.sums.slice(0, operation.sums.indexOf(sum));
      const other = before.find(({ name }) => name === source.name);
      if (!other)
        return [
          wrong(
            path,
            `no sum ${source.name} stands before this one`,
            chooseName(
              source.name,
              before.map(({ name }) => name),
            ),
          ),
        ];
      const reckoning = reckoningOf(other);
      const keys =
        source.takes === 'input'
          ? (reckoning?.inputs ?? []).map(({ key }) => key)
          : Object.keys((reckoning && exampleOf(reckoning)?.results) ?? {});
      const verb = source.takes === 'input' ? 'takes' : 'gives';
      return keys.includes(source.key)
        ? []
        : [wrong(path, `${other.reckon} ${verb} no ${source.key}`, chooseName(source.key, keys))];
    }
    case 'shared':
      return source.by
        .filter((key) => sum.given.get(key)?.kind !== 'characteristic')
        .map((key) =>
          wrong(
            path,
            `${key} is not taken from readings`,
            'name two inputs that are given by a characteristic',
          ),
        );
    case 'text':
    case 'engine':
    case 'instrument':
      return [];
    default:
      return source satisfies never;
  }
};

const inputMisfits = (bound: Bound, key: string, source: GivenInput): readonly Finding[] => {
  const { reckoning, path } = bound;
  const own = [...path, 'given', key];
  const input = reckoning.inputs.find((one) => one.key === key);
  if (!input) {
    const keys = reckoning.inputs.map((one) => one.key);
    return [wrong(own, `${reckoning.name} does not take ${key}`, chooseName(key, keys))];
  }
  if (source.kind === 'text') {
    const misfits = textMisfits(source, input, own);
    return misfits.length > 0 ? misfits : saidTwice(bound.engine, reckoning, key, source.text, own);
  }
  const misfits = sourceMisfits(bound, source, own);
  if (misfits.length > 0) return misfits;
  const dimension = sourceDimension(bound.engine, bound.operation, source);
  if (
    input.kind === 'text' ? source.kind !== 'sum' || dimension === undefined : dimension === input.dimension
  )
    return [];
  const wanted = input.kind === 'quantity' ? `a figure of ${dimensionText(input.dimension)}` : 'words';
  return [
    wrong(
      own,
      `${key} takes ${wanted}, and this gives ${dimension ? `one of ${dimensionText(dimension)}` : 'words or a list'}`,
      'give it what it takes, or leave it to be asked',
    ),
  ];
};

const sumMisfits = (engine: EngineType, operation: Operation, sum: OperationSum): readonly Finding[] => {
  const path = ['operations', operation.name, 'sums', sum.name];
  const reckoning = reckonings.find(({ name }) => name === sum.reckon);
  if (!reckoning) {
    const names = reckonings.map(({ name }) => name);
    return [wrong([...path, 'reckon'], `there is no sum ${sum.reckon}`, chooseName(sum.reckon, names))];
  }
  if (sum.at !== undefined && !engine.placeKinds.has(sum.at))
    return [
      wrong(
        [...path, 'at'],
        `there is no kind of place ${sum.at}`,
        chooseName(sum.at, engine.placeKinds.keys()),
      ),
    ];
  const bound: Bound = { engine, operation, sum, reckoning, path };
  return [
    ...[...sum.given].flatMap(([key, source]) => inputMisfits(bound, key, source)),
    ...keptMisfits(engine, sum, reckoning, path),
  ];
};

/** What is wrong with the sums of an engine type. */
export const checkSums = (engine: EngineType): readonly Finding[] =>
  [...engine.operations.values()].flatMap((operation) =>
    operation.sums.flatMap((sum) => sumMisfits(engine, operation, sum)),
  );
