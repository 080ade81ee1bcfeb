/** @module A heap: things put in as they come, the least taken out first. */

export interface LeastFirst<T> {
  readonly peek: () => T | undefined;
  readonly put: (item: T) => void;
  readonly take: () => T | undefined;
}

export const leastFirst = <T>(compare: (a: T, b: T) => number): LeastFirst<T> => {
  const items: T[] = [];
  const put = (item: T): void => {
    let at = items.push(item) - 1;
    while (at > 0) {
      const up = (at - 1) >> 1;
      const parent = items[up] as T;
      if (compare(parent, item) <= 0) break;
      items[at] = parent;
      at = up;
    }
    items[at] = item;
  };
  const take = (): T | undefined => {
    const first = items[0];
    const last = items.pop();
    if (first === undefined || last === undefined || items.length === 0) return first;
    let at = 0;
    for (let down = 1; down < items.length; down = 2 * at + 1) {
      if (down + 1 < items.length && compare(items[down + 1] as T, items[down] as T) < 0) down += 1;
      if (compare(items[down] as T, last) >= 0) break;
      items[at] = items[down] as T;
      at = down;
    }
    items[at] = last;
    return first;
  };
  return { peek: () => items[0], put, take };
};
