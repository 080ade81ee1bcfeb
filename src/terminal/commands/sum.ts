/** @module `endfloat sum`: the sums of an operation of a job, what is given to them, what is asked, what comes of them. */

import type { Operation } from '../../engine/engine-type.ts';
import { chooseName } from '../../engine/nearest-name.ts';
import type { OpenJob } from '../../job/job.ts';
import { keptHere, resultText } from '../../job/sum/keeping.ts';
import { sumNamed } from '../../job/sum/noted-sum.ts';
import { reckonHere, type SumHere, type SumInput, sumAt, typedBefore } from '../../job/sum/sum-at.ts';
import { sumsAt } from '../../job/sum/sum-places.ts';
import { type SumStanding, sumStanding } from '../../job/sum/sum-standing.ts';
import { type Answer, answer, refusalText, refuse } from '../../quantity/refusal.ts';
import type { Outcome, TerminalCommand } from '../command.ts';
import { keyValues } from '../given.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';
import { inJob, storeOptions } from '../workshop.ts';

const standingText = (standing: SumStanding): string =>
  standing.kind === 'noted' ? `noted by ${standing.noted.by}` : standing.says.join('; ');

const listed = (job: OpenJob, operation: Operation): Outcome => {
  const sums = sumsAt(job, operation).map((at) => ({
    at,
    here: sumAt(job, at),
    standing: sumStanding(job, at),
  }));
  const rows = sums.map(({ at, here, standing }) => [
    at.sum.name,
    at.place?.id ?? '',
    here?.title ?? at.sum.reckon,
    standingText(standing),
  ]);
  return {
    text:
      rows.length === 0
        ? `“${plain(operation.title)}” has no sums.\n`
        : table([{ head: 'Sum' }, { head: 'Place' }, { head: 'What it gives' }, { head: 'Standing' }], rows),
    json: {
      operation: operation.name,
      sums: sums.map(({ at, here, standing }) => ({
        sum: at.sum.name,
        reckon: at.sum.reckon,
        title: here?.title,
        optional: at.sum.optional,
        ...(at.place && { place: at.place.id }),
        standing,
      })),
    },
  };
};

const askedText = ({ input }: SumInput): string => {
  const words = `${input.title}; ${input.range}; for example ${input.example}`;
  if (input.unlessGiven !== undefined) return `asked, else ${input.unlessGiven}: ${words}`;
  return `${input.optional ? 'may be given' : 'asked'}: ${words}`;
};

const inputRow = (here: SumHere, one: SumInput): readonly string[] => {
  const { input, given } = one;
  if (given?.kind === 'given') return [input.key, given.text, given.from];
  if (given?.kind === 'first') return [input.key, '', `first: ${given.remedy} (${given.says})`];
  return [input.key, here.texts[input.key] ?? '', askedText(one)];
};

const shown = (job: OpenJob, here: SumHere): Outcome => {
  const reckoned = reckonHere(here);
  const keeps = reckoned.kind === 'answer' ? keptHere(job, here, reckoned.value.reckoned) : [];
  const standing = sumStanding(job, here);
  const came =
    reckoned.kind === 'refused'
      ? `Not reckoned yet: ${plain(refusalText(reckoned.refusal))}\n`
      : table(
          [{ head: 'Comes of it' }, { head: '' }],
          Object.entries(reckoned.value.reckoned.results).map(([key, one]) => [key, resultText(one)]),
        );
  return {
    text: [
      `${plain(here.title)}\n`,
      table(
        [{ head: 'Input' }, { head: 'Value' }, { head: 'Where it comes from' }],
        here.inputs.map((one) => inputRow(here, one)),
      ),
      came,
      ...keeps.map(({ says, verdict }) => `${plain(says)}: ${verdict}\n`),
      ...(reckoned.kind === 'answer' ? reckoned.value.reckoned.notes.map((note) => `${note}\n`) : []),
      `In the journal: ${plain(standingText(standing))}\n`,
    ].join(''),
    json: {
      operation: here.operation.name,
      sum: here.sum.name,
      reckon: here.sum.reckon,
      ...(here.place && { place: here.place.id }),
      inputs: here.inputs.map(({ input, given }) => ({ key: input.key, title: input.title, given })),
      texts: here.texts,
      ...(reckoned.kind === 'answer'
        ? { results: reckoned.value.reckoned.results, notes: reckoned.value.reckoned.notes }
        : { refusal: reckoned.refusal }),
      keeps,
      standing,
    },
  };
};

const asked = (job: OpenJob, words: readonly string[]): Answer<Outcome> => {
  const [, name = '', sum, ...rest] = words;
  const operation = job.sheet.engine.operations.get(name);
  if (operation === undefined)
    return refuse(
      `there is no operation ${plain(name).slice(0, 60)}`,
      'endfloat sum',
      chooseName(name, job.sheet.engine.operations.keys()),
    );
  if (sum === undefined) return answer(listed(job, operation));
  const [word] = rest;
  const place = word === undefined || word.includes('=') ? undefined : word;
  const typed = keyValues(place === undefined ? rest : rest.slice(1), 'endfloat sum');
  if (typed.kind === 'refused') return typed;
  const at = sumNamed(job, { operation: name, sum, ...(place !== undefined && { place }) });
  if (at.kind === 'refused') return at;
  const first = sumAt(job, at.value);
  // Where nothing is typed, it is shown as it was noted last.
  const texts = typed.value.size > 0 || !first ? Object.fromEntries(typed.value) : typedBefore(first);
  const here = sumAt(job, at.value, texts);
  return here
    ? answer(shown(job, here))
    : refuse(`there is no sum ${at.value.sum.reckon}`, 'endfloat sum', 'correct the engine type');
};

export const sum: TerminalCommand = {
  name: 'sum',
  summary: 'the sums of an operation of a job: what is given to them, what is asked, what comes of it',
  usage: ['sum JOB OPERATION', 'sum JOB OPERATION SUM [PLACE] [key=value…]'],
  about:
    'What the engine gives is filled in; the rest is typed behind its key. Nothing is written: endfloat do JOB note-sum writes a sum into the journal.',
  options: storeOptions,
  words: [2, 64],
  run: (given) => inJob<Outcome>(given, async ({ job }) => asked(job, given.words)),
};
