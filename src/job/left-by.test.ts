/** @module What a job leaves behind for the next overhaul of the same engine, and how that one goes by it. */
import { describe, expect, it } from 'vitest';
import { agreed, Bench, bookedIn, booking, depthGauge, micrometer, mm } from '../../test/job/bench.ts';
import { doubtsOf } from '../measure/doubts.ts';
import { formerWords, wearSince } from '../measure/former.ts';
import { recordOf } from '../record/record.ts';
import type { OpenJob } from './job.ts';
import { leftBy, sameEngine } from './left-by.ts';

const cell = (place: string, axis: string) => ({
  place,
  characteristic: 'main-journal-diameter',
  plane: '',
  axis,
});

/** Handed over, its journals put back as they were and its shells renewed. */
const gone = (): OpenJob => ({
  ...agreed().open,
  handedOver: { to: 'Heronsway Allotments', note: '', by: 'Ilse Quarrow', at: '2026-03-02T10:00:00Z' },
});

const former = (size: string, place = 'main.1', axis = 'vertical') => ({
  number: '21-004',
  on: '2021-05-03',
  hoursRun: { text: '1200', unit: 'h' },
  cells: [{ cell: cell(place, axis), anew: false, size: mm(size), expanded: mm('0.004') }],
});

describe('an engine that goes', () => {
  it('leaves the sizes that it goes with, and none before it has gone', () => {
    expect(leftBy(agreed().open)).toBeUndefined();
    const left = leftBy(gone());
    expect(left).toMatchObject({ number: booking.number, on: '2026-03-02', hoursRun: booking.hoursRun });
    const journals = left?.cells.filter((one) => one.cell.characteristic === 'main-journal-diameter');
    expect(journals).toHaveLength(4);
    for (const one of journals ?? []) {
      expect(one.anew).toBe(false);
      expect(Number(one.size?.text)).toBeCloseTo(49.975, 3);
    }
  });

  it('is known again by its type and plate, however the plate is written', () => {
    const line = {
      job: 'a',
      number: '21-004',
      engine: 'Sparrowbill 2',
      owner: '',
      plate: 'sb2 118',
      phase: 'Hand over',
      readings: 3,
      sequence: 9,
      changed: '2021-05-03T10:00:00Z',
    };
    const later = { ...line, job: 'b', changed: '2023-05-03T10:00:00Z' };
    const ask = (engine: string, plate: string) =>
      sameEngine([line, later], { engine, plate }).map(({ job }) => job);
    expect(ask('Sparrowbill 2', 'SB2-118')).toEqual(['b', 'a']);
    expect(ask('Sparrowbill 2', 'SB2-119')).toEqual([]);
    expect(ask('Sparrowbill 3', 'SB2-118')).toEqual([]);
    expect(sameEngine([{ ...line, plate: '' }], { engine: 'Sparrowbill 2', plate: '' })).toEqual([]);
  });
});

describe('a former overhaul in a job', () => {
  it('tells what a cell has worn since, and by the thousand hours', () => {
    const bench = bookedIn();
    bench.done({ kind: 'bring former overhaul', ...former('49.990') });
    bench.read('main.1', '49.975', 'vertical');
    const { sheet } = bench.open;
    const since = wearSince(sheet, cell('main.1', 'vertical'), 49.975);
    expect(since?.wear).toBeCloseTo(0.015, 9);
    // 15 µm in 4200 - 1200 hours.
    expect(since?.perThousand).toBeCloseTo(0.005, 9);
    expect(wearSince(sheet, cell('main.2', 'vertical'), 49.975)).toBeUndefined();
    const section = recordOf(bench.open, bench.events).sections.find(
      ({ name }) => name === 'former overhaul',
    );
    expect(section?.says).toEqual([`As it was left by ${formerWords(former('49.990'))}.`]);
    expect(section?.table?.rows[0]?.cells.slice(3)).toEqual(['49.990', '49.975', '0.015 mm', '0.005 mm']);
  });

  it('gives no rate where the counter was changed between', () => {
    const bench = bookedIn();
    bench.done({ kind: 'bring former overhaul', ...former('49.990'), hoursRun: { text: '9000', unit: 'h' } });
    expect(wearSince(bench.open.sheet, cell('main.1', 'vertical'), 49.975)).not.toHaveProperty('perThousand');
  });

  it('makes a figure doubted that a worn part cannot have grown back to', () => {
    const read = (bench: Bench) => {
      bench.read('main.1', '49.881', 'horizontal');
      bench.read('main.1', '49.979', 'vertical');
      return doubtsOf(bench.open.sheet).map(({ slip, likely: [first] }) => `${slip}: ${first?.text}`);
    };
    const cells = ['vertical', 'horizontal'].flatMap((axis) => former('49.890', 'main.1', axis).cells);
    const bench = bookedIn();
    bench.done({ kind: 'bring former overhaul', ...former('49.890'), cells });
    expect(read(bench)).toContain('misread number: 49.879');
    // Without it, the journal may as well have worn on one side alone.
    expect(read(bookedIn())).not.toContain('misread number: 49.879');
  });

  it.each([
    [{ number: ' ' }, /nothing is written/],
    [{ number: booking.number }, /is this job itself/],
    [{ on: '2027-01-01' }, /after this job was booked in/],
    [{ hoursRun: mm('12') }, /former overhaul, hours run/],
    [{ cells: former('49.9', 'main.9').cells }, /no place “main.9”/],
    [{ cells: [...former('49.9').cells, ...former('49.8').cells] }, /given twice/],
    [{ cells: former('much').cells }, /former overhaul, main bearing 1/],
  ])('is refused where it makes no sense: %j', (wrong, told) => {
    const bench = bookedIn();
    expect(bench.refused({ kind: 'bring former overhaul', ...former('49.990'), ...wrong })).toMatch(told);
    expect(bench.open.sheet.former).toBeUndefined();
  });

  it('says nothing of a part that was machined since, as was noted', () => {
    const bench = new Bench();
    bench.done(booking);
    for (const instrument of [micrometer, depthGauge]) bench.done({ kind: 'bring instrument', instrument });
    bench.done({ kind: 'bring former overhaul', ...former('49.990') });
    bench.done({ kind: 'note size found', component: 'mains', size: '0.25' });
    bench.read('main.1', '49.730', 'vertical');
    bench.read('main.1', '49.731', 'horizontal');
    expect(doubtsOf(bench.open.sheet)).toEqual([]);
  });
});
