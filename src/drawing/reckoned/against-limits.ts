/** @module A gap with its ± on one line with its limits and with where it would be shut. */
import { coverageFactor } from '../../quantity/coverage.ts';
import type { Uncertain } from '../../quantity/uncertain.ts';
import { figure, numberLine } from '../number-line.ts';
import type { SvgNode } from '../svg.ts';

interface Marked {
  readonly at: number;
  readonly words: string;
  /** Standard uncertainty, mm. */
  readonly u: number;
}

/**
 * @param gap     the one that is judged
 * @param others  gaps shown beside it: as found, where the bore is worn
 */
export const againstLimits = (
  title: string,
  { least, greatest }: Readonly<Record<string, Uncertain>>,
  gap: Marked,
  others: readonly Marked[] = [],
): SvgNode => {
  const factor = coverageFactor(0.95, Infinity);
  const limits = [
    ...(least ? [{ at: least.value, words: `least ${figure(least.value)}` }] : []),
    ...(greatest ? [{ at: greatest.value, words: `greatest ${figure(greatest.value)}` }] : []),
  ];
  const all = [0, gap.at, ...others.map(({ at }) => at), ...limits.map(({ at }) => at)];
  return numberLine({
    title,
    description: [gap, ...others, ...limits].map(({ words }) => words).join(', '),
    unit: 'mm',
    stretches:
      limits.length === 0
        ? []
        : [
            {
              from: least?.value ?? Math.min(...all),
              to: greatest?.value ?? Math.max(...all),
              words: 'allowed',
              hatch: 'wide',
            },
          ],
    marks: [
      { at: 0, words: 'shut' },
      ...limits,
      ...others.map(({ at, words, u }) => ({ at, words, spread: factor * u })),
      { at: gap.at, words: gap.words, strong: true, spread: factor * gap.u },
    ],
  });
};
