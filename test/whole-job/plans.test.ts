/** @module Plans side by side on the command line: the trade-off, what else could be done, and one of them taken. */
import { afterAll, describe, expect, it } from 'vitest';
import { bench, demoFile } from './endfloat.ts';

const at = bench();
const files = [demoFile('engines/quillfeather-3w.yaml'), demoFile('readings/quillfeather-worn.csv')];
const asked = ['plan', ...files, '--hours-run', '6000'];
afterAll(at.clear);

interface Plan {
  readonly cents: number;
  readonly days: number;
  readonly hours: number;
  readonly choices: readonly { readonly id: string }[];
}
interface Plans {
  readonly kind: string;
  readonly plans: readonly Plan[];
  readonly changes: readonly { readonly against: number; readonly cents: number; readonly says: string }[];
}

const said = async (...words: readonly string[]): Promise<string> => {
  const { code, out, err } = await at.ask(words);
  expect(code, err).toBe(0);
  return out;
};
const told = async <T>(...words: readonly string[]): Promise<T> => JSON.parse(await said(...words, '--json'));

describe('the trade-off on the command line', () => {
  it('lists plans that no other beats, cheapest first, the cheapest being the plan itself', async () => {
    const { kind, plans, changes } = await told<Plans>(...asked, '--trade-off');
    expect(kind).toBe('trade-off');
    expect(plans.length).toBeGreaterThan(2);
    const alone = await told<Plan>(...asked);
    expect(plans[0]).toEqual(alone);
    for (const [index, plan] of plans.entries())
      for (const [other, rival] of plans.entries())
        if (index !== other)
          expect(
            rival.cents <= plan.cents && rival.days <= plan.days && rival.hours >= plan.hours,
            `${other} beats ${index}`,
          ).toBe(false);
    expect(changes).toHaveLength(plans.length - 1);
    for (const [index, { against, cents }] of changes.entries())
      expect(cents).toBe((plans[index + 1]?.cents ?? 0) - (plans[against]?.cents ?? 0));
  });

  it('says in words what changes, and how to take one', async () => {
    const out = await said(...asked, '--trade-off');
    expect(out).toMatch(/^Plan +Cost +Gaskets, seals +Days +Lasts +What changes\n/);
    expect(out).toMatch(
      /against 1: for \d+\.\d\d more: ready 2 days sooner, since cylinder bores in the block go to 0\.50/,
    );
    const [, days = '', hours = ''] = /--days (\S+) --hours-wanted (\d+) for the last/.exec(out) ?? [];
    const { plans } = await told<Plans>(...asked, '--trade-off');
    expect(await told<Plan>(...asked, '--days', days, '--hours-wanted', hours)).toEqual(plans.at(-1));
  });

  it('is a conflict where what is demanded leaves no plan', async () => {
    const { code, err } = await at.ask([...asked, '--trade-off', '--hours-wanted', '9000']);
    expect(code).toBe(1);
    expect(err).toMatch(/no plan satisfies all of this together/);
  });
});

describe('what else could be done, on the command line', () => {
  it('is each within the margin, and differs in what is done', async () => {
    const { kind, plans } = await told<Plans>(...asked, '--within', '35.50');
    expect(kind).toBe('alternatives');
    const [best, ...others] = plans;
    expect(others.length).toBeGreaterThan(2);
    for (const { cents } of others) expect(cents).toBeLessThanOrEqual((best?.cents ?? 0) + 3_550);
    expect(new Set(plans.map(({ choices }) => choices.map(({ id }) => id).join())).size).toBe(plans.length);
    expect(await said(...asked, '--within', '35.50')).toMatch(
      /They differ in what is done, not only in who does it/,
    );
  });
});
