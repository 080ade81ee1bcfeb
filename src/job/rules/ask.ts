/** @module May what an operation asks be answered so? */
import { chooseName } from '../../engine/nearest-name.ts';
import { blank, type Trouble, trouble } from '../../journal/trouble.ts';
import { askedOf } from '../asked.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';
import { noOperation, signedAlready } from './operation.ts';

type Asked = RequestOf<'answer ask'>;

const badCount = ({ count }: Asked, counts: boolean, where: string): Trouble => {
  if (counts === (count !== undefined)) return undefined;
  return counts
    ? trouble('no number is given', where, 'count, and give the number')
    : trouble('a number is given for what is not counted', where, 'leave the number out');
};

const badPlace = ({ place }: Asked, places: readonly string[], where: string): Trouble => {
  if (places.length === 0)
    return place === undefined
      ? undefined
      : trouble(`it is asked for the operation as a whole, not at “${place}”`, where, 'leave the place out');
  return place !== undefined && places.includes(place)
    ? undefined
    : trouble(
        place === undefined ? 'it is asked at every place' : `it is not asked at “${place}”`,
        where,
        chooseName(place ?? '', places),
      );
};

export const answerAskTrouble = (job: OpenJob, asked: Asked): Trouble => {
  const { operation: name, ask: named } = asked;
  const operation = job.sheet.engine.operations.get(name);
  if (operation === undefined) return noOperation(job, name);
  const signed = job.done.get(name);
  if (signed !== undefined)
    return signedAlready(signed, operation, 'open the operation again, with the reason, and answer then');
  const all = askedOf(job, operation).filter(({ ask }) => ask.name === named);
  const [first] = all;
  if (first === undefined)
    return trouble(
      `“${operation.title}” asks nothing by the name “${named}”`,
      'ask',
      chooseName(
        named,
        operation.asks.map((one) => one.name),
      ),
    );
  const { ask } = first;
  return (
    badPlace(
      asked,
      all.flatMap(({ place }) => place ?? []),
      ask.ask,
    ) ??
    badCount(asked, ask.answer === 'count', ask.ask) ??
    (asked.good && (ask.answer === 'seen' || ask.answer === 'count')
      ? undefined
      : blank(
          asked.says,
          ask.ask,
          asked.good ? 'write what is found, or why it cannot be had' : 'write what is not as it should be',
        ))
  );
};
