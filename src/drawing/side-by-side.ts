/** @module Drawings set beside and below one another as one drawing, each at its own scale, feet in line. */
import { type SvgNode, sheetOf, svg } from './svg.ts';

const sizeOf = ({ attributes }: SvgNode): readonly [width: number, height: number] => {
  const [, , width = 0, height = 0] = String(attributes.viewBox).split(' ').map(Number);
  return [width, height];
};

/**
 * @param across  how many stand in one row
 * @returns one drawing; its words are those of its parts
 */
export const sideBySide = (title: string, drawings: readonly SvgNode[], across: number): SvgNode => {
  const sizes = drawings.map(sizeOf);
  const columns = Math.max(1, Math.min(across, drawings.length));
  const width = Math.max(...sizes.map(([own]) => own));
  const rows = Array.from({ length: Math.ceil(drawings.length / columns) }, (_, row) =>
    Math.max(...sizes.slice(row * columns, row * columns + columns).map(([, height]) => height)),
  );
  const top = (row: number) => rows.slice(0, row).reduce((sum, each) => sum + each, 0);
  return sheetOf(
    { width: columns * width, height: top(rows.length) },
    { title, description: drawings.map(({ attributes }) => attributes['aria-label']).join('; ') },
    ...drawings.map((drawing, at) => {
      const [own = 0, tall = 0] = sizes[at] ?? [];
      const row = Math.floor(at / columns);
      const place = { x: (at % columns) * width, y: top(row) + (rows[row] ?? 0) - tall };
      return svg(
        'svg',
        { ...place, width: own, height: tall, viewBox: String(drawing.attributes.viewBox) },
        ...drawing.children,
      );
    }),
  );
};
