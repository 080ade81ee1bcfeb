/** @module May the engine be handed over? */

import { blank, type Trouble, trouble } from '../../journal/trouble.ts';
import type { RequestOf } from '../command.ts';
import { stepsLeft } from '../hold/run-in.ts';
import type { OpenJob } from '../job.ts';
import { packIsOff, pumpsAsFitted } from '../pumps.ts';
import { runInStanding } from '../run/run-in-standing.ts';
import { tightenDue } from '../tighten/due.ts';
import { undone } from '../undone.ts';
import { unplanned } from '../unplanned.ts';

/** Pumps without a fitted pack, and packs that are further off than the manual lets them be. */
const pumpsLeft = (job: OpenJob): readonly string[] =>
  pumpsAsFitted(job).flatMap((pump) => {
    if (pump.fitted === undefined) return [`no shim pack is fitted under ${pump.title}`];
    return packIsOff(pump)
      ? [`the shim pack under ${pump.title} is further off than the manual lets it be`]
      : [];
  });

/** Joints that running has made due, beyond those whose operation is named as not done already. */
const dueAgain = (job: OpenJob, named: readonly string[]): readonly string[] =>
  tightenDue(job).flatMap((due) => {
    if (due.when !== 'within the job' || due.standing !== 'due') return [];
    const by = job.sheet.engine.operations.get(due.by)?.title ?? due.by;
    return named.includes(by) ? [] : [`${due.fastener.title} are due to be tightened again`];
  });

export const handOverTrouble = (job: OpenJob, asked: RequestOf<'hand over'>): Trouble => {
  const anew = unplanned(job);
  const work = undone(job, ['build', 'set', 'run']);
  const left = [
    ...(anew === undefined ? [] : [anew]),
    ...(job.agreed === undefined ? ['no plan is agreed with the owner'] : []),
    ...work.map((title) => `“${title}” is not done`),
    ...pumpsLeft(job),
    ...dueAgain(job, work),
    ...stepsLeft(job),
    ...runInStanding(job).openFaults.map(({ says }) => `a fault is not put right: ${says}`),
  ];
  const shown =
    left.length > 5 ? `${left.slice(0, 5).join('; ')}; and ${left.length - 5} more` : left.join('; ');
  return (
    (left.length > 0
      ? trouble(shown, 'hand over', 'finish it first; what is missing is named here')
      : undefined) ?? blank(asked.to, 'hand over', 'write to whom it is handed')
  );
};
