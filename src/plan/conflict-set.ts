/** @module The fewest rules that cannot be kept together: first a set of which none can be left out, then a smaller one. */

/** Whether these can be kept together; undefined where it was not found out in the time allowed. */
export type Together = (rules: readonly string[]) => Promise<boolean | undefined>;

/** A set of more rules than this is not searched for a smaller one: many go into it, whichever it is. */
const few = 6;
/** Questions asked in search of a smaller set; then the one found first stands. */
const mostQuestions = 200;

const within = (some: readonly string[], all: ReadonlySet<string>): boolean =>
  some.every((rule) => all.has(rule));

/** Asks only what does not follow from answers before: fewer rules than can be kept can be kept, more than cannot cannot. */
const remembering = (together: Together): Together => {
  const open: ReadonlySet<string>[] = [];
  const shut: (readonly string[])[] = [];
  return async (rules) => {
    const own = new Set(rules);
    if (open.some((kept) => within(rules, kept))) return true;
    if (shut.some((conflict) => within(conflict, own))) return false;
    const answer = await together(rules);
    if (answer === true) open.push(own);
    if (answer === false) shut.push(rules);
    return answer;
  };
};

/** Halves a list where the rules before it cannot be kept together. */
const halves = <T>(list: readonly T[]): readonly [readonly T[], readonly T[]] => {
  const middle = Math.ceil(list.length / 2);
  return [list.slice(0, middle), list.slice(middle)];
};

/**
 * Of rules that cannot all be kept, a set that cannot be kept either, but could if any one were left out. A rule
 * stays only where those after it do not make a conflict without it.
 *
 * @source U. Junker, QuickXplain (2004): the list is halved, so that few questions are asked
 */
const irreducible = async (
  kept: readonly string[],
  added: boolean,
  rules: readonly string[],
  together: Together,
): Promise<readonly string[] | undefined> => {
  if (added) {
    const open = await together(kept);
    if (open === undefined) return undefined;
    if (!open) return [];
  }
  if (rules.length <= 1) return rules;
  const [earlier, later] = halves(rules);
  const fromEarlier = await irreducible([...kept, ...later], true, earlier, together);
  if (!fromEarlier) return undefined;
  const fromLater = await irreducible([...kept, ...fromEarlier], fromEarlier.length > 0, later, together);
  return fromLater && [...fromEarlier, ...fromLater];
};

/** The fewest rules, fewer than `below`, of which one at least is in each of the sets. */
const fewestHitting = (
  sets: readonly ReadonlySet<string>[],
  below: number,
  taken: readonly string[] = [],
): readonly string[] | undefined => {
  const missed = sets.find((set) => !taken.some((rule) => set.has(rule)));
  if (!missed) return taken.length < below ? taken : undefined;
  if (taken.length + 1 >= below) return undefined;
  let best: readonly string[] | undefined;
  for (const rule of missed) {
    const found = fewestHitting(sets, best?.length ?? below, [...taken, rule]);
    if (found) best = found;
  }
  return best;
};

/** What must be let go so that these can be kept: as few of the others as come of adding them a part at a time. */
const letGo = async (
  kept: readonly string[],
  rest: readonly string[],
  together: Together,
): Promise<{ readonly kept: readonly string[]; readonly gone: readonly string[] } | undefined> => {
  const all = [...kept, ...rest];
  const open = await together(all);
  if (open === undefined) return undefined;
  if (open) return { kept: all, gone: [] };
  if (rest.length === 1) return { kept, gone: rest };
  const [earlier, later] = halves(rest);
  const first = await letGo(kept, earlier, together);
  const second = first && (await letGo(first.kept, later, together));
  return first && second && { kept: second.kept, gone: [...first.gone, ...second.gone] };
};

/**
 * The smallest set that cannot be kept: whatever set of rules is let go so that the others can be kept has one of
 * every conflict in it; the fewest rules that hit all of those found so far are a conflict, or show one more.
 *
 * @returns undefined where none is smaller than `below`, or none was found in the questions allowed
 * @source A. Ignatiev and others, Smallest MUS extraction with minimal hitting set dualization (2015)
 */
const smaller = async (
  rules: readonly string[],
  below: number,
  together: Together,
): Promise<readonly string[] | undefined> => {
  const sets: ReadonlySet<string>[] = [];
  for (;;) {
    const fewest = fewestHitting(sets, below);
    if (!fewest) return undefined;
    const open = await together(fewest);
    if (open === undefined) return undefined;
    if (!open) return fewest;
    const rest = await letGo(
      fewest,
      rules.filter((rule) => !fewest.includes(rule)),
      together,
    );
    if (!rest) return undefined;
    sets.push(new Set(rest.gone));
  }
};

/**
 * @param rules  that cannot all be kept together; those that should rather be named come last
 * @returns a set of which none can be left out; where it has few rules, the smallest there is, unless that takes too
 *   many questions to find out
 */
export const conflictSet = async (
  rules: readonly string[],
  together: Together,
): Promise<readonly string[] | undefined> => {
  let left = Number.POSITIVE_INFINITY;
  const ask = remembering(async (some) => {
    left -= 1;
    return left < 0 ? undefined : together(some);
  });
  const found = await irreducible([], false, rules, ask);
  if (!found || found.length > few) return found;
  left = mostQuestions;
  const fewest = (await smaller(rules, found.length, ask)) ?? found;
  return rules.filter((rule) => fewest.includes(rule));
};
