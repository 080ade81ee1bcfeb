/** @module Parts of a job measured in stock and fitted by their sizes, with figures worked by hand. */
import { describe, expect, it } from 'vitest';
import { Bench, booking, micrometer, mm } from '../../test/job/bench.ts';
import { sparrowbill } from '../../test/job/sparrowbill.ts';
import { fittingOf } from './fitting.ts';

/** The two-cylinder engine with shells whose walls are measured: housing less journal is the room for two of them. */
const engineType = sparrowbill
  .replace(
    '  pump-depth:\n',
    `  main-housing-bore:
    title: main housing bore
    at: main
    wears: larger
    instrument: bore gauge
    limits: { new: { least: 53.000 mm, greatest: 53.020 mm } }
  main-shell-room:
    title: room for the shells
    at: main
    derived: { difference: [main-housing-bore, { least: main-journal-diameter }] }
    wears: larger
  main-clearance:
    title: main clearance
    at: main
    derived: { difference: [main-shell-room, { factor: [2, shell-wall] }] }
    wears: larger
    limits: { new: { least: 0.030 mm, greatest: 0.070 mm }, wear: { greatest: 0.120 mm } }
  shell-wall:
    title: wall of the shell
    at: main
    wears: smaller
  pump-depth:
`,
  )
  .replace(
    '    title: main bearing shells\n    at: main\n    together: true\n    judged-by: []\n    put-back: true\n    life: 8000 h\n',
    `    title: main bearing shells
    at: main
    together: true
    judged-by: []
    put-back: true
    life: 8000 h
    fitting:
      measured: wall at the crown
      instrument: ball micrometer
      room: main-shell-room
      clearance: main-clearance
      parts: 2
      halves: [upper, lower]
`,
  );

const ball = {
  ...micrometer,
  name: 'ball-0-25',
  kind: 'ball micrometer',
  range: { least: mm('0'), greatest: mm('25') },
};

const atBench = (): Bench => {
  const bench = new Bench();
  bench.done({ ...booking, engineType });
  bench.done({ kind: 'bring instrument', instrument: micrometer });
  bench.done({ kind: 'bring instrument', instrument: ball });
  return bench;
};

const read = (bench: Bench, place: string, characteristic: string, text: string, axis = ''): void => {
  bench.done({
    kind: 'take reading',
    cell: { place, characteristic, plane: '', axis },
    typed: mm(text),
    instrument: micrometer.name,
  });
};

const measurePart = (part: string, half: string, ...texts: readonly string[]) =>
  ({
    kind: 'measure part',
    component: 'main-shells',
    part,
    size: 'standard',
    half,
    readings: texts.map((text) => ({ typed: mm(text), instrument: ball.name })),
  }) as const;

/** Room of 3.030 mm at the first main and 3.036 mm at the second. */
const withRooms = (bench: Bench): Bench => {
  for (const [place, housing] of [
    ['main.1', '53.010'],
    ['main.2', '53.016'],
  ] as const) {
    read(bench, place, 'main-journal-diameter', '49.980', 'vertical');
    read(bench, place, 'main-journal-diameter', '49.980', 'horizontal');
    read(bench, place, 'main-housing-bore', housing);
  }
  return bench;
};

const shells = (bench: Bench) => {
  const shellFit = fittingOf(bench.open, 'main-shells');
  if (shellFit.kind === 'refused') throw new Error(shellFit.refusal.what);
  return shellFit.value;
};

const stocked = (): Bench => {
  const bench = withRooms(atBench());
  bench.done(measurePart('U1', 'upper', '1.490'));
  bench.done(measurePart('U2', 'upper', '1.492', '1.494'));
  bench.done(measurePart('L1', 'lower', '1.490'));
  bench.done(measurePart('L2', 'lower', '1.493'));
  return bench;
};

describe('parts fitted from stock', () => {
  it('wait for the sizes of the engine, then for parts', () => {
    const bench = atBench();
    expect(shells(bench).set).toMatchObject({ kind: 'refused' });
    expect(shells(bench).places[0]?.missing.length).toBeGreaterThan(0);
    withRooms(bench);
    expect(shells(bench).set).toMatchObject({
      refusal: {
        what: 'no part of size standard is measured',
        remedy: 'measure the loose parts: wall at the crown',
      },
    });
  });

  it('are proposed for each place, an upper and a lower, nearest the middle', () => {
    const shellFit = shells(stocked());
    // source: by hand; 3.030 − 1.490 − 1.490 = 0.050 (the middle), 3.036 − 1.493 − 1.493 = 0.050
    expect(shellFit.places.map(({ proposed }) => proposed?.parts)).toEqual([
      ['U1', 'L1'],
      ['U2', 'L2'],
    ]);
    for (const { proposed } of shellFit.places) expect(proposed?.clearance.value).toBeCloseTo(0.05, 4);
    expect(shellFit.set).toMatchObject({ kind: 'answer', value: { kind: 'fitted', proved: true } });
  });

  it('are known where they are to go once they are assigned, and loose again once set aside', () => {
    const bench = stocked();
    bench.done({
      kind: 'assign parts',
      component: 'main-shells',
      places: [
        { place: 'main.1', parts: ['U1', 'L1'] },
        { place: 'main.2', parts: ['U2', 'L2'] },
      ],
    });
    const [first, second] = shells(bench).places;
    expect(first?.assigned).toMatchObject({ parts: ['U1', 'L1'], verdict: 'within' });
    expect(shells(bench).stock.map(({ place }) => place)).toEqual(['main.1', 'main.2', 'main.1', 'main.2']);
    expect(second?.assigned?.off).toBeCloseTo(0, 4);
    bench.done({ kind: 'set part aside', component: 'main-shells', part: 'U1', why: 'nicked at the joint' });
    expect(shells(bench).places[0]?.assigned).toBeUndefined();
    expect(shells(bench).set).toMatchObject({ value: { kind: 'lacking' } });
  });

  it('are refused in words where they cannot be so', () => {
    const bench = stocked();
    const assign = (...places: readonly (readonly [string, ...string[]])[]) =>
      bench.refused({
        kind: 'assign parts',
        component: 'main-shells',
        places: places.map(([place, ...parts]) => ({ place, parts })),
      });
    expect(assign(['main.1', 'U1'])).toContain('takes two parts, and 1 are given');
    expect(assign(['main.1', 'L1', 'U1'])).toContain(
      'L1 is not the upper half | name them in order: upper, lower',
    );
    expect(assign(['main.3', 'U1', 'L1'])).toContain('do not go to “main.3”');
    expect(assign(['main.1', 'U1', 'L9'])).toContain('no part “L9” is measured');
    expect(assign(['main.1', 'U1', 'L1'], ['main.2', 'U1', 'L2'])).toContain(
      'part U1 would go to main.1 and to main.2',
    );
    bench.done(measurePart('U3', 'upper', '1.530'));
    // source: by hand, 3.030 − 1.530 − 1.490 = 0.010
    expect(assign(['main.1', 'U3', 'L1'])).toContain(
      'clearance would be 0.010 mm, outside 0.030 to 0.070 mm',
    );
  });

  it('are not measured without a half, at a size that is not made, or with what was not brought', () => {
    const bench = atBench();
    const { half: _, ...whole } = measurePart('U1', 'upper', '1.490');
    expect(bench.refused(whole)).toContain('which half it is is missing | choose upper or lower');
    expect(bench.refused({ ...measurePart('U1', 'upper', '1.490'), size: '9.99' })).toContain(
      'there is no size “9.99”',
    );
    expect(bench.refused({ ...measurePart('U1', 'upper', '1.490'), component: 'pumps' })).toContain(
      'are not fitted from stock by their sizes here | choose main-shells',
    );
    expect(
      bench.refused({
        ...measurePart('U1', 'upper'),
        readings: [{ typed: mm('1.490'), instrument: 'mic-9' }],
      }),
    ).toContain('“mic-9” has not been brought');
    expect(bench.refused(measurePart('A+B', 'upper', '1.490'))).toContain('is no name to tell a part by');
  });
});
