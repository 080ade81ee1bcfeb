/** @module What is in question: readings between the last time an instrument was known to be good and the next. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyRegisterFact, inJournal } from '../../test/register/any-register.ts';
import { mic, Shop } from '../../test/register/shop.ts';
import { replayRegister } from './evolve.ts';
import { inQuestion, type JobUses, type Use } from './in-question.ts';
import type { Register } from './register.ts';

const mm = (text: string) => ({ text, unit: 'mm' });

const use = (at: string, where = `main bearing, read ${at}`, more: Partial<Use> = {}): Use => ({
  id: `${where} ${at}`,
  at: at.includes('T') ? at : `${at}T12:00:00Z`,
  by: 'Wilmot Tansy',
  instrument: mic.name,
  masters: [],
  where,
  typed: mm('54.980'),
  ...more,
});

const jobOf = (...uses: readonly Use[]): JobUses => ({
  job: 'job-1',
  number: 'J-1',
  engine: 'Sparrowbill 2',
  uses,
});

/** Days of the uses in question. */
const days = (register: Register, job: JobUses): readonly string[] =>
  inQuestion(register, [job]).flatMap(({ jobs }) =>
    jobs.flatMap(({ uses }) => uses.map(({ at }) => at.slice(0, 10))),
  );

const everyMonth = jobOf(
  ...['01', '02', '03', '04', '05', '06', '07', '08', '09', '10', '11', '12'].map((month) =>
    use(`2026-${month}-15`),
  ),
);

const bad = { showed: mm('0.012'), good: false };

describe('readings', () => {
  it('are not in question where nothing speaks against their instrument', () => {
    const shop = new Shop();
    shop.calibrate('2026-02-02', { on: '2026-02-01', due: '2027-02-01' });
    shop.check('2026-06-01');
    expect(days(shop.register, everyMonth)).toEqual([]);
  });

  it('are in question since the last good check, when a check finds the instrument out of tolerance', () => {
    const shop = new Shop();
    shop.check('2026-03-01');
    shop.check('2026-06-01');
    shop.check('2026-09-01', bad);
    expect(days(shop.register, everyMonth)).toEqual([
      '2026-06-15',
      '2026-07-15',
      '2026-08-15',
      // Known to be wrong, and read with all the same.
      '2026-09-15',
      '2026-10-15',
      '2026-11-15',
      '2026-12-15',
    ]);
    shop.check('2026-10-01');
    expect(days(shop.register, everyMonth)).toEqual(['2026-06-15', '2026-07-15', '2026-08-15', '2026-09-15']);
  });

  it('are all in question where it was never good before', () => {
    const shop = new Shop();
    shop.check('2026-03-01', bad);
    shop.check('2026-04-01');
    expect(days(shop.register, everyMonth)).toEqual(['2026-01-15', '2026-02-15', '2026-03-15']);
  });

  it('are in question from the day after the due day, until it is calibrated', () => {
    const shop = new Shop();
    shop.calibrate('2026-01-02', { on: '2026-01-01', due: '2026-08-15' });
    const job = jobOf(use('2026-08-15T23:59:59.5Z'), use('2026-08-16T00:00:00Z'), use('2026-11-15'));
    expect(days(shop.register, job)).toEqual(['2026-08-16', '2026-11-15']);
    shop.calibrate('2026-10-02', { on: '2026-10-01', due: '2027-10-01', foundGood: false });
    expect(days(shop.register, job)).toContain('2026-08-16');
    expect(days(shop.register, job)).not.toContain('2026-11-15');
  });

  it('are no longer in question where it was calibrated late and found good', () => {
    const shop = new Shop();
    shop.calibrate('2026-01-02', { on: '2026-01-01', due: '2026-08-15' });
    shop.calibrate('2026-10-02', { on: '2026-10-01', due: '2027-10-01' });
    expect(days(shop.register, everyMonth)).toEqual([]);
  });

  it('are in question since the calibration before, when a calibration finds what checks of the zero could not', () => {
    const shop = new Shop();
    shop.calibrate('2026-02-02', { on: '2026-02-01', due: '2026-12-31' });
    shop.check('2026-06-01');
    shop.calibrate('2026-09-02', { on: '2026-09-01', due: '2027-08-31', foundGood: false });
    expect(days(shop.register, everyMonth)).toEqual([
      '2026-02-15',
      '2026-03-15',
      '2026-04-15',
      '2026-05-15',
      '2026-06-15',
      '2026-07-15',
      '2026-08-15',
    ]);
  });

  it('are not in question by a check that was struck out', () => {
    const shop = new Shop();
    shop.check('2026-03-01');
    const { id } = shop.check('2026-06-01', bad);
    shop.done('2026-06-01', { kind: 'strike out entry', entry: id, why: 'another micrometer' });
    expect(days(shop.register, everyMonth)).toEqual([]);
  });

  it('taken with a gauge that was set in a bad micrometer are in question with it', () => {
    const shop = new Shop();
    shop.check('2026-03-01');
    shop.check('2026-06-01', bad);
    const set = (day: string) => ({
      instrument: 'bore-1',
      masters: [{ name: mic.name, at: `${day}T08:00:00Z` }],
    });
    const job = jobOf(
      use('2026-02-10', 'bore 1', set('2026-02-10')),
      use('2026-05-10', 'bore 2', set('2026-05-10')),
    );
    expect(inQuestion(shop.register, [job])).toMatchObject([
      {
        instrument: mic.name,
        jobs: [
          { uses: [{ where: 'bore 2', because: [expect.stringMatching(/^mic-50-75 was found out of/)] }] },
        ],
      },
    ]);
  });

  it('that were taken again since with nothing against it are marked', () => {
    const shop = new Shop();
    shop.check('2026-03-01');
    shop.check('2026-06-01', bad);
    shop.check('2026-06-02');
    const job = jobOf(use('2026-05-10', 'main 1'), use('2026-05-11', 'main 2'), use('2026-07-01', 'main 1'));
    const [found] = inQuestion(shop.register, [job]);
    expect(found?.jobs[0]?.uses.map(({ where, doneAgain }) => [where, doneAgain])).toEqual([
      ['main 1', true],
      ['main 2', false],
    ]);
  });

  it('of every job are listed, and jobs with none are left out', () => {
    const shop = new Shop();
    shop.check('2026-06-01', bad);
    const jobs = [
      { ...jobOf(use('2026-05-10')), job: 'a' },
      { ...jobOf(use('2026-05-10', 'x', { instrument: 'other' })), job: 'b' },
      { ...jobOf(use('2026-04-10')), job: 'c' },
    ];
    expect(inQuestion(shop.register, jobs)[0]?.jobs.map(({ job }) => job)).toEqual(['a', 'c']);
  });

  it('never lack a reason, whatever the register holds', () => {
    fc.assert(
      fc.property(fc.array(anyRegisterFact, { maxLength: 20 }), (facts) => {
        const register = replayRegister(facts.map(inJournal));
        for (const { spans, jobs } of inQuestion(register, [everyMonth])) {
          expect(spans.length).toBeGreaterThan(0);
          for (const { uses } of jobs) for (const { because } of uses) expect(because).not.toEqual([]);
        }
      }),
      { numRuns: 200 },
    );
  });
});
