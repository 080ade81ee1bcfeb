/** @module Predicted fits as rows: a pair that would not fit, or would not last the hours wanted, is not chosen together. */
import { hoursDemand } from './demand-rows.ts';
import type { Option } from './plan-model.ts';
import { notBoth, optionColumn, type Row } from './row.ts';

export const fitRows = (options: readonly Option[], wanted: number | undefined): readonly Row[] => {
  const columns = new Map(options.map(({ id }, index) => [id, optionColumn(index)]));
  return options.flatMap((option, index) =>
    (option.fits ?? []).flatMap((fit): readonly Row[] => {
      const other = columns.get(fit.with);
      const stands =
        fit.hours <= 0 ? fit.says : wanted !== undefined && fit.hours < wanted && hoursDemand(wanted);
      if (other === undefined || !stands) return [];
      return [notBoth(stands, optionColumn(index), other)];
    }),
  );
};

/** Hours of the fits among chosen options, Infinity where none shortens them. */
const fitHours = (chosen: readonly Option[]): number => {
  const ids = new Set(chosen.map(({ id }) => id));
  return Math.min(
    Number.POSITIVE_INFINITY,
    ...chosen.flatMap(({ fits = [] }) => fits.filter((fit) => ids.has(fit.with)).map(({ hours }) => hours)),
  );
};

/** Hours that chosen options last together; 0 where nothing is chosen, since then nothing is promised. */
export const hoursTogether = (chosen: readonly Option[]): number =>
  chosen.length === 0 ? 0 : Math.min(fitHours(chosen), ...chosen.map(({ hours }) => hours));
