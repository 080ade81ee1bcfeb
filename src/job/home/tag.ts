/** @module The tags of an engine: one for every part that comes off and goes back, numbered for a pencil and named for a scanner. */
import type { EngineType, Place, PlaceKind } from '../../engine/engine-type.ts';

export interface Tag {
  /** The place it goes back to, `piston.3`, or the part's own name, `sump`. */
  readonly id: string;
  /** 1 and up in this engine: what is written on a bag by hand. */
  readonly number: number;
  /** For reading aloud: `piston 3`. */
  readonly title: string;
  /** Where it belongs, in words: `cylinder 3`. */
  readonly home: string;
  /** The kind of place, or the part's own name: what operations take off and fit. */
  readonly part: string;
  /** Whether others like it come off the engine, so that it must find its own place again. */
  readonly keeps: boolean;
}

const spoken = (name: string): string => name.replaceAll('-', ' ');

/** `cylinder 3`, `cylinder 3, 1 of 2`, `main bearing 2 of 4`: from where the maker counts them. */
const homeOf = (engine: EngineType, kind: PlaceKind, { number, title }: Place): string => {
  const each = kind.count / engine.cylinders;
  if (kind.along !== 'cylinder' || !Number.isInteger(each)) return `${title} of ${kind.count}`;
  const cylinder = `cylinder ${Math.ceil(number / each)}`;
  return each === 1 ? cylinder : `${cylinder}, ${((number - 1) % each) + 1} of ${each}`;
};

type Untold = Omit<Tag, 'number'>;

const tagsOfPart = (engine: EngineType, part: string): readonly Untold[] => {
  const kind = engine.placeKinds.get(part);
  if (kind === undefined || kind.onePart !== undefined) {
    const title = kind?.onePart ?? spoken(part);
    return [{ id: part, title, home: 'there is one in the engine', part, keeps: false }];
  }
  const keeps = kind.count > 1;
  return [...engine.places.values()]
    .filter((place) => place.kind === part)
    .map((place) => ({
      id: place.id,
      title: place.title,
      home: keeps ? homeOf(engine, kind, place) : 'there is one in the engine',
      part,
      keeps,
    }));
};

/**
 * Every tag of an engine, in the order in which the strip takes the parts off, places by their number. An engine type
 * whose strip does not say what it takes off has tags for the parts that keep their place.
 *
 * @returns the same tags with the same numbers for the same engine type
 */
export const tagsOf = (engine: EngineType): readonly Tag[] => {
  const off = [...engine.operations.values()].flatMap(({ removes }) => removes);
  const staying = [...engine.components.values()].filter(({ tagged }) => tagged).map(({ at }) => at);
  return [...new Set([...off, ...staying])]
    .flatMap((part) => tagsOfPart(engine, part))
    .map((tag, at) => ({ ...tag, number: at + 1 }));
};
