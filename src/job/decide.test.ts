import { describe, expect, it } from 'vitest';
import {
  agreed,
  Bench,
  bookedIn,
  booking,
  depthGauge,
  measured,
  micrometer,
  mm,
  plan,
} from '../../test/job/bench.ts';
import { checkChain } from './chain.ts';
import { decide } from './decide.ts';
import { blankJob, replay } from './evolve.ts';
import { openDoubts } from './holds.ts';

const readingAt = (place: string, characteristic: string, plane = '', axis = 'vertical') =>
  ({
    kind: 'take reading',
    cell: { place, characteristic, plane, axis },
    typed: mm('49.980'),
    instrument: 'mic-25-50',
  }) as const;

describe('booking in', () => {
  it('opens a job with its engine type whole', () => {
    const bench = new Bench();
    const event = bench.done(booking);
    expect(event).toMatchObject({ sequence: 1, version: 1, before: '0'.repeat(64), actor: 'Ilse Quarrow' });
    expect(bench.open.sheet.engine.title).toBe('Sparrowbill 2 generator engine');
  });

  it('comes first: nothing else can be asked of a job that is not there', () => {
    expect(new Bench().refused(readingAt('main.1', 'main-journal-diameter'))).toContain(
      'book the engine in first',
    );
  });

  it('is done once', () => {
    expect(bookedIn().refused(booking)).toContain('booked in already, as 26-031');
  });

  it.each([
    ['a number', { number: ' ' }, 'job number'],
    ['an owner', { owner: '' }, 'owner'],
    ['a currency', { currency: '' }, 'currency'],
    ['hours that can be read', { hoursRun: { text: 'many', unit: 'h' } }, 'hours run'],
    ['hours in a unit of time', { hoursRun: { text: '4200', unit: 'mm' } }, 'hours run'],
    ['hours wanted above none', { hoursWanted: { text: '0', unit: 'h' } }, 'hours wanted'],
    ['days that are not less than none', { daysWanted: -1 }, 'days wanted'],
    ['a rule that can be kept', { conformance: 1 }, 'probability of conformance'],
  ])('needs %s', (_, wrong, where) => {
    expect(new Bench().refused({ ...booking, ...wrong })).toMatch(new RegExp(`^${where} \\|`));
  });

  it('names the first error of an engine type, and the line', () => {
    const broken = booking.engineType.replace('cylinders: 2', 'cylinders: two');
    expect(new Bench().refused({ ...booking, engineType: broken })).toMatch(/^engine type, line 7 \|/);
  });

  it('needs to know who does it', () => {
    const command = {
      id: 'a',
      job: 'job-1',
      at: '2026-03-02T08:00:00Z',
      actor: ' ',
      bench: '',
      request: booking,
    };
    expect(decideOn(command)).toContain('say who you are');
  });
});

const decideOn = (command: Parameters<typeof decide>[1]): string => {
  const answer = decide(blankJob, command);
  return answer.kind === 'refused' ? answer.refusal.remedy : 'accepted';
};

describe('an instrument', () => {
  it.each([
    ['whose range ends before it begins', { range: { least: mm('50'), greatest: mm('25') } }, 'range'],
    ['without a resolution', { resolution: mm('0') }, 'resolution'],
    ['whose resolution is a torque', { resolution: { text: '1', unit: 'N·m' } }, 'resolution'],
    ['with an error less than none', { permissibleError: mm('-0.001') }, 'permissible error'],
  ])('%s is refused', (_, wrong, where) => {
    expect(bookedIn().refused({ kind: 'bring instrument', instrument: { ...micrometer, ...wrong } })).toMatch(
      new RegExp(`^mic-25-50, ${where} \\|`),
    );
  });

  it('brought again with its zero checked takes the place of the one before', () => {
    const bench = bookedIn();
    bench.done({ kind: 'bring instrument', instrument: { ...micrometer, zero: mm('0.003') } });
    expect(bench.open.sheet.instruments.get('mic-25-50')?.zero).toEqual(mm('0.003'));
    expect(bench.open.sheet.instruments.size).toBe(2);
  });
});

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

describe('a finding or a size found', () => {
  it('names a component, a place of it and a size that are there', () => {
    const bench = bookedIn();
    const finding = {
      kind: 'note finding',
      component: 'mains',
      place: 'main.2',
      finding: 'scored',
      mayGoBack: false,
      says: 'a groove 0.1 deep all round',
    } as const;
    expect(bench.refused({ ...finding, component: 'main' })).toContain('mains');
    expect(bench.refused({ ...finding, place: 'pump.1' })).toMatch(/main\.1/);
    expect(bench.refused({ ...finding, says: '' })).toContain('write what you saw');
    bench.done(finding);
    bench.done({ ...finding, finding: 'sound', says: '' });
    expect(bench.open.findings).toHaveLength(2);
    expect(bench.refused({ kind: 'note size found', component: 'mains', size: '0.5' })).toContain(
      'standard or 0.25',
    );
    bench.done({ kind: 'note size found', component: 'mains', size: '0.25' });
    expect(bench.open.sheet.sizesFound.get('mains')).toBe('0.25');
  });
});

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

describe('a shim pack', () => {
  const shims = (...rows: readonly (readonly [string, number])[]) =>
    ({ kind: 'count shims', shims: rows.map(([text, count]) => ({ thickness: mm(text), count })) }) as const;
  const pack = (place: string, ...texts: readonly string[]) =>
    ({ kind: 'fit pack', place, shims: texts.map(mm) }) as const;

  it('is made of shims that are in the box, those in other pumps not counted', () => {
    const bench = agreed();
    bench.done(shims(['0.50', 2], ['0.10', 1]));
    bench.done(pack('pump.1', '0.50', '0.10'));
    expect(bench.refused(pack('pump.2', '0.50', '0.10'))).toContain('does not hold 0.10 mm');
    bench.done(pack('pump.2', '0.5'));
    expect(bench.refused(pack('pump.2', '0.50', '0.50'))).toContain('does not hold 0.50 mm');
  });

  it('taken out of its pump goes back into the box, also when the box was counted while it was fitted', () => {
    const bench = agreed();
    bench.done(shims(['0.50', 1], ['0.30', 1]));
    bench.done(pack('pump.1', '0.50'));
    bench.done(shims(['0.30', 1]));
    expect(bench.refused(pack('pump.2', '0.50'))).toContain('does not hold');
    bench.done(pack('pump.1', '0.30'));
    bench.done(pack('pump.2', '0.50'));
    expect([...bench.open.packs.keys()]).toEqual(['pump.1', 'pump.2']);
  });

  it('is refused under no pump, with too many shims, or outside what the pump is made for', () => {
    const bench = agreed();
    bench.done(shims(['0.50', 4], ['0.10', 4]));
    expect(bench.refused(pack('main.1', '0.50'))).toContain('pump.1');
    expect(bench.refused(pack('pump.1', '0.10', '0.10', '0.10', '0.10'))).toContain('3 at most');
    expect(bench.refused(pack('pump.1', '0.50', '0.50', '0.50'))).toContain('1.5 mm is outside');
    expect(bench.refused(pack('pump.1', '0.10'))).toContain('from 0.2 mm to 1.2 mm');
    expect(
      bench.refused({ kind: 'fit pack', place: 'pump.1', shims: [{ text: '0.5', unit: 'N' }] }),
    ).toContain('shim pack, fuel pump 1');
  });

  it('is counted by thickness, each once', () => {
    expect(agreed().refused(shims(['0.50', 2], ['0.5', 1]))).toContain('counted twice');
    expect(agreed().refused(shims(['0', 2]))).toContain('not above 0');
  });
});

describe('an operation', () => {
  const operation = (name: string) => ({ kind: 'do operation', operation: name, note: '' }) as const;

  it('that is not there is refused with one that is', () => {
    expect(bookedIn().refused(operation('lift-crank'))).toContain('lift-crankshaft');
  });

  it('of the build waits for the plan, the agreement and what comes before it', () => {
    const bench = measured();
    expect(bench.refused(operation('lay-crankshaft'))).toMatch(
      /no plan is chosen; “Lift the crankshaft” is not done/,
    );
    bench.done(plan);
    expect(bench.refused(operation('lay-crankshaft'))).toContain('the owner has not agreed');
    bench.done({ kind: 'note agreement', name: 'W. Heron', how: 'by letter' });
    bench.done(operation('lift-crankshaft'));
    bench.done(operation('lay-crankshaft'));
    expect(bench.refused(operation('lay-crankshaft'))).toContain('signed by Ilse Quarrow');
  });

  it('at a hold point is held back by what is not read, outside or unsure, and says which', () => {
    const bench = agreed();
    bench.done(operation('lift-crankshaft'));
    const { id } = bench.read('main.2', '49.900', 'horizontal');
    expect(bench.refused(operation('lay-crankshaft'))).toContain(
      'main journal diameter at main bearing 2 is outside its limits',
    );
    bench.read('main.2', '49.940', 'horizontal');
    expect(bench.refused(operation('lay-crankshaft'))).toContain('too near its limit');
    bench.done({ kind: 'strike out reading', reading: id, why: 'dirt' });
    for (const [place, taken] of bench.open.sheet.readings)
      for (const one of taken)
        if (place.startsWith('main.2|'))
          bench.done({ kind: 'strike out reading', reading: one.id, why: 'to be read again' });
    expect(bench.refused(operation('lay-crankshaft'))).toMatch(
      /main journal diameter at main bearing 2 is not yet known.*read main bearing 2, main journal diameter, vertical/,
    );
  });

  it('at a hold point waits until a doubt about its proof is answered', () => {
    const bench = agreed();
    bench.done(operation('lift-crankshaft'));
    bench.done(operation('lay-crankshaft'));
    bench.read('pump.1', '59.40');
    // The manual gives no limits for the depth, so that nothing but a doubt speaks against a slipped decimal.
    bench.read('pump.2', '5.941');
    expect(bench.refused(operation('fit-pumps'))).toContain('a reading is in doubt');
    const doubts = openDoubts(bench.open);
    for (const { id } of doubts)
      bench.done({ kind: 'answer doubt', doubt: id, why: 'pump 2 is another make' });
    bench.done(operation('fit-pumps'));
  });
});

describe('running and handing over', () => {
  const step = {
    kind: 'log run step',
    speed: { text: '1500', unit: 'rpm' },
    load: { text: '50', unit: '%' },
    minutes: 20,
    note: '',
  } as const;
  const handOver = { kind: 'hand over', to: 'W. Heron', note: '' } as const;
  const operation = (name: string) => ({ kind: 'do operation', operation: name, note: '' }) as const;

  const ready = (pump2: string): Bench => {
    const bench = agreed();
    bench.done(operation('lift-crankshaft'));
    bench.done(operation('lay-crankshaft'));
    bench.read('pump.1', '59.40');
    bench.read('pump.2', pump2);
    bench.done({ kind: 'count shims', shims: [{ thickness: mm('0.30'), count: 4 }] });
    bench.done(operation('fit-pumps'));
    return bench;
  };

  it('carries the job to its end, after which nothing can be added', () => {
    const bench = ready('59.42');
    expect(bench.refused(handOver)).toMatch(
      /“First start” is not done; no shim pack is fitted under fuel pump 1/,
    );
    bench.done({ kind: 'fit pack', place: 'pump.1', shims: [mm('0.30'), mm('0.30')] });
    bench.done({ kind: 'fit pack', place: 'pump.2', shims: [mm('0.30'), mm('0.30')] });
    bench.done(operation('first-start'));
    bench.done(step);
    expect(bench.refused({ ...handOver, to: '' })).toContain('to whom');
    bench.done(handOver);
    expect(bench.refused(step)).toContain('handed over to W. Heron');
    expect(bench.refused(handOver)).toContain('handed over to W. Heron');
    expect(checkChain(bench.events).kind).toBe('answer');
    expect(replay(bench.events)).toEqual(bench.job);
  });

  it('hands no engine over with a pack further off than the manual lets it be', () => {
    const bench = ready('59.46');
    for (const place of ['pump.1', 'pump.2'])
      bench.done({ kind: 'fit pack', place, shims: [mm('0.30'), mm('0.30')] });
    bench.done(operation('first-start'));
    expect(bench.refused(handOver)).toContain('the shim pack under fuel pump 2 is further off');
  });

  it('logs no run of an engine that is not built, and no step that makes no sense', () => {
    expect(agreed().refused(step)).toContain('Lay the crankshaft');
    const bench = ready('59.40');
    expect(bench.refused({ ...step, speed: { text: 'fast', unit: 'rpm' } })).toContain('run step, speed');
    expect(bench.refused({ ...step, load: { text: '50', unit: 'mm' } })).toContain('run step, load');
    expect(bench.refused({ ...step, minutes: 0 })).toContain('minutes');
    expect(bench.refused({ ...step, oilPressure: { text: '3', unit: '°C' } })).toContain('oil pressure');
    bench.done({ ...step, load: { text: '60', unit: 'N·m' }, oilPressure: { text: '3.2', unit: 'bar' } });
  });
});

describe('a command sent again', () => {
  it('right away is answered with the event that it became', () => {
    const bench = bookedIn();
    const asked = readingAt('main.1', 'main-journal-diameter');
    const first = bench.ask(asked, 'once');
    expect(bench.ask(asked, 'once')).toEqual(first);
    expect(bench.events).toHaveLength(4);
  });

  it('to another job is refused', () => {
    const { job } = bookedIn();
    const answer = decide(job, {
      id: 'a',
      job: 'job-2',
      at: '2026-03-02T08:00:00Z',
      actor: 'Ilse Quarrow',
      bench: 'bench 2',
      request: { kind: 'bring instrument', instrument: depthGauge },
    });
    expect(answer).toMatchObject({ kind: 'refused', refusal: { what: 'this command is for another job' } });
  });

  it('with half a character in it is refused, and not thrown about', () => {
    const bench = bookedIn();
    const { id } = bench.read('main.1', '49.980', 'vertical');
    expect(bench.refused({ kind: 'strike out reading', reading: id, why: 'dirt \ud83d' })).toContain(
      'cannot be kept',
    );
  });
});
