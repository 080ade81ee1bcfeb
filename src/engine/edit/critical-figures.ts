/** @module The figures of an engine type on which an engine lives or dies: limits, torques, what sums are held to, the pumps' datum. */
import type { z } from 'zod';
import type { Dimension } from '../../quantity/unit.ts';
import { dimensionTyped } from '../dimension-typed.ts';
import { engineFile } from '../engine-file.ts';
import { gaugeKind } from '../figure-field.ts';
import type { FilePath } from '../file-path.ts';
import type { limitsFile } from '../file-terms.ts';
import { gauges } from '../gauge.ts';
import { stageKind } from '../stage.ts';
import { limitSides } from './engine-edit.ts';

export interface CriticalFigure {
  /** Its keys joined by slashes, as a difference names it. */
  readonly at: string;
  readonly path: FilePath;
  /** For whoever looks it up in the manual: `main journal diameter: as made, at least`. */
  readonly title: string;
  readonly kind: Dimension;
  /** As it stands in the file. */
  readonly figure: string;
  /** The manual's page, where the file gives it. */
  readonly source?: string;
}

const sideWords: Readonly<Record<(typeof limitSides)[number], string>> = {
  'new.least': 'as made, at least',
  'new.greatest': 'as made, at most',
  'wear.least': 'may go back, at least',
  'wear.greatest': 'may go back, at most',
};

const ofLimits = (
  title: string,
  limits: z.infer<typeof limitsFile> | undefined,
  path: FilePath,
  source: string | undefined,
  kind: Dimension = 'length',
): readonly CriticalFigure[] =>
  limitSides.flatMap((side) => {
    const [group, end] = side.split('.') as ['new' | 'wear', 'least' | 'greatest'];
    const figure = limits?.[group]?.[end];
    return figure === undefined
      ? []
      : [critical(`${title}: ${sideWords[side]}`, kind, figure, [...path, 'limits', group, end], source)];
  });

const critical = (
  title: string,
  kind: Dimension,
  figure: string,
  path: FilePath,
  source: string | undefined,
): CriticalFigure => ({
  at: path.join('/'),
  path,
  title,
  kind,
  figure,
  ...(source === undefined ? {} : { source }),
});

/** What an engine is stopped by while it runs in. */
const ofRunIn = (runIn: z.infer<typeof engineFile>['run-in']): readonly CriticalFigure[] =>
  [
    { title: 'run-in', limits: runIn?.limits, path: ['run-in', 'limits'] },
    ...(runIn?.steps ?? []).map(({ title, limits }, at) => ({
      title,
      limits,
      path: ['run-in', 'steps', at, 'limits'],
    })),
  ].flatMap(({ title, limits, path }) =>
    gauges.flatMap((gauge) => {
      const limit = Object.entries(limits ?? {}).find(([name]) => name === gauge.name)?.[1];
      return (['least', 'greatest'] as const).flatMap((end) => {
        const figure = limit?.[end];
        const words = `${title}: ${gauge.title}, ${end === 'least' ? 'at least' : 'at most'}`;
        return figure === undefined
          ? []
          : [critical(words, gaugeKind(gauge.name), figure, [...path, gauge.name, end], runIn?.source)];
      });
    }),
  );

type Operations = z.infer<typeof engineFile>['operations'];
type SumOfFile = Operations[string]['sums'][string];

/** What one result of a sum is held to, of standard and of every other size. */
const ofKept = (
  title: string,
  { size, ...kept }: Pick<SumOfFile['keeps'][string], 'least' | 'greatest'> & { readonly size?: string },
  path: FilePath,
  source: string | undefined,
): readonly CriticalFigure[] =>
  (['least', 'greatest'] as const).flatMap((end) => {
    const figure = kept[end];
    if (figure === undefined) return [];
    const words = `${title}${size === undefined ? '' : `, size ${size}`}: ${end === 'least' ? 'at least' : 'at most'}`;
    return [critical(words, dimensionTyped(figure) ?? 'length', figure, [...path, end], source)];
  });

/** What the sums of the operations are held to. */
const ofSums = (operations: Operations): readonly CriticalFigure[] =>
  Object.entries(operations).flatMap(([operation, { title, sums }]) =>
    Object.entries(sums).flatMap(([name, sum]) =>
      Object.entries(sum.keeps).flatMap(([result, { least, greatest, sizes = {} }]) => {
        const path = ['operations', operation, 'sums', name, 'keeps', result];
        const words = `${title}, ${sum.title ?? name}: ${result.replaceAll('-', ' ')}`;
        return [
          ...ofKept(words, { least, greatest }, path, sum.source),
          ...Object.entries(sizes).flatMap(([size, figures]) =>
            ofKept(words, { size, ...figures }, [...path, 'sizes', size], sum.source),
          ),
        ];
      }),
    ),
  );

/** All of them, in the order of the file; none where the data has not the shape of an engine type. */
export const criticalFigures = (data: unknown): readonly CriticalFigure[] => {
  const read = engineFile.safeParse(data);
  if (!read.success) return [];
  const { characteristics, components, fasteners, operations } = read.data;
  const timing = read.data['pump-timing'];
  return [
    ...Object.entries(characteristics).flatMap(([name, { title, limits, source, quantity }]) =>
      ofLimits(title, limits, ['characteristics', name], source, quantity),
    ),
    ...Object.entries(components).flatMap(([name, { sizes }]) => {
      const of = characteristics[sizes?.of ?? ''];
      return (sizes?.steps ?? []).flatMap((step, at) =>
        ofLimits(
          `${of?.title ?? name}, step ${step.name}`,
          step.limits,
          ['components', name, 'sizes', 'steps', at],
          of?.source,
        ),
      );
    }),
    ...Object.entries(fasteners).flatMap(([name, { title, stages, source }]) =>
      stages.map((stage, at) =>
        critical(
          `${title}: stage ${at + 1} of ${stages.length}`,
          stageKind(stage),
          stage,
          ['fasteners', name, 'stages', at],
          source,
        ),
      ),
    ),
    ...ofSums(operations),
    ...ofRunIn(read.data['run-in']),
    ...(timing === undefined
      ? []
      : [critical('datum of the pumps', 'length', timing.datum, ['pump-timing', 'datum'], timing.source)]),
  ];
};
