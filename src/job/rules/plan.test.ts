/** @module Which plans may be chosen and agreed to. */
import { describe, expect, it } from 'vitest';
import { measured, plan } from '../../../test/job/bench.ts';

describe('a plan', () => {
  it('decides everything there is to decide, each once, with its own option', () => {
    const bench = measured();
    const [mains, first, second] = plan.choices;
    if (!mains || !first || !second) throw new Error('the plan has three choices');
    expect(bench.refused({ ...plan, choices: [mains, first] })).toContain('pumps@pump.2');
    expect(bench.refused({ ...plan, choices: [mains, mains, first, second] })).toContain('decided twice');
    expect(bench.refused({ ...plan, choices: [{ ...mains, slot: 'main' }, first, second] })).toContain(
      'mains',
    );
    expect(
      bench.refused({ ...plan, choices: [{ ...mains, option: first.option }, first, second] }),
    ).toContain('does not belong to mains');
  });

  it('is agreed to once it is there; a new one asks the owner anew', () => {
    const bench = measured();
    const agreement = { kind: 'note agreement', name: 'W. Heron', how: 'by telephone' } as const;
    expect(bench.refused(agreement)).toContain('choose a plan first');
    bench.done(plan);
    expect(bench.refused({ ...agreement, name: '' })).toContain('who agreed');
    bench.done(agreement);
    expect(bench.open.agreed?.name).toBe('W. Heron');
    bench.done(plan);
    expect(bench.open.agreed).toBeUndefined();
  });
});
