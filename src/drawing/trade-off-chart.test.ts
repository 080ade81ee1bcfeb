/** @module The trade-off drawn: every plan once and in order, apart from its neighbours, its days told by form and words. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formsOf } from './form.ts';
import { type SvgNode, svgText } from './svg.ts';
import { type TradeOffDrawn, tradeOffChart } from './trade-off-chart.ts';

const figures = fc.record({
  cents: fc.integer({ min: 0, max: 100_000_000 }),
  days: fc.oneof(fc.integer({ min: 0, max: 60 }), fc.constant(2.5)),
  hours: fc.integer({ min: 0, max: 60_000 }),
});
const drawn: fc.Arbitrary<TradeOffDrawn> = fc.record({
  plans: fc
    .array(figures, { minLength: 1, maxLength: 60 })
    .map((plans) => plans.toSorted((a, b) => a.cents - b.cents)),
  currency: fc.constant('EUR'),
  asked: fc.record(
    {
      hours: fc.integer({ min: 1, max: 60_000 }),
      days: fc.constant(7),
      cents: fc.integer({ min: 0, max: 900_000 }),
    },
    { requiredKeys: [] },
  ),
});

const nodesIn = (node: SvgNode | string): readonly SvgNode[] =>
  typeof node === 'string' ? [] : [node, ...node.children.flatMap(nodesIn)];

const plansIn = (node: SvgNode): readonly SvgNode[] =>
  nodesIn(node).filter(({ attributes }) => 'data-place' in attributes);

const tagOf = (plan: SvgNode): Record<'x' | 'y' | 'width' | 'height', number> => {
  const { x, y, width, height } = nodesIn(plan).find(({ tag }) => tag === 'rect')?.attributes ?? {};
  return { x: Number(x), y: Number(y), width: Number(width), height: Number(height) };
};

describe('the trade-off drawn', () => {
  it('draws every plan once, in order, with its figures in words', () => {
    fc.assert(
      fc.property(drawn, (given) => {
        const plans = plansIn(tradeOffChart(given));
        expect(plans.map(({ attributes }) => attributes['data-place'])).toEqual(
          given.plans.map((_, index) => String(index)),
        );
        for (const [index, { days, hours }] of given.plans.entries()) {
          expect(plans[index]?.attributes['aria-label']).toContain(`plan ${index + 1}: `);
          expect(plans[index]?.attributes['aria-label']).toContain(`${days} days, lasts ${hours} h`);
        }
      }),
    );
  });

  it('holds no figure that is none, and stays on its sheet', () => {
    fc.assert(
      fc.property(drawn, (given) => {
        const drawing = tradeOffChart(given);
        expect(svgText(drawing)).not.toMatch(/NaN|Infinity|undefined/);
        const [, , width = 0, height = 0] = String(drawing.attributes.viewBox).split(' ').map(Number);
        for (const { tag, attributes } of nodesIn(drawing)) {
          if (tag !== 'line') continue;
          for (const name of ['x1', 'x2', 'y1', 'y2'] as const) {
            expect(Number(attributes[name])).toBeGreaterThanOrEqual(0);
            expect(Number(attributes[name])).toBeLessThanOrEqual(name[0] === 'x' ? width : height);
          }
        }
      }),
    );
  });

  it('gives each plan a tag that a finger hits, and none lies on another', () => {
    fc.assert(
      fc.property(drawn, (given) => {
        const tags = plansIn(tradeOffChart(given)).map(tagOf);
        for (const [index, one] of tags.entries()) {
          // source: WCAG 2.2, 2.5.5: 44 by 44
          expect(Math.min(one.width, one.height)).toBeGreaterThanOrEqual(44);
          for (const other of tags.slice(index + 1))
            expect(Math.abs(one.x - other.x) >= one.width || Math.abs(one.y - other.y) >= one.height).toBe(
              true,
            );
        }
      }),
    );
  });

  it('puts what costs more further right and what lasts longer higher', () => {
    const plans = [
      { cents: 100_000, days: 9, hours: 500 },
      { cents: 150_000, days: 9, hours: 4_000 },
    ];
    const points = plansIn(tradeOffChart({ plans, currency: 'EUR', asked: {} })).map((plan) =>
      nodesIn(plan).find(({ attributes }) => 'data-form' in attributes),
    );
    const [x, y] = [0, 1].map((at) =>
      points.map((point) => Number(/^M(\S+) ([\d.]+)/.exec(String(point?.attributes.d))?.[at + 1])),
    );
    expect((x?.[0] ?? 0) < (x?.[1] ?? 0)).toBe(true);
    expect((y?.[0] ?? 0) > (y?.[1] ?? 0)).toBe(true);
  });

  it('says which plans are not as asked', () => {
    const plans = [
      { cents: 100_000, days: 9, hours: 500 },
      { cents: 150_000, days: 6, hours: 4_000 },
    ];
    const labels = plansIn(tradeOffChart({ plans, currency: 'EUR', asked: { hours: 4_000, days: 8 } })).map(
      ({ attributes }) => attributes['aria-label'],
    );
    expect(labels).toEqual([
      'plan 1: 1000.00 EUR, 9 days, lasts 500 h; not as asked: 3500 h too short, 1 day too late',
      'plan 2: 1500.00 EUR, 6 days, lasts 4000 h',
    ]);
  });

  it('marks the plan that is shown otherwise than by colour', () => {
    const plans = [
      { cents: 100_000, days: 9, hours: 500 },
      { cents: 150_000, days: 9, hours: 4_000 },
    ];
    const colourless = (shown: number | undefined) =>
      svgText(tradeOffChart({ plans, currency: 'EUR', asked: {}, shown })).replace(/#[0-9a-f]{6}/g, '');
    expect(new Set([undefined, 0, 1].map(colourless)).size).toBe(3);
  });
});

describe('forms for days', () => {
  it('are one for each count of days where these are few', () => {
    const forms = formsOf([9, 6, 8, 6]);
    expect(new Set([6, 8, 9].map(forms.of)).size).toBe(3);
    expect(forms.legend.map(({ words }) => words)).toEqual(['6 days', '8 days', '9 days']);
  });

  it('are one for each range where these are many, later ones never an earlier form', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 90 }), { minLength: 1, maxLength: 40 }), (days) => {
        const forms = formsOf(days);
        const order = forms.legend.map(({ form }) => form);
        const ranks = [...new Set(days)].sort((a, b) => a - b).map((each) => order.indexOf(forms.of(each)));
        expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
        expect(order.length).toBeLessThanOrEqual(5);
        expect(order.length).toBe(Math.min(5, new Set(days).size));
      }),
    );
  });
});
