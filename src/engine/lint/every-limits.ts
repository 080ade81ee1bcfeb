/** @module All limits of an engine type, of characteristics and of size steps, with the path where each stands. */
import { amountOf } from '../../quantity/typed.ts';
import type { Characteristic, EngineType, Limits, Quantity } from '../engine-type.ts';
import type { FilePath } from '../file-path.ts';
import { figureText, quantityOf, shownIn } from '../shown-in.ts';

/** The figures as printed, in the core's unit. The wear figures stand here on whichever side the file gives them. */
export type LimitFigures = Readonly<
  Partial<Record<'new.least' | 'new.greatest' | 'wear.least' | 'wear.greatest', number>>
>;

export interface LimitsAt {
  readonly path: FilePath;
  /** Whose limits: `main journal diameter`, with the step where it is one. */
  readonly title: string;
  readonly wears: Characteristic['wears'];
  readonly quantity: Quantity;
  readonly limits: Limits;
  readonly figures: LimitFigures;
}

const figuresOf = ({ printed }: Limits, quantity: Quantity): LimitFigures =>
  Object.fromEntries(
    Object.entries(printed).flatMap(([side, typed]) => {
      const amount = amountOf(typed, quantity);
      return amount.kind === 'answer' ? [[side, amount.value]] : [];
    }),
  );

export const everyLimits = ({ characteristics, components }: EngineType): readonly LimitsAt[] => [
  ...[...characteristics.values()].flatMap((characteristic) => {
    const { name, title, wears, limits } = characteristic;
    const quantity = quantityOf(characteristic);
    return limits === undefined
      ? []
      : [
          {
            path: ['characteristics', name, 'limits'],
            title,
            wears,
            quantity,
            limits,
            figures: figuresOf(limits, quantity),
          },
        ];
  }),
  ...[...components.values()].flatMap(({ name, sizes }) => {
    const of = characteristics.get(sizes?.of ?? '');
    if (sizes === undefined || of === undefined) return [];
    return sizes.steps.map(({ name: step, limits }, index) => ({
      path: ['components', name, 'sizes', 'steps', index, 'limits'],
      title: `${of.title}, step ${step}`,
      wears: of.wears,
      quantity: quantityOf(of),
      limits,
      figures: figuresOf(limits, quantityOf(of)),
    }));
  }),
];

/** A figure of limits in words, without the noise of its last digits. */
export const limitText = (value: number, { quantity, limits }: LimitsAt): string =>
  quantity === 'length' ? millimetres(value) : figureText(value, shownIn({ quantity, limits }));

/** A figure without the noise of its last digits. */
export const millimetres = (value: number): string => `${Number(value.toFixed(4))} mm`;
