/** @module The invented two-cylinder engine with operations that ask: counts, looks, readings, a second person, a gate. */
import { agreed, type Bench, mm } from './bench.ts';
import { sparrowbill } from './sparrowbill.ts';

export const askingEngine = sparrowbill
  .replace(
    'cautions: [Sling it at two journals.] }',
    `cautions: [Sling it at two journals.],
    asks: { plugs-out: { ask: How many gallery plugs came out, answer: count },
            shells: { ask: Which shells are turned, answer: words, each: true },
            marks: { ask: Picture of the timing marks, answer: picture } } }`,
  )
  .replace(
    'needs: [main-journal-diameter, main-journal-ovality]',
    `needs: [main-journal-diameter, main-journal-ovality]
    covers: [main]
    asks:
      plugs-in: { ask: How many gallery plugs are in, answer: count, like: { operation: lift-crankshaft, ask: plugs-out } }
      clean: { ask: Every oilway is brushed and blown through, by: second person }`,
  )
  .replace(
    '    after: [lay-crankshaft]',
    `    after: [lay-crankshaft]
    breaks: { lay-crankshaft: the cam has nothing to turn it }`,
  )
  .replace(
    'first-start: { title: First start, phase: run, after: [fit-pumps] }',
    `first-start:
    title: First start
    phase: run
    after: [fit-pumps]
    gate: true
    asks: { rack: { ask: The rack slides free from stop to stop } }`,
  );

/** Booked in, read and agreed, as `agreed` of the engine that asks nothing. */
export const askedBench = (): Bench => agreed(askingEngine);

/** As found at the strip: seven plugs out, shells looked at, marks written down; then the crankshaft lifted. */
export const stripped = (): Bench => {
  const bench = askedBench();
  const answer = (ask: string, more: { place?: string; count?: number; says?: string }) =>
    bench.done({ kind: 'answer ask', operation: 'lift-crankshaft', ask, good: true, says: '', ...more });
  answer('plugs-out', { count: 7 });
  for (const place of ['main.1', 'main.2']) answer('shells', { place, says: 'none' });
  answer('marks', { says: 'dots in line at firing top dead centre of 1' });
  bench.done({ kind: 'do operation', operation: 'lift-crankshaft', note: '' });
  return bench;
};

/** As `stripped`, with seven plugs in, the oilways seen by another, the crankshaft laid. */
export const laid = (): Bench => {
  const bench = stripped();
  bench.done({
    kind: 'answer ask',
    operation: 'lay-crankshaft',
    ask: 'plugs-in',
    good: true,
    says: '',
    count: 7,
  });
  bench.done(
    { kind: 'answer ask', operation: 'lay-crankshaft', ask: 'clean', good: true, says: '' },
    'Wat Dunmow',
  );
  bench.done({ kind: 'do operation', operation: 'lay-crankshaft', note: '' });
  return bench;
};

export const pumpRead = (bench: Bench): void => {
  bench.read('pump.1', '59.40');
  bench.read('pump.2', '59.42');
  bench.done({ kind: 'count shims', shims: [{ thickness: mm('0.30'), count: 4 }] });
};
