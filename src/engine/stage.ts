/** @module One stage of tightening: a torque to be pulled, or an angle to be turned on from there. */
import { newtonMetres, radians } from '../quantity/brand.ts';
import { dimensionTyped } from './dimension-typed.ts';
import type { Stage } from './fastener.ts';
import { type FigureReader, readFigure } from './figure-reader.ts';
import type { FilePath } from './file-path.ts';

/** Its unit says which of the two it is. */
export const stageKind = (text: string): Stage['kind'] =>
  dimensionTyped(text) === 'angle' ? 'angle' : 'torque';

export const readStage = (reader: FigureReader, text: string, path: FilePath): Stage => {
  const kind = stageKind(text);
  const { typed, amount } = readFigure(reader, text, kind, path);
  return kind === 'angle'
    ? { kind, angle: radians(amount), printed: typed }
    : { kind, torque: newtonMetres(amount), printed: typed };
};
