/** @module An engine that comes back, in the terminal: known by its plate, with the sizes that it went with. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bench, demoFile } from './endfloat.ts';

const at = bench(() => '2029-11-05T08:00:00.000Z');
beforeAll(async () => {
  expect((await at.ask(['demo'])).code).toBe(0);
}, 120_000);
afterAll(at.clear);

const told = async (...words: readonly string[]): Promise<string> => {
  const { code, out, err } = await at.ask(words);
  expect({ words, code, err }).toEqual({ words, code: 0, err: '' });
  return out;
};

interface Listed {
  readonly jobs: readonly { readonly number: string; readonly plate: string }[];
}

const bookIn = (plate: string, number: string, ...more: readonly string[]) => [
  'book-in',
  demoFile('engines/mudlark-1.yaml'),
  'owner=Orrell & Daughter',
  `plate=${plate}`,
  'hours=9000h',
  'complaint=tired',
  'currency=crowns',
  `number=${number}`,
  ...more,
];

describe('an engine that comes back', { timeout: 60_000 }, () => {
  let plate = '';

  it('brings the sizes that it was left with, told by its plate', async () => {
    const { jobs } = JSON.parse(await told('jobs', '--json')) as Listed;
    plate = jobs.find(({ number }) => number === 'J-3')?.plate ?? '';
    expect(plate).not.toBe('');
    expect(await told(...bookIn(plate, 'J-60'))).toMatch(
      /^Booked in as J-60\.\nIt brings its sizes of J-3, handed over \d{4}-\d\d-\d\d, at \d+ h: \d+ sizes\.\n$/,
    );
    expect(await told('show', 'J-60')).toContain('Since the former overhaul, J-3');
  });

  it('shows what each cell has worn since, by the thousand hours', async () => {
    const before = JSON.parse(await told('show', 'J-3', '--json')) as {
      verdicts: readonly { place: string; characteristic: string; value?: number }[];
    };
    const { value = 0 } =
      before.verdicts.find(({ characteristic }) => characteristic === 'big-end-journal-diameter') ?? {};
    const mic = JSON.parse(await told('instruments', '--json')) as {
      instruments: readonly { name: string; kind: string }[];
    };
    expect(mic.instruments.map(({ name }) => name)).toContain('mic-25-50');
    const instrument = ['name=mic-25-50', 'kind=outside micrometer', 'least=25mm', 'greatest=50mm'];
    const figures = ['resolution=0.001mm', 'permissible-error=0.004mm', 'repeatability=0.001mm', 'zero=0mm'];
    await told('do', 'J-60', 'bring-instrument', ...instrument, ...figures);
    const cell = [
      'place=big-end.1',
      'characteristic=big-end-journal-diameter',
      'plane=front',
      'axis=vertical',
    ];
    const reading = `reading=${(value - 0.02).toFixed(3)}mm`;
    await told('do', 'J-60', 'take-reading', ...cell, reading, 'instrument=mic-25-50');
    expect(await told('show', 'J-60')).toMatch(
      /big-end\.1 +big-end-journal-diameter front vertical +\d+\.\d{3}(, new or machined then)? +\d+\.\d{3} +\d\.\d{3} mm +\d\.\d{3} mm/,
    );
  });

  it('brings none where none is asked for, or where the plate is another', async () => {
    expect(await told(...bookIn(plate, 'J-61', 'former=none'))).toBe('Booked in as J-61.\n');
    expect(await told(...bookIn('M1-9999', 'J-62'))).toBe('Booked in as J-62.\n');
    const { code, err } = await at.ask(bookIn(plate, 'J-63', 'former=J-1'));
    expect(code).toBe(1);
    expect(err).toMatch(/this engine was not handed over as J-1 \(former\)/);
  });
});
