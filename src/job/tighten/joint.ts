/** @module The bolts of one place as they stand, and the order in which they are tightened. */
import type { Fastener } from '../../engine/fastener.ts';
import { type Bolt, tightenOrder } from '../../reckon/tighten-order.ts';

export interface Joint {
  readonly bolts: readonly Bolt[];
  /** Every bolt once, by name. */
  readonly order: readonly string[];
  /** Where the order comes from; `counted` where nothing says how the bolts stand to one another. */
  readonly orderFrom: 'the maker' | 'centre out' | 'crosswise' | 'spiral' | 'counted';
}

/** Side by side, for a drawing that claims no more than how many there are. */
const inLine = ({ count, diameter }: Fastener): readonly Bolt[] =>
  Array.from({ length: count }, (_, index) => ({ name: `${index + 1}`, x: index * 5 * diameter, y: 0 }));

/** The maker's own order goes before one reckoned from the holes. */
export const jointOf = (fastener: Fastener): Joint => {
  const bolts = fastener.holes ?? inLine(fastener);
  const { order, holes } = fastener;
  if (typeof order === 'object') return { bolts, order, orderFrom: 'the maker' };
  if (holes === undefined) return { bolts, order: bolts.map(({ name }) => name), orderFrom: 'counted' };
  const way = order ?? 'centre out';
  return { bolts, order: tightenOrder(bolts, way).map(({ name }) => name), orderFrom: way };
};
