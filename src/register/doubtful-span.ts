/** @module When an instrument may have been wrong: from the last time it was known to be good, until it was again. */
import type { Entry, NotedOf, Registered } from './register.ts';

export interface Span {
  readonly why: 'out of tolerance' | 'past due';
  /** Behind the instrument's name. */
  readonly says: string;
  /** Moments after this one and up to `until`; from ever and for ever where they are missing. */
  readonly after?: string;
  readonly until?: string;
}

/** A moment as text that sorts by time: `…:00Z` and `…:00.000Z` are one moment. */
const sortable = (at: string): string => {
  const [whole = '', part = ''] = at.replace(/Z$/, '').split('.');
  return `${whole}.${part.padEnd(9, '0')}`;
};

const endOf = (day: string): string => `${day}T23:59:59.999999999Z`;
const beginOf = (day: string): string => `${day}T00:00:00Z`;

/** Whether a moment lies in a span. */
export const within = ({ after, until }: Span, at: string): boolean => {
  const moment = sortable(at);
  return (
    (after === undefined || moment > sortable(after)) && (until === undefined || moment <= sortable(until))
  );
};

/** A moment at which something became known of the instrument. */
interface Finding {
  readonly by: 'check' | 'calibration';
  readonly good: boolean;
  readonly at: string;
  /** From when on it is known to be good: a calibration sets right what it finds. */
  readonly goodFrom?: string;
  readonly says: string;
  readonly due?: string;
}

const ofCheck = (fact: NotedOf<'instrument checked'>, { at, by }: Entry): Finding => ({
  by: 'check',
  good: fact.good,
  at,
  ...(fact.good && { goodFrom: at }),
  says: `was found out of tolerance on ${at.slice(0, 10)} against ${fact.against}, by ${by}`,
});

const ofCalibration = (fact: NotedOf<'instrument calibrated'>): Finding => ({
  by: 'calibration',
  good: fact.foundGood,
  at: endOf(fact.on),
  // Whether a reading of that day came before or after it, nobody knows.
  goodFrom: fact.foundGood ? beginOf(fact.on) : endOf(fact.on),
  says: `was found out of tolerance when it was calibrated on ${fact.on} (certificate ${fact.certificate})`,
  due: fact.due,
});

const findingsOf = ({ history }: Registered): readonly Finding[] =>
  history
    .flatMap((entry) => {
      if (entry.struckOut !== undefined) return [];
      if (entry.fact.kind === 'instrument checked') return [ofCheck(entry.fact, entry)];
      return entry.fact.kind === 'instrument calibrated' ? [ofCalibration(entry.fact)] : [];
    })
    .sort((a, b) => (sortable(a.at) < sortable(b.at) ? -1 : 1));

/** A fault that a calibration finds may have been there through every check of the zero; those do not clear it. */
const clears = (found: Finding, good: Finding): boolean =>
  good.goodFrom !== undefined && (found.by === 'check' || good.by === 'calibration');

const outOfTolerance = (findings: readonly Finding[]): readonly Span[] =>
  findings.flatMap((found, at): readonly Span[] => {
    const before = findings[at - 1];
    // Found wrong twice with nothing set right between, it was wrong once.
    const goesOn = before !== undefined && before.goodFrom === undefined && found.by === 'check';
    if (found.good || goesOn) return [];
    const last = findings.slice(0, at).findLast((one) => clears(found, one));
    const next =
      found.goodFrom === undefined ? findings.slice(at + 1).find((one) => one.goodFrom !== undefined) : found;
    return [
      {
        why: 'out of tolerance',
        says: found.says,
        ...(last?.goodFrom && { after: last.goodFrom }),
        ...(next?.goodFrom && { until: next.goodFrom }),
      },
    ];
  });

const pastDue = (findings: readonly Finding[]): readonly Span[] => {
  const calibrations = findings.filter(({ by }) => by === 'calibration');
  return calibrations.flatMap(({ due = '' }, at): readonly Span[] => {
    const next = calibrations[at + 1];
    // Calibrated late and found good, it was good all the while.
    if (next !== undefined && (next.good || next.at <= endOf(due))) return [];
    const says = `was due for calibration by ${due}`;
    return [{ why: 'past due', says, after: endOf(due), ...(next && { until: next.at }) }];
  });
};

/** The spans in which what was done with an instrument is in question, as its history tells. */
export const doubtfulSpans = (registered: Registered): readonly Span[] => {
  const findings = findingsOf(registered);
  return [...outOfTolerance(findings), ...pastDue(findings)];
};
