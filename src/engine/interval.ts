/** @module Interval arithmetic over expressions: what a clearance can be when its parts are within their limits. */
import type { Bounds, Expression } from './engine-type.ts';

export type Interval = readonly [least: number, greatest: number];
/** The limits between which a characteristic lies. */
export type SizeOf = (characteristic: string) => Bounds | undefined;

/** The interval of an expression whose parts lie anywhere within theirs; none where one has an open end. */
export const intervalOf = (expression: Expression, sizeOf: SizeOf): Interval | undefined => {
  switch (expression.kind) {
    case 'reading':
    case 'least':
    case 'greatest':
    case 'mean': {
      const { least, greatest } = sizeOf(expression.of) ?? {};
      return least === undefined || greatest === undefined ? undefined : [least, greatest];
    }
    case 'range over axes':
    case 'range over planes':
    case 'range over places':
    case 'range over neighbours':
      return undefined;
    case 'difference': {
      const from = intervalOf(expression.from, sizeOf);
      const less = intervalOf(expression.less, sizeOf);
      return from === undefined || less === undefined ? undefined : [from[0] - less[1], from[1] - less[0]];
    }
    case 'sum':
      return expression.of.reduce<Interval | undefined>(
        (total, part) => {
          const interval = intervalOf(part, sizeOf);
          if (total === undefined || interval === undefined) return undefined;
          return [total[0] + interval[0], total[1] + interval[1]];
        },
        [0, 0],
      );
    case 'factor': {
      const interval = intervalOf(expression.of, sizeOf);
      if (interval === undefined) return undefined;
      const ends = interval.map((end) => end * expression.factor);
      return [Math.min(...ends), Math.max(...ends)];
    }
    default:
      return expression satisfies never;
  }
};
