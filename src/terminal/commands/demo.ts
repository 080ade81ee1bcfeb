/** @module `endfloat demo`: loads the invented workshop into an empty store and works its jobs through in words. */
import { dirname, join } from 'node:path';
import { demoJobs, loadDemo } from '../../../demo/workshop.ts';
import { oneUseLines } from '../../job/order/one-use-lines.ts';
import { choosePlan, demandsOf, planQuestionOf } from '../../job/planning.ts';
import { pumpPacksOf } from '../../job/pumps.ts';
import { doubtsOf } from '../../measure/doubts.ts';
import { judgeAll } from '../../measure/judge.ts';
import { planEngine } from '../../plan/plan.ts';
import type { Planned } from '../../plan/plan-model.ts';
import { type Answer, answer, refusalText } from '../../quantity/refusal.ts';
import { pageOf } from '../../record/record.ts';
import { packSection } from '../../record/sections/packs.ts';
import { verifyRecord } from '../../record/verify.ts';
import { highsSolver } from '../../solver/highs.ts';
import { picturesOf } from '../../store/pictures.ts';
import type { Store } from '../../store/sql-store.ts';
import type { Given, Outcome, TerminalCommand } from '../command.ts';
import { writeWhole } from '../output-file.ts';
import { plain } from '../plain.ts';
import { planText } from '../plan-text.ts';
import { showing } from '../progress.ts';
import { table } from '../table.ts';
import { counts, countsText, doubtLines } from '../verdict-table.ts';
import { type FoundJob, findJob, inWorkshop, storeOptions, storePath } from '../workshop.ts';

interface Part {
  readonly text: string;
  readonly json: object;
}

const heading = ({ job }: FoundJob): string => {
  const title = plain(`${job.booked.number}: ${job.sheet.engine.title}, ${job.booked.owner}`);
  return `\n${title}\n${'='.repeat([...title].length)}\n${plain(job.booked.complaint)}\n`;
};

/** What the measuring has come to, and which readings look wrong. */
const measured = (found: FoundJob): Part => {
  const judged = judgeAll(found.job.sheet);
  const doubts = doubtsOf(found.job.sheet);
  return {
    text: [`Verdicts: ${countsText(judged)}.`, ...doubtLines(doubts)].map((line) => `${line}\n`).join(''),
    json: { number: found.job.booked.number, counts: counts(judged), doubts },
  };
};

const packs = ({ job }: FoundJob): string => {
  const section = packSection(job);
  const rows = section.table?.rows.map((row) => row.cells) ?? [];
  const heads = section.table?.heads.map((head) => ({ head })) ?? [];
  return `${section.says.at(-1) ?? ''}\n${table(heads, rows)}`;
};

const decided = ({ job }: FoundJob, plan: Planned): string => {
  if (plan.kind === 'plan') {
    const oneUse = oneUseLines(job, choosePlan(plan).choices);
    return planText(job.sheet.engine, plan, job.booked.currency, demandsOf(job).hours, oneUse, []);
  }
  return plan.kind === 'not yet' ? `Not yet: ${plan.missing.join('; ')}\n` : `${refusalText(plan)}\n`;
};

const worked = async (given: Given, store: Store): Promise<Answer<Outcome>> => {
  const { world } = given;
  const jobs: FoundJob[] = [];
  for (const id of demoJobs) {
    const found = await findJob(store, id);
    if (found.kind === 'refused') return found;
    jobs.push(found.value);
  }
  const [half, whole, done] = jobs;
  if (!half || !whole || !done) throw new Error('the demo has three jobs');
  const plan = await showing('Planning', world, async () =>
    planEngine(planQuestionOf(whole.job), await highsSolver()),
  );
  const path = join(dirname(storePath(given)), 'demo-record.html');
  const page = pageOf(done.job, done.events, await picturesOf(store, done.job));
  const written = await writeWhole(path, page, world);
  if (written.kind === 'refused') return written;
  const verified = verifyRecord(page).kind === 'verified';
  const parts = [half, whole, done].map(measured);
  return answer({
    text: [
      `${heading(half)}Half measured.\n${parts[0]?.text ?? ''}`,
      `${heading(whole)}Fully measured, awaiting a decision.\n${parts[1]?.text ?? ''}\nPlan\n${decided(whole, plan)}`,
      `\nShim packs\n${packs(whole)}`,
      `${heading(done)}Handed over.\n${parts[2]?.text ?? ''}\nShim pack\n${packs(done)}`,
      `\nRecord written to ${plain(written.value)}, ${verified ? 'and it verifies' : 'but it does not verify'}.\n`,
    ].join(''),
    json: {
      jobs: parts.map(({ json }) => json),
      plan,
      pumps: pumpPacksOf(whole.job).pumps,
      record: written.value,
      verified,
    },
    ...(verified ? {} : { no: true as const }),
  });
};

export const demo: TerminalCommand = {
  name: 'demo',
  summary: 'load the invented workshop where the store is empty, and work its jobs through',
  usage: ['demo'],
  about: 'A store that holds other jobs is left as it is. Everything in the demo is invented.',
  options: storeOptions,
  words: [0, 0],
  run: (given) =>
    inWorkshop(given, true, async (store) => {
      const here = await store.list();
      if (here.length === 0) await showing('Loading the demo workshop', given.world, () => loadDemo(store));
      else if (!here.some(({ job }) => demoJobs.includes(job)))
        return answer({
          text: `The workshop ${plain(storePath(given))} is in use and was left as it is. For the demo name an empty one: endfloat demo --store demo.sqlite`,
          json: { loaded: false },
        });
      return worked(given, store);
    }),
};
