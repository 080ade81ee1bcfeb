/** @module Balance as rows: parts whose masses could be too far apart are not fitted together. */
import type { Bounds, Coupling, EngineType } from '../engine/engine-type.ts';
import { figureText } from '../engine/shown-in.ts';
import type { Option } from './plan-model.ts';
import { optionColumn, type Row, setUpColumn, type Terms } from './row.ts';
import { isOfSet, setOf, usesOfAll } from './uses.ts';

type Balance = Extract<Coupling, { kind: 'balance' }>;

/** Room for the last binary digit of a mass in kilograms. */
const room = 1e-9;

/** Two masses of which nothing is known but where they come from go together when they come from one set. */
const couldBeApart = (a: Bounds | undefined, b: Bounds | undefined, most: number): boolean => {
  if (a?.least === undefined || a.greatest === undefined) return true;
  if (b?.least === undefined || b.greatest === undefined) return true;
  return Math.max(a.greatest, b.greatest) - Math.min(a.least, b.least) > most + room;
};

/** A set, or one part as found whose mass is known. */
interface Source {
  readonly column: string;
  readonly mass: Bounds | undefined;
  readonly asFound: boolean;
}

const sourcesOf = (engine: EngineType, of: string, options: readonly Option[]): readonly Source[] => {
  const { setUps } = usesOfAll(engine, options);
  const sets = new Map<string, Source>();
  const alone: Source[] = [];
  for (const [index, option] of options.entries()) {
    if (option.component !== of) continue;
    const source = { mass: option.mass, asFound: option.does === 'put back' };
    const set = setOf(option);
    if (!isOfSet(option)) alone.push({ ...source, column: optionColumn(index) });
    else if (!sets.has(set))
      sets.set(set, { ...source, column: setUpColumn(setUps.findIndex(({ name }) => name === set)) });
  }
  return [...sets.values(), ...alone];
};

/** Parts as found ran together: only masses that are known speak against it. */
const apart = (a: Source, b: Source, most: number): boolean =>
  a.asFound && b.asFound && (a.mass === undefined || b.mass === undefined)
    ? false
    : couldBeApart(a.mass, b.mass, most);

const balanceWords = (engine: EngineType, { of, most }: Balance): string =>
  `masses of ${engine.components.get(of)?.title ?? of} must lie within ${figureText(most, { unit: 'g', decimals: 1 })}`;

export const balanceRows = (
  engine: EngineType,
  coupling: Balance,
  options: readonly Option[],
): readonly Row[] => {
  const sources = sourcesOf(engine, coupling.of, options);
  const stands = balanceWords(engine, coupling);
  return sources.flatMap((a, index) =>
    sources
      .slice(index + 1)
      .filter((b) => apart(a, b, coupling.most))
      .map((b): Row => {
        const terms: Terms = [
          [1, a.column],
          [1, b.column],
        ];
        return { stands, terms, relation: '<=', bound: 1 };
      }),
  );
};
