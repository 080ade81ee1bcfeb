/** @module The register of instruments in the terminal: entered, checked, found wrong, and what that puts in question. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { registerEvents } from '../../demo/register.ts';
import { replayRegister } from '../../src/register/evolve.ts';
import { bench } from './endfloat.ts';

/** A Monday after the demo's jobs were begun. */
const at = bench(() => '2026-11-02T08:00:00.000Z');
beforeAll(async () => {
  expect((await at.ask(['demo'])).code).toBe(0);
}, 120_000);
afterAll(at.clear);

const told = async (...words: readonly string[]): Promise<string> => {
  const { code, out, err } = await at.ask(words);
  expect({ words, code, err }).toEqual({ words, code: 0, err: '' });
  return out;
};

interface Questions {
  readonly instruments: readonly {
    readonly instrument: string;
    readonly jobs: readonly {
      readonly number: string;
      readonly uses: readonly { readonly where: string }[];
    }[];
  }[];
}

const questions = async (...words: readonly string[]): Promise<Questions['instruments']> =>
  (JSON.parse(await told('in-question', ...words, '--json')) as Questions).instruments;

describe('the register in the terminal', { timeout: 60_000 }, () => {
  it('lists every instrument with how it stands; the one whose certificate ran out is seen', async () => {
    const list = await told('instruments');
    expect(list).toMatch(/depth-0-100 .* due 2026-10-13, .* was due for calibration by 2026-10-13/);
    expect(list).toMatch(/wrench-40-200 +torque wrench +40 N·m to 200 N·m/);
    expect(
      (JSON.parse(await told('instruments', '--json')) as { instruments: unknown[] }).instruments,
    ).toHaveLength(replayRegister(registerEvents).instruments.size);
  });

  it('names the readings taken after that day, and no others', async () => {
    const [depth, ...others] = await questions();
    expect(others).toEqual([]);
    expect(depth?.instrument).toBe('depth-0-100');
    expect(depth?.jobs.map(({ number, uses }) => [number, uses.length])).toEqual([['J-1', 3]]);
    expect(await told('in-question')).toMatch(/J-1 .* fuel pump 1, depth .* 82\.31 mm +in question/);
  });

  it('enters an instrument, and shows it with its history', async () => {
    const entering = [
      'name=wrench-5-25',
      'kind=torque wrench',
      'least=5N·m',
      'greatest=25N·m',
      'resolution=0.1N·m',
    ];
    await told('register', 'enter', ...entering, 'permissible-error=1N·m', 'repeatability=0.2N·m');
    const shown = await told('instruments', 'wrench-5-25');
    expect(shown).toMatch(/Caution: it was never checked on its zero or a master\./);
    expect(shown).toMatch(/Odo Ferrick +entered as torque wrench, 5 N·m to 25 N·m/);
  });

  it('says at once what a bad check puts in question: every reading since the last good one', async () => {
    const said = await told(
      'register',
      'check',
      'name=mic-50-75',
      'against=bar-50',
      'size=50.000mm',
      'showed=50.012mm',
    );
    expect(said).toMatch(/^mic-50-75: checked against bar-50 at 50\.000 mm: showed 50\.012 mm, not good\.\n/);
    expect(said).toMatch(/Caution: mic-50-75 was out of tolerance when it was last checked/);
    expect(said).toMatch(/J-2 .* main bearing 4, main journal diameter, rear, horizontal .* in question/);
    const jobs = (await questions('mic-50-75'))[0]?.jobs ?? [];
    // Four main bearings, front and rear, vertical and horizontal, in two engines.
    expect(jobs.map(({ number, uses }) => [number, uses.length])).toEqual([
      ['J-1', 16],
      ['J-2', 16],
    ]);
  });

  it('cautions where a reading is taken with it, and takes the reading', async () => {
    const { instruments } = JSON.parse(await told('instruments', '--json')) as {
      instruments: readonly { readonly name: string; readonly checked: { readonly good: boolean } }[];
    };
    expect(instruments.find(({ name }) => name === 'mic-50-75')?.checked.good).toBe(false);
    const cell = ['place=pump.1', 'characteristic=pump-depth', 'reading=82.31mm', 'instrument=depth-0-100'];
    expect(await told('do', 'J-1', 'take-reading', ...cell)).toMatch(
      /^J-1: reading taken, event \d+\.\nCaution: depth-0-100 was due for calibration by 2026-10-13/,
    );
  });

  it('takes nothing back: a check is struck out with its reason, and stays in sight', async () => {
    const { history } = JSON.parse(await told('instruments', 'mic-50-75', '--json')) as {
      history: readonly { readonly id: string }[];
    };
    await told(
      'register',
      'strike-out',
      `entry=${history.at(-1)?.id}`,
      'why=another micrometer was in the hand',
    );
    expect(await questions('mic-50-75')).toEqual([]);
    expect(await told('instruments', 'mic-50-75')).toMatch(
      /not good \(struck out by Odo Ferrick: another micro/,
    );
  });

  it('lifts the question when the instrument is calibrated late and found good', async () => {
    await told(
      'register',
      'calibrate',
      'name=depth-0-100',
      'certificate=C-9',
      'on=2026-10-30',
      'due=2027-10-29',
    );
    expect(await questions()).toEqual([]);
  });

  it('offers a withdrawn instrument no more', async () => {
    await told('register', 'withdraw', 'name=feelers', 'why=blades bent');
    expect(await told('instruments')).toMatch(/feelers .* was withdrawn on .* \(blades bent\)/);
    const cell = ['place=main.1', 'characteristic=main-journal-diameter', 'plane=front', 'axis=vertical'];
    const taking = ['take-reading', ...cell, 'reading=54.979mm', 'instrument=mic-50-75'];
    await told('register', 'withdraw', 'name=mic-50-75', 'why=lent out');
    expect(await told('do', 'J-1', ...taking)).toMatch(
      /Caution: mic-50-75 was withdrawn on .* \(lent out\)\./,
    );
    expect(await told('register', 'put-back', 'name=mic-50-75', 'why=came back')).toBe(
      'mic-50-75: put back into use: came back.\n',
    );
    expect(await told('do', 'J-1', ...taking)).not.toMatch(/Caution/);
  });

  it.each([
    [['register', 'frob'], 2, /no command frob/],
    [['register', 'check', 'name=mic-50-57', 'against=zero', 'showed=0mm'], 1, /write mic-50-75/],
    [
      ['register', 'check', 'name=mic-50-75', 'against=zero', 'showed=9mm', 'good=yes'],
      1,
      /allowed ± 0\.004 mm/,
    ],
    [
      ['register', 'calibrate', 'name=mic-50-75', 'certificate=C', 'on=30.10.2026', 'due=2027-10-29'],
      2,
      /2026-03-02/,
    ],
    [['instruments', 'mic'], 2, /no instrument mic/],
  ] as const)('answers %j with why', async (words, code, says) => {
    const ended = await at.ask(words);
    expect(ended.code).toBe(code);
    expect(ended.err).toMatch(says);
    expect(ended.out).toBe('');
  });
});
