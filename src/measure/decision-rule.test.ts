/** @module What each rule says of the same measurement, against published decisions. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { readAll, sheetOf } from '../../test/engines/small-engine.ts';
import { uncertain } from '../quantity/uncertain.ts';
import { type DecisionRule, ruleText } from './decision-rule.ts';
import { verdictOf } from './guard-band.ts';
import { judge } from './judge.ts';
import { readRule } from './read-rule.ts';
import { weigh } from './weigh.ts';

const limitsOf = (goesBack: { readonly least?: number; readonly greatest?: number }) =>
  ({ new: {}, goesBack, printed: {} }) as Parameters<typeof weigh>[1];

const say = (rule: DecisionRule, value: number, u: number, bounds: Parameters<typeof limitsOf>[0]) =>
  weigh(uncertain(value, 'all', u), limitsOf(bounds), rule).verdict;

const guarded: DecisionRule = { kind: 'guarded', conformance: 0.95 };
const simple: DecisionRule = { kind: 'simple', ratio: 4 };
const shared: DecisionRule = { kind: 'shared risk', conformance: 0.5 };

describe('a rule as typed', () => {
  it.each([
    ['guarded 95 %', { kind: 'guarded', conformance: 0.95 }],
    ['guarded 0.9', { kind: 'guarded', conformance: 0.9 }],
    [' simple 4 ', { kind: 'simple', ratio: 4 }],
    ['shared risk 50 %', { kind: 'shared risk', conformance: 0.5 }],
  ])('%s is read', (text, rule) => {
    expect(readRule(text)).toEqual({ kind: 'answer', value: rule });
  });

  it.each([
    '',
    'simple',
    'simple 0',
    'simple x',
    'guarded 95',
    'guarded 100 %',
    'kind 4',
    'shared risk 10 %',
  ])('%s is refused', (text) => {
    expect(readRule(text).kind).toBe('refused');
  });

  it('is said in words, with its figure', () => {
    expect(ruleText(guarded)).toContain('95.0 % or more; else unsure (ISO 14253-1)');
    expect(ruleText(simple)).toContain('at least 4 times the ± of the size');
    expect(ruleText(shared)).toContain('50.0 % or more, else outside');
  });
});

describe('a rule', () => {
  it.each([
    // source: JCGM 106:2012, 7.3: one limit -5.40 V, read -5.47 V with u 0.05 V: conformance 0.92
    [guarded, 'unsure'],
    [{ kind: 'guarded', conformance: 0.9 }, 'within'],
    [shared, 'within'],
    [{ kind: 'shared risk', conformance: 0.95 }, 'outside'],
  ] as const)('%o says of the diode %s', (rule, verdict) => {
    expect(say(rule, -5.47, 0.05, { greatest: -5.4 })).toBe(verdict);
  });

  it('of simple acceptance goes by the value, where the tolerance is wide enough', () => {
    // source: JCGM 106:2012, 8.2: acceptance interval = tolerance interval, with a limit on the measuring uncertainty
    const limits = { least: 0, greatest: 0.08 };
    expect(say(simple, 0.0799, 0.01, limits)).toBe('within');
    expect(say(simple, 0.0801, 0.01, limits)).toBe('outside');
    // ± is 1.96 times 0.011 mm, and 0.08 mm are less than four of these.
    expect(say(simple, 0.04, 0.011, limits)).toBe('unsure');
  });

  it('of simple acceptance is guarded where one limit stands alone', () => {
    fc.assert(
      fc.property(between(-3, 3), (value) => {
        expect(say(simple, value, 1, { greatest: 0 })).toBe(say(guarded, value, 1, { greatest: 0 }));
      }),
    );
  });

  it('of shared risk is never unsure', () => {
    fc.assert(
      fc.property(between(-3, 3), between(0.01, 5), (value, u) => {
        expect(say(shared, value, u, { least: -1, greatest: 1 })).not.toBe('unsure');
      }),
    );
  });

  it('of ISO 14253-1 is the same as the verdict of one value', () => {
    fc.assert(
      fc.property(between(-3, 3), between(0, 2), between(0.6, 0.999), (value, u, conformance) => {
        const bounds = { least: -1, greatest: 1 };
        expect(say({ kind: 'guarded', conformance }, value, u, bounds)).toBe(
          verdictOf(value, u, Infinity, bounds, conformance),
        );
      }),
    );
  });

  it('that accepts more never says outside where a stricter says within', () => {
    const rules: readonly DecisionRule[] = [guarded, shared, simple];
    fc.assert(
      fc.property(between(-3, 3), between(0.01, 0.4), (value, u) => {
        const said = new Set(rules.map((rule) => say(rule, value, u, { least: -2, greatest: 2 })));
        expect(said.has('within') && said.has('outside')).toBe(false);
      }),
    );
  });

  it('is that of the sheet', () => {
    const readings = readAll('main.1', 'main-journal-diameter', ['54.980', '54.975', '54.931', '54.978']);
    const of = (rule?: DecisionRule) =>
      judge(sheetOf(readings, rule ? { rule } : {}), 'main-journal-diameter', 'main.1').verdict;
    expect(of()).toBe('unsure');
    expect(of(shared)).toBe('within');
    expect(of({ kind: 'simple', ratio: 4 })).toBe('within');
    expect(of({ kind: 'simple', ratio: 20 })).toBe('unsure');
  });
});
