/** @module The packs of all pumps side by side, each as its stack of shims. */
import { mm, radians } from '../../quantity/brand.ts';
import { shimStack } from '../shim-stack.ts';
import { type SvgNode, sheetOf, svg } from '../svg.ts';
import { numberIn, type Picture } from './picture.ts';

const sizeOf = ({ attributes }: SvgNode): readonly [number, number] => {
  const [, , width = 0, height = 0] = String(attributes.viewBox).split(' ').map(Number);
  return [width, height];
};

export const shimPackPicture: Picture = (_, reckoned) => {
  const pumps = Object.keys(reckoned.results).flatMap((key) =>
    key.endsWith('.thickness') ? [key.slice(0, -'.thickness'.length)] : [],
  );
  const stacks = pumps.map((pump) => {
    const thickness = numberIn(reckoned, `${pump}.thickness`);
    const error = numberIn(reckoned, `${pump}.error`);
    const shims = String(reckoned.results[`${pump}.shims`]?.value ?? 'none');
    return shimStack({
      title: pump,
      shims: shims === 'none' ? [] : shims.split(' + ').map((shim) => mm(Number(shim))),
      needed: thickness - error,
      error,
      timingError: radians((numberIn(reckoned, `${pump}.timing-error`) * Math.PI) / 180),
    });
  });
  const across = Math.min(2, stacks.length);
  const width = 300;
  const rowHeights = Array.from({ length: Math.ceil(stacks.length / across) }, (_none, row) =>
    Math.max(...stacks.slice(row * across, row * across + across).map((stack) => sizeOf(stack)[1])),
  );
  const tops = rowHeights.map((_height, row) =>
    rowHeights.slice(0, row).reduce((sum, each) => sum + each, 0),
  );
  return sheetOf(
    { width: across * width, height: rowHeights.reduce((sum, each) => sum + each, 0) },
    {
      title: 'Shim packs of all pumps',
      description: stacks.map((stack) => stack.attributes['aria-label']).join('; '),
    },
    ...stacks.map((stack, at) => {
      const [own, tall] = sizeOf(stack);
      const row = Math.floor(at / across);
      return svg(
        'svg',
        {
          x: (at % across) * width,
          y: (tops[row] ?? 0) + (rowHeights[row] ?? 0) - tall,
          width: own,
          height: tall,
          viewBox: String(stack.attributes.viewBox),
        },
        ...stack.children,
      );
    }),
  );
};
