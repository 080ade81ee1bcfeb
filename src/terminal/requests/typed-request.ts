/** @module A request of a job as it is typed in the terminal: its name, its keys, and how they become it. */
import type { Request } from '../../job/command.ts';
import type { OpenJob } from '../../job/job.ts';
import type { Answer } from '../../quantity/refusal.ts';
import type { Key } from './keys.ts';
import type { Values } from './values.ts';

interface Named {
  /** As it is typed: `take-reading`. */
  readonly name: string;
  readonly kind: Request['kind'];
  readonly keys: readonly Key[];
}

/** A request whose words are put where they belong, and checked against its shape afterwards. */
interface Plain extends Named {
  readonly body: (values: Values, job: OpenJob) => Values;
}

/** A request that is worked out from what was typed; keys that it does not name are passed on as they are. */
interface WorkedOut extends Named {
  /** What other keys there may be, for the help: `key=value…`. */
  readonly others: string;
  readonly ask: (values: Values, others: Readonly<Record<string, string>>, job: OpenJob) => Answer<Request>;
}

export type JobRequest = Plain | WorkedOut;
