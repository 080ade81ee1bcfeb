/** @module The plan is the best of all plans there are, and its conflicts are conflicts: every combination tried. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planEngine } from '../../src/plan/plan.ts';
import type { Planned, Solve } from '../../src/plan/plan-model.ts';
import type { PlanQuestion } from '../../src/plan/question.ts';
import { hours } from '../../src/quantity/brand.ts';
import { wornQuillfeather } from '../engines/worn-quillfeather.ts';
import { cases, isWhole, weighed } from './any-plan-question.ts';
import { barredFits, bestOfAll, centsOf, daysOf, rulesOf, titleOf } from './every-plan.ts';

/** The sweep alone must do, whatever couplings there are: whoever asks a solver fails. */
const noSolver: Solve = async () => {
  throw new Error('the sweep left a plan to the solver');
};

const planOf = (question: PlanQuestion): Promise<Planned> => planEngine(question, noSolver);

/** Same size, renew with, disturbed, matched, either or, balance. */
const couplingKinds = 6;

describe('the plan among all plans that there are', () => {
  it('is the cheapest, then the soonest, then the one of fewest new parts, then the first', async () => {
    // source: every combination of options, tried by test/outside/every-plan.ts
    const plansWith = new Map<string, number>();
    let plans = 0;
    let conflicts = 0;
    await fc.assert(
      fc.asyncProperty(cases.filter(isWhole), async ({ question, bySlot }) => {
        const any = bySlot.flatMap(([first]) => (first ? [first] : []));
        const best = bestOfAll(
          question.sheet.engine,
          bySlot,
          rulesOf(question.sheet.engine, any, question.demands, barredFits(bySlot.flat())),
        );
        const planned = await planOf(question);
        if (!best) {
          conflicts += 1;
          expect(planned.kind).toBe('conflict');
          return;
        }
        plans += 1;
        for (const kind of new Set(question.sheet.engine.couplings.map((coupling) => coupling.kind)))
          plansWith.set(kind, (plansWith.get(kind) ?? 0) + 1);
        if (planned.kind !== 'plan') throw new Error(`${planned.kind} where there is a plan`);
        expect(planned.choices.map(({ id }) => id)).toEqual(best.map(({ id }) => id));
        const cents = centsOf(question.sheet.engine, best);
        expect(planned).toMatchObject({ cents, bound: cents, days: daysOf(best), provedBy: 'sweep' });
      }),
      { numRuns: 240 },
    );
    expect(plans).toBeGreaterThan(60);
    expect(conflicts).toBeGreaterThan(40);
    expect(plansWith.size).toBe(couplingKinds);
    for (const [kind, count] of plansWith) expect(count, kind).toBeGreaterThan(3);
  }, 300_000);

  it('is not there for a conflict, of which nothing can be left out', async () => {
    await fc.assert(
      fc.asyncProperty(cases.filter(isWhole), async ({ question, bySlot }) => {
        const planned = await planOf(question);
        fc.pre(planned.kind === 'conflict');
        if (planned.kind !== 'conflict') return;
        const { engine: own } = question.sheet;
        const any = bySlot.flatMap(([first]) => (first ? [first] : []));
        const rules = rulesOf(own, any, question.demands, barredFits(bySlot.flat())).filter(({ says }) =>
          planned.demands.includes(says),
        );
        const settled = any.filter((option) =>
          planned.demands.some((says) => says.startsWith(`${titleOf(own, option)} must be settled:`)),
        );
        expect(new Set(rules.map(({ says }) => says)).size + settled.length).toBe(planned.demands.length);
        const loose = new Set(any.filter((option) => !settled.includes(option)).map(({ slot }) => slot));
        expect(bestOfAll(own, bySlot, rules, loose)).toBeUndefined();
        for (const { says } of rules) {
          const rest = rules.filter((rule) => rule.says !== says);
          expect(bestOfAll(own, bySlot, rest, loose), `without: ${says}`).toBeDefined();
        }
        for (const { slot } of settled) {
          expect(bestOfAll(own, bySlot, rules, new Set([...loose, slot])), `without: ${slot}`).toBeDefined();
        }
      }),
      { numRuns: 60 },
    );
  }, 300_000);

  it('tells a conflict in words: what was wanted, and what stands against it', async () => {
    const demands = { hours: 4_800 };
    const planned = await planOf({ sheet: wornQuillfeather, findings: [], hoursRun: hours(6_000), demands });
    if (planned.kind !== 'conflict') throw new Error(`${planned.kind} where nozzles last 4500 h`);
    expect(planned.demands).toEqual([
      'injector nozzles, injector 3 must be settled: the longest lasting option gives 4500 h, the soonest takes 3 days; not open: put back: a used one is never put back',
      'hours wanted: 4800 h',
    ]);
    expect(planned.remedy).not.toBe('');
  });

  it('does not hang on the order of offers and couplings in the file', async () => {
    await fc.assert(
      fc.asyncProperty(cases, async ({ question }) => {
        const { engine: own } = question.sheet;
        const turned = {
          ...question,
          sheet: weighed({
            ...own,
            offers: own.offers.toReversed(),
            couplings: own.couplings.toReversed(),
          }),
        };
        const [one, other] = [await planOf(question), await planOf(turned)];
        expect(other.kind).toBe(one.kind);
        if (one.kind === 'plan' && other.kind === 'plan') expect(other.choices).toEqual(one.choices);
      }),
      { numRuns: 80 },
    );
  }, 300_000);
});
