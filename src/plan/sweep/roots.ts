/** @module Which of many hang together, directly or through others. */

/** The least of all that hang together with each. */
export const roots = (count: number, links: readonly (readonly number[])[]): readonly number[] => {
  const parent = Array.from({ length: count }, (_, index) => index);
  const rootOf = (one: number): number => {
    let root = one;
    while (parent[root] !== root) root = parent[root] ?? root;
    parent[one] = root;
    return root;
  };
  for (const [first = 0, ...others] of links)
    for (const other of others) {
      const [one, two] = [rootOf(first), rootOf(other)];
      parent[Math.max(one, two)] = Math.min(one, two);
    }
  return parent.map((_, one) => rootOf(one));
};
