/** @module What was told of a part's way home, the last word of each kind that still counts. */
import type { EngineType } from '../../engine/engine-type.ts';
import type { Signed } from '../../journal/event.ts';
import type { Fact } from '../event.ts';
import { tagsOf } from './tag.ts';

type HomingFact = Extract<Fact, { kind: 'part homed' | 'part strayed' | 'home decided' }>;
type Told<Kind extends HomingFact['kind']> = Extract<HomingFact, { kind: Kind }> & Signed;

/** A fact on a part's way home, with who noted it; in the job in the order in which they were noted. */
export type Homing = { [Kind in HomingFact['kind']]: Told<Kind> }[HomingFact['kind']];

/** What counts of one part now. */
export interface Homed {
  readonly homed?: Told<'part homed'>;
  /** In question until somebody decides. */
  readonly strayed?: Told<'part strayed'>;
  readonly decided?: Told<'home decided'>;
}

const after = (before: Homed, told: Homing): Homed => {
  switch (told.kind) {
    case 'part homed':
      return { ...before, homed: told };
    // A part in question is home no more, and what was decided of it before did not hold.
    case 'part strayed':
      return { strayed: told };
    case 'home decided':
      return { decided: told };
    default:
      return told satisfies never;
  }
};

/** What counts of each part that anything was told of. */
export const homedOf = (homing: readonly Homing[]): ReadonlyMap<string, Homed> => {
  const now = new Map<string, Homed>();
  for (const told of homing)
    for (const part of told.kind === 'part strayed' ? told.parts : [told.part])
      now.set(part, after(now.get(part) ?? {}, told));
  return now;
};

/** Without the homes of what some operations had fitted: each is confirmed anew when it is fitted again. */
export const homingWithout = (
  engine: EngineType,
  homing: readonly Homing[],
  operations: ReadonlySet<string>,
): readonly Homing[] => {
  const fitted = new Set([...operations].flatMap((name) => engine.operations.get(name)?.fits ?? []));
  const loose = new Set(
    tagsOf(engine)
      .filter(({ part }) => fitted.has(part))
      .map(({ id }) => id),
  );
  return homing.filter((told) => told.kind !== 'part homed' || !loose.has(told.part));
};
