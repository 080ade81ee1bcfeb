/** @module Which plans may be chosen and agreed to. */
import { describe, expect, it } from 'vitest';
import { bookedIn, measured, plan } from '../../../test/job/bench.ts';

describe('a plan', () => {
  const [mains, shells, first, second] = plan.choices;
  if (!mains || !shells || !first || !second) throw new Error('the plan has four choices');
  const ground = { slot: 'mains', option: 'mains:machine:0.25:Ashlar Grinding', says: '', cents: 18_000 };
  const oldShells = { slot: 'main-shells', option: 'main-shells:put back:standard:', says: '', cents: 0 };

  it('decides everything there is to decide, each once', () => {
    const bench = measured();
    const refusedWith = (...choices: (typeof plan.choices)[number][]) => bench.refused({ ...plan, choices });
    expect(refusedWith(mains, shells, first)).toContain('1 of 4 are not decided: pumps@pump.2');
    expect(refusedWith(mains, mains, shells, first, second)).toContain('decided twice');
    expect(refusedWith({ ...mains, slot: 'main' }, shells, first, second)).toContain('mains');
    expect(refusedWith({ ...mains, option: first.option }, shells, first, second)).toContain('is not open');
  });

  it('chooses among options that are open on the readings as they stand, and says what bars another', () => {
    const bench = measured();
    bench.read('main.2', '49.900', 'horizontal');
    expect(bench.refused(plan)).toMatch(
      /^mains \| “mains:put back:standard:” is not open \(put back: .*\) \| plan again/,
    );
    bench.done({ ...plan, choices: [ground, shells, first, second], cents: 22_600, days: 4 });
  });

  it('waits for what is not measured', () => {
    const bench = bookedIn();
    bench.read('main.1', '49.975', 'vertical');
    expect(bench.refused(plan)).toContain('not everything is measured');
  });

  it('keeps the couplings: ground journals run in new shells', () => {
    const bench = measured();
    const choices = [ground, oldShells, first, second];
    expect(bench.refused({ ...plan, choices, cents: 18_000, days: 4 })).toContain(
      'main bearing shells must be renewed when main journals',
    );
  });

  // source: the prices of the engine type added by hand: shells 40.00, carriage 6.00 once
  it('comes to the cost, days and hours that its choices come to', () => {
    const bench = measured();
    expect(bench.refused({ ...plan, cents: 4000 })).toContain('are not what the choices come to');
    expect(bench.refused({ ...plan, days: 0 })).toContain('are not what the choices come to');
    expect(bench.refused({ ...plan, hours: 8000 })).toContain('are not what the choices come to');
    const cheaper = { ...shells, cents: 3000 };
    expect(bench.refused({ ...plan, choices: [mains, cheaper, first, second] })).toContain('another price');
    bench.done(plan);
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
