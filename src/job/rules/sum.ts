/** @module May this sum be noted so: is it one of the operation, from the engine's own figures, and does it come out? */
import { type Trouble, trouble } from '../../journal/trouble.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';
import { notedInputs, notedResults, sumNamed } from '../sum/noted-sum.ts';
import { reckonHere, sumAt } from '../sum/sum-at.ts';

type Asked = RequestOf<'note sum'>;

const differs = (
  mine: readonly { readonly key: string; readonly text: string }[],
  other: readonly { readonly key: string; readonly text: string }[],
): string | undefined => {
  const keys = new Set([...mine, ...other].map(({ key }) => key));
  const [twice] = other.filter(({ key }, at) => other.findIndex((one) => one.key === key) !== at);
  if (twice) return twice.key;
  const textIn = (list: typeof mine, key: string) => list.find((one) => one.key === key)?.text;
  return [...keys].find((key) => textIn(mine, key) !== textIn(other, key));
};

/** Whether it could be noted with these figures on the job as it stood. */
export const sumTrouble = (job: OpenJob, asked: Asked): Trouble => {
  const at = sumNamed(job, asked);
  if (at.kind === 'refused') return at.refusal;
  const { operation, sum } = at.value;
  const typed = asked.inputs.filter(({ from }) => from === undefined);
  const here = sumAt(job, at.value, Object.fromEntries(typed.map(({ key, text }) => [key, text])));
  const where = `${operation.title}, ${here?.title ?? sum.name}`;
  if (!here) return trouble(`there is no sum ${sum.reckon}`, where, 'correct the engine type');
  const strange = differs(notedInputs(here), asked.inputs);
  if (strange !== undefined) {
    const given = here.inputs.find(({ input }) => input.key === strange)?.given;
    return given?.kind === 'first'
      ? trouble(given.says, where, given.remedy)
      : trouble(
          `${strange} is not what the job has for it${given ? `: that is ${given.text}` : ''}`,
          where,
          'take the figures as they now stand, and reckon it again',
        );
  }
  const again = reckonHere(here);
  if (again.kind === 'refused') return { ...again.refusal, where: `${where}, ${again.refusal.where}` };
  const wrong = differs(notedResults(again.value.reckoned), asked.found);
  return wrong === undefined
    ? undefined
    : trouble(`${wrong} does not come of these figures`, where, 'reckon it again, and note what comes of it');
};

export const noteSumTrouble = (job: OpenJob, asked: Asked): Trouble => {
  const done = job.done.get(asked.operation);
  if (done)
    return trouble(
      `“${job.sheet.engine.operations.get(asked.operation)?.title ?? asked.operation}” was signed by ${done.by}`,
      'sum',
      'what is signed stands; open the operation again first',
    );
  const wrong = sumTrouble(job, asked);
  if (wrong) return wrong;
  const at = sumNamed(job, asked);
  const here = at.kind === 'answer' ? sumAt(job, at.value, {}) : undefined;
  // Where it came from is told by the program, so that nobody can say that he measured what he typed.
  const told = asked.inputs.find(({ key, from }) => {
    const given = here?.inputs.find(({ input }) => input.key === key)?.given;
    return from !== (given?.kind === 'given' ? given.from : undefined);
  });
  return told && trouble(`${told.key} does not come from where it is said`, 'sum', 'reckon it again');
};
