/** @module Every sum of the build is bound to an operation of a demo engine, and answers there from the engine's own figures. */
import { describe, expect, it } from 'vitest';
import { awaitingDecision } from '../../demo/jobs/awaiting-decision.ts';
import { finished } from '../../demo/jobs/finished.ts';
import type { Story } from '../../demo/story.ts';
import { typedInto } from '../../demo/typed-sums.ts';
import { notedAt, noteSum } from '../../src/job/sum/noted-sum.ts';
import { type SumPlace, sumsAt } from '../../src/job/sum/sum-places.ts';
import { judge } from '../../src/measure/judge.ts';
import { reckonings } from '../../src/reckon/list.ts';
import { highsSolver } from '../../src/solver/highs.ts';

/** What a build takes, by the names of the sums. */
const wanted = [
  'clearance',
  'shell-clearance',
  'piston-clearance',
  'ring-gap',
  'ring-side-clearance',
  'stem-clearance',
  'oil-film',
  'end-float',
  'bump-clearance',
  'gasket-grade',
  'compression-ratio',
  'top-dead-centre',
  'piston-travel',
  'crank-angle',
  'shim-pack',
  'button-swap',
  'tooth-shift',
  'shrink-fit',
  'grip-time',
  'fit-pressure',
  'tighten-order',
  'preload',
  'torque-adapter',
  'valve-clearance-order',
  'cam-lift',
  'droop',
  'governor-band',
  'pump-balance',
  'power-correction',
  'fuel-consumption',
  'oil-pressure-check',
  'balance-masses',
];

/** The tappet button of the single-cylinder engine is changed where no pack will do: nobody did so in the story. */
const button = { measured: '61.29 mm', old: '3.10 mm' };

interface BoundSum extends SumPlace {
  readonly story: Story;
}

const boundIn = (story: Story): readonly BoundSum[] => {
  const { engine } = story.job().sheet;
  return [...engine.operations.values()].flatMap((operation) =>
    sumsAt(story.job(), operation).map((at) => ({ ...at, story })),
  );
};

const quillfeather = await awaitingDecision();
const mudlark = await finished(await highsSolver());
const bound = [...boundIn(quillfeather), ...boundIn(mudlark)];

describe('the sums of the build in the demo workshop', { timeout: 60_000 }, () => {
  it.each(wanted)('%s is bound to an operation', (name) => {
    expect(reckonings.map((reckoning) => reckoning.name)).toContain(name);
    expect(bound.filter(({ sum }) => sum.reckon === name)).not.toEqual([]);
  });

  it('are all noted in the worn engine from its own figures, each after those that it takes from', () => {
    for (const { operation, sum, place } of boundIn(quillfeather)) {
      const named = { operation: operation.name, sum: sum.name, ...(place && { place: place.id }) };
      const typed = typedInto('quillfeather-3w', operation.name, sum.name);
      const asked = noteSum(quillfeather.job(), named, typed, { note: '' });
      expect({ named, asked: asked.kind === 'refused' ? asked.refusal : 'answered' }).toEqual({
        named,
        asked: 'answered',
      });
      if (asked.kind === 'answer') quillfeather.tell('Perpetua Sallow', 1, asked.value);
    }
  });

  it('take when the valves lift and the pumps spill from where the engine type says it', () => {
    const job = quillfeather.job();
    const noted = boundIn(quillfeather).flatMap((at) =>
      at.sum.reckon === 'tooth-shift' ? (notedAt(job, at)?.noted.found ?? []) : [],
    );
    // source: by hand: 24 teeth, 15 deg of crank; 360 − 10 − 15, 540 + 42 − 15, 180 − 42 − 15, 360 + 10 − 15, −24 − 15
    const then = Object.fromEntries(noted.map(({ key, text }) => [key, text]));
    expect(then).toMatchObject({
      'then.inlet-opens': '335 deg',
      'then.inlet-closes': '567 deg',
      'then.exhaust-opens': '123 deg',
      'then.exhaust-closes': '355 deg',
      'then.spill': '-39 deg',
    });
  });

  it('are noted in the engine that went home, and keep what its manual asks', () => {
    const left = boundIn(mudlark).filter((at) => notedAt(mudlark.job(), at) === undefined);
    expect(left.map(({ sum }) => sum.reckon)).toEqual(['button-swap']);
    for (const at of boundIn(mudlark)) {
      const { keeps = [], changed = [] } = notedAt(mudlark.job(), at) ?? {};
      expect({ changed, amiss: keeps.filter(({ verdict }) => verdict !== 'within') }).toEqual({
        changed: [],
        amiss: [],
      });
    }
    const [at] = left;
    if (!at) throw new Error('the button is left');
    const named = { operation: at.operation.name, sum: at.sum.name };
    const asked = noteSum(mudlark.job(), named, button, { note: '' });
    // source: hand arithmetic: 61.29 + 3.10 − 61.36 = 3.03 mm, nearest L, 3.00, which is 0.03 mm thin
    expect(asked).toMatchObject({
      value: {
        found: [
          { key: 'needed', text: '3.03 mm' },
          { key: 'button', text: 'L' },
          { key: 'thickness', text: '3 mm' },
          { key: 'left-over', text: '-0.03 mm' },
        ],
      },
    });
  });

  it('carry what is not known of the readings into what comes of them', () => {
    const job = quillfeather.job();
    const clearances = boundIn(quillfeather).filter(({ sum }) => sum.reckon === 'clearance');
    expect(clearances).toHaveLength(4);
    for (const at of clearances) {
      const judged = judge(job.sheet, 'main-clearance', at.place?.id ?? '');
      const text = notedAt(job, at)?.noted.found.find(({ key }) => key === 'clearance')?.text ?? '';
      const [, value, half] = /^([\d.]+) ± ([\d.]+) mm$/.exec(text) ?? [];
      expect(Number(value)).toBeCloseTo(judged.value?.value ?? 0, 6);
      // The sum takes each ± as the sheet shows it, rounded up to the next micrometre, and the error that both
      // readings share as one: never better than the sheet, and by their roundings worse.
      const known = judged.expanded ?? 0;
      expect(Number(half)).toBeGreaterThanOrEqual(known - 0.00005);
      expect(Number(half)).toBeLessThan(known + 0.002);
    }
  });
});
