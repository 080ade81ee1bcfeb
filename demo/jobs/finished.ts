/** @module The engine that has gone home with its record: barrel bored, big end shells renewed, run in, handed over. */

import { fittingOf } from '../../src/job/fitting.ts';
import { makeOffer } from '../../src/job/offering.ts';
import { awaitedOf } from '../../src/job/order/here.ts';
import { orderListOf, placeOrder } from '../../src/job/order/order-list.ts';
import { orderedLines } from '../../src/job/order/standing.ts';
import { demandsOf, planQuestionOf } from '../../src/job/planning.ts';
import { pumpPacksOf } from '../../src/job/pumps.ts';
import { planEngine } from '../../src/plan/plan.ts';
import type { Demands, Plan, Solve } from '../../src/plan/plan-model.ts';
import { replayRegister } from '../../src/register/evolve.ts';
import { askedAsFound, bookIn, bringInstruments, readFrom, signAll } from '../bench-work.ts';
import { apprentice, fitter, foreman } from '../people.ts';
import { wornShell } from '../pictures.ts';
import { registerEvents } from '../register.ts';
import { type Story, story, storyId } from '../story.ts';
import { runIn } from './run-in.ts';

const built = './readings/mudlark-built.csv';

const mm = (text: string) => ({ text, unit: 'mm' });
const hours = (text: string) => ({ text, unit: 'h' });

const solved = async (job: Story, solve: Solve, demands: Demands): Promise<Plan> => {
  const plan = await planEngine(planQuestionOf(job.job(), demands), solve);
  if (plan.kind !== 'plan') throw new Error(`the finished job has no plan: ${JSON.stringify(plan)}`);
  return plan;
};

/** Two plans are offered; the owner reads them at the offer's link and accepts the first. */
const offerAndAccept = async (job: Story, solve: Solve): Promise<void> => {
  const { workshop } = replayRegister(registerEvents);
  if (workshop === undefined) throw new Error('the demo workshop says nothing of itself');
  const wanted = demandsOf(job.job());
  const plans = [
    { title: 'barrel bored', plan: await solved(job, solve, wanted), labourHours: hours('14.5') },
    {
      title: 'new barrel, ready sooner',
      plan: await solved(job, solve, { ...wanted, days: 4 }),
      labourHours: hours('13'),
    },
  ];
  const at = job.job().head.event?.at ?? begins;
  const offer = makeOffer(job.job(), workshop, plans, { at, token: 'demo-offer-of-J-3-anyone-may-know' });
  if (offer.kind === 'refused') throw new Error(`the finished job has no offer: ${offer.refusal.what}`);
  job.tell(foreman, 40, offer.value);
  job.tell('Tamsin Orrell', 95, {
    kind: 'note agreement',
    name: 'Tamsin Orrell',
    how: 'at the link of the offer',
    offer: { number: 1, plan: 'A', by: 'link' },
  });
};

/** Everything that the plan needs is ordered, a number for each supplier in turn. */
const orderAll = (job: Story): void => {
  for (const [at, list] of orderListOf(job.job()).entries()) {
    const order = placeOrder(list, { order: `SB-${311 + at}`, due: '2026-09-18', note: '' });
    if (order.lines.length > 0) job.tell(foreman, 12, order);
  }
};

/** Read when the engine is together again: clearances of the valves, the pump's timing once more. */
const set = ['inlet-clearance', 'exhaust-clearance', 'spill-angle'];

/** What comes is counted, its certificates are looked at, and it is measured before it is covered up. */
const receiveAll = async (job: Story): Promise<void> => {
  for (const order of job.job().orders.values())
    job.tell(fitter, 50, { kind: 'receive delivery', order: order.order, lines: awaitedOf(order), note: '' });
  for (const { order, line } of orderedLines(job.job())) {
    const by = job.job().sheet.engine.components.get(line.component ?? '')?.machining?.crackTest.after;
    if (by !== undefined && line.does === 'machine')
      job.tell(fitter, 3, {
        kind: 'note certificate',
        order: order.order,
        line: line.line,
        certificate: 'PBM 2026-0914',
        crackTest: { by, showed: 'no crack' },
      });
  }
  await readFrom(
    job,
    fitter,
    built,
    (characteristic) => characteristic !== 'end-float' && !set.includes(characteristic),
  );
};

/** The piston that came, and two of its size from the shelf: the one whose skirt suits the bored barrel best goes in. */
const choosePiston = (job: Story): void => {
  for (const [part, text] of [
    ['K1', '78.419'],
    ['K2', '78.426'],
    ['K3', '78.433'],
  ] as const)
    job.tell(fitter, 4, {
      kind: 'measure part',
      component: 'pistons',
      part,
      size: '0.50',
      readings: [{ typed: mm(text), instrument: 'mic-75-100' }],
    });
  const fit = fittingOf(job.job(), 'pistons');
  if (fit.kind === 'refused' || fit.value.set.kind === 'refused' || fit.value.set.value.kind === 'lacking')
    throw new Error('one of the three pistons suits the barrel');
  const places = fit.value.set.value.fits.map(({ place, parts }) => ({ place, parts }));
  job.tell(fitter, 3, { kind: 'assign parts', component: 'pistons', places });
};

const fitPacks = (job: Story): void => {
  for (const { place, chosen } of pumpPacksOf(job.job()).pumps)
    if (chosen)
      job.tell(fitter, 20, {
        kind: 'fit pack',
        place,
        shims: chosen.shims.map((shim) => mm(shim.toFixed(2))),
      });
};

const begins = '2026-09-07T08:10:00Z';
export const finishedId = storyId(3, begins);

/** Until the owner has agreed to the plan. */
export const decided = async (solve: Solve): Promise<Story> => {
  const job = story(3, begins);
  await bookIn(job, './engines/mudlark-1.yaml', {
    number: 'J-3',
    owner: 'Orrell & Daughter, market garden',
    plate: 'M1-2086',
    hoursRun: { text: '3900', unit: 'h' },
    complaint: 'down on power, blue smoke, knocks when cold',
    hoursWanted: { text: '2500', unit: 'h' },
  });
  bringInstruments(job, [
    'mic-0-25',
    'mic-25-50',
    'mic-75-100',
    'bore-35-160',
    'depth-0-100',
    'dial-0-12',
    'dial-0-1',
    'feelers',
    'degree-disc',
    'wrench-8-60',
    'wrench-40-200',
    'wrench-100-400',
  ]);
  const found = './readings/mudlark-found.csv';
  const asFound = askedAsFound(job);
  await readFrom(job, fitter, found, asFound);
  signAll(job, apprentice, ['strip']);
  await readFrom(job, fitter, found, (characteristic) => !asFound(characteristic));
  job.tell(fitter, 5, {
    kind: 'note finding',
    place: 'big-end.1',
    component: 'big-end-shells',
    finding: 'worn',
    mayGoBack: false,
    says: 'lining worn to the bronze over the loaded half',
  });
  job.show(apprentice, 2, wornShell, {
    of: { finding: job.job().findings.at(-1)?.id ?? '' },
    says: 'lower shell, laid flat',
  });
  await offerAndAccept(job, solve);
  return job;
};

export const finished = async (solve: Solve): Promise<Story> => {
  const job = await decided(solve);
  orderAll(job);
  await receiveAll(job);
  choosePiston(job);
  signAll(job, fitter, ['build'], 'lay-crankshaft');
  await readFrom(job, fitter, built, (characteristic) => characteristic === 'end-float');
  signAll(job, fitter, ['build']);
  job.tell(fitter, 10, {
    kind: 'count shims',
    shims: [
      { thickness: mm('0.10'), count: 4 },
      { thickness: mm('0.15'), count: 3 },
      { thickness: mm('0.20'), count: 4 },
      { thickness: mm('0.30'), count: 4 },
      { thickness: mm('0.50'), count: 2 },
    ],
  });
  fitPacks(job);
  await readFrom(job, fitter, built, (characteristic) => set.includes(characteristic));
  signAll(job, fitter, ['set']);
  signAll(job, fitter, ['run'], 'first-start');
  runIn(job, fitter);
  signAll(job, fitter, ['run']);
  job.tell(foreman, 30, {
    kind: 'hand over',
    to: 'Tamsin Orrell',
    note: 'change oil and filter, look at the head nuts after 50 hours',
  });
  return job;
};
