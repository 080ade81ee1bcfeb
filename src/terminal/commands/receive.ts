/** @module `endfloat receive`: counts a delivery in, and shows how what came measures against what was ordered. */
import type { Request } from '../../job/command.ts';
import type { OpenJob } from '../../job/job.ts';
import { awaitedOf } from '../../job/order/here.ts';
import { type LineAt, orderedLines } from '../../job/order/standing.ts';
import { standingWords } from '../../job/order/standing-words.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { answerNo, type Given, lastValue, type Outcome, type TerminalCommand } from '../command.ts';
import { keyValues } from '../given.ts';
import { plain } from '../plain.ts';
import { lineNamed } from '../requests/order-requests.ts';
import { verdictTable } from '../verdict-table.ts';
import { carryOut, inJob, signingOptions } from '../workshop.ts';

const lineText = (job: OpenJob, { order, line, here, standing, judged }: LineAt): string => {
  const number = order.lines.indexOf(line) + 1;
  const head = `${plain(order.order)} line ${number}, ${plain(line.says)}: ${here} of ${line.count} here, ${plain(standingWords(standing))}\n`;
  return `${head}${verdictTable(judged, job.sheet.engine)}`;
};

/** How every line of an order, or of all of them, stands. */
const shown = (job: OpenJob, order: string | undefined): Outcome => {
  const lines = orderedLines(job).filter((at) => order === undefined || at.order.order === order);
  const failed = lines.filter(({ standing }) => standing.kind === 'failed');
  return {
    text: [
      ...lines.map((at) => lineText(job, at)),
      ...(failed.length === 0
        ? []
        : [
            'What is not as ordered: send it back (endfloat do JOB send-back), or plan again (endfloat plan JOB), which takes it into account.\n',
          ]),
    ].join('\n'),
    json: {
      lines: lines.map(({ order: { order: number, lines: all }, line, here, standing, judged }) => ({
        order: number,
        line: all.indexOf(line) + 1,
        id: line.line,
        here,
        count: line.count,
        standing,
        judged,
      })),
    },
    ...(failed.length > 0 && { no: true as const }),
  };
};

const requestOf = (job: OpenJob, order: string, words: readonly string[], note: string): Answer<Request> => {
  const placed = job.orders.get(order);
  const counted = keyValues(words, 'endfloat receive');
  if (counted.kind === 'refused') return counted;
  const lines: { line: string; count: number }[] = [];
  for (const [name, count] of counted.value) {
    if (!/^\d{1,6}$/.test(count))
      return refuse(`${plain(count)} is not a count`, plain(name), 'write for example 2=6');
    lines.push({ line: lineNamed(job, order, name), count: Number(count) });
  }
  const all = placed === undefined ? [] : awaitedOf(placed);
  return answer({ kind: 'receive delivery', order, lines: words.length === 0 ? all : lines, note });
};

const received = async (given: Given, order: string, words: readonly string[]): Promise<Answer<Outcome>> =>
  inJob<Outcome>(given, async ({ id, job }, store) => {
    const request = requestOf(job, order, words, lastValue(given, 'note') ?? '');
    if (request.kind === 'refused') return request;
    const carried = await carryOut(store, given, id, job, [request.value]);
    if (carried.kind === 'refused') return carried;
    if (carried.value.kind === 'no') return answerNo(carried.value.refusal);
    const after = carried.value.job;
    return after.kind === 'open' ? answer(shown(after, order)) : answer({ text: '', json: {} });
  });

export const receive: TerminalCommand = {
  name: 'receive',
  summary: 'count a delivery in, and judge what came against what was ordered',
  usage: ['receive JOB', 'receive JOB ORDER [LINE=COUNT…]'],
  about:
    'Without an order it shows how everything ordered stands. With one it takes in what is awaited of it, or the counts given, a line named by its number in the order. What is then measured (endfloat take, or endfloat do JOB take-reading) is judged by the limits as made of the size ordered. Exit code 1 when something is not as ordered.',
  options: [...signingOptions, { name: 'note', value: 'TEXT', says: 'what there is to say of the delivery' }],
  words: [1, 64],
  run: async (given) => {
    const [name = '', order, ...counts] = given.words;
    if (order !== undefined) return received(given, order, counts);
    return inJob<Outcome>(given, async ({ job }) => {
      return job.orders.size === 0
        ? refuse('nothing was ordered', plain(name), 'endfloat orders lists what is to be ordered')
        : answer(shown(job, undefined));
    });
  },
};
