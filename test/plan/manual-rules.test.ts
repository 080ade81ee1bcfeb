/** @module Rules of published manuals that a plan keeps: all journals alike, and the next step below the worst. */
import { describe, expect, it } from 'vitest';
import type { Limits } from '../../src/engine/engine-type.ts';
import { cellKey, type Reading } from '../../src/measure/reading.ts';
import { cellsOf } from '../../src/measure/scheme.ts';
import { planEngine } from '../../src/plan/plan.ts';
import { hours, mm } from '../../src/quantity/brand.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { wornAs, wornQuillfeather } from '../engines/worn-quillfeather.ts';

// source: TM 5-3805-262-34, p 4-23: main journals worn more than 0.002 in below 2.998 in are ground to 2.988 to
// 2.989, 2.978 to 2.979 or 2.968 to 2.969 in; if one or more are to be ground, all are
const published = [
  { name: '0.010', least: 2.988, greatest: 2.989 },
  { name: '0.020', least: 2.978, greatest: 2.979 },
  { name: '0.030', least: 2.968, greatest: 2.969 },
];
const inch = 25.4;
const limitsOf = (least: number, greatest: number, wear: number): Limits => ({
  new: { least: least * inch, greatest: greatest * inch },
  goesBack: { least: wear * inch, greatest: greatest * inch },
  printed: {},
});

/** Four journals as read, in inches, each alike all over. */
const planFor = async (diameters: readonly string[]) => {
  const { engine } = wornQuillfeather;
  const mains = engine.components.get('mains');
  const diameter = engine.characteristics.get('main-journal-diameter');
  const offer = engine.offers.find(({ component, does }) => component === 'mains' && does === 'machine');
  if (!mains || !diameter || !offer) throw new Error('the engine has no journals to grind');
  const sheet = wornAs({
    components: new Map([
      [
        'mains',
        {
          ...mains,
          judgedBy: ['main-journal-diameter'],
          sizes: {
            of: 'main-journal-diameter',
            cleanUp: mm(0),
            steps: published.map(({ name, least, greatest }) => ({
              name,
              limits: limitsOf(least, greatest, least - 0.002),
            })),
          },
        },
      ],
    ]),
    characteristics: new Map(engine.characteristics).set(diameter.name, {
      ...diameter,
      limits: limitsOf(2.998, 2.999, 2.996),
    }),
    // A deeper step is dearer: it takes from what is left for the next overhaul.
    offers: published.map(({ name }, index) => ({ ...offer, size: name, cents: 30_000 + 1_000 * index })),
    couplings: [],
  });
  const readings = diameters.flatMap((text, index) =>
    cellsOf(engine, diameter.name, `main.${index + 1}`).map((cell): Reading => {
      const typed = { text, unit: 'in' };
      return { id: cellKey(cell), cell, typed, instrument: 'mic-75-100' };
    }),
  );
  const micrometer = wornQuillfeather.instruments.get('mic-50-75');
  if (!micrometer) throw new Error('the workshop has no micrometer');
  const exact = { text: '0.0001', unit: 'mm' };
  const instruments = new Map(wornQuillfeather.instruments).set('mic-75-100', {
    ...micrometer,
    name: 'mic-75-100',
    range: { least: { text: '75', unit: 'mm' }, greatest: { text: '100', unit: 'mm' } },
    resolution: exact,
    permissibleError: exact,
    repeatability: exact,
    zero: { text: '0', unit: 'mm' },
  });
  const measured = { ...sheet, instruments, readings: Map.groupBy(readings, ({ cell }) => cellKey(cell)) };
  const question = { sheet: measured, findings: [], hoursRun: hours(6_000), demands: {} };
  const planned = await planEngine(question, await highsSolver());
  if (planned.kind !== 'plan') throw new Error(`${planned.kind} where there is a plan`);
  return planned.choices.map(({ slot, does, size }) => `${slot}: ${does} ${size}`);
};

describe('main journals by the published rules', () => {
  it('go back as they are where none is worn by more than is allowed', async () => {
    expect(await planFor(['2.9985', '2.9982', '2.9965', '2.9988'])).toEqual(['mains: put back standard']);
  });

  it.each([
    ['2.9955', '0.010'],
    ['2.9895', '0.010'],
    ['2.9885', '0.020'],
    ['2.9795', '0.020'],
    ['2.9785', '0.030'],
  ])('are all ground where one reads %s in, and all to %s', async (worst, step) => {
    expect(await planFor(['2.9985', '2.9982', worst, '2.9988'])).toEqual([`mains: machine ${step}`]);
  });
});
