/** @module Components of an engine type put together from its file. */
import { hours, mm } from '../quantity/brand.ts';
import { machiningOf } from './compile-orders.ts';
import type { EngineFile } from './engine-file.ts';
import type { Characteristic, Component, Fitting, Layer } from './engine-type.ts';
import { type FigureReader, readFigure } from './figure-reader.ts';
import type { FilePath } from './file-path.ts';
import { given } from './given.ts';
import { readBounds, readLimits } from './limits.ts';
import { quantityOf } from './shown-in.ts';

type ComponentFile = EngineFile['components'][string];
type SizesFile = NonNullable<ComponentFile['sizes']>;

const layerOf = (reader: FigureReader, file: NonNullable<SizesFile['wall']>, path: FilePath): Layer => {
  const length = (key: 'as-made' | 'least') => {
    const text = file[key];
    return text === undefined ? undefined : mm(readFigure(reader, text, 'length', [...path, key]).amount);
  };
  return {
    ...given('of', file.of),
    ...given('asMade', length('as-made')),
    least: length('least') ?? mm(0),
  };
};

const sizesOf = (
  reader: FigureReader,
  file: SizesFile,
  wears: Characteristic['wears'],
  path: FilePath,
): NonNullable<Component['sizes']> => ({
  of: file.of,
  cleanUp: mm(readFigure(reader, file['clean-up'], 'length', [...path, 'clean-up']).amount),
  steps: file.steps.map(({ name, limits }, index) => ({
    name,
    limits: readLimits(reader, limits, wears, [...path, 'steps', index, 'limits']),
  })),
  ...given('wall', file.wall && layerOf(reader, file.wall, [...path, 'wall'])),
  ...given('case', file.case && layerOf(reader, file.case, [...path, 'case'])),
  ...given('fillet', file.fillet),
  ...given(
    'hardness',
    file.hardness && {
      scale: file.hardness.scale,
      ...given('least', file.hardness.least),
      ...given('greatest', file.hardness.greatest),
    },
  ),
  ...given('mostTimes', file['most-times']),
});

const gradesOf = (
  reader: FigureReader,
  grades: NonNullable<ComponentFile['grades']>,
  file: EngineFile,
  path: FilePath,
): NonNullable<Component['grades']> => {
  const quantity = file.characteristics[grades.of]?.quantity;
  return {
    of: grades.of,
    takes: grades.takes,
    steps: grades.steps.map(({ name, when }, index) => ({
      name,
      when: readBounds(
        reader,
        when,
        [...path, 'steps', index, 'when'],
        {},
        'when',
        quantityOf(given('quantity', quantity)),
      ),
    })),
  };
};

const lifeOf = (
  reader: FigureReader,
  file: ComponentFile['life'],
  path: FilePath,
): Pick<Component, 'life' | 'lifeMiddle'> => {
  const read = (text: string, at: FilePath) => hours(readFigure(reader, text, 'time', at).amount);
  return typeof file === 'string'
    ? { life: read(file, path) }
    : {
        life: read(file['counted-on'], [...path, 'counted-on']),
        lifeMiddle: read(file.usual, [...path, 'usual']),
      };
};

const fittingOf = (file: NonNullable<EngineFile['components'][string]['fitting']>): Fitting => ({
  measured: file.measured,
  ...given('instrument', file.instrument),
  ...given('material', file.material),
  room: file.room,
  clearance: file.clearance,
  goes: file.goes,
  takes: file.halves ?? Array.from({ length: file.parts }, () => ''),
});

const componentOf = (reader: FigureReader, name: string, file: EngineFile): Component | undefined => {
  const from = file.components[name];
  if (from === undefined) return undefined;
  const path = ['components', name];
  const wears = file.characteristics[from.sizes?.of ?? '']?.wears ?? 'either';
  return {
    name,
    title: from.title,
    at: from.at,
    together: from.together,
    judgedBy: from['judged-by'],
    putBack: from['put-back'],
    ...given('stays', from.stays),
    ...given('tagged', from.tagged ?? from.stays),
    ...lifeOf(reader, from.life, [...path, 'life']),
    ...given('wearVaries', from['wear-varies']),
    ...given('sizes', from.sizes && sizesOf(reader, from.sizes, wears, [...path, 'sizes'])),
    ...given('grades', from.grades && gradesOf(reader, from.grades, file, [...path, 'grades'])),
    ...given('machining', from.machining && machiningOf(reader, from.machining, [...path, 'machining'])),
    ...given('fitting', from.fitting && fittingOf(from.fitting)),
    ...given('arrival', from.arrival),
  };
};

export const componentsOf = (reader: FigureReader, file: EngineFile): ReadonlyMap<string, Component> =>
  new Map(
    Object.keys(file.components).flatMap((name) => {
      const component = componentOf(reader, name, file);
      return component === undefined ? [] : [[name, component] as const];
    }),
  );
