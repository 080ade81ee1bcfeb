/** @module Balance as rows: parts whose masses could be too far apart are not fitted together. */
import type { Bounds, Coupling, EngineType } from '../engine/engine-type.ts';
import { figureText } from '../engine/shown-in.ts';
import type { Option } from './plan-model.ts';
import { notBoth, type Row, type SetUpColumns } from './row.ts';
import { massFrom } from './uses.ts';

type Balance = Extract<Coupling, { kind: 'balance' }>;

/** Room for the last binary digit of a mass in kilograms. */
const room = 1e-9;

/** Two masses of which nothing is known but where they come from go together when they come from one set. */
const couldBeApart = (a: Bounds | undefined, b: Bounds | undefined, most: number): boolean => {
  if (a?.least === undefined || a.greatest === undefined) return true;
  if (b?.least === undefined || b.greatest === undefined) return true;
  return Math.max(a.greatest, b.greatest) - Math.min(a.least, b.least) > most + room;
};

interface Source {
  readonly column: string;
  readonly mass: Bounds | undefined;
  readonly asFound: boolean;
}

const sourcesOf = (of: string, options: readonly Option[], columns: SetUpColumns): readonly Source[] => {
  const own = options.filter(({ component }) => component === of);
  return [...Map.groupBy(own, massFrom)].flatMap(([name, [first]]): readonly Source[] => {
    const column = columns.get(name);
    return first && column !== undefined
      ? [{ column, mass: first.mass, asFound: first.does === 'put back' }]
      : [];
  });
};

/** Parts as found ran together: only masses that are known speak against it. */
const apart = (a: Source, b: Source, most: number): boolean =>
  a.asFound && b.asFound && (a.mass === undefined || b.mass === undefined)
    ? false
    : couldBeApart(a.mass, b.mass, most);

const balanceWords = (engine: EngineType, { of, most }: Balance): string =>
  `masses of ${engine.components.get(of)?.title ?? of} must lie within ${figureText(most, { unit: 'g', decimals: 1 })}`;

/** One row for each two sources that do not go together: their columns are one where anything comes from them. */
export const balanceRows = (
  engine: EngineType,
  coupling: Balance,
  options: readonly Option[],
  columns: SetUpColumns,
): readonly Row[] => {
  const sources = sourcesOf(coupling.of, options, columns);
  const stands = balanceWords(engine, coupling);
  return sources.flatMap((a, index) =>
    sources
      .slice(index + 1)
      .filter((b) => apart(a, b, coupling.most))
      .map((b) => notBoth(stands, a.column, b.column)),
  );
};
