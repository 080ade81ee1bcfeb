/** @module `endfloat fit`: which measured part from stock goes to which place of a job, and with what clearance. */
import { type ComponentFit, fitLimits, fittingOf } from '../../job/fitting.ts';
import { sizesInWords } from '../../measure/fitted-size.ts';
import { answer, refusalText } from '../../quantity/refusal.ts';
import { errorText, knownText, lengthText } from '../../record/figure-text.ts';
import { answerNo, type Outcome, type TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';
import { carryOut, inJob, signingOptions } from '../workshop.ts';

const heads = [
  { head: 'Place' },
  { head: 'Room', right: true },
  { head: 'Parts proposed' },
  { head: 'Clearance', right: true },
  { head: 'From the middle', right: true },
  { head: 'Assigned' },
];

const limitsText = (fit: ComponentFit): string =>
  fitLimits(fit)
    .map(({ least, greatest }) => `from ${lengthText(least)} to ${lengthText(greatest)}`)
    .join(' or ');

const rowsOf = ({ places }: ComponentFit): readonly (readonly string[])[] =>
  places.map(({ title, room, proposed, assigned }) => [
    title,
    room === undefined ? 'not yet known' : lengthText(room.value),
    proposed?.parts.join(' + ') ?? '',
    proposed === undefined ? '' : knownText(proposed.clearance.value, proposed.expanded),
    proposed === undefined ? '' : errorText(proposed.off),
    assigned === undefined ? '' : `${assigned.parts.join(' + ')}, ${assigned.verdict}`,
  ]);

const saysOf = (fit: ComponentFit): string => {
  const { set, stock, places } = fit;
  const wanted = sizesInWords(places.map(({ place, size }) => [place, size]));
  const from = `Clearance ${limitsText(fit)}; ${stock.length} parts measured, size ${wanted} wanted.\n`;
  if (set.kind === 'refused') return `${from}Not proposed yet: ${plain(refusalText(set.refusal))}.\n`;
  if (set.value.kind === 'lacking')
    return `${from}The parts do not serve every place: ${plain(set.value.says)}.\n`;
  const { greatestOff, sumOff, proved } = set.value;
  return `${from}Furthest from the middle ${lengthText(greatestOff)}, all deviations together ${lengthText(sumOff)}; ${proved ? 'proved the best' : 'the search was cut short, a better way may exist'}.\n`;
};

const shown = (fit: ComponentFit): Outcome => ({
  text: `${table(heads, rowsOf(fit))}${saysOf(fit)}`,
  json: {
    component: fit.component.name,
    stock: fit.stock,
    places: fit.places,
    ...(fit.set.kind === 'answer' ? { set: fit.set.value } : { refusal: fit.set.refusal }),
  },
  ...(fit.set.kind === 'answer' && fit.set.value.kind === 'fitted' ? {} : { no: true }),
});

/** The proposal as it is asked for; refused where there is none. */
const assignAll = ({ component, set }: ComponentFit) => {
  if (set.kind === 'refused') return set;
  if (set.value.kind === 'lacking')
    return {
      kind: 'refused' as const,
      refusal: { what: set.value.says, where: component.title, remedy: 'measure more parts, or machine one' },
    };
  const places = set.value.fits.map(({ place, parts }) => ({ place, parts }));
  return answer({ kind: 'assign parts' as const, component: component.name, places });
};

export const fit: TerminalCommand = {
  name: 'fit',
  summary: 'choose measured parts from stock for each place of a component, clearances nearest the middle',
  usage: ['fit JOB COMPONENT', 'fit JOB COMPONENT --assign'],
  about:
    'Parts are measured with endfloat do JOB measure-part. --assign notes the proposal; endfloat do JOB assign-parts notes another choice.\nExit code 1 when there is no proposal: what is missing or lacking is named.',
  options: [...signingOptions, { name: 'assign', says: 'note the parts proposed as those that go in' }],
  words: [2, 2],
  run: (given) =>
    inJob<Outcome>(given, async ({ id, job }, store) => {
      const [, component = ''] = given.words;
      const fitted = fittingOf(job, component);
      if (fitted.kind === 'refused') return fitted;
      if (!given.switches.has('assign')) return answer(shown(fitted.value));
      const request = assignAll(fitted.value);
      if (request.kind === 'refused') return answerNo(request.refusal);
      const carried = await carryOut(store, given, id, job, [request.value]);
      if (carried.kind === 'refused') return carried;
      if (carried.value.kind === 'no') return answerNo(carried.value.refusal);
      const { text } = shown(fitted.value);
      return answer({
        text: `${text}Noted for ${plain(job.booked.number)}: ${request.value.places.length} places have their parts.`,
        json: { done: true, events: carried.value.events },
      });
    }),
};
