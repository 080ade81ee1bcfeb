/** @module `endfloat do JOB note-sum`: a sum of an operation, with what the job does not give typed behind its keys. */
import { noteSum } from '../../job/sum/noted-sum.ts';
import { optional, text } from './keys.ts';
import type { JobRequest } from './typed-request.ts';
import { word } from './values.ts';

export const sumRequest: JobRequest = {
  name: 'note-sum',
  kind: 'note sum',
  keys: [
    text('operation', 'lay-crankshaft'),
    text('sum', 'clearance'),
    optional(text('place', 'main.2')),
    optional(text('fitted', '"shells of the 0.25 undersize"')),
    optional(text('note', '"checked with a strip too"')),
  ],
  others: 'key=value…, what the sum asks for (endfloat sum JOB OPERATION SUM says what)',
  ask: (values, others, job) =>
    noteSum(
      job,
      {
        operation: word(values.operation),
        sum: word(values.sum),
        ...(values.place !== undefined && { place: word(values.place) }),
      },
      others,
      { fitted: word(values.fitted), note: word(values.note) },
    ),
};
