/** @module The part of what is not known of several sizes that is one and the same error, as of one micrometer. */
import { standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';

/**
 * A size of which one part is the shared error and the rest its own.
 *
 * Two sizes that were parted lose the shared error in their difference.
 *
 * @param size    with all that is not known of it, mm
 * @param own     name of what is the size's own
 * @param shared  standard uncertainty of the shared error, mm, 0 and up
 * @returns the size, mm; undefined where the shared part is more than the whole
 * @source  JCGM 100:2008, 5.2.2 and F.1.2.3: a common influence, named as one
 * @example withShared(uncertain(55, 'bore', 0.003), 'bore', 0.004) // undefined
 */
export const withShared = (size: Uncertain, own: string, shared: number): Uncertain | undefined => {
  const u = standardUncertainty(size);
  if (shared > u * (1 + 1e-12)) return undefined;
  const rest = Math.sqrt(Math.max(0, u * u - shared * shared));
  const terms = [
    { name: own, share: rest, freedom: Infinity },
    { name: 'shared', share: shared, freedom: Infinity },
  ].toSorted((a, b) => (a.name < b.name ? -1 : 1));
  return { value: size.value, terms: terms.filter(({ share }) => share > 0) };
};
