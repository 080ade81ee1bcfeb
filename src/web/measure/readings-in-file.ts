/** @module Readings from a file that a person chose: what would be taken, and what is asked of the job to take them. */
import type { Command, Request } from '../../job/command.ts';
import { decide } from '../../job/decide.ts';
import { evolve } from '../../job/evolve.ts';
import type { Job, OpenJob } from '../../job/job.ts';
import { type ReadingsFile, readReadings } from '../../measure/import-readings.ts';
import type { Instrument } from '../../measure/instrument.ts';
import { type Answer, answer, type Refusal } from '../../quantity/refusal.ts';
import { readTableFile } from '../../spreadsheet/table-file.ts';

export interface ReadingsChosen extends ReadingsFile {
  readonly name: string;
}

/** @param register  instruments of the workshop; those of the job are known too */
export const readingsIn = async (
  file: File,
  job: OpenJob,
  register: readonly Instrument[],
): Promise<Answer<ReadingsChosen>> => {
  const table = readTableFile(new Uint8Array(await file.arrayBuffer()));
  if (table.kind === 'refused') return table;
  const known = [...register, ...job.sheet.instruments.values()];
  if (table.value.kind === 'text')
    return answer({ name: file.name, ...readReadings(table.value.text, job.sheet.engine, known) });
  const read = readReadings(table.value.rows, job.sheet.engine, known);
  return answer({ name: file.name, ...read, troubles: [...table.value.warnings, ...read.troubles] });
};

/** Why the job would refuse one of them; tried before any is asked, so that all are taken or none. */
export const whyNot = (
  job: OpenJob,
  requests: readonly Request[],
  sign: () => Omit<Command, 'request' | 'job'>,
): Refusal | undefined => {
  let now: Job = job;
  for (const request of requests) {
    const event = decide(now, { ...sign(), job: job.head.event?.job ?? '', request });
    if (event.kind === 'refused') return event.refusal;
    now = evolve(now, event.value);
  }
  return undefined;
};
