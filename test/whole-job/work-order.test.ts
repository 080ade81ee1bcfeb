/** @module The order of work in the terminal: strip, build, reaching a place, fewest changes, fitters side by side, what is open. */
import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bench, demoFile } from './endfloat.ts';

const at = bench();
beforeAll(() => copyFileSync(demoFile('engines/quillfeather-3w.yaml'), join(at.folder, 'type.yaml')));
afterAll(at.clear);

const ask = (...words: readonly string[]) => at.ask(['work-order', 'type.yaml', ...words]);
const json = async (...words: readonly string[]) => JSON.parse((await ask(...words, '--json')).out);

describe('endfloat work-order', () => {
  it('lists the strip in its order, with how the engine lies, tools and hold points', async () => {
    const { code, out } = await ask('--strip');
    expect(code).toBe(0);
    expect(out).toMatch(/^ 1 {2}isolate-and-drain .* any way/m);
    expect(out).toMatch(/^ 7 {2}open-shim-packs .* any way/m);
    expect(out).toMatch(/^11 {2}drop-sump .* upside-down/m);
    expect(out).toContain('17 operations, 735 minutes where they are said');
    expect(out).not.toContain('close-galleries');
  });

  it('lists building and setting, or everything', async () => {
    const built = await json('--build');
    const all = await json();
    const phases = (order: readonly { readonly phase: string }[]) => [
      ...new Set(order.map(({ phase }) => phase)),
    ];
    expect(phases(built.order)).toEqual(['build', 'set']);
    expect(phases(all.order)).toEqual(['strip', 'build', 'set', 'run']);
  });

  it('says what it takes to reach a place', async () => {
    const { code, out } = await ask('--to', 'pump.2');
    expect(code).toBe(0);
    expect(out).toContain('To reach the fuel pump 2: 5 operations');
    expect(out).toContain('2 × manifold gaskets');
    expect(out).toMatch(/To be fitted and set again[\s\S]*find-top-dead-centre[\s\S]*prove-stop/);
    const found = await json(
      '--to',
      'pump',
      '--done',
      'isolate-and-drain,lift-onto-stand',
      '--done',
      'mark-parts',
    );
    expect(found.strip.map(({ name }: { name: string }) => name)).toEqual(['strip-manifolds', 'lift-pumps']);
    expect(found).toMatchObject({ off: ['manifold', 'pump'], prove: ['pump-depth', 'spill-angle'] });
  });

  it('turns the engine as seldom as can be', async () => {
    const { out } = await ask('--strip', '--fewest-changes');
    expect(out).toContain(
      'The engine is turned 3 times, special tools are fetched 7 times: no order does with less.',
    );
    expect(await json('--strip', '--fewest-changes')).toMatchObject({ turns: 3, fetches: 7, proved: true });
  });

  it('shares the work between two fitters', async () => {
    const { out } = await ask('--strip', '--fitters', '2');
    expect(out).toMatch(/1 and 2 {2}lift-head/);
    expect(out).toContain('All is done after 10 h 00 min: no way of sharing it is quicker.');
    const alone = await ask('--strip', '--fitters', '1');
    expect(alone.out).toContain('All is done after 12 h 15 min');
    expect(alone.out).toContain('lift-head takes 2 people: ask for another pair of hands.');
  });

  it('divides the work into shifts', async () => {
    const { out } = await ask('--strip', '--shift', '480');
    // source: hand arithmetic: 735 minutes are more than one shift of 480 and no more than two
    expect(out).toContain('2 shifts, one operation after another: it cannot be done in fewer.');
    const { shifts, proved } = await json('--strip', '--shift', '480');
    expect(proved).toBe(true);
    expect(shifts.flatMap((one: { operations: readonly string[] }) => one.operations)).toHaveLength(17);
    const { code, err } = await ask('--strip', '--shift', '100');
    expect(code).toBe(2);
    expect(err).toContain('wash-block takes 120 minutes and does not go into a shift of 100');
  });

  it('says what can be done now, and what waits for parts', async () => {
    const strip = (await json('--strip')).order.map(({ name }: { name: string }) => name).join(',');
    const { out } = await ask('--now', '--done', `${strip},close-galleries`, '--away', 'main');
    expect(out).toMatch(
      /Can be done now[\s\S]*ring-pistons[\s\S]*Waits for parts\n {2}fit-main-shells: .*\(main away\)/,
    );
  });

  it('refuses to share out work of which it is not said how long it takes', async () => {
    const text = readFileSync(join(at.folder, 'type.yaml'), 'utf8').replaceAll(/^ {4}minutes: \d+\n/gm, '');
    writeFileSync(join(at.folder, 'untimed.yaml'), text);
    const { code, err } = await at.ask(['work-order', 'untimed.yaml', '--strip', '--fitters', '2']);
    expect(code).toBe(2);
    expect(err).toMatch(/not said how long these 17 take: isolate-and-drain, .* …/);
  });

  it.each([
    [['--to', 'pmup'], /there is no place pmup.*write pump/],
    [['--strip', '--build'], /--strip and --build do not go together/],
    [['--fitters', 'two'], /two is no number of fitters.*1 to 4/],
    [['--shift', 'eight'], /eight is no length of a shift.*480 for eight hours/],
    [['--shift', '480', '--now'], /--shift and --now do not go together/],
    [['--done', 'lift-hed'], /there is no operation lift-hed \(--done\): did you mean lift-head/],
    [['--now', '--away', 'pumps'], /there is no part pumps \(--away\): did you mean pump/],
    [['--away', 'pump'], /--away says nothing without --now/],
  ] as const)('%j is told in words', async (words, says) => {
    const { code, out, err } = await ask(...words);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(says);
  });
});
