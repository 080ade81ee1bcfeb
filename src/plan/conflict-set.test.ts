/** @module The fewest rules that cannot be kept together, against families of conflicts that are known. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conflictSet, type Together } from './conflict-set.ts';

const rules = Array.from({ length: 12 }, (_, index) => `rule ${index}`);

/** Conflicts at random: whatever holds one of them cannot be kept. */
const families = fc.oneof(
  fc.array(fc.subarray(rules, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 6 }),
  // Many that overlap, none of them short: these take the most questions.
  fc.array(fc.subarray(rules, { minLength: 3, maxLength: 6 }), { minLength: 6, maxLength: 6 }),
);

const knowing =
  (family: readonly (readonly string[])[], asked: () => void = () => undefined): Together =>
  async (some) => {
    asked();
    return !family.some((conflict) => conflict.every((rule) => some.includes(rule)));
  };

describe('the fewest rules in conflict', () => {
  it('are one of the smallest conflicts that there are', async () => {
    await fc.assert(
      fc.asyncProperty(families, async (family) => {
        const found = (await conflictSet(rules, knowing(family))) ?? [];
        expect(family.map((conflict) => [...conflict].sort())).toContainEqual([...found].sort());
        expect(found.length).toBe(Math.min(...family.map(({ length }) => length)));
      }),
      { numRuns: 1_000 },
    );
  });

  it('name the last rules where several sets are as small', async () => {
    const family = [
      ['rule 0', 'rule 11'],
      ['rule 4', 'rule 11'],
      ['rule 7', 'rule 11'],
    ];
    expect(await conflictSet(rules, knowing(family))).toEqual(['rule 7', 'rule 11']);
  });

  it('are found by few questions among many rules', async () => {
    const many = Array.from({ length: 400 }, (_, index) => `rule ${index}`);
    let questions = 0;
    const together = knowing([['rule 17', 'rule 200', 'rule 399']], () => {
      questions += 1;
    });
    expect(await conflictSet(many, together)).toEqual(['rule 17', 'rule 200', 'rule 399']);
    // One after the other would be 400.
    expect(questions).toBeLessThan(120);
  });

  it('are not told where a question is not answered', async () => {
    expect(await conflictSet(rules, async () => undefined)).toBeUndefined();
  });
});
