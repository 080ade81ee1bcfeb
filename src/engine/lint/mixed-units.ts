/** @module Rule: inches have not slipped in among millimetres, or the other way round. */
import type { EngineType } from '../engine-type.ts';
import { operandsOf } from '../expression.ts';
import type { FilePath } from '../file-path.ts';
import { doubtful, type Finding } from '../finding.ts';
import { everyLimits, type LimitFigures, type LimitsAt, millimetres } from './every-limits.ts';

/** How near to 25.4 a ratio must be: an inch figure typed as millimetres is off by its rounding only. */
const near = 0.02;

const inchApart = (a: number, b: number): boolean => {
  const ratio = Math.abs(Math.max(a, b) / Math.min(a, b));
  return Math.abs(ratio / 25.4 - 1) < near;
};

const slip = (path: FilePath, title: string, a: number, b: number): Finding =>
  doubtful(
    path,
    `inches and millimetres look mixed in ${title}: ${millimetres(a)} and ${millimetres(b)} are a factor of 25.4 apart`,
    'look at the unit of both in the manual',
  );

const sides = ['new.least', 'new.greatest', 'wear.least', 'wear.greatest'] as const;

const withinLimits = ({ path, title, figures }: LimitsAt): readonly Finding[] => {
  const given = sides.flatMap((side) =>
    figures[side] === undefined ? [] : [[side, figures[side]] as const],
  );
  return given.flatMap(([side, value], index) => {
    const other = given.slice(0, index).find(([, before]) => inchApart(before, value));
    return other === undefined ? [] : [slip([...path, ...side.split('.')], title, other[1], value)];
  });
};

/** One figure of a size against the same figure of another. */
const across = (path: FilePath, title: string, a: LimitFigures, b: LimitFigures): readonly Finding[] =>
  sides
    .flatMap((side) => {
      const one = a[side];
      const other = b[side];
      if (one === undefined || other === undefined || !inchApart(one, other)) return [];
      return [slip(path, title, one, other)];
    })
    .slice(0, 1);

const acrossSteps = ({ components }: EngineType, all: readonly LimitsAt[]): readonly Finding[] =>
  all.flatMap(({ path, title, figures }) => {
    const of = components.get(String(path[1]))?.sizes?.of;
    const standard = all.find((at) => at.path[0] === 'characteristics' && at.path[1] === of);
    return path[0] === 'components' && standard !== undefined
      ? across(path, title, standard.figures, figures)
      : [];
  });

/** A journal and the shell that it runs in, a piston and its bore: what a difference is taken of. */
const acrossFits = ({ characteristics }: EngineType, all: readonly LimitsAt[]): readonly Finding[] => {
  const figuresOf = (name: string) =>
    all.find(({ path }) => path[0] === 'characteristics' && path[1] === name)?.figures;
  return [...characteristics.values()].flatMap(({ name, title, derived }) => {
    if (derived?.kind !== 'difference') return [];
    const [from, less] = operandsOf(derived).map(({ of }) => figuresOf(of));
    if (from === undefined || less === undefined) return [];
    return across(['characteristics', name, 'derived'], title, from, less);
  });
};

const twoUnits = ({ path, title, limits }: LimitsAt): readonly Finding[] => {
  const units = [...new Set(Object.values(limits.printed).map(({ unit }) => unit))];
  return units.length < 2
    ? []
    : [
        doubtful(
          path,
          `the limits of ${title} are written in ${units.join(' and in ')}`,
          'write all limits of one characteristic in the unit of the manual',
        ),
      ];
};

export const mixedUnits = (engine: EngineType): readonly Finding[] => {
  const all = everyLimits(engine);
  const lengths = all.filter(({ quantity }) => quantity === 'length');
  return [
    ...lengths.flatMap(withinLimits),
    ...acrossSteps(engine, lengths),
    ...acrossFits(engine, lengths),
    ...all.flatMap(twoUnits),
  ];
};
