/** @module Which readings must be doubted, and which must not. */
import { describe, expect, it } from 'vitest';
import {
  micrometer,
  readAll,
  reading,
  sheetOf,
  smallEngine,
  typed,
} from '../../test/engines/small-engine.ts';
import { doubtsOf } from './doubts.ts';
import type { Reading } from './reading.ts';
import { usualPriors } from './slips/priors.ts';

const front = 'main.1 main-journal-diameter front vertical';
const journal = (place: string, ...figures: string[]) => readAll(place, 'main-journal-diameter', figures);
const said = (readings: readonly Reading[]) =>
  doubtsOf(sheetOf(readings)).map(({ slip, likely: [first] }) => `${slip}: ${first?.text} ${first?.unit}`);

describe('the first reading of a scheme', () => {
  it.each([
    ['54.480', 'mm', 'thimble turn: 54.980 mm'],
    // The tell-tale: a worn journal that reads larger than new.
    ['55.470', 'mm', 'thimble turn: 54.970 mm'],
    ['2.1646', 'mm', 'wrong unit: 2.1646 in'],
    ['54.97', 'in', 'wrong unit: 54.97 mm'],
    ['549.70', 'mm', 'decimal shift: 54.970 mm'],
    ['54970', 'mm', 'decimal shift: 54.970 mm'],
    ['45.970', 'mm', 'digits transposed: 54.970 mm'],
  ])('%s %s is doubted: %s', (text, unit, expected) => {
    expect(said([reading(front, typed(text, unit))])).toEqual([expected]);
  });

  it('is doubted by the turn of an inch thimble', () => {
    expect(said([reading(front, typed('2.1396', 'in'), 'mic-2-3')])).toEqual(['thimble turn: 2.1646 in']);
  });

  it.each(['55.000', '54.981', '54.960', '54.930', '54.910', '54.860'])('%s mm is not', (text) => {
    expect(said([reading(front, typed(text))])).toEqual([]);
  });
});

describe('an engine that has hardly run', () => {
  it('is not believed to have worn as far as an old one may', () => {
    const first = [reading(front, typed('54.881'))];
    // A shop whose scales are hard to read: numbers are often misread.
    const hard = { ...usualPriors, 'misread number': 0.3 };
    expect(doubtsOf(sheetOf(first, { hoursRun: 6000 }), hard)).toEqual([]);
    const [young] = doubtsOf(sheetOf(first, { hoursRun: 150 }), hard);
    expect(young).toMatchObject({ slip: 'misread number', likely: [typed('54.981')] });
  });
});

describe('a doubt', () => {
  const readings = [
    ...journal('main.1', '54.971', '54.970', '54.968', '54.971'),
    ...journal('main.2', '54.472'),
  ];
  const [doubt] = doubtsOf(sheetOf(readings));

  it('says place, figure, what it looks like and what to do', () => {
    expect(doubt?.says).toMatch(
      /^main 2, main-journal-diameter front vertical: 54\.472 mm looks like one turn of thimble or pointer misread; 54\.972 mm would fit, .* to 1\. Measure it again, or say why it stands\.$/,
    );
    expect(doubt?.places).toEqual(['main.2']);
    expect(doubt?.odds).toBeGreaterThan(10);
  });

  const mains = smallEngine.components.get('mains');
  const half = { new: { least: 54.481, greatest: 54.5 }, goesBack: { least: 54.43, greatest: 54.5 } };
  const steps = [{ name: '0.50', limits: { ...half, printed: {} } }];
  const engine = {
    ...smallEngine,
    components: new Map(
      mains?.sizes ? [['mains', { ...mains, sizes: { ...mains.sizes, steps } }] as const] : [],
    ),
  };

  it('says what else it may be where a size is listed that the part could have been machined to', () => {
    const says = (size: string) => doubtsOf(sheetOf([reading(front, typed(size))], { engine }))[0]?.says;
    expect(says('54.480')).toContain('If main journals were machined to 0.50, note that as the size found.');
    expect(says('54.380')).toMatch(/looks like/);
    expect(says('54.380')).not.toContain('machined');
  });

  it('has the same id for the same readings, whatever else was read since', () => {
    const more = [...readings, reading('thrust.1 end-float', typed('0.200'), 'dial-0-10')];
    expect(doubt?.id).toBe('thimble turn:r:main.2 main-journal-diameter front vertical');
    expect(doubtsOf(sheetOf(more)).map(({ id }) => id)).toContain(doubt?.id);
  });

  it('fades as the reading is confirmed by taking it again', () => {
    const [first, ...rest] = readings.toReversed();
    if (!first) throw new Error('no reading');
    const again = ['a', 'b', 'c'].map((id) => ({ ...first, id }));
    const odds = [0, 1, 2].map(
      (count) => doubtsOf(sheetOf([...rest, first, ...again.slice(0, count)]))[0]?.odds ?? 0,
    );
    expect(odds[0]).toBeGreaterThan(odds[1] ?? Number.NaN);
    expect(doubtsOf(sheetOf([...rest, first, ...again]))).toEqual([]);
  });

  it('goes once the cell is read again as it should be', () => {
    const [first, ...rest] = readings.toReversed();
    if (!first) throw new Error('no reading');
    const again = { ...first, id: 'again', typed: typed('54.972') };
    expect(doubtsOf(sheetOf([...rest, first, again]))).toEqual([]);
  });

  it('is not raised where a whole shaft lies at one size, as a ground one does', () => {
    const ground = [
      ...journal('main.1', '54.480', '54.478', '54.481', '54.479'),
      ...journal('main.2', '54.479', '54.479', '54.481', '54.478'),
      ...journal('main.3', '54.481', '54.480', '54.479', '54.480'),
      ...journal('main.4', '54.478', '54.480', '54.480', '54.481'),
    ];
    expect(doubtsOf(sheetOf(ground))).toEqual([]);
  });

  it('is raised once for a whole shaft that has grown, which shafts do not', () => {
    const grown = [
      ...journal('main.1', '55.480', '55.478', '55.481', '55.479'),
      ...journal('main.2', '55.479', '55.479', '55.481', '55.478'),
      ...journal('main.3', '55.481', '55.480', '55.479', '55.480'),
      ...journal('main.4', '55.478', '55.480', '55.480', '55.481'),
    ];
    const [doubt, ...more] = doubtsOf(sheetOf(grown));
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ slip: 'constant offset', readings: grown.map(({ id }) => id) });
    expect(doubt?.likely[0]).toEqual(typed('54.980'));
    expect(doubt?.says).toMatch(/all 16 readings with mic-50-75 .* about 0\.500 mm wrong/);
  });

  it('is raised once for a row that was read wrong throughout', () => {
    const rows = [
      ...journal('main.1', '54.971', '54.970', '54.968', '54.971'),
      ...journal('main.2', '54.472', '54.470', '54.471', '54.469'),
      ...journal('main.3', '54.970', '54.972', '54.969', '54.970'),
    ];
    const [doubt, ...more] = doubtsOf(sheetOf(rows));
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({
      id: 'thimble turn:row main.2|main-journal-diameter',
      slip: 'thimble turn',
      likely: ['54.972', '54.970', '54.971', '54.969'].map((text) => typed(text)),
    });
  });

  it('goes by the other places where the manual gives no limits', () => {
    const depths = (...figures: string[]) =>
      figures.map((figure, index) => reading(`pump.${index + 1} pump-depth`, typed(figure), 'depth-0-100'));
    expect(said(depths('82.41', '82.35', '82.50'))).toEqual([]);
    expect(said(depths('82.41', '3.244', '82.50'))).toEqual(['wrong unit: 3.244 in']);
    expect(said(depths('82.41'))).toEqual([]);
  });

  it('says nothing of readings whose instrument is not in the register', () => {
    expect(said([reading(front, typed('54.480'), 'lost')])).toEqual([]);
    expect(said([])).toEqual([]);
  });
});

describe('an engine of sixteen cylinders', () => {
  const pistons = Array.from({ length: 16 }, (_, at) => ({
    id: `piston.${at + 1}`,
    kind: 'piston',
    number: at + 1,
    title: `piston ${at + 1}`,
  }));
  const engine = { ...smallEngine, places: new Map(pistons.map((place) => [place.id, place])) };
  const wide = { ...micrometer, name: 'wide', range: { least: typed('75'), greatest: typed('100') } };
  const read = (turnedAt?: number) =>
    doubtsOf(
      sheetOf(
        pistons.map(({ id }, at) => {
          const size = 84.87 + ((at * 7) % 16) / 1000 - (at === turnedAt ? 0.5 : 0);
          return reading(`${id} piston-diameter`, typed(size.toFixed(3)), 'wide');
        }),
        { engine, instruments: new Map([[wide.name, wide]]) },
      ),
    );

  it('has a turn of the thimble found at any of them, and no reading speaks for itself', () => {
    expect(read()).toEqual([]);
    for (const at of pistons.keys()) {
      expect(read(at).map(({ slip, places }) => [slip, ...places])).toEqual([
        ['thimble turn', `piston.${at + 1}`],
      ]);
    }
  });
});

describe('doubts about shim packs', () => {
  const pumps = (depths: readonly string[], packs: readonly string[]) => [
    ...depths.map((text, index) => reading(`pump.${index + 1} pump-depth`, typed(text), 'depth-0-100')),
    ...packs.map((text, index) => reading(`pump.${index + 1} pump-pack-found`, typed(text), 'mic-0-25')),
  ];

  it('name the pumps, and the pack that each should have', () => {
    // datum 83 mm: needed 0.60, 1.00, 0.80
    const [doubt, ...more] = doubtsOf(sheetOf(pumps(['82.40', '82.00', '82.20'], ['1.00', '0.60', '0.80'])));
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({
      slip: 'shim packs swapped',
      places: ['pump.1', 'pump.2'],
      readings: ['r:pump.1 pump-pack-found', 'r:pump.2 pump-pack-found'],
      likely: [typed('0.60'), typed('1.00')],
    });
    expect(doubt?.says).toContain('pump 1 1.00 mm (needs 0.60 mm)');
  });

  it.each([
    ['packs fit', ['82.40', '82.00', '82.20'], ['0.60', '1.00', '0.80']],
    ['depths are not read yet', [], ['1.00', '0.60', '0.80']],
    ['only one pump is known', ['82.40'], ['1.00', '0.60', '0.80']],
  ])('are not raised where %s', (_what, depths, packs) => {
    expect(doubtsOf(sheetOf(pumps(depths, packs)))).toEqual([]);
  });

  it('are not raised for an engine without pump timing', () => {
    const { pumpTiming: _none, ...engine } = smallEngine;
    expect(doubtsOf(sheetOf(pumps(['82.40', '82.00'], ['1.00', '0.60']), { engine }))).toEqual([]);
  });
});
