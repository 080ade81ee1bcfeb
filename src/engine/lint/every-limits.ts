/** @module All limits of an engine type, of characteristics and of size steps, with the path where each stands. */
import { lengthOf } from '../../quantity/typed.ts';
import type { Characteristic, EngineType, Limits } from '../engine-type.ts';
import type { FilePath } from '../file-path.ts';

/** The figures as printed, in mm. The wear figures stand here on whichever side the file gives them. */
export type LimitFigures = Readonly<
  Partial<Record<'new.least' | 'new.greatest' | 'wear.least' | 'wear.greatest', number>>
>;

export interface LimitsAt {
  readonly path: FilePath;
  /** Whose limits: `main journal diameter`, with the step where it is one. */
  readonly title: string;
  readonly wears: Characteristic['wears'];
  readonly limits: Limits;
  readonly figures: LimitFigures;
}

const figuresOf = ({ printed }: Limits): LimitFigures =>
  Object.fromEntries(
    Object.entries(printed).flatMap(([side, typed]) => {
      const length = lengthOf(typed);
      return length.kind === 'answer' ? [[side, length.value]] : [];
    }),
  );

export const everyLimits = ({ characteristics, components }: EngineType): readonly LimitsAt[] => [
  ...[...characteristics.values()].flatMap(({ name, title, wears, limits }) =>
    limits === undefined
      ? []
      : [{ path: ['characteristics', name, 'limits'], title, wears, limits, figures: figuresOf(limits) }],
  ),
  ...[...components.values()].flatMap(({ name, sizes }) => {
    const of = characteristics.get(sizes?.of ?? '');
    if (sizes === undefined || of === undefined) return [];
    return sizes.steps.map(({ name: step, limits }, index) => ({
      path: ['components', name, 'sizes', 'steps', index, 'limits'],
      title: `${of.title}, step ${step}`,
      wears: of.wears,
      limits,
      figures: figuresOf(limits),
    }));
  }),
];

/** A figure without the noise of its last digits. */
export const millimetres = (value: number): string => `${Number(value.toFixed(4))} mm`;
