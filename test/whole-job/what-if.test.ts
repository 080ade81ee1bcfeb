/** @module What if, asked in the terminal: another price, a supplier left out, and names that are not there. */
import { afterAll, describe, expect, it } from 'vitest';
import { bench, demoFile } from './endfloat.ts';

const at = bench();
afterAll(at.clear);

const plan = (...more: readonly string[]) =>
  at.ask([
    'plan',
    demoFile('engines/quillfeather-3w.yaml'),
    demoFile('readings/quillfeather-worn.csv'),
    ...['--hours-run', '6200', '--hours-wanted', '4000', '--json'],
    ...more,
  ]);

const doneTo = (out: string, slot: string): string => {
  const { choices } = JSON.parse(out) as {
    choices: readonly { slot: string; does: string; size: string; supplier: string }[];
  };
  const choice = choices.find((each) => each.slot === slot);
  return `${choice?.does} ${choice?.size}, ${choice?.supplier}`;
};

describe('what if', () => {
  it('another price is asked about: the plan turns to it where it is the cheapest then', async () => {
    expect(doneTo((await plan()).out, 'big-ends')).toBe('machine 0.25, Grindle & Wick, crankshaft grinders');
    const { code, out } = await plan('--price', 'exchange-crankshaft=90.00');
    expect(code).toBe(0);
    expect(doneTo(out, 'big-ends')).toBe('exchange 0.25, Tump Lane Engine Parts');
    expect(doneTo(out, 'mains')).toBe('exchange 0.25, Tump Lane Engine Parts');
  });

  it('a supplier is left out: nothing of theirs is taken, and a conflict names them', async () => {
    const { out } = await plan('--without', 'grindle');
    expect(out).toContain('Tump Lane Engine Parts');
    expect(out).not.toMatch(/"supplier": "Grindle/);
    const none = await plan('--without', 'Pellow');
    expect(none.code).toBe(1);
    expect(JSON.parse(none.out).demands).toContain("without Pellow's Boring Mill");
  });

  it.each([
    [['--without', 'grindel'], /nobody called grindel offers anything \(--without\): .*Grindle & Wick/],
    [
      ['--price', 'exchange-crankshafts=90'],
      /nothing called exchange-crankshafts is open.*write exchange-crankshaft/,
    ],
    [['--price', 'exchange-crankshaft=cheap'], /exchange-crankshaft=cheap is not OPTION=PRICE \(--price\)/],
  ])('%j is refused, with what may be meant', async (words, says) => {
    const { code, err } = await plan(...words);
    expect(code).toBe(2);
    expect(err).toMatch(says);
  });
});
