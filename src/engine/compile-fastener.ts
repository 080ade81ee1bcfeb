/** @module A fastener of an engine type put together from its file: stages read, holes put where they stand. */
import { hours, mm } from '../quantity/brand.ts';
import type { EngineFile } from './engine-file.ts';
import type { Fastener, Hole, Stage, TightenAgain } from './fastener.ts';
import { type FigureReader, readFigure } from './figure-reader.ts';
import type { FilePath } from './file-path.ts';
import { wrong } from './finding.ts';
import { given } from './given.ts';
import { readStage } from './stage.ts';
import { threadOf } from './thread.ts';

type FastenerFile = EngineFile['fasteners'][string];

const listed = (count: number, at: (index: number) => readonly [x: number, y: number]): readonly Hole[] =>
  Array.from({ length: count }, (_, index) => {
    const [x, y] = at(index);
    return { name: `${index + 1}`, x: mm(x), y: mm(y) };
  });

const holesOf = (
  reader: FigureReader,
  { holes, count }: FastenerFile,
  path: FilePath,
): readonly Hole[] | undefined => {
  if (holes === undefined) return undefined;
  const length = (text: string, at: FilePath) => readFigure(reader, text, 'length', [...path, ...at]).amount;
  if ('ring' in holes) {
    const radius = length(holes.ring, ['ring']) / 2;
    const turn = (2 * Math.PI) / count;
    return listed(count, (index) => [radius * Math.sin(index * turn), -radius * Math.cos(index * turn)]);
  }
  if ('rows' in holes) {
    const spacing = length(holes.spacing, ['spacing']);
    const apart = holes.apart === undefined ? spacing : length(holes.apart, ['apart']);
    const inRow = Math.ceil(count / holes.rows);
    return listed(count, (index) => [(index % inRow) * spacing, Math.floor(index / inRow) * apart]);
  }
  return holes.map(({ name, x, y }, index) => ({
    name: String(name ?? index + 1),
    x: mm(length(x, [index, 'x'])),
    y: mm(length(y, [index, 'y'])),
  }));
};

const againOf = (
  reader: FigureReader,
  file: FastenerFile['again'][number],
  stages: readonly Stage[],
  path: FilePath,
): TightenAgain => ({
  ...given('after', file.after),
  ...given('by', file.by),
  ...given(
    'hours',
    file.hours === undefined
      ? undefined
      : hours(readFigure(reader, file.hours, 'time', [...path, 'hours']).amount),
  ),
  cold: file.cold,
  how: file.how,
  stages:
    file.stages?.map((text, index) => readStage(reader, text, [...path, 'stages', index])) ??
    stages.filter(({ kind }) => kind === 'torque').slice(-1),
});

const stretchOf = (
  reader: FigureReader,
  stretch: FastenerFile['stretch'],
  path: FilePath,
): Fastener['stretch'] => {
  if (stretch === undefined || stretch === 'once') return stretch && { kind: 'once' };
  const longest = mm(readFigure(reader, stretch.longest, 'length', [...path, 'longest']).amount);
  return { kind: 'up to a length', longest };
};

/** Bolts on a ring go crosswise unless the file says otherwise. */
const orderOf = ({ order, holes }: FastenerFile): Fastener['order'] => {
  if (typeof order === 'object') return order.map((bolt) => String(bolt));
  return order ?? (holes !== undefined && 'ring' in holes ? 'crosswise' : undefined);
};

export const fastenerOf = (reader: FigureReader, name: string, file: FastenerFile): Fastener => {
  const path = ['fasteners', name];
  const thread = threadOf(file.thread);
  if (thread === undefined) {
    const remedy = `write the pitch too, for example ${file.thread}x1.5`;
    reader.findings.push(
      wrong([...path, 'thread'], `the coarse pitch of ${file.thread} is not known`, remedy),
    );
  }
  const stages = file.stages.map((text, index) => readStage(reader, text, [...path, 'stages', index]));
  return {
    name,
    title: file.title,
    at: file.at,
    count: file.count,
    diameter: thread?.diameter ?? mm(Number.NaN),
    pitch: thread?.pitch ?? mm(Number.NaN),
    class: file.class,
    threadState: file['thread-state'],
    friction: file.friction,
    stages,
    hand: file.hand,
    ...given('holes', holesOf(reader, file, [...path, 'holes'])),
    ...given('order', orderOf(file)),
    ...given('stretch', stretchOf(reader, file.stretch, [...path, 'stretch'])),
    ...given('renewedBy', file['renewed-by']),
    again: file.again.map((entry, index) => againOf(reader, entry, stages, [...path, 'again', index])),
    ...given('source', file.source),
  };
};
