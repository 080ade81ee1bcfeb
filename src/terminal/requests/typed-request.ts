/** @module A request of a job as it is typed in the terminal: its name, its keys, and how they become it. */
import type { Request } from '../../job/command.ts';
import type { OpenJob } from '../../job/job.ts';
import type { Key } from './keys.ts';
import type { Values } from './values.ts';

export interface JobRequest {
  /** As it is typed: `take-reading`. */
  readonly name: string;
  readonly kind: Request['kind'];
  readonly keys: readonly Key[];
  /** The request's body from what was typed; checked against its shape afterwards. */
  readonly body: (values: Values, job: OpenJob) => Values;
}
