/** @module The record's order of work: every operation of the engine type, signed or not, hold points among them. */
import type { Operation } from '../../engine/engine-type.ts';
import type { OpenJob } from '../../job/job.ts';
import { timeText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';
import { characteristicTitle } from './named.ts';

const rowOf = (job: OpenJob, operation: Operation): RecordRow => {
  const signed = job.done.get(operation.name);
  return {
    of: operation.name,
    cells: [
      operation.phase,
      operation.title,
      operation.needs.map((name) => characteristicTitle(job.sheet.engine, name)).join(', '),
      signed === undefined ? 'not done' : `${timeText(signed.at)}, ${signed.by}`,
      signed?.note ?? '',
    ],
    ...(signed === undefined ? { marked: true as const } : {}),
  };
};

export const operationSection = (job: OpenJob): RecordSection => ({
  name: 'operations',
  title: 'Work done and signed',
  says: [],
  table: {
    heads: ['Part of the job', 'Operation', 'Hold point: proved first', 'Signed', 'Note'],
    rows: [...job.sheet.engine.operations.values()].map((operation) => rowOf(job, operation)),
  },
  derived: false,
});
