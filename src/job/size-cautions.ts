/** @module What must be said of sizes that the engine type wants alike, and that are not: a caution, never a block. */
import type { Component, EngineType } from '../engine/engine-type.ts';
import { operandPlace } from '../measure/expression.ts';
import { placesOfComponent, sizesInWords } from '../measure/fitted-size.ts';
import { judge } from '../measure/judge.ts';
import { machinedWords } from '../measure/machined-words.ts';
import { median } from '../measure/neighbours.ts';
import { placesOf } from '../measure/scheme.ts';
import type { OpenJob } from './job.ts';
import { sizeToFit } from './size-at.ts';

type Sized = Pick<OpenJob, 'sheet' | 'plan'>;

export interface SizeCaution {
  /** Titles of the components that it is said of. */
  readonly of: string;
  readonly places: readonly string[];
  readonly says: string;
}

const counted = ['no', 'one', 'two', 'three', 'four'];

/** A component whose places are decided together, and of which one stands at another size. */
const mixed = (job: Sized, component: Component): readonly SizeCaution[] => {
  if (!component.together || !component.sizes) return [];
  const sizes = placesOfComponent(job.sheet.engine, component).map(
    (place) => [place, sizeToFit(job, component.name, place)] as const,
  );
  const different = new Set(sizes.map(([, size]) => size)).size;
  if (different < 2) return [];
  const most = sizesInWords(sizes).split(', ')[0];
  return [
    {
      of: component.title,
      places: sizes.filter(([, size]) => size !== most).map(([place]) => place),
      says: `${component.title} are to be of one size, and stand at ${counted[different] ?? different}: ${wordsOf(sizes)}. Each is judged by its own size. Ask the maker’s manual whether it may go back so, or plan to bring all to one size.`,
    },
  ];
};

const wordsOf = (sizes: readonly (readonly [string, string])[]): string =>
  [...Map.groupBy(sizes, ([, size]) => size)]
    .toSorted((a, b) => a[1].length - b[1].length)
    .map(([size, at]) => `${at.map(([place]) => place).join(', ')} at ${size}`)
    .join('; ');

/** A part that is to be of the size of another, and is not. */
const apart = (job: Sized, engine: EngineType): readonly SizeCaution[] =>
  engine.couplings.flatMap((coupling): readonly SizeCaution[] => {
    if (coupling.kind !== 'same size') return [];
    const leader = engine.components.get(coupling.leader);
    const follower = engine.components.get(coupling.follower);
    if (!leader || !follower) return [];
    return placesOfComponent(engine, follower).flatMap((id): readonly SizeCaution[] => {
      const place = engine.places.get(id);
      if (!place) return [];
      const at = operandPlace(engine, place, leader.at);
      const [own, other] = [sizeToFit(job, follower.name, id), sizeToFit(job, leader.name, at)];
      return own === other
        ? []
        : [
            {
              of: follower.title,
              places: [id],
              says: `${follower.title} at ${id} stand at ${own}, and ${leader.title} at ${at} at ${other}: they are to be of one size. Look at the marks of both and note the size found of the one that is wrong, or plan to bring them to one size.`,
            },
          ];
    });
  });

/** A place that lies outside with every reading, and just where another size of its part would. */
const measuresAsOther = ({ sheet }: Sized, component: Component): readonly SizeCaution[] => {
  const of = sheet.engine.characteristics.get(component.sizes?.of ?? '');
  if (!of) return [];
  return placesOf(sheet.engine, of).flatMap((place): readonly SizeCaution[] => {
    const { cells } = judge(sheet, of.name, place.id);
    const sizes = cells.flatMap(({ size, verdict }) => (size && verdict === 'outside' ? [size.value] : []));
    const words =
      sizes.length > 0 && sizes.length === cells.length ? machinedWords(sheet, of, place, median(sizes)) : '';
    return words === ''
      ? []
      : [
          {
            of: component.title,
            places: [place.id],
            says: `${place.title}, ${of.title}: every reading is outside, and lies where another size would.${words}`,
          },
        ];
  });
};

/** Sizes of a job that do not go together, as they stand or as the plan will have them, in the order of the engine type. */
export const sizeCautionsOf = (job: Sized): readonly SizeCaution[] => [
  ...[...job.sheet.engine.components.values()].flatMap((component) => mixed(job, component)),
  ...apart(job, job.sheet.engine),
  ...[...job.sheet.engine.components.values()].flatMap((component) => measuresAsOther(job, component)),
];
