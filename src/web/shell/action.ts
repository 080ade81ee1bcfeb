/** @module What a person can do to a job: a named record that screens show and that asks for one thing. */
import type { Request } from '../../job/command.ts';
import type { OpenJob } from '../../job/job.ts';

export interface Action<Input> {
  /** Stable, for tests and for keys. */
  readonly name: string;
  /** On the button. */
  readonly label: string;
  /** Whether it can be asked at all; whether it is allowed is the journal's to decide. */
  readonly enabled: (job: OpenJob) => boolean;
  readonly request: (input: Input) => Request;
}
