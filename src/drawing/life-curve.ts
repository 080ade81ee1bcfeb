/** @module The chance that the engine still runs, over its hours, with the hours wanted marked. */
import type { EngineLife } from '../plan/engine-life.ts';
import { formatFigure } from '../quantity/figure.ts';
import { chart } from './chart.ts';
import type { SvgNode } from './svg.ts';

/** The curve is drawn until as few in a hundred are left. */
const shownTo = 1;

const shareAt = ({ curve }: EngineLife, hours: number): number => {
  const after = curve.findIndex((point) => point.hours >= hours);
  const [a, b] = [curve[after - 1], curve[after]];
  if (!b) return 0;
  if (!a) return b.share;
  return a.share + ((b.share - a.share) * (hours - a.hours)) / (b.hours - a.hours);
};

/**
 * @param life    of the engine
 * @param wanted  hours wanted, marked on the curve; the hours counted on where none are
 */
export const lifeCurve = (life: EngineLife, wanted: number | undefined): SvgNode => {
  const points = life.curve.map(({ hours, share }) => [hours, share * 100] as const);
  const last = points.find(([, share]) => share < shownTo)?.[0] ?? points.at(-1)?.[0] ?? 1;
  const to = Math.max(last, (wanted ?? 0) * 1.1, 1);
  const at = wanted ?? life.countedOn;
  const share = shareAt(life, at) * 100;
  const says = `${formatFigure(at, 0)} h${wanted === undefined ? '' : ' wanted'}: ${formatFigure(share, 0)} in 100`;
  return chart({
    title: 'How long the engine lasts',
    description: `Of 100 such engines, ${formatFigure(share, 0)} run longer than ${formatFigure(at, 0)} h before the first part goes; 90 outlast ${formatFigure(life.countedOn, 0)} h and 50 outlast ${formatFigure(life.middle, 0)} h.`,
    x: { words: 'hours from now, h', from: 0, to },
    y: { words: 'of 100 such engines, still without a part gone', from: 0, to: 100 },
    curves: [{ points: points.filter(([hours]) => hours <= to), stroke: 'accent' }],
    marks: [{ at: [at, share], words: says, led: true }],
  });
};
