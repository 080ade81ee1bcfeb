/** @module Stages noted bolt by bolt: in their order, with the threads as the figure asks, new bolts where they stretch, a wrench that can. */
import { describe, expect, it } from 'vitest';
import { mm } from '../../../test/job/bench.ts';
import { jointedEngine, lay, pulled, readyToTighten, tightenAll } from '../../../test/job/tightening.ts';
import { tighteningsOf } from '../tighten/tightening.ts';

const rod = { fastener: 'rod-bolts', bolts: ['1', '2'], threadState: 'dry' } as const;

describe('a stage of tightening', () => {
  it('is taken bolt by bolt in the order reckoned from the holes, whole or in part', () => {
    const bench = readyToTighten();
    bench.done(pulled({ bolts: ['1'] }));
    expect(bench.refused(pulled({ bolts: ['2', '4', '3'] }))).toMatch(/bolt 4 is next, not bolt 2/);
    expect(bench.refused(pulled({ bolts: ['1'] }))).toMatch(
      /bolt 1 is pulled at this stage already.*bolt 4 is next/,
    );
    bench.done(pulled({ bolts: ['4', '2', '3'] }));
    const operation = bench.open.sheet.engine.operations.get(lay);
    const [joint] = operation ? tighteningsOf(bench.open, operation) : [];
    expect(joint?.stages[0]).toMatchObject({ done: ['1', '4', '2', '3'], left: [] });
    expect(joint?.next).toEqual({ stage: 1, bolt: '1' });
  });

  it('comes after the stage before it, at the same place', () => {
    const bench = readyToTighten();
    bench.done(pulled({ bolts: ['1', '4', '2'] }));
    expect(bench.refused(pulled({ stage: 1 }))).toMatch(
      /stage 1 of 2, 20 N·m, comes before this one and is not done.*bolt 3 is next/,
    );
    expect(bench.refused(pulled({ stage: 2 }))).toMatch(/there is no stage 3.*20 N·m, 45 N·m/);
    bench.done(pulled({ place: 'main.2' }));
    bench.done(pulled({ place: 'main.2', stage: 1 }));
  });

  it('holds for one state of the threads, and is never converted to another', () => {
    const bench = readyToTighten();
    expect(bench.refused(pulled({ threadState: 'dry' }))).toMatch(
      /holds for threads oiled, and these are dry; no sum converts it.*make|put the threads right/,
    );
    expect(bench.refused(pulled({ threadState: 'compound' }))).toMatch(/clean the threads, make them oiled/);
  });

  it('is taken in another order only where a named person answers for it', () => {
    const bench = readyToTighten();
    const bolts = ['3', '2', '4', '1'];
    expect(bench.refused(pulled({ bolts, overruled: { by: ' ', why: 'a long tale' } }))).toMatch(
      /give the name/,
    );
    expect(bench.refused(pulled({ overruled: { by: 'Wat Dunmow', why: 'so' } }))).toMatch(
      /nothing is overruled/,
    );
    bench.done(pulled({ bolts, overruled: { by: 'Wat Dunmow', why: 'bolt 1 is reached last' } }));
    expect(bench.refused(pulled({ stage: 1, bolts }))).toMatch(/bolt 1 is next, not bolt 3/);
  });

  it('names joints, places and bolts that are not there', () => {
    const bench = readyToTighten();
    expect(bench.refused(pulled({ operation: 'lay-crank' }))).toMatch(/has no operation/);
    expect(bench.refused(pulled({ fastener: 'cap-bolt' }))).toMatch(/does not tighten “cap-bolt”.*cap-bolts/);
    expect(bench.refused(pulled({ place: 'pump.1' }))).toMatch(/none sit at “pump.1”/);
    expect(bench.refused(pulled({ bolts: ['9'] }))).toMatch(/there is no bolt 9/);
    expect(bench.refused(pulled({ bolts: ['1', '1'] }))).toMatch(/bolt 1 is pulled at this stage already/);
  });

  it('is noted at an operation that is not signed; opened again it is pulled anew', () => {
    const bench = readyToTighten();
    tightenAll(bench, lay);
    bench.done({ kind: 'do operation', operation: lay, note: '' });
    expect(bench.refused(pulled())).toMatch(/it was signed by Ilse Quarrow/);
    bench.done({ kind: 'reopen operation', operation: lay, why: 'cap 2 off again: shell pinched' });
    expect(bench.open.tightened.size).toBe(0);
    bench.done(pulled());
  });
});

describe('bolts that stretch for good', () => {
  it('are said to be new before they are pulled, and used ones are refused', () => {
    const bench = readyToTighten();
    expect(bench.refused(pulled(rod))).toMatch(/nobody says whether these are new.*fit new ones/);
    expect(bench.refused(pulled({ ...rod, boltsAre: 'used' }))).toMatch(/these are used.*fit new ones/);
    bench.done(pulled({ ...rod, bolts: ['1'], boltsAre: 'new' }));
    bench.done(pulled({ ...rod, bolts: ['2'] }));
    bench.done(pulled({ ...rod, stage: 1 }));
    expect(bench.refused(pulled({ ...rod, stage: 1, bolts: ['2'] }))).toMatch(
      /bolt 2 is pulled at this stage already.*the angle counts once/,
    );
  });

  it('go in again up to a length where the maker lets them', () => {
    const bench = readyToTighten(jointedEngine.replace('stretch: once', 'stretch: { longest: 58.5 mm }'));
    const used = { ...rod, boltsAre: 'used' } as const;
    expect(bench.refused(pulled(used))).toMatch(
      /measure all, and give the longest: it may be 58.5 mm at most/,
    );
    expect(bench.refused(pulled({ ...used, longest: mm('58.52') }))).toMatch(
      /58.52 mm, has stretched beyond 58.5 mm/,
    );
    bench.done(pulled({ ...used, longest: mm('58.50') }));
  });

  it('are not asked about where they do not stretch', () => {
    expect(readyToTighten().refused(pulled({ boltsAre: 'new' }))).toMatch(/nobody asks/);
  });

  it('are not new as long as the new ones are on order', () => {
    const bench = readyToTighten(
      jointedEngine.replace(
        "price: '3.00', days: 2",
        "price: '3.00', days: 2, disturbed-by: [lift-crankshaft]",
      ),
    );
    const order = {
      kind: 'place order',
      order: 'O-9',
      supplier: 'Ashlar Parts',
      lines: [
        {
          line: 'one-use:rod-bolts-new',
          says: 'rod bolts',
          places: ['main.1', 'main.2'],
          count: 4,
          cents: 1200,
        },
      ],
      charges: [],
      due: '2026-03-09',
      note: '',
    } as const;
    bench.done(order);
    expect(bench.refused(pulled({ ...rod, boltsAre: 'new' }))).toMatch(/still awaited: order O-9/);
    bench.done({
      kind: 'receive delivery',
      order: 'O-9',
      lines: [{ line: 'one-use:rod-bolts-new', count: 4 }],
      note: '',
    });
    bench.done(pulled({ ...rod, boltsAre: 'new' }));
  });
});

describe('the torque wrench', () => {
  it('is one that was brought, and whose range holds the figure', () => {
    const bench = readyToTighten();
    expect(bench.refused(pulled({ wrench: 'wrench-9' }))).toMatch(/has not been brought.*wrench-40-200/);
    expect(bench.refused(pulled({ wrench: 'mic-25-50' }))).toMatch(/is no torque wrench/);
    expect(bench.refused(pulled({ wrench: 'wrench-40-200' }))).toMatch(
      /goes from 40 N·m to 200 N·m, and is to be set to 20.0 N·m/,
    );
    bench.done(pulled());
    bench.done(pulled({ stage: 1, wrench: 'wrench-40-200' }));
  });

  it('is set to less where an adapter makes it longer, and that too is in its range', () => {
    const bench = readyToTighten();
    bench.done(pulled());
    const long = { wrench: mm('400'), adapter: mm('60') };
    const straight = pulled({ stage: 1, wrench: 'wrench-40-200', adapter: long });
    // source: lever arms, 45 · 400 / 460 = 39.1
    expect(bench.refused(straight)).toMatch(/is to be set to 39.1 N·m/);
    const square = { ...long, angle: { text: '90', unit: 'deg' } };
    expect(bench.refused(pulled({ stage: 1, adapter: { ...long, adapter: mm('800') } }))).toMatch(
      /as long as the wrench/,
    );
    bench.done({ ...straight, adapter: square });
    expect(
      bench.refused(pulled({ ...rod, boltsAre: 'new', adapter: { ...long, wrench: mm('-1') } })),
    ).toMatch(/not above 0/);
  });
});

describe('tightening again', () => {
  it('waits for what makes it due, and pulls the last torque only', () => {
    const bench = readyToTighten();
    const again = pulled({ operation: 'look-again' });
    expect(bench.refused(again)).toMatch(/only after “First start”/);
    const operation = bench.open.sheet.engine.operations.get('look-again');
    const [joint] = operation ? tighteningsOf(bench.open, operation) : [];
    expect(joint?.stages.map(({ stage }) => stage.printed.text)).toEqual(['45']);
  });
});
