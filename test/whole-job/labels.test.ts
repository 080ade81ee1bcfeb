/** @module Labels and tags in the terminal: written as a page, and told what they are. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bench } from './endfloat.ts';

describe('tags in the terminal', () => {
  const at = bench();
  beforeAll(async () => {
    expect((await at.ask(['demo'])).code).toBe(0);
  });
  afterAll(() => at.clear());

  it('are told, and one of another job is refused', async () => {
    const told = await at.ask(['tag', 'J-2', '20']);
    expect(told.out).toMatch(/^piston 3, tag 20, J-2\/piston\.3\nBelongs to: cylinder 3\n/);
    const refused = await at.ask(['tag', 'J-2', 'J-3/piston.3']);
    expect(refused).toMatchObject({ code: 1, out: '' });
    expect(refused.err).toContain('this tag is of job J-3, and this is job J-2');
  });

  it('have labels for the parts that are named, on the paper that is named', async () => {
    const told = await at.ask([
      'labels',
      'J-2',
      '--size',
      'roll-62',
      '--part',
      'valve.1',
      '--part',
      '2',
      '--to',
      'labels.html',
    ]);
    expect(told.out).toContain('2 labels, strip 62 mm wide');
    const page = readFileSync(join(at.folder, 'labels.html'), 'utf8');
    expect([...page.matchAll(/data-tag="([^"]*)"/g)].map(([, id]) => id)).toEqual(['valve.1', 'injector.1']);
    expect(page).toContain('@page { size: 62mm 40mm; margin: 0; }');
    for (const [wrong, says] of [
      [['--size', '70x38'], /choose one of 70x37/],
      [['--part', 'valve.9'], /is no tag of job J-2/],
      [['--skip', 'x'], /how many of the first sheet/],
    ] as const)
      expect((await at.ask(['labels', 'J-2', ...wrong])).err).toMatch(says);
  });
});
