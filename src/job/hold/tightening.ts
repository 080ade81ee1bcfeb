/** @module What an operation leaves loose: joints whose stages are not all noted, bolt by bolt. */
import type { Operation } from '../../engine/engine-type.ts';
import type { OpenJob } from '../job.ts';
import { tighteningsOf } from '../tighten/tightening.ts';
import { jointWords, stageWords } from '../tighten/words.ts';
import { type Lacking, lacking } from './lacking.ts';

export const lackingTightening = (job: OpenJob, operation: Operation): readonly Lacking[] =>
  tighteningsOf(job, operation).flatMap((joint) =>
    joint.next === undefined
      ? []
      : [
          lacking(
            `${jointWords(joint)}: ${stageWords(joint, joint.next.stage)}, is not noted`,
            `tighten it, bolt ${joint.next.bolt} next`,
          ),
        ],
  );
