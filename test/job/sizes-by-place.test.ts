/** @module One cylinder at another size than the others: its limits, doubts, plan, order, fitting and record go by that size. */
import { describe, expect, it } from 'vitest';
import type { JobEvent } from '../../src/job/event.ts';
import { evolve } from '../../src/job/evolve.ts';
import { fittingOf } from '../../src/job/fitting.ts';
import { leftBy } from '../../src/job/left-by.ts';
import { machineShopSheetsOf } from '../../src/job/order/machine-shop.ts';
import { choosePlan, planQuestionOf } from '../../src/job/planning.ts';
import { sizeAt } from '../../src/job/size-at.ts';
import { sizeCautionsOf } from '../../src/job/size-cautions.ts';
import { doubtsOf } from '../../src/measure/doubts.ts';
import { judge } from '../../src/measure/judge.ts';
import { optionsOf } from '../../src/plan/options.ts';
import { planEngine } from '../../src/plan/plan.ts';
import { fileOf, pageOf, recordOf } from '../../src/record/record.ts';
import { verifyRecord } from '../../src/record/verify.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import type { Bench } from './bench.ts';
import { bookOversize, foundOversize, knownOversize, measureOversize } from './oversize-bore.ts';

const measured = measureOversize(bookOversize());
const found = knownOversize();

const limitsAt = (bench: Bench, place: string, characteristic: string) => {
  const { limits, verdict } = judge(bench.open.sheet, characteristic, place);
  return { made: limits?.new, wear: limits?.goesBack, verdict };
};

describe('a bore at 0.50 as found, and the others standard', () => {
  it('is outside as long as nobody has noted its size, and what it measures as is told', () => {
    expect(limitsAt(measured, 'bore.2', 'bore-diameter').verdict).toBe('outside');
    const says = sizeCautionsOf(measured.open).map((caution) => caution.says);
    expect(says).toContainEqual(
      expect.stringContaining('If cylinder bore 2 was machined to 0.50, note that as the size found there.'),
    );
  });

  // source: invented, the demonstration engine's sheet 3
  it('is judged by the limits of 0.50, its piston with it, and the others as before', () => {
    expect(limitsAt(found, 'bore.2', 'bore-diameter')).toEqual({
      made: { least: 85.5, greatest: 85.522 },
      wear: { least: 85.5, greatest: 85.65 },
      verdict: 'within',
    });
    expect(limitsAt(found, 'piston.2', 'piston-diameter')).toMatchObject({
      made: { least: 85.415, greatest: 85.435 },
      verdict: 'within',
    });
    for (const cylinder of [1, 3]) {
      expect(limitsAt(found, `bore.${cylinder}`, 'bore-diameter')).toMatchObject({
        made: { least: 85, greatest: 85.022 },
        verdict: 'within',
      });
      expect(limitsAt(found, `piston.${cylinder}`, 'piston-diameter')).toMatchObject({
        made: { least: 84.915, greatest: 84.935 },
        verdict: 'within',
      });
    }
    expect(limitsAt(found, 'piston.2', 'piston-clearance').verdict).toBe('within');
  });

  it('raises no doubt once it is noted', () => {
    expect(doubtsOf(found.open.sheet).map(({ says }) => says)).toEqual([]);
  });

  it('is the size fitted at its place, and at those that follow it', () => {
    const sizes = (component: string, kind: string) =>
      [1, 2, 3].map((number) => sizeAt(found.open, component, `${kind}.${number}`).fitted);
    expect(sizes('bores', 'bore')).toEqual(['standard', '0.50', 'standard']);
    expect(sizes('pistons', 'piston')).toEqual(['standard', '0.50', 'standard']);
    expect(sizes('rings', 'piston')).toEqual(['standard', '0.50', 'standard']);
    expect(sizes('mains', 'main').every((size) => size === 'standard')).toBe(true);
  });

  it('is told in words where the engine type has one size for all', () => {
    const says = sizeCautionsOf(found.open).map((caution) => caution.says);
    expect(says).toEqual([
      expect.stringContaining(
        'cylinder bores in the block are to be of one size, and stand at two: bore.2 at 0.50',
      ),
    ]);
  });
});

describe('a piston that is stamped otherwise than its bore', () => {
  it('is judged by its own size, and the two are named as not going together', () => {
    const bench = bookOversize();
    bench.done({ kind: 'note size found', component: 'pistons', place: 'piston.3', size: '0.25' });
    // source: invented, the demonstration engine's sheet 3
    expect(limitsAt(bench, 'piston.3', 'piston-diameter').made).toEqual({ least: 85.165, greatest: 85.185 });
    expect(limitsAt(bench, 'bore.3', 'bore-diameter').made).toEqual({ least: 85, greatest: 85.022 });
    const says = sizeCautionsOf(bench.open).map((caution) => caution.says);
    expect(says).toEqual([
      expect.stringContaining(
        'pistons at piston.3 stand at 0.25, and cylinder bores in the block at bore.3 at standard',
      ),
    ]);
  });

  it('cannot go back with its bore', async () => {
    const bench = bookOversize();
    bench.done({ kind: 'note size found', component: 'pistons', place: 'piston.3', size: '0.25' });
    measureOversize(bench, ({ place, characteristic }) =>
      place === 'piston.3' && characteristic === 'piston-diameter' ? 0.25 : 0,
    );
    expect(limitsAt(bench, 'piston.3', 'piston-diameter').verdict).toBe('within');
    const plan = await planEngine(planQuestionOf(bench.open), await highsSolver());
    if (plan.kind !== 'plan') throw new Error(JSON.stringify(plan));
    const third = plan.choices.find(({ slot }) => slot === 'pistons@piston.3');
    expect(third).toMatchObject({ does: 'replace', size: 'standard' });
  });
});

describe('the overhaul of an engine with two sizes', () => {
  it('is planned, recorded and verified by the size of each place', async () => {
    const bench = knownOversize();
    const question = planQuestionOf(bench.open);
    const back = optionsOf(question).options.filter(({ does }) => does === 'put back');
    expect(back.find(({ slot }) => slot === 'bores')?.size).toBe('standard, bore.2 at 0.50');
    expect(back.find(({ slot }) => slot === 'pistons@piston.2')?.size).toBe('0.50');
    expect(back.find(({ slot }) => slot === 'pistons@piston.1')?.size).toBe('standard');
    const plan = await planEngine(question, await highsSolver());
    if (plan.kind !== 'plan') throw new Error(JSON.stringify(plan));
    bench.done(choosePlan(plan));
    expect(sizeAt(bench.open, 'bores', 'bore.2')).toEqual({ fitted: '0.50', planned: '0.50' });
    expect(sizeAt(bench.open, 'pistons', 'piston.1')).toEqual({ fitted: 'standard', planned: 'standard' });

    const record = recordOf(bench.open, bench.events);
    const told = JSON.stringify(record.sections);
    expect(told).toContain('cylinder bores in the block, cylinder bore 2: stands at size 0.50');
    expect(told).toContain('are to be of one size, and stand at two');
    expect(verifyRecord(fileOf(bench.open, bench.events))).toMatchObject({ kind: 'verified' });
    expect(verifyRecord(pageOf(bench.open, bench.events))).toMatchObject({ kind: 'verified' });
  });

  it('fits a loose piston by the size of its place, and refuses one of another', () => {
    const bench = knownOversize();
    const pistonFit = fittingOf(bench.open, 'pistons');
    if (pistonFit.kind === 'refused') throw new Error(pistonFit.refusal.what);
    expect(pistonFit.value.places.map(({ size }) => size)).toEqual(['standard', '0.50', 'standard']);
    const measure = (part: string, size: string, text: string) =>
      bench.done({
        kind: 'measure part',
        component: 'pistons',
        part,
        size,
        readings: [{ typed: { text, unit: 'mm' }, instrument: 'mic-75-100' }],
      });
    measure('A', 'standard', '84.925');
    measure('B', 'standard', '84.926');
    measure('C', '0.50', '85.425');
    const stocked = fittingOf(bench.open, 'pistons');
    if (stocked.kind === 'refused' || stocked.value.set.kind === 'refused') throw new Error('not reckoned');
    expect(stocked.value.places.map(({ proposed }) => proposed?.parts)).toEqual([
      [expect.stringMatching(/A|B/)],
      ['C'],
      [expect.stringMatching(/A|B/)],
    ]);
    expect(
      bench.refused({
        kind: 'assign parts',
        component: 'pistons',
        places: [{ place: 'piston.1', parts: ['C'] }],
      }),
    ).toContain('C is of size 0.50, and piston 1 takes one of standard');
  });
});

describe('parts that come for some places', () => {
  const received = (): Bench => {
    const bench = bookOversize();
    bench.done(foundOversize);
    const order = {
      kind: 'order placed',
      order: 'O-1',
      supplier: 'Tump Lane Engine Parts',
      lines: [
        {
          line: 'pistons:replace:1.00:Tump Lane Engine Parts',
          says: 'pistons: new, 1.00',
          does: 'replace',
          component: 'pistons',
          size: '1.00',
          places: ['piston.1'],
          count: 1,
          cents: 10_400,
        },
      ],
      charges: [],
      due: '2026-03-20',
      note: '',
    } as const;
    const came = {
      kind: 'delivery received',
      order: 'O-1',
      lines: [{ line: order.lines[0].line, count: 1 }],
      note: '',
    } as const;
    for (const fact of [order, came]) {
      const { head } = bench.open;
      const event = {
        ...(bench.events.at(-1) as JobEvent),
        sequence: head.sequence + 1,
        at: '2026-03-10T08:00:00Z',
        version: 1,
        fact,
      };
      bench.job = evolve(bench.job, event);
    }
    return bench;
  };

  it('are of the size ordered at those places alone, and what was found elsewhere stays', () => {
    const { open } = received();
    expect([1, 2, 3].map((number) => sizeAt(open, 'pistons', `piston.${number}`).fitted)).toEqual([
      '1.00',
      '0.50',
      'standard',
    ]);
    // Bores follow nothing: a piston that has come changes none.
    expect(sizeAt(open, 'bores', 'bore.1').fitted).toBe('standard');
  });

  it('are what a size noted later is of', () => {
    const bench = received();
    bench.done({ kind: 'note size found', component: 'pistons', place: 'piston.1', size: '0.25' });
    expect(sizeAt(bench.open, 'pistons', 'piston.1').fitted).toBe('0.25');
    expect(sizeAt(bench.open, 'pistons', 'piston.2').fitted).toBe('0.50');
  });
});

describe('a size noted of all places', () => {
  it('takes the place of what was noted of one before', () => {
    const bench = bookOversize();
    bench.done(foundOversize);
    bench.done({ kind: 'note size found', component: 'bores', size: '0.25' });
    expect([1, 2, 3].map((number) => sizeAt(bench.open, 'pistons', `piston.${number}`).fitted)).toEqual([
      '0.25',
      '0.25',
      '0.25',
    ]);
    bench.done({ kind: 'note size found', component: 'bores', place: 'bore.3', size: 'standard' });
    expect(sizeAt(bench.open, 'rings', 'piston.3').fitted).toBe('standard');
    expect(
      bench.refused({ kind: 'note size found', component: 'bores', place: 'bore.7', size: '0.25' }),
    ).toContain('bore.7');
  });
});

describe('machining of a group of two sizes', () => {
  it('is closed to the size at which one stands, and the machine shop is told where each stands', async () => {
    const question = planQuestionOf(found.open);
    const { options, barred } = optionsOf(question);
    expect(barred.filter(({ slot }) => slot === 'bores').map(({ says }) => says)).toEqual(
      expect.arrayContaining([
        'machine to 0.25: bore.2 stands at 0.50 already',
        'machine to 0.50: bore.2 stands at 0.50 already',
      ]),
    );
    const to100 = options.find(
      ({ slot, does, size }) => slot === 'bores' && does === 'machine' && size === '1.00',
    );
    expect(to100?.reason).toContain('cleans up');
    const plan = await planEngine(
      planQuestionOf(found.open, { fixed: { bores: to100?.id ?? '' } }),
      await highsSolver(),
    );
    if (plan.kind !== 'plan') throw new Error(JSON.stringify(plan));
    const { choices, cents, days, hours } = choosePlan(plan);
    const open = {
      ...found.open,
      plan: { choices, cents, days, hours, ordersBefore: 0, by: 'Ilse Quarrow', at: '2026-03-03T08:00:00Z' },
    };
    expect(sizeAt(open, 'pistons', 'piston.2')).toEqual({ fitted: '0.50', planned: '1.00' });
    // Brought to one size, they go together again.
    expect(sizeCautionsOf(open)).toEqual([]);
    const places = machineShopSheetsOf(open)[0]?.parts[0]?.places.map(({ title }) => title);
    expect(places).toEqual(['cylinder bore 1', 'cylinder bore 2, stands at 0.50', 'cylinder bore 3']);
  });
});

describe('what a former overhaul left', () => {
  it('is told with the sizes of each place, and they hold in the next job until others are noted', () => {
    const former = leftBy({
      ...found.open,
      handedOver: { to: 'Long Withy Growers', note: '', by: 'Ilse Quarrow', at: '2025-03-02T08:00:00Z' },
    });
    if (!former) throw new Error('nothing was left');
    expect(former.sizes).toContainEqual({ component: 'bores', place: 'bore.2', size: '0.50' });
    expect(former.sizes?.every(({ size }) => size !== 'standard')).toBe(true);
    const next = bookOversize();
    next.done({ kind: 'bring former overhaul', ...former, number: '24-017', on: '2025-03-02', cells: [] });
    expect(limitsAt(next, 'piston.2', 'piston-diameter').made).toEqual({ least: 85.415, greatest: 85.435 });
    next.done({ kind: 'note size found', component: 'bores', place: 'bore.2', size: '1.00' });
    expect(limitsAt(next, 'bore.2', 'bore-diameter').made).toEqual({ least: 86, greatest: 86.022 });
    expect(limitsAt(next, 'piston.2', 'piston-diameter').made).toEqual({ least: 85.915, greatest: 85.935 });
    expect(
      next.refused({
        kind: 'bring former overhaul',
        ...former,
        number: '24-017',
        on: '2025-03-02',
        sizes: [{ component: 'bores', place: 'bore.9', size: '0.50' }],
      }),
    ).toContain('bore.9');
  });
});
