/** @module Every command of the terminal, in the order in which the help lists them. */
import type { TerminalCommand } from './command.ts';
import { bookIn } from './commands/book-in.ts';
import { changes } from './commands/changes.ts';
import { check } from './commands/check.ts';
import { choose } from './commands/choose.ts';
import { demo } from './commands/demo.ts';
import { doInJob } from './commands/do.ts';
import { edit } from './commands/edit.ts';
import { exportJob } from './commands/export.ts';
import { fit } from './commands/fit.ts';
import { importJob } from './commands/import.ts';
import { inQuestion } from './commands/in-question.ts';
import { instruments } from './commands/instruments.ts';
import { jobs } from './commands/jobs.ts';
import { judge } from './commands/judge.ts';
import { labels } from './commands/labels.ts';
import { limits } from './commands/limits.ts';
import { machineShop } from './commands/machine-shop.ts';
import { offer } from './commands/offer.ts';
import { orders } from './commands/orders.ts';
import { picture } from './commands/picture.ts';
import { plan } from './commands/plan.ts';
import { receive } from './commands/receive.ts';
import { reckon } from './commands/reckon.ts';
import { record } from './commands/record.ts';
import { register } from './commands/register.ts';
import { runInCommand } from './commands/run-in.ts';
import { secondCheckCommand } from './commands/second-check.ts';
import { serve } from './commands/serve.ts';
import { sheet } from './commands/sheet.ts';
import { show } from './commands/show.ts';
import { slips } from './commands/slips.ts';
import { sum } from './commands/sum.ts';
import { tag } from './commands/tag.ts';
import { take } from './commands/take.ts';
import { template } from './commands/template.ts';
import { tighten } from './commands/tighten.ts';
import { timing } from './commands/timing.ts';
import { valves } from './commands/valves.ts';
import { verify } from './commands/verify.ts';
import { workOrder } from './commands/work-order.ts';
import { workshop } from './commands/workshop.ts';

export const commands: readonly TerminalCommand[] = [
  check,
  edit,
  limits,
  changes,
  secondCheckCommand,
  workOrder,
  template,
  sheet,
  judge,
  plan,
  reckon,
  jobs,
  show,
  bookIn,
  take,
  picture,
  choose,
  offer,
  orders,
  machineShop,
  receive,
  sum,
  runInCommand,
  doInJob,
  fit,
  labels,
  tag,
  tighten,
  timing,
  valves,
  instruments,
  register,
  inQuestion,
  workshop,
  slips,
  record,
  exportJob,
  importJob,
  verify,
  serve,
  demo,
];
