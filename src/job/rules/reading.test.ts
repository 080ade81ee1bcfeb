/** @module Which readings are taken, struck out and doubted. */
import { describe, expect, it } from 'vitest';
import { Bench, bookedIn, booking, measured, mm } from '../../../test/job/bench.ts';
import { openDoubts } from '../hold/proof.ts';

const readingAt = (place: string, characteristic: string, plane = '', axis = 'vertical') =>
  ({
    kind: 'take reading',
    cell: { place, characteristic, plane, axis },
    typed: mm('49.980'),
    instrument: 'mic-25-50',
  }) as const;

describe('a reading', () => {
  it('is kept as typed, with who took it', () => {
    const bench = bookedIn();
    const { id } = bench.read('main.1', '49,980', 'vertical');
    const [reading] = [...bench.open.sheet.readings.values()].flat();
    expect(reading).toMatchObject({ id, typed: { text: '49,980', unit: 'mm' } });
    expect(bench.open.takenBy.get(id)?.by).toBe('Ilse Quarrow');
  });

  it('of the same cell again stands beside the first, the last one counting', () => {
    const bench = bookedIn();
    bench.read('main.1', '49.480', 'vertical');
    const second = bench.read('main.1', '49.980', 'vertical');
    const [readings] = [...bench.open.sheet.readings.values()];
    expect(readings).toHaveLength(2);
    expect(readings?.at(-1)?.id).toBe(second.id);
  });

  it('at a place that is not there is refused with places that are', () => {
    expect(bookedIn().refused(readingAt('main.9', 'main-journal-diameter'))).toMatch(
      /no place “main.9”.*main\.1/,
    );
  });

  it('of an unknown, a derived or a misplaced characteristic is refused with what is measured there', () => {
    const bench = bookedIn();
    expect(bench.refused(readingAt('main.1', 'main-diameter'))).toContain('main-journal-diameter');
    expect(bench.refused(readingAt('main.1', 'main-journal-ovality'))).toContain(
      'computed from other readings',
    );
    expect(bench.refused(readingAt('pump.1', 'main-journal-diameter'))).toContain('pump-depth');
  });

  it('outside the scheme is refused with the planes and axes that are in it', () => {
    const bench = bookedIn();
    expect(bench.refused(readingAt('main.1', 'main-journal-diameter', '', 'slanting'))).toContain(
      'choose vertical or horizontal',
    );
    expect(bench.refused(readingAt('main.1', 'main-journal-diameter', '', ''))).toContain(
      'the axis is missing',
    );
    expect(bench.refused(readingAt('main.1', 'main-journal-diameter', 'front'))).toContain(
      'leave the plane out',
    );
  });

  it('that is no number, or no length, is refused where it stands', () => {
    const bench = bookedIn();
    const at = readingAt('main.2', 'main-journal-diameter');
    const where = /^main bearing 2, main journal diameter, vertical/;
    expect(bench.refused({ ...at, typed: mm('49.9.8') })).toMatch(where);
    expect(bench.refused({ ...at, typed: { text: '49.98', unit: 'bar' } })).toMatch(where);
    expect(bench.refused({ ...at, temperature: { text: '20', unit: 'mm' } })).toMatch(where);
  });

  it('with an instrument that was not brought is refused', () => {
    const at = { ...readingAt('main.1', 'main-journal-diameter'), instrument: 'mic-25-5' };
    expect(bookedIn().refused(at)).toMatch(/not been brought.*mic-25-50/);
    const bench = new Bench();
    bench.done(booking);
    expect(bench.refused(at)).toContain('bring the instrument first');
  });

  it('that looks impossible is taken: outside the range of its instrument, inches among millimetres', () => {
    const bench = bookedIn();
    bench.read('main.1', '499.8', 'vertical');
    bench.done({ ...readingAt('main.1', 'main-journal-diameter'), typed: { text: '1.9677', unit: 'in' } });
    expect(bench.open.takenBy.size).toBe(2);
  });

  it('struck out counts no more, but is kept with the reason', () => {
    const bench = bookedIn();
    const { id } = bench.read('main.1', '49.480', 'vertical');
    expect(bench.refused({ kind: 'strike out reading', reading: id, why: '' })).toContain('write why');
    bench.done({ kind: 'strike out reading', reading: id, why: 'thimble one turn off' });
    expect(bench.open.sheet.readings.size).toBe(0);
    expect(bench.open.struckOut).toMatchObject([{ reading: { id }, why: 'thimble one turn off' }]);
    expect(bench.refused({ kind: 'strike out reading', reading: id, why: 'again' })).toContain('already');
    expect(bench.refused({ kind: 'strike out reading', reading: 'none', why: 'x' })).toContain(
      'no reading none',
    );
  });
});

describe('a doubt', () => {
  it('can be answered while it stands, with a reason', () => {
    const bench = measured();
    bench.read('main.1', '49.475', 'vertical');
    const [doubt] = openDoubts(bench.open);
    expect(doubt?.readings).toEqual([bench.events.at(-1)?.id]);
    const id = doubt?.id ?? '';
    expect(bench.refused({ kind: 'answer doubt', doubt: id, why: ' ' })).toContain('why the reading stands');
    expect(bench.refused({ kind: 'answer doubt', doubt: `${id}x`, why: 'x' })).toContain('no such doubt');
    bench.done({ kind: 'answer doubt', doubt: id, why: 'measured twice' });
    expect(openDoubts(bench.open)).toEqual([]);
  });
});
