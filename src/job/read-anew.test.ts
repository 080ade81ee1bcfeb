/** @module What is read again: a clearance read before the engine ran, or before its joint was pulled down, counts no more. */
import { describe, expect, it } from 'vitest';
import { mm } from '../../test/job/bench.ts';
import { jointedEngine, lay, readyToTighten, tightenAll } from '../../test/job/tightening.ts';
import { standingOf } from './holds.ts';

const reading = jointedEngine
  .replace(
    '  pump-depth:\n',
    `  rocker-gap:
    title: rocker gap
    at: pump
    wears: either
    instrument: outside micrometer
    limits: { new: { least: 50.000 mm, greatest: 50.100 mm } }
  pump-depth:
`,
  )
  .replace(
    'after: [first-start], tightens: [cap-bolts]',
    'after: [first-start], needs: [rocker-gap], read-again: true, tightens: [cap-bolts]',
  );

const ran = () => {
  const bench = readyToTighten(reading);
  tightenAll(bench, lay);
  bench.done({ kind: 'do operation', operation: lay, note: '' });
  for (const place of ['pump.1', 'pump.2']) bench.read(place, '59.40');
  bench.done({ kind: 'do operation', operation: 'fit-pumps', note: '' });
  return bench;
};
type Ran = ReturnType<typeof ran>;

const gap = (bench: Ran, place: string, text = '50.050') =>
  bench.done({
    kind: 'take reading',
    cell: { place, characteristic: 'rocker-gap', plane: '', axis: '' },
    typed: mm(text),
    instrument: 'mic-25-50',
  });
const gaps = (bench: Ran) => {
  for (const place of ['pump.1', 'pump.2']) gap(bench, place);
};
const lacking = (bench: Ran) => {
  const known = bench.open.sheet.engine.operations.get('look-again');
  const standing = known && standingOf(bench.open, known);
  return standing?.kind === 'held' ? standing.lacking.map(({ says }) => says) : [];
};
const unread = (bench: Ran) => lacking(bench).filter((says) => says.includes('rocker gap'));

describe('what is read again', () => {
  it('counts no more once the engine has run, and is kept beside the sheet', () => {
    const bench = ran();
    gaps(bench);
    bench.done({ kind: 'do operation', operation: 'first-start', note: '' });
    expect([...bench.open.readBefore.values()].flat().map(({ typed }) => typed.text)).toEqual([
      '50.050',
      '50.050',
    ]);
    tightenAll(bench, 'look-again');
    expect(unread(bench)).toHaveLength(2);
  });

  it('is not asked for before the joints are tight, and what was read before them counts no more', () => {
    const bench = ran();
    bench.done({ kind: 'do operation', operation: 'first-start', note: '' });
    gaps(bench);
    expect(unread(bench)).toEqual([]);
    expect(lacking(bench).length).toBeGreaterThan(0);
    tightenAll(bench, 'look-again');
    expect(unread(bench)).toHaveLength(2);
    gaps(bench);
    expect(lacking(bench)).toEqual([]);
    bench.done({ kind: 'do operation', operation: 'look-again', note: '' });
  });
});
