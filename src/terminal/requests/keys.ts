/** @module How each kind of value that belongs to a request is typed behind its key. */
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { readTyped } from '../../quantity/typed.ts';
import type { Dimension } from '../../quantity/unit.ts';
import { plain } from '../plain.ts';

export interface Key {
  readonly name: string;
  readonly needed: boolean;
  /** For the help: `54.980mm`. */
  readonly example: string;
  readonly read: (text: string) => Answer<unknown>;
}

const key = (name: string, example: string, read: Key['read']): Key => ({
  name,
  needed: true,
  example,
  read,
});

export const optional = (one: Key): Key => ({ ...one, needed: false });

export const text = (name: string, example: string): Key => key(name, example, answer);

export const figure = (name: string, dimension: Dimension, example: string): Key =>
  key(name, example, (typed) => {
    const read = readTyped(typed, dimension);
    return read.kind === 'refused'
      ? { ...read, refusal: { ...read.refusal, where: `${name}=${plain(typed)}` } }
      : read;
  });

/** The first dimension in which the figure can be read. */
export const figureOfAny = (
  name: string,
  dimensions: readonly [Dimension, ...Dimension[]],
  example: string,
): Key =>
  key(name, example, (typed) => {
    const [first, ...others] = dimensions;
    const read = figure(name, first, example).read(typed);
    if (read.kind === 'answer') return read;
    const also = others.map((dimension) => figure(name, dimension, example).read(typed));
    return also.find((one) => one.kind === 'answer') ?? also.at(-1) ?? read;
  });

export const yesOrNo = (name: string): Key =>
  key(name, 'yes', (typed) => {
    if (typed === 'yes') return answer(true);
    return typed === 'no'
      ? answer(false)
      : refuse(`${plain(typed)} is neither yes nor no`, name, `write ${name}=yes or ${name}=no`);
  });

export const number = (name: string, example: string): Key =>
  key(name, example, (typed) =>
    /^\d{1,9}(\.\d{1,6})?$/.test(typed)
      ? answer(Number(typed))
      : refuse(`${plain(typed)} is not a number`, name, `write for example ${name}=${example}`),
  );

const parts = (typed: string, mark: RegExp): readonly string[] =>
  typed
    .split(mark)
    .map((part) => part.trim())
    .filter((part) => part !== '');

const figureList = (name: string, dimension: Dimension, example: string, mark: RegExp, shown: string): Key =>
  key(name, shown, (typed) => {
    const read = parts(typed, mark).map(figure(name, dimension, example).read);
    return (
      read.find((one) => one.kind === 'refused') ??
      answer(read.flatMap((one) => (one.kind === 'answer' ? [one.value] : [])))
    );
  });

/** `pump.1, head`; nothing typed gives none. */
export const names = (name: string, example: string): Key =>
  key(name, `"${example}"`, (typed) => answer(parts(typed, /[,;]/)));

/** `0.30mm + 0.25mm`. */
export const pack = (name: string): Key => figureList(name, 'length', '0.30mm', /\+/, '"0.30mm + 0.25mm"');

/** `2.104mm; 2.105mm`: readings of one thing. */
export const repeats = (name: string): Key =>
  figureList(name, 'length', '2.104mm', /;/, '"2.104mm; 2.105mm"');

/** `320°C; 331°C`: one for each cylinder in turn. */
export const figuresOf = (name: string, dimension: Dimension, shown: string): Key =>
  figureList(name, dimension, shown.replaceAll('"', '').split(';')[0] ?? '', /;/, shown);

/** `main.1 A + B, main.2 C + D`: parts by place. */
export const placed = (name: string): Key =>
  key(name, '"main.1 A + B, main.2 C + D"', (typed) => {
    const places: { place: string; parts: readonly string[] }[] = [];
    for (const entry of parts(typed, /[,;]/)) {
      const [, place = '', names = ''] = /^(\S+)\s+(\S.*)$/.exec(entry) ?? [];
      if (names === '')
        return refuse(
          `${plain(entry)} is not a place and its parts`,
          name,
          `write for example ${name}="main.1 A + B, main.2 C + D"`,
        );
      places.push({ place, parts: parts(names, /\+/) });
    }
    return answer(places);
  });

/** `0.20mm x 6, 0.25mm x 4`. */
export const box = (name: string): Key =>
  key(name, '"0.20mm x 6, 0.25mm x 4"', (typed) => {
    const counts: { thickness: unknown; count: number }[] = [];
    // A comma may also be a decimal mark: the list is parted only where the next thickness begins.
    for (const part of parts(typed, /;|,\s+|,(?=\d+[.,]\d+\s*[a-zµ]+\s*[x×*])/)) {
      const [, thickness = '', count = ''] = /^(.*\S)\s*[x×*]\s*(\d{1,6})$/.exec(part) ?? [];
      if (count === '')
        return refuse(
          `${plain(part)} is not a thickness and a count`,
          name,
          `write for example ${name}="0.20mm x 6, 0.25mm x 4"`,
        );
      const read = figure(name, 'length', '0.20mm').read(thickness);
      if (read.kind === 'refused') return read;
      counts.push({ thickness: read.value, count: Number(count) });
    }
    return answer(counts);
  });
