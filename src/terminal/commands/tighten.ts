/** @module `endfloat tighten`: the joints of an operation, bolt by bolt in order, what is done and next; and what is due again. */
import type { Operation } from '../../engine/engine-type.ts';
import { chooseName } from '../../engine/nearest-name.ts';
import type { OpenJob } from '../../job/job.ts';
import { stageCautions } from '../../job/tighten/cautions.ts';
import { dueWords, tightenDue } from '../../job/tighten/due.ts';
import { stagePreload } from '../../job/tighten/preload.ts';
import { type Tightening, tighteningsOf } from '../../job/tighten/tightening.ts';
import { jointWords, stageText, stageWords, threadWords, turnWords } from '../../job/tighten/words.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import type { Outcome, TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';
import { inJob, storeOptions } from '../workshop.ts';

const heads = [
  { head: 'Stage' },
  { head: 'Done in order' },
  { head: 'Left in order' },
  { head: 'Pulls each bolt with' },
  { head: 'Caution' },
];

const preloadText = ({ fastener }: Tightening, at: Tightening['stages'][number]): string => {
  const pull = stagePreload(fastener, at.stage);
  return pull === undefined
    ? ''
    : `${formatFigure(pull.least, 0)} to ${formatFigure(pull.greatest, 0)} kN of ${formatFigure(pull.proofLoad, 0)} kN proof`;
};

const jointText = (job: OpenJob, joint: Tightening): string => {
  const { fastener, joint: bolts, next, stages } = joint;
  const order =
    bolts.orderFrom === 'counted'
      ? 'The engine type does not say how they stand: look the order up in the manual.'
      : `Order ${bolts.orderFrom === 'the maker' ? 'of the maker' : `reckoned ${bolts.orderFrom}`}: ${bolts.order.join(' ')}.`;
  const where =
    next === undefined ? 'All is tight.' : `Next: ${stageWords(joint, next.stage)}, bolt ${next.bolt}.`;
  return `${plain(jointWords(joint))}: ${threadWords[fastener.threadState]}, ${turnWords(fastener)}.\n${plain(order)}\n${table(
    heads,
    stages.map((stage) => [
      stageText(stage.stage),
      stage.done.join(' '),
      stage.left.join(' '),
      preloadText(joint, stage),
      stageCautions(job, stage).join('; '),
    ]),
  )}${plain(where)}\n`;
};

const dueText = (job: OpenJob): string =>
  tightenDue(job)
    .map(
      (due) => `${plain(dueWords(job, due))}${due.when === 'within the job' ? ` (${due.standing})` : ''}\n`,
    )
    .join('');

const jointJson = (job: OpenJob, joint: Tightening) => ({
  fastener: joint.fastener.name,
  place: joint.place.id,
  threadState: joint.fastener.threadState,
  hand: joint.fastener.hand,
  order: joint.joint.order,
  orderFrom: joint.joint.orderFrom,
  stages: joint.stages.map((stage) => ({
    stage: stageText(stage.stage),
    done: stage.done,
    left: stage.left,
    preload: stagePreload(joint.fastener, stage.stage) ?? null,
    cautions: stageCautions(job, stage),
  })),
  next: joint.next ?? null,
});

const wanted = (job: OpenJob, name: string | undefined): Answer<readonly Operation[]> => {
  const all = [...job.sheet.engine.operations.values()].filter(({ tightens }) => tightens.length > 0);
  if (name === undefined) return answer(all);
  const operation = job.sheet.engine.operations.get(name);
  if (operation === undefined)
    return refuse(
      `there is no operation ${plain(name)}`,
      'operation',
      chooseName(
        name,
        all.map((one) => one.name),
      ),
    );
  return answer([operation]);
};

export const tighten: TerminalCommand = {
  name: 'tighten',
  summary:
    'show the order, stages and next bolt of each joint of an operation, and what is tightened again when',
  usage: ['tighten JOB', 'tighten JOB OPERATION'],
  about:
    'Stages are noted with endfloat do JOB tighten.\nExit code 1 when a joint is not tight yet, or one is due to be tightened again.',
  options: storeOptions,
  words: [1, 2],
  run: (given) =>
    inJob<Outcome>(given, async ({ job }) => {
      const [, operation] = given.words;
      const operations = wanted(job, operation);
      if (operations.kind === 'refused') return operations;
      const joints = operations.value.map((one) => ({ one, tightenings: tighteningsOf(job, one) }));
      const due = tightenDue(job);
      const open = joints.some(({ tightenings }) => tightenings.some(({ next }) => next !== undefined));
      const dueNow = due.some((one) => one.when === 'within the job' && one.standing === 'due');
      return answer({
        text: `${joints
          .map(({ one, tightenings }) =>
            tightenings.length === 0
              ? `“${plain(one.title)}” tightens nothing that the engine type knows of.\n`
              : `${plain(one.title)}\n\n${tightenings.map((joint) => jointText(job, joint)).join('\n')}`,
          )
          .join('\n')}${due.length === 0 ? '' : `\nTightened again:\n${dueText(job)}`}`,
        json: {
          operations: joints.map(({ one, tightenings }) => ({
            operation: one.name,
            joints: tightenings.map((joint) => jointJson(job, joint)),
          })),
          due: due.map((one) => ({
            fastener: one.fastener.name,
            when: one.when,
            ...(one.when === 'within the job' ? { standing: one.standing } : { hours: one.hours }),
            says: dueWords(job, one),
          })),
        },
        ...(open || dueNow ? { no: true as const } : {}),
      });
    }),
};
