/** @module Options of a worn engine: what goes back, what cleans up, what is barred and in which words. */
import { describe, expect, it } from 'vitest';
import { wornAs, wornQuillfeather } from '../../test/engines/worn-quillfeather.ts';
import { judge } from '../measure/judge.ts';
import { cellKey } from '../measure/reading.ts';
import type { Sheet } from '../measure/sheet.ts';
import { hours, mm } from '../quantity/brand.ts';
import { centsTogether } from './cost.ts';
import { optionsOf } from './options.ts';
import type { PlanQuestion } from './question.ts';

type FindingForPlan = PlanQuestion['findings'][number];

const { engine } = wornQuillfeather;

const asked = (sheet: Sheet, findings: readonly FindingForPlan[] = []): PlanQuestion => ({
  sheet,
  findings,
  hoursRun: hours(6000),
  demands: {},
});

const doneTo = (question: PlanQuestion, slot: string): readonly string[] =>
  optionsOf(question)
    .options.filter((option) => option.slot === slot)
    .map(({ does, size }) => `${does} ${size}`);

const barredAt = (question: PlanQuestion, slot: string): readonly string[] =>
  optionsOf(question)
    .barred.filter((barred) => barred.slot === slot)
    .map(({ says }) => says);

const withMains = (change: object): Sheet => {
  const mains = engine.components.get('mains');
  if (!mains?.sizes) throw new Error('the engine has no mains with sizes');
  return wornAs({ components: new Map(engine.components).set('mains', { ...mains, ...change }) });
};

const found = (change: Partial<FindingForPlan>): FindingForPlan => ({
  place: 'main.3',
  component: 'mains',
  mayGoBack: false,
  cracked: false,
  says: 'scored, grade 3',
  ...change,
});

describe('what may be done with a component', () => {
  it('is all of putting back, machining and replacing where it is within its limits', () => {
    expect(doneTo(asked(wornQuillfeather), 'mains')).toEqual([
      'put back standard',
      'machine 0.25',
      'machine 0.50',
      'exchange 0.25',
      'replace standard',
    ]);
  });

  it('is not putting back where one place is outside or unsure, and says which', () => {
    const question = asked(wornQuillfeather);
    expect(barredAt(question, 'big-ends')).toEqual([
      'put back: big end journal diameter at big-end.2 is outside (47.917 mm)',
    ]);
    expect(barredAt(question, 'pistons@piston.1')).toEqual([
      'put back: piston clearance at piston.1 is unsure (0.235 mm)',
    ]);
  });

  it('is not putting back where a used one never goes back', () => {
    expect(barredAt(asked(wornQuillfeather), 'head-gasket')).toEqual([
      'put back: a used one is never put back',
    ]);
  });

  it('is not putting back after a finding that forbids it, but may be machining', () => {
    const question = asked(wornQuillfeather, [found({})]);
    expect(doneTo(question, 'mains')).toEqual([
      'machine 0.25',
      'machine 0.50',
      'exchange 0.25',
      'replace standard',
    ]);
    expect(barredAt(question, 'mains')).toEqual(['put back: found at main.3: scored, grade 3']);
  });

  it('is only replacing where it is cracked', () => {
    const question = asked(wornQuillfeather, [found({ cracked: true, says: 'cracked at the fillet' })]);
    expect(doneTo(question, 'mains')).toEqual(['replace standard']);
  });

  it('heeds a finding at its own place alone where each place is decided by itself', () => {
    const question = asked(wornQuillfeather, [found({ place: 'piston.2', component: 'rings' })]);
    expect(doneTo(question, 'rings@piston.1')).toContain('put back standard');
    expect(doneTo(question, 'rings@piston.2')).not.toContain('put back standard');
  });

  it('waits for readings that are missing, and names them', () => {
    const cell = judge(wornQuillfeather, 'main-journal-diameter', 'main.2').cells[0]?.cell;
    if (!cell) throw new Error('the engine has no such cell');
    const readings = new Map(wornQuillfeather.readings);
    readings.delete(cellKey(cell));
    const { missing } = optionsOf(asked({ ...wornQuillfeather, readings }));
    expect(missing).toContain('main journal diameter at main.2');
  });
});

describe('machining to a size', () => {
  /** What is left to take off at the worst journal, its uncertain side counted: cells taken one by one. */
  const leftAt025 = Math.min(
    ...['main.1', 'main.2', 'main.3', 'main.4'].flatMap((place) =>
      judge(wornQuillfeather, 'main-journal-diameter', place).cells.map(
        ({ size, expanded = 0 }) => (size?.value ?? Number.NaN) - expanded - 54.74,
      ),
    ),
  );
  const cleaningUp = (cleanUp: number): Sheet => {
    const sizes = engine.components.get('mains')?.sizes;
    return withMains({ sizes: { ...sizes, cleanUp: mm(cleanUp) } });
  };

  it('is open as long as the worst place, its uncertain side counted, leaves enough to clean up', () => {
    expect(doneTo(asked(cleaningUp(leftAt025 - 0.001)), 'mains')).toContain('machine 0.25');
  });

  it('is barred from a hair less on, in words, and the next size is open still', () => {
    const question = asked(cleaningUp(leftAt025 + 0.001));
    expect(doneTo(question, 'mains')).toEqual([
      'put back standard',
      'machine 0.50',
      'exchange 0.25',
      'replace standard',
    ]);
    expect(barredAt(question, 'mains')[0]).toBe(
      'machine to 0.25: 0.001 mm short of cleaning up at main.2, the worst place, its uncertain side counted',
    );
  });

  it('goes on from the size at which the part was found, and the shells follow', () => {
    // Journals and shells of 0.25 measure a quarter of a millimetre less; the wear is the same.
    const ground = ['main-journal-diameter', 'main-shell-bore'];
    const readings = new Map(
      [...wornQuillfeather.readings].map(([key, taken]) => [
        key,
        taken.map((reading) =>
          ground.includes(reading.cell.characteristic)
            ? {
                ...reading,
                typed: { ...reading.typed, text: (Number(reading.typed.text) - 0.25).toFixed(3) },
              }
            : reading,
        ),
      ]),
    );
    const sheet = { ...wornQuillfeather, readings, sizesFound: new Map([['mains', '0.25']]) };
    const { options } = optionsOf(asked(sheet));
    const sizes = options.filter(({ slot, does }) => slot === 'mains' && does === 'machine');
    expect(sizes.map(({ size }) => size)).not.toContain('0.25');
    const shells = options.find(({ slot, does }) => slot === 'main-shells' && does === 'put back');
    expect(shells?.size).toBe('0.25');
  });
});

describe('the price of an option', () => {
  it('is a set paid once, however many places take from it, or each place its own', () => {
    const offers = engine.offers.map((offer) =>
      offer.component === 'rings' && offer.size === '0.25'
        ? { ...offer, per: 'set' as const, cents: 9000 }
        : offer,
    );
    const { options } = optionsOf(asked(wornAs({ offers })));
    const rings = options.filter(({ component, does }) => component === 'rings' && does === 'replace');
    const set = rings.filter(({ size }) => size === '0.25');
    expect(set.map(({ cents }) => cents)).toEqual([0, 0, 0]);
    expect(
      new Set(set.flatMap(({ setUps }) => setUps.map(({ name, cents }) => `${name}: ${cents}`))),
    ).toEqual(new Set(['set of piston rings, 0.25, Tump Lane Engine Parts: 9000']));
    expect(rings.filter(({ size }) => size === '0.50').map(({ cents }) => cents)).toEqual([3300, 3300, 3300]);
  });

  it('is lower for each from so many on, and exact for every count', () => {
    const offers = engine.offers.map((offer) =>
      offer.component === 'rings' && offer.size === '0.25'
        ? { ...offer, quantity: [{ from: 2, cents: 3_000 }] }
        : offer,
    );
    const { options } = optionsOf(asked(wornAs({ offers })));
    const rings = options.filter(({ component, size }) => component === 'rings' && size === '0.25');
    // source: by hand, 33.00 for one, 30.00 each from two on
    expect([1, 2, 3].map((count) => centsTogether(rings.slice(0, count)))).toEqual([3_300, 6_000, 9_000]);
    const bores = options.find(({ slot, does }) => slot === 'bores' && does === 'sleeve');
    expect(bores?.cents).toBe(3 * 15_900);
  });

  it('is another one where a price is asked about: of an option, or of what is paid once', () => {
    const sizes = { 'rings@piston.1:replace:0.25:Tump Lane Engine Parts': 100, 'new-crankshaft': 90_000 };
    const { options } = optionsOf({ ...asked(wornQuillfeather), demands: { prices: sizes } });
    const rings = options.filter(({ component, size }) => component === 'rings' && size === '0.25');
    expect(rings.map(({ cents }) => cents)).toEqual([100, 3_300, 3_300]);
    const renewed = options.filter(({ size, does }) => does === 'replace' && size === 'standard');
    expect(renewed.find(({ slot }) => slot === 'mains')?.setUps).toEqual([
      { name: 'new-crankshaft', cents: 90_000 },
    ]);
  });
});
