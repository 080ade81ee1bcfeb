/** @module What the job gives to an input of a sum, and where it comes from; or what must be done before it can. */
import type { Characteristic, Place } from '../../engine/engine-type.ts';
import type { Fastener } from '../../engine/fastener.ts';
import type { GivenInput } from '../../engine/operation-sum.ts';
import { figureText, shownIn } from '../../engine/shown-in.ts';
import { operandPlace } from '../../measure/expression.ts';
import { limitsOf } from '../../measure/limits.ts';
import { placesOf } from '../../measure/scheme.ts';
import { coverageFactor } from '../../quantity/coverage.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { typedText } from '../../quantity/typed.ts';
import { covariance, standardUncertainty } from '../../quantity/uncertain.ts';
import type { OpenJob } from '../job.ts';
import { type GivenText, listedText, pumpsText } from './given-lists.ts';
import { engineText, plainly, valvesText } from './manual-text.ts';
import { measuredValue, valueWithSpread } from './measured-value.ts';
import { type SumPlace, sumKey } from './sum-places.ts';

const given = (text: string, from: string): GivenText => ({ kind: 'given', text, from });
const first = (says: string, remedy: string): GivenText => ({ kind: 'first', says, remedy });

/** Undefined where the manual does not say it. */
const fastenerText = (
  fastener: Fastener,
  of: Extract<GivenInput, { kind: 'fastener' }>['of'],
): string | undefined => {
  switch (of) {
    case 'thread':
      return `M${plainly(fastener.diameter)}x${plainly(fastener.pitch)}`;
    case 'diameter':
      return `${plainly(fastener.diameter)} mm`;
    case 'class':
      return fastener.class;
    case 'state':
      return fastener.threadState;
    case 'torque': {
      const last = fastener.stages.findLast((stage) => stage.kind === 'torque');
      return last && typedText(last.printed);
    }
    case 'holes':
      return fastener.holes?.map(({ name, x, y }) => `${name} ${plainly(x)} ${plainly(y)}`).join(', ');
    case 'order':
      return typeof fastener.order === 'object' ? fastener.order.join(' ') : undefined;
    case 'least-friction':
      return plainly(fastener.friction[0]);
    case 'greatest-friction':
      return plainly(fastener.friction[1]);
    default:
      return of satisfies never;
  }
};

/** Places that a limit is asked for: the one that belongs to the place of the sum, or all where it is of none. */
const limitPlaces = (
  { sheet: { engine } }: OpenJob,
  characteristic: Characteristic,
  place: Place | undefined,
): readonly string[] => {
  const all = placesOf(engine, characteristic).map(({ id }) => id);
  const own = place && operandPlace(engine, place, characteristic.at);
  return own !== undefined && all.includes(own) ? [own] : all;
};

const limitText = (
  job: OpenJob,
  { name, is }: Extract<GivenInput, { kind: 'limit' }>,
  place: Place | undefined,
): GivenText => {
  const characteristic = job.sheet.engine.characteristics.get(name);
  const places = characteristic ? limitPlaces(job, characteristic, place) : [];
  const [limits, ...others] = new Set(places.map((at) => limitsOf(job.sheet, name, at)));
  if (characteristic && others.some((other) => other?.new[is] !== limits?.new[is]))
    return first(
      `${characteristic.title} has another ${is} at each of several sizes`,
      'have the engine type reckon it for each place, or bring all to one size',
    );
  const bound = limits?.new[is];
  if (!characteristic || bound === undefined)
    return first(`the manual gives no ${is} for ${characteristic?.title ?? name}`, 'correct the engine type');
  const printed = limits?.printed[`new.${is}`];
  return given(
    printed ? typedText(printed) : figureText(bound, shownIn(characteristic)),
    `${is} ${characteristic.title} as made, ${characteristic.source ?? job.sheet.engine.source}`,
  );
};

const instrumentText = (
  job: OpenJob,
  { name, of }: Extract<GivenInput, { kind: 'instrument' }>,
): GivenText => {
  // The one brought last is the one in the hand.
  const instrument = [...job.sheet.instruments.values()].filter(({ kind }) => kind === name).at(-1);
  if (!instrument) return first(`no ${name} was brought`, `bring the ${name} that it is read with`);
  const figure = {
    'permissible-error': instrument.permissibleError,
    resolution: instrument.resolution,
    repeatability: instrument.repeatability,
  }[of];
  return given(typedText(figure), `${of.replace('-', ' ')} of ${instrument.name}, by the register`);
};

const ofSum = (
  job: OpenJob,
  { name, takes, key }: Extract<GivenInput, { kind: 'sum' }>,
  { operation, place }: SumPlace,
): GivenText => {
  const noted =
    job.sums.get(sumKey(operation.name, name, place?.id)) ??
    job.sums.get(sumKey(operation.name, name, undefined));
  const found = (takes === 'result' ? noted?.found : noted?.inputs)?.find((one) => one.key === key);
  const title = operation.sums.find((sum) => sum.name === name)?.title ?? name;
  return found
    ? given(found.text, `${key.replaceAll('-', ' ')} of “${title}”`)
    : first(`“${title}” is not noted`, 'do that sum first, and write it into the journal');
};

/** The error that two inputs share, cut so that it is never more than either ± holds. */
const sharedText = (
  job: OpenJob,
  { by }: Extract<GivenInput, { kind: 'shared' }>,
  at: SumPlace,
): GivenText => {
  const values = by.map((key) => {
    const source = at.sum.given.get(key);
    return source?.kind === 'characteristic' ? measuredValue(job, source, at.place) : undefined;
  });
  const [a, b] = values;
  if (a?.kind === 'missing') return first(a.says, a.remedy);
  if (b?.kind === 'missing') return first(b.says, b.remedy);
  const from = 'the influences that both readings share';
  if (!a || !b) return given('0 mm', from);
  const common = Math.min(
    Math.sqrt(Math.max(0, covariance(a.value, b.value))),
    standardUncertainty(a.value),
    standardUncertainty(b.value),
  );
  const tenths = Math.floor(common * coverageFactor(0.95, Infinity) * 1e4);
  return given(`${formatFigure(tenths / 1e4, 4)} mm`, from);
};

/** What the job gives to one input of a sum at a place; undefined where it is asked of the fitter. */
export const givenText = (job: OpenJob, at: SumPlace, key: string): GivenText | undefined => {
  const source = at.sum.given.get(key);
  if (source === undefined) return undefined;
  const { engine } = job.sheet;
  const manual = `by the manual, ${at.sum.source ?? engine.source}`;
  switch (source.kind) {
    case 'text':
      return given(source.text, manual);
    case 'characteristic': {
      const found = measuredValue(job, source, at.place);
      return found.kind === 'missing'
        ? first(found.says, found.remedy)
        : given(valueWithSpread(found.value, engine.characteristics.get(source.name)), found.from);
    }
    case 'limit':
      return limitText(job, source, at.place);
    case 'engine':
      return given(engineText(engine, source.of), `by the manual, ${engine.source}`);
    case 'valves': {
      const text = valvesText(engine, source.of);
      return text === undefined
        ? first('the engine type does not say when the valves lift', 'say so under valve-setting')
        : given(text, `valve setting, by the manual, ${engine.source}`);
    }
    case 'fastener': {
      const fastener = engine.fasteners.get(source.name);
      const text = fastener && fastenerText(fastener, source.of);
      return fastener && text !== undefined
        ? given(text, `${fastener.title}, by the manual, ${fastener.source ?? engine.source}`)
        : first(`the engine type gives no ${source.of} of ${source.name}`, 'correct the engine type');
    }
    case 'list':
      return listedText(job, source);
    case 'pumps':
      return pumpsText(job, source);
    case 'instrument':
      return instrumentText(job, source);
    case 'sum':
      return ofSum(job, source, at);
    case 'shared':
      return sharedText(job, source, at);
    default:
      return source satisfies never;
  }
};
