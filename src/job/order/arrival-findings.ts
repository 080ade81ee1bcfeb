/** @module What came and is not as ordered, as findings that bear on the plan: it may not go back, or not be machined. */
import type { PlanQuestion } from '../../plan/question.ts';
import type { OpenJob } from '../job.ts';
import { type LineAt, orderedLines } from './standing.ts';

type FindingForPlan = PlanQuestion['findings'][number];

/** The places of a part that a failed line speaks of: those outside, or all of them where it is cracked. */
const failedPlaces = (job: Pick<OpenJob, 'sheet'>, { line, judged }: LineAt): readonly string[] => {
  const component = job.sheet.engine.components.get(line.component ?? '');
  const outside = judged.filter(({ verdict }) => verdict === 'outside').map(({ place }) => place);
  const own = outside.filter((place) => job.sheet.engine.places.get(place)?.kind === component?.at);
  return own.length > 0 ? [...new Set(own)] : line.places;
};

export const arrivalFindings = (job: Pick<OpenJob, 'sheet' | 'orders'>): readonly FindingForPlan[] =>
  orderedLines(job).flatMap((at): readonly FindingForPlan[] => {
    const { line, standing, order } = at;
    if (standing.kind !== 'failed' || line.component === undefined) return [];
    const component = line.component;
    const says = `not as ordered from ${order.supplier}: ${standing.says[0]}`;
    const { cracked } = standing;
    return failedPlaces(job, at).map((place) => ({ place, component, mayGoBack: false, cracked, says }));
  });
