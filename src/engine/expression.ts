/** @module Derived characteristics: how one is computed from others. */
import type { ExpressionFile } from './engine-file.ts';
import type { Expression } from './engine-type.ts';

/** The expression that the file writes in short. */
export const readExpression = (file: ExpressionFile): Expression => {
  if (typeof file === 'string') return { kind: 'reading', of: file };
  if ('least' in file) return { kind: 'least', of: file.least };
  if ('greatest' in file) return { kind: 'greatest', of: file.greatest };
  if ('mean' in file) return { kind: 'mean', of: file.mean };
  if ('range-over-axes' in file) return { kind: 'range over axes', of: file['range-over-axes'] };
  if ('range-over-planes' in file) return { kind: 'range over planes', of: file['range-over-planes'] };
  if ('range-over-places' in file) return { kind: 'range over places', of: file['range-over-places'] };
  if ('range-over-neighbours' in file) {
    return { kind: 'range over neighbours', of: file['range-over-neighbours'] };
  }
  if ('sum' in file) return { kind: 'sum', of: file.sum.map(readExpression) };
  if ('factor' in file) {
    return { kind: 'factor', factor: file.factor[0], of: readExpression(file.factor[1]) };
  }
  const [from, less] = file.difference;
  return { kind: 'difference', from: readExpression(from), less: readExpression(less) };
};

/** One place in an expression where a characteristic is named. */
export interface Operand {
  readonly of: string;
  readonly kind: Exclude<Expression['kind'], 'difference' | 'sum' | 'factor'>;
}

/** The characteristics that an expression names, in their order, as often as it names them. */
export const operandsOf = (expression: Expression): readonly Operand[] => {
  switch (expression.kind) {
    case 'difference':
      return [...operandsOf(expression.from), ...operandsOf(expression.less)];
    case 'sum':
      return expression.of.flatMap(operandsOf);
    case 'factor':
      return operandsOf(expression.of);
    case 'reading':
    case 'least':
    case 'greatest':
    case 'mean':
    case 'range over axes':
    case 'range over planes':
    case 'range over places':
    case 'range over neighbours':
      return [{ of: expression.of, kind: expression.kind }];
    default:
      return expression satisfies never;
  }
};
