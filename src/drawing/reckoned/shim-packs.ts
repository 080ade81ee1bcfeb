/** @module The packs of all pumps side by side, each as its stack of shims. */
import { mm, radians } from '../../quantity/brand.ts';
import { shimStack } from '../shim-stack.ts';
import { sideBySide } from '../side-by-side.ts';
import { numberIn, type Picture } from './picture.ts';

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
  return sideBySide('Shim packs of all pumps', stacks, 2);
};
