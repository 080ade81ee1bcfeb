/** @module Whether what came of a sum keeps what the manual asks of it, by the rule of the job. */
import type { Place } from '../../engine/engine-type.ts';
import type { Kept } from '../../engine/operation-sum.ts';
import { operandPlace } from '../../measure/expression.ts';
import { fittedSize } from '../../measure/fitted-size.ts';
import { ruleOf } from '../../measure/sheet.ts';
import type { Verdict } from '../../measure/verdict-model.ts';
import { weigh } from '../../measure/weigh.ts';
import { coverageFactor } from '../../quantity/coverage.ts';
import { typedText } from '../../quantity/typed.ts';
import { uncertain } from '../../quantity/uncertain.ts';
import { findUnit, stepToCore, toCore } from '../../quantity/unit.ts';
import type { Reckoned, Result } from '../../reckon/reckoning.ts';
import { knownText, unitText } from '../../reckon/result-text.ts';
import type { OpenJob } from '../job.ts';
import type { SumPlace } from './sum-places.ts';

export interface KeptHere {
  /** Of the result. */
  readonly key: string;
  readonly verdict: Verdict;
  /** `clearance 0.051 ± 0.006 mm, to be 0.040 mm to 0.090 mm`. */
  readonly says: string;
}

/** `cylinder.2.bump` as it is read aloud: `cylinder 2: bump`; the point of a figure stays. */
export const resultTitle = (key: string): string =>
  key
    .replaceAll('-', ' ')
    .replaceAll(/(?<=[a-z])\.(?=\d)/g, ' ')
    .replaceAll(/\.(?=[a-z])/g, ': ');

/** A result as it is written down: `0.0510 ± 0.0055 mm`. */
export const resultText = (result: Result): string => {
  const { value, spread } = knownText(result, coverageFactor(0.95, Infinity));
  return `${value}${spread === undefined ? '' : ` ± ${spread}`} ${unitText(result)}`.trim();
};

const asked = ({ printed, is }: Pick<Kept, 'printed' | 'is'>): string => {
  const { least, greatest } = printed;
  const words = is?.join(' or ');
  if (words !== undefined) return words;
  if (least && greatest) return `${typedText(least)} to ${typedText(greatest)}`;
  return least ? `${typedText(least)} at least` : greatest ? `${typedText(greatest)} at most` : 'told';
};

const escaped = (text: string): string => text.replaceAll(/[.+?^${}()|[\]\\]/g, '\\$&');

/** Whether a result's key is one that a limit is for. */
export const isKeptBy = (pattern: string, key: string): boolean =>
  pattern === key ||
  (pattern.includes('*') && new RegExp(`^${escaped(pattern).replaceAll('*', '[^.]+')}$`).test(key));

const verdictOn = (job: OpenJob, { is, bounds }: Pick<Kept, 'bounds' | 'is'>, result: Result): Verdict => {
  if (is) return is.includes(String(result.value)) ? 'within' : 'outside';
  const unit = findUnit(result.unit);
  if (typeof result.value === 'string' || unit.kind === 'refused') return 'not yet known';
  const size = uncertain(
    toCore(result.value, unit.value),
    'the sum',
    Math.abs(stepToCore(result.u ?? 0, unit.value)),
  );
  return weigh(size, { new: bounds, goesBack: bounds, printed: {} }, ruleOf(job.sheet)).verdict;
};

/** What is asked of a result at the size that is fitted at the place of the sum, and that size where it decides. */
const atSize = (
  { sheet }: OpenJob,
  kept: Kept,
  place: Place | undefined,
): Pick<Kept, 'bounds' | 'printed' | 'is'> & { readonly size?: string } => {
  const component = sheet.engine.components.get(kept.sizeOf ?? '');
  if (!component || !place || !kept.sizes) return kept;
  const size = fittedSize(sheet, component.name, operandPlace(sheet.engine, place, component.at));
  const own = kept.sizes.get(size);
  return own ? { ...own, size } : kept;
};

/** Every result that something is asked of, with its verdict; one that the sum does not give is not yet known. */
export const keptHere = (
  job: OpenJob,
  { sum, place }: Pick<SumPlace, 'sum' | 'place'>,
  { results }: Reckoned,
): readonly KeptHere[] =>
  sum.keeps.flatMap((kept): readonly KeptHere[] => {
    const limits = atSize(job, kept, place);
    const wanted = `to be ${asked(limits)}${limits.size === undefined ? '' : ` at size ${limits.size}`}`;
    const found = Object.entries(results).filter(([key]) => isKeptBy(kept.result, key));
    if (found.length === 0)
      return [
        {
          key: kept.result,
          verdict: 'not yet known',
          says: `${resultTitle(kept.result)}, ${wanted}, does not come of what is given`,
        },
      ];
    return found.map(([key, result]) => ({
      key,
      verdict: verdictOn(job, limits, result),
      says: `${resultTitle(key)} ${resultText(result)}, ${wanted}`,
    }));
  });
