/** @module How often slips happen, in the terminal: listed, set by the shop, taken by a job at booking in and anew. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bench, demoFile } from './endfloat.ts';

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

describe('the slips looked for', { timeout: 60_000 }, () => {
  it('are listed, each with what it is and how often it usually happens', async () => {
    const list = await told('slips');
    expect(list).toMatch(
      /thimble turn +one turn of thimble or pointer misread +once in 67 readings +as usual/,
    );
    expect(list).toMatch(/no zero check .* looked for +as usual/);
  });

  it('are set with a reason, and the list says who did', async () => {
    const said = await told(
      'register',
      'slip-chance',
      'slip=thimble turn',
      'once-in=20',
      'why=an apprentice',
    );
    expect(said).toBe('thimble turn: once in 20 readings: an apprentice.\n');
    expect(await told('slips')).toMatch(
      /thimble turn .* once in 67 readings +once in 20 readings +.*an apprentice \(Odo Ferrick, 2026-11-02\)/,
    );
    const refused = await at.ask(['register', 'slip-chance', 'slip=thimble turn', 'once-in=2', 'why=x']);
    expect(refused.code).toBe(1);
    expect(refused.err).toMatch(/once in 2 readings is no chance .* give a number from 4 to 1000000/);
  });

  it('hold for a job that is booked in from then on, and for an older one when they are brought to it', async () => {
    expect(await told('slips', 'J-1')).toMatch(/once in 67 readings +once in 20 readings +as usual/);
    await told(
      'book-in',
      demoFile('engines/mudlark-1.yaml'),
      'owner=Tilling Pumps',
      'plate=M1-1',
      'hours=3000h',
      'complaint=knocks',
      'currency=crowns',
      'number=J-50',
    );
    expect(await told('slips', 'J-50')).toMatch(/once in 20 readings +once in 20 readings/);
    const odds = async () =>
      (JSON.parse(await told('show', 'J-1', '--json')) as { doubts: { slip: string; odds: number }[] }).doubts
        .filter(({ slip }) => slip === 'thimble turn')
        .map((doubt) => doubt.odds);
    const [before = 0] = await odds();
    expect(await told('slips', 'J-1', '--bring')).toMatch(/once in 20 readings +once in 20 readings/);
    const [after = 0] = await odds();
    expect(after).toBeGreaterThan(before);
  });

  it('stand on the record of the job, which verifies', async () => {
    await told('record', 'J-50', '--to', `${at.folder}/j50.html`);
    expect(await told('verify', `${at.folder}/j50.html`)).toMatch(/^Verified/i);
  });

  it('are usual again when the shop says so', async () => {
    expect(await told('register', 'usual-slip-chance', 'slip=thimble turn', 'why=he has learnt it')).toBe(
      'thimble turn: as usual, once in 67 readings: he has learnt it.\n',
    );
    expect(await told('slips', 'J-50')).toMatch(/once in 67 readings +as usual +once in 20 readings/);
  });
});
