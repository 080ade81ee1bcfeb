/** @module What can be asked in the terminal about parts that find their way home: confirmed, strayed, decided on. */
import { readTag } from '../../job/home/tag-text.ts';
import type { OpenJob } from '../../job/job.ts';
import { type Key, optional, text } from './keys.ts';
import type { JobRequest } from './typed-request.ts';
import { given, word } from './values.ts';

const tag: Key = text('tag', 'piston.3');

/** As scanned, as typed, or the number on the bag; what is no tag is left for the job to refuse. */
const partOf = (job: OpenJob, typed: string): string => {
  const read = readTag(job, typed);
  return read.kind === 'answer' ? read.value.id : typed;
};

export const homeRequests: readonly JobRequest[] = [
  {
    name: 'home-part',
    kind: 'home part',
    keys: [tag, text('place', 'piston.3'), optional(text('operation', 'fit-pistons'))],
    body: (values, job) => ({
      part: partOf(job, word(values.tag)),
      ...given(values, { place: 'place', operation: 'operation' }),
    }),
  },
  {
    name: 'note-part-strayed',
    kind: 'note part strayed',
    keys: [
      text('tags', '"piston.1, piston.2"'),
      text('how', 'swapped'),
      text('says', '"both bags came open in the washer"'),
    ],
    body: (values, job) => ({
      parts: word(values.tags)
        .split(',')
        .map((typed) => partOf(job, typed.trim())),
      how: values.how,
      says: values.says,
    }),
  },
  {
    name: 'decide-home',
    kind: 'decide home',
    keys: [
      tag,
      optional(text('place', 'piston.2')),
      text('decided-by', '"P. Sallow"'),
      text('why', '"carbon fits its bore"'),
    ],
    body: (values, job) => ({
      part: partOf(job, word(values.tag)),
      ...given(values, { place: 'place', 'decided-by': 'decidedBy', why: 'why' }),
    }),
  },
];
