/** @module May this doubt be answered? */

import { blank, type Trouble, trouble } from '../../journal/trouble.ts';
import { doubtsOf } from '../../measure/doubts.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';

export const answerDoubtTrouble = (job: OpenJob, asked: RequestOf<'answer doubt'>): Trouble =>
  doubtsOf(job.sheet).some(({ id }) => id === asked.doubt)
    ? blank(asked.why, 'doubt', 'write why the reading stands, for example that it was measured twice')
    : trouble(
        'there is no such doubt',
        'doubt',
        'choose one that is shown; a reading taken again clears its doubt',
      );
