/** @module Going round in circles: a cycle in what must come before what. */

/**
 * The first cycle in a graph, as the names along it, the first name again at the end; none where there is no
 * cycle. Names that the graph does not have lead nowhere. Steps are taken in the order of the map.
 */
export const findCycle = (graph: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined => {
  const finished = new Set<string>();
  for (const start of graph.keys()) {
    const trail: string[] = [];
    const onTrail = new Set<string>();
    const ahead: { readonly name: string; readonly depth: number }[] = [{ name: start, depth: 0 }];
    for (let step = ahead.pop(); step !== undefined; step = ahead.pop()) {
      while (trail.length > step.depth) {
        const left = trail.pop() ?? '';
        onTrail.delete(left);
        finished.add(left);
      }
      if (onTrail.has(step.name)) return [...trail.slice(trail.indexOf(step.name)), step.name];
      if (finished.has(step.name)) continue;
      trail.push(step.name);
      onTrail.add(step.name);
      for (const name of graph.get(step.name) ?? []) ahead.push({ name, depth: trail.length });
    }
    for (const name of trail) finished.add(name);
  }
  return undefined;
};
