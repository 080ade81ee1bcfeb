/** @module Every command of the terminal, in the order in which the help lists them. */
import type { TerminalCommand } from './command.ts';
import { bookIn } from './commands/book-in.ts';
import { check } from './commands/check.ts';
import { choose } from './commands/choose.ts';
import { demo } from './commands/demo.ts';
import { doInJob } from './commands/do.ts';
import { exportJob } from './commands/export.ts';
import { importJob } from './commands/import.ts';
import { jobs } from './commands/jobs.ts';
import { judge } from './commands/judge.ts';
import { plan } from './commands/plan.ts';
import { reckon } from './commands/reckon.ts';
import { record } from './commands/record.ts';
import { serve } from './commands/serve.ts';
import { show } from './commands/show.ts';
import { take } from './commands/take.ts';
import { template } from './commands/template.ts';
import { verify } from './commands/verify.ts';

export const commands: readonly TerminalCommand[] = [
  check,
  template,
  judge,
  plan,
  reckon,
  jobs,
  show,
  bookIn,
  take,
  choose,
  doInJob,
  record,
  exportJob,
  importJob,
  verify,
  serve,
  demo,
];
