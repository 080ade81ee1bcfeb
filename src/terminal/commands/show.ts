/** @module `endfloat show`: a job as it stands: its phase, verdicts, doubts, decisions, packs, and what comes next. */
import type { EngineType } from '../../engine/engine-type.ts';
import { doubtsIn } from '../../job/doubted.ts';
import { operationsOf, type Standing } from '../../job/holds.ts';
import type { OpenJob } from '../../job/job.ts';
import { judgedIn } from '../../job/judged.ts';
import { phasesOf } from '../../job/phase.ts';
import { pumpPacksOf } from '../../job/pumps.ts';
import { settling } from '../../measure/settling.ts';
import type { Doubt } from '../../measure/verdict-model.ts';
import { answer } from '../../quantity/refusal.ts';
import { moneyText } from '../../record/figure-text.ts';
import { wearTold } from '../../record/sections/former.ts';
import { headingOf } from '../../record/sections/heading.ts';
import { slotTitle } from '../../record/sections/named.ts';
import { packSection } from '../../record/sections/packs.ts';
import { agreementText } from '../../record/sections/plan.ts';
import { spillCheckSection } from '../../record/sections/spill-check.ts';
import { camSection, valveSection } from '../../record/sections/valves.ts';
import { inUse } from '../../register/register.ts';
import { registerNow } from '../../store/register-now.ts';
import type { TerminalCommand } from '../command.ts';
import { formerText } from '../former-table.ts';
import { hoursJson, hoursText } from '../hours-text.ts';
import { plain } from '../plain.ts';
import { sectionText } from '../section-text.ts';
import { settlingLines } from '../settling-lines.ts';
import { table } from '../table.ts';
import { asked, counts, countsText, judgedJson, verdictTable } from '../verdict-table.ts';
import { inJob, storeOptions } from '../workshop.ts';

const block = (title: string, text: string): string => (text === '' ? '' : `\n${title}\n${text}`);

const phaseTable = (job: OpenJob): string =>
  table(
    [{ head: 'Phase' }, { head: 'Done', right: true }, { head: 'Next' }],
    phasesOf(job).map((phase) => [phase.name, `${phase.done} of ${phase.of}`, phase.next]),
  );

const doubtText = (job: OpenJob, doubts: readonly Doubt[]): string =>
  doubts
    .map((doubt) => {
      const said = job.doubtsAnswered.get(doubt.id);
      return plain(
        `${doubt.id}\n  ${doubt.says}${said === undefined ? '' : ` Answered by ${said.by}: ${said.why}`}`,
      );
    })
    .map((line) => `${line}\n`)
    .join('');

const planTable = (engine: EngineType, job: OpenJob): string => {
  if (job.plan === undefined) return '';
  const { currency } = job.booked;
  const rows = job.plan.choices.map((choice) => [
    slotTitle(engine, choice.slot),
    choice.says,
    moneyText(choice.cents, currency),
  ]);
  return `${table([{ head: 'Component' }, { head: 'Decided' }, { head: 'Cost', right: true }], rows)}In all ${moneyText(job.plan.cents, currency)}. ${plain(job.agreed === undefined ? 'Not agreed yet.' : `Agreed by ${agreementText(job.agreed)}.`)}\n`;
};

const packText = (job: OpenJob): string =>
  pumpPacksOf(job).timing === undefined ? '' : sectionText(packSection(job));

const standingText = (standing: Standing): string => {
  switch (standing.kind) {
    case 'done':
      return `done, ${standing.signed.by}`;
    case 'open':
      return 'open';
    case 'held': {
      const [first, ...more] = standing.lacking;
      return `held: ${first?.says ?? ''}${more.length === 0 ? '' : `, and ${more.length} more`}`;
    }
    default:
      return standing satisfies never;
  }
};

const operationTable = (job: OpenJob): string =>
  table(
    [{ head: 'Operation' }, { head: 'Standing' }],
    operationsOf(job).map(({ operation, standing }) => [operation.name, standingText(standing)]),
  );

export const show: TerminalCommand = {
  name: 'show',
  summary: 'show a job as it stands',
  usage: ['show JOB'],
  options: storeOptions,
  words: [1, 1],
  run: (given) =>
    inJob(given, async ({ id, job, events }, store) => {
      const { engine } = job.sheet;
      const judged = judgedIn(job);
      const doubts = doubtsIn(job);
      const unsure = settling(job.sheet, judged, inUse(await registerNow(store)));
      const known = asked(judged).filter((one) => one.verdict !== 'not yet known');
      return answer({
        text: [
          headingOf(job)
            .map((line) => `${plain(`${line.name}: ${line.says}`)}\n`)
            .join(''),
          block('Phases', phaseTable(job)),
          block(`Verdicts: ${countsText(judged)}`, verdictTable(known, engine)),
          block(
            'What would settle the unsure',
            settlingLines(unsure)
              .map((line) => `${line}\n`)
              .join(''),
          ),
          block('Doubts', doubtText(job, doubts)),
          formerText(job),
          block('Plan', planTable(engine, job)),
          block('Shim packs', packText(job)),
          ...[...spillCheckSection(job), ...valveSection(job), ...camSection(job)].map((section) =>
            block(section.title, sectionText(section)),
          ),
          block('Order of work', operationTable(job)),
          block('Hours', hoursText(job, given.world.now())),
        ].join(''),
        json: {
          job: id,
          number: job.booked.number,
          phases: phasesOf(job),
          counts: counts(judged),
          unsure,
          verdicts: asked(judged).map((one) => judgedJson(one, engine)),
          doubts: doubts.map((doubt) => ({ ...doubt, answered: job.doubtsAnswered.get(doubt.id) })),
          former: wearTold(job),
          plan: job.plan,
          agreed: job.agreed,
          pumps: pumpPacksOf(job).pumps,
          timing: pumpPacksOf(job).checked,
          hours: hoursJson(job, given.world.now()),
          operations: operationsOf(job).map(({ operation, standing }) => ({
            operation: operation.name,
            ...standing,
          })),
          events: events.length,
          hash: job.head.hash,
        },
      });
    }),
};
