/** @module May these bolts be noted as pulled at this stage? */
import { chooseName } from '../../engine/nearest-name.ts';
import { blank, type Trouble, trouble } from '../../journal/trouble.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';
import { type StageStanding, type Tightening, tighteningsOf } from '../tighten/tightening.ts';
import { jointWords, stageText, stageWords, threadWords } from '../tighten/words.ts';
import { noOperation, signedAlready } from './operation.ts';
import { stretchTrouble } from './stretch.ts';
import { wrenchTrouble } from './wrench.ts';

type Asked = RequestOf<'tighten stage'>;

/** A torque holds for one state of the thread, and nothing turns it into one for another. */
const badThreads = ({ fastener }: Tightening, { threadState }: Asked, where: string): Trouble =>
  threadState === fastener.threadState
    ? undefined
    : trouble(
        `the figure holds for ${threadWords[fastener.threadState]}, and these are ${threadState}; no sum converts it`,
        where,
        threadState === 'dry'
          ? `slacken what was pulled, put the threads right (${fastener.threadState}), and begin again at stage 1`
          : `slacken what was pulled, clean the threads, make them ${fastener.threadState}, and begin again at stage 1`,
      );

const badStage = (joint: Tightening, { stage }: Asked, where: string): Trouble => {
  if (joint.stages[stage] === undefined)
    return trouble(
      `there is no stage ${stage + 1}`,
      where,
      `stages are 1 to ${joint.stages.length}${joint.stages.map((one) => `, ${stageText(one.stage)}`).join('')}`,
    );
  const { next } = joint;
  if (next === undefined || next.stage >= stage) return undefined;
  return trouble(
    `${stageWords(joint, next.stage)}, comes before this one and is not done`,
    where,
    `pull every bolt at stage ${next.stage + 1} first; bolt ${next.bolt} is next`,
  );
};

const badOrder = ({ left }: StageStanding, { bolts, overruled }: Asked, where: string): Trouble => {
  const at = bolts.findIndex((bolt, index) => bolt !== left[index]);
  if (at === -1)
    return overruled === undefined
      ? undefined
      : trouble('the bolts were pulled in order: nothing is overruled', where, 'note it as it is');
  if (overruled === undefined)
    return trouble(
      `bolt ${left[at]} is next, not bolt ${bolts[at]}`,
      where,
      `go on with bolt ${left[at]}; where another order was pulled, a named person may answer for it, with the reason`,
    );
  return (
    blank(overruled.by, where, 'give the name of the person who answers for the order') ??
    blank(overruled.why, where, 'give the reason; it stands in the record')
  );
};

const badBolts = (joint: Tightening, asked: Asked, where: string): Trouble => {
  const standing = joint.stages[asked.stage];
  if (standing === undefined) return undefined;
  const { bolts } = asked;
  const names = joint.joint.order;
  const strange = bolts.find((bolt) => !names.includes(bolt));
  if (strange !== undefined) return trouble(`there is no bolt ${strange}`, where, chooseName(strange, names));
  const twice = bolts.find((bolt, index) => standing.done.includes(bolt) || bolts.indexOf(bolt) !== index);
  if (twice !== undefined)
    return trouble(
      `bolt ${twice} is pulled at this stage already`,
      where,
      standing.stage.kind === 'angle'
        ? 'do not turn it again: the angle counts once'
        : standing.left.length === 0
          ? 'every bolt of this stage is noted'
          : `bolt ${standing.left[0]} is next`,
    );
  return badOrder(standing, asked, where);
};

/** What is tightened again waits for what makes it due. */
const tooSoon = (job: OpenJob, { again }: Tightening, where: string): Trouble => {
  if (again?.after === undefined || job.done.has(again.after)) return undefined;
  const title = job.sheet.engine.operations.get(again.after)?.title ?? again.after;
  return trouble(`it is tightened again only after “${title}”`, where, 'do that first, and sign it');
};

const jointAsked = (job: OpenJob, asked: Asked): Tightening | Trouble => {
  const { engine } = job.sheet;
  const operation = engine.operations.get(asked.operation);
  if (operation === undefined) return noOperation(job, asked.operation);
  const signed = job.done.get(operation.name);
  if (signed !== undefined)
    return signedAlready(signed, operation, 'open the operation again, with the reason, and tighten then');
  const joints = tighteningsOf(job, operation).filter(({ fastener }) => fastener.name === asked.fastener);
  if (joints.length === 0)
    return trouble(
      `“${operation.title}” does not tighten “${asked.fastener}”`,
      'fastener',
      chooseName(asked.fastener, operation.tightens),
    );
  return (
    joints.find(({ place }) => place.id === asked.place) ??
    trouble(
      `none sit at “${asked.place}”`,
      joints[0]?.fastener.title ?? asked.fastener,
      chooseName(
        asked.place,
        joints.map(({ place }) => place.id),
      ),
    )
  );
};

export const tightenStageTrouble = (job: OpenJob, asked: Asked): Trouble => {
  const joint = jointAsked(job, asked);
  if (joint === undefined || 'what' in joint) return joint;
  const where = `${jointWords(joint)}, stage ${asked.stage + 1}`;
  return (
    tooSoon(job, joint, where) ??
    badThreads(joint, asked, where) ??
    badStage(joint, asked, where) ??
    badBolts(joint, asked, where) ??
    stretchTrouble(job, joint, asked, where) ??
    wrenchTrouble(job, joint, asked, where)
  );
};
