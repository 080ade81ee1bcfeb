/** @module Where a plan of the trade-off falls short of what is asked, in words. */
import { formatFigure } from '../quantity/figure.ts';
import type { Demands, Plan } from './plan-model.ts';

/**
 * Too short a life, too late, too dear; none of these where it keeps what is asked.
 *
 * @returns words for each, hours first: `500 h too short`
 */
export const fallsShort = (
  plan: Pick<Plan, 'cents' | 'days' | 'hours'>,
  asked: Pick<Demands, 'cents' | 'days' | 'hours'>,
): readonly string[] => {
  const short = (asked.hours ?? 0) - plan.hours;
  const late = plan.days - (asked.days ?? Number.POSITIVE_INFINITY);
  const dear = plan.cents - (asked.cents ?? Number.POSITIVE_INFINITY);
  return [
    ...(short > 0 ? [`${formatFigure(Math.ceil(short), 0)} h too short`] : []),
    ...(late > 0
      ? [`${formatFigure(late, Number.isInteger(late) ? 0 : 1)} ${late === 1 ? 'day' : 'days'} too late`]
      : []),
    ...(dear > 0 ? [`${formatFigure(dear / 100, 2)} too dear`] : []),
  ];
};
