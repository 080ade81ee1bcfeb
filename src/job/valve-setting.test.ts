/** @module Valve clearances of a job: position by position, what is next, which way the adjuster turns. */
import { describe, expect, it } from 'vitest';
import { instruments } from '../../demo/instruments.ts';
import { brambleholtText, mudlarkText, quillfeatherText } from '../../test/engines/demo-engines.ts';
import { Bench, booking } from '../../test/job/bench.ts';
import { known } from '../../test/known.ts';
import { type ValvesOfJob, valvesOfJob } from './valve-setting.ts';

const opened = (engineType: string): Bench => {
  const bench = new Bench();
  bench.done({ ...booking, engineType });
  const master = instruments.find(({ name }) => name === 'mic-0-25');
  const feelers = instruments.find(({ name }) => name === 'feelers');
  if (!master || !feelers) throw new Error('the workshop has no feelers');
  bench.done({ kind: 'bring instrument', instrument: master });
  bench.done({ kind: 'bring instrument', instrument: feelers });
  return bench;
};
const valves = (bench: Bench): ValvesOfJob => {
  const set = valvesOfJob(bench.open);
  if (set === undefined) throw new Error('the engine type says nothing of valves');
  return known(set);
};
const read = (bench: Bench, kind: 'inlet' | 'exhaust', cylinder: number, text: string) =>
  bench.done({
    kind: 'take reading',
    cell: { place: `${kind}-rocker.${cylinder}`, characteristic: `${kind}-clearance`, plane: '', axis: '' },
    typed: { text, unit: 'mm' },
    instrument: 'feelers',
  });
const named = ({ positions }: ValvesOfJob) =>
  positions.map((position) => position.valves.map(({ cylinder, kind }) => `${cylinder} ${kind}`));

describe('the valves of a job', () => {
  it('of six cylinders are set in two positions, where the valves of the twin rock', () => {
    const set = valves(opened(brambleholtText));
    // common practice, no source: fired 1-5-3-6-2-4, cylinder 1 at its firing top: inlets of 1, 2, 4, exhausts of 1, 3, 5;
    // cylinder 6: the rest
    expect(set.positions.map(({ cylinder, rocking, turn }) => [cylinder, rocking, turn])).toEqual([
      [1, 6, 360],
      [6, 1, 360],
    ]);
    expect(named(set)[0]?.toSorted()).toEqual(
      ['1 inlet', '1 exhaust', '2 inlet', '3 exhaust', '4 inlet', '5 exhaust'].toSorted(),
    );
    expect(set).toMatchObject({ within: 0, of: 12, next: { cylinder: 1 } });
  });

  it('of three cylinders name every valve once, and none that rocks', () => {
    const set = valves(opened(quillfeatherText));
    expect(named(set).flat().toSorted()).toEqual(
      ['1 inlet', '1 exhaust', '2 inlet', '2 exhaust', '3 inlet', '3 exhaust'].toSorted(),
    );
    expect(set.positions.every(({ rocking }) => rocking === undefined)).toBe(true);
    // 720° in all, whatever the positions.
    expect(set.positions.reduce((sum, { turn }) => sum + turn, 0) % 720).toBe(0);
  });

  it('lead from one to the next, and say which way the adjuster turns', () => {
    const bench = opened(mudlarkText);
    expect(valves(bench).next).toMatchObject({ place: 'inlet-rocker.1', verdict: 'not yet known' });
    read(bench, 'inlet', 1, '0.12');
    expect(valves(bench).next).toMatchObject({
      place: 'inlet-rocker.1',
      verdict: 'outside',
      adjust: 'open it',
    });
    read(bench, 'inlet', 1, '0.31');
    expect(valves(bench).next).toMatchObject({ adjust: 'close it' });
    read(bench, 'inlet', 1, '0.20');
    expect(valves(bench).next).toMatchObject({ place: 'exhaust-rocker.1' });
    read(bench, 'exhaust', 1, '0.25');
    expect(valves(bench)).toMatchObject({ within: 2, of: 2 });
    expect(valves(bench).next).toBeUndefined();
  });

  it("go by the maker's own order where there is one", () => {
    const own = `  order:
    - { top: 2, inlet: [1, 2, 3], exhaust: [2] }
    - { top: 1, exhaust: [1, 3] }
  source: invented, sheet 7
`;
    const text = `${quillfeatherText.trimEnd().replace(/ {2}source: invented, sheet 7$/, '')}${own}`;
    const set = valves(opened(text));
    expect(set.positions.map(({ cylinder }) => cylinder)).toEqual([2, 1]);
    expect(named(set)[1]).toEqual(['1 exhaust', '3 exhaust']);
    // Fired 1-3-2: from 2 to 1 one interval of 240°, back again two.
    expect(set.positions.map(({ turn }) => turn)).toEqual([480, 240]);
  });
});
