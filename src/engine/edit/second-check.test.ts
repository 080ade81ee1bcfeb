/** @module The second person's check: who may check, what agrees, and what is written when. */
import { describe, expect, it } from 'vitest';
import { changed, quillfeatherText } from '../../../test/engines/demo-engines.ts';
import { readEngineType } from '../read-engine-type.ts';
import { criticalFigures } from './critical-figures.ts';
import { fileData } from './edit-engine.ts';
import { nextVersion } from './new-version.ts';
import { secondCheck } from './second-check.ts';

const entered = changed(quillfeatherText, [
  "checked: { by: Perpetua Sallow, on: '2026-03-02' }",
  "entered: { by: Odo Ferrick, on: '2026-03-01' }",
]);

const figuresOf = (text: string) => {
  const file = fileData(text);
  return file.kind === 'answer' ? criticalFigures(file.value.data) : [];
};

/** What somebody who reads the same manual types, but for some. */
const typed = (text: string, others: Readonly<Record<string, string>> = {}) =>
  new Map(figuresOf(text).map(({ at, figure }) => [at, others[at] ?? figure]));

const checker = { by: 'Perpetua Sallow', on: '2026-03-02' };
const float = 'characteristics/end-float/limits/wear/greatest';
const floatTwice = changed(entered, [
  'wear: { greatest: 0.40 mm }',
  'wear: { greatest: 0.40 mm (0.016 in) }',
]);

const answered = (text: string, figures: ReadonlyMap<string, string>, by = checker) => {
  const checked = secondCheck(text, figures, by);
  if (checked.kind === 'refused') throw new Error(JSON.stringify(checked.refusal));
  return checked.value;
};

describe('critical figures', () => {
  it('are all limits, torques, what sums are held to and the datum, each with the words to look it up by', () => {
    const figures = figuresOf(entered);
    const { engine } = readEngineType(entered);
    const limits = [
      ...(engine?.characteristics.values() ?? []),
      ...[...(engine?.components.values() ?? [])].flatMap(({ sizes }) => sizes?.steps ?? []),
    ].flatMap(({ limits }) => Object.keys(limits?.printed ?? {}));
    const stages = [...(engine?.fasteners.values() ?? [])].flatMap(({ stages }) => stages);
    const { limits: everywhere, steps = [] } = engine?.runIn ?? {};
    const run = [...(everywhere?.values() ?? []), ...steps.flatMap((step) => [...step.limits.values()])];
    // A limit that every step shares is one figure in the file.
    const gauges = [...new Set(run)].flatMap(({ printed }) =>
      Object.keys(printed).filter((key) => key === 'least' || key === 'greatest'),
    );
    const kept = [...(engine?.operations.values() ?? [])]
      .flatMap(({ sums }) => sums.flatMap(({ keeps }) => keeps))
      .flatMap(({ printed }) => Object.keys(printed));
    expect(kept.length).toBeGreaterThan(0);
    expect(figures).toHaveLength(limits.length + stages.length + kept.length + gauges.length + 1);
    expect(figures.find(({ at }) => at === float)).toMatchObject({
      title: 'crankshaft end float: may go back, at most',
      figure: '0.40 mm',
      source: 'invented, sheet 1',
    });
    expect(figures.at(-1)).toMatchObject({ title: 'datum of the pumps', figure: '83.00 mm' });
  });
});

describe('what a sum is held to', () => {
  it('is typed in again with the rest, in its own unit, of every size by itself', () => {
    const sized = changed(entered, [
      'keeps: { torque: { least: 90 N·m } }',
      "keeps: { torque: { least: 90 N·m, size-of: mains, sizes: { '0.25': { least: 95 N·m } } } }",
    ]);
    const held = figuresOf(sized).filter((figure) =>
      figure.title.includes('what the pinion holds when cold'),
    );
    expect(held).toMatchObject([
      { kind: 'torque', figure: '90 N·m', title: expect.stringMatching(/torque: at least$/) },
      { kind: 'torque', figure: '95 N·m', title: expect.stringMatching(/torque, size 0\.25: at least$/) },
    ]);
  });

  it('differs where it is read otherwise, and takes the check away where it is changed', () => {
    const [held] = figuresOf(entered).filter((figure) => figure.title.includes('what the pinion holds'));
    expect(answered(entered, typed(entered, { [held?.at ?? '']: '9 N·m' }))).toMatchObject({
      kind: 'differs',
      apart: [{ figure: '90 N·m', reads: '9 N·m' }],
    });
    const { text } = answered(entered, typed(entered));
    const next = nextVersion(text, changed(text, ['least: 90 N·m', 'least: 80 N·m']), {
      by: 'Odo Ferrick',
      on: '2026-03-05',
    });
    if (next.kind === 'refused') throw new Error(next.refusal.what);
    expect(next.value).not.toContain('checked:');
  });
});

describe('the second check', () => {
  it('writes down who checked once all agree, and nothing else changes', () => {
    const checked = answered(entered, typed(entered));
    expect(checked).toEqual({
      kind: 'checked',
      text: changed(
        entered,
        ['version: 1\n', 'version: 2\n'],
        ["on: '2026-03-01' }\n", "on: '2026-03-01' }\nchecked: { by: Perpetua Sallow, on: '2026-03-02' }\n"],
      ),
    });
    expect(readEngineType(checked.text).troubles).toEqual([]);
  });

  it.each([
    ['with fewer zeros', { [float]: '0.4 mm' }],
    ['with a comma', { [float]: '0,40 mm' }],
    ['in another unit that is exactly the same', { [float]: '400 µm' }],
  ])('takes the same figure %s', (_, others) => {
    expect(answered(entered, typed(entered, others)).kind).toBe('checked');
  });

  it('takes either figure of a pair that the manual prints', () => {
    for (const figure of ['0.40 mm', '0.016 in', '0.016 in (0.40 mm)'])
      expect(answered(floatTwice, typed(floatTwice, { [float]: figure })).kind).toBe('checked');
    expect(answered(floatTwice, typed(floatTwice, { [float]: '0.016 in (0.41 mm)' })).kind).toBe('differs');
  });

  it('shows both what one of them read otherwise, and signs nothing', () => {
    const apart = answered(entered, typed(entered, { [float]: '0.46 mm' }));
    expect(apart).toMatchObject({
      kind: 'differs',
      apart: [{ at: float, figure: '0.40 mm', reads: '0.46 mm' }],
    });
    const { engine, troubles } = readEngineType(apart.text);
    expect(engine?.checked).toBeUndefined();
    expect(troubles.map(({ what }) => what)).toContain(
      'Perpetua Sallow read 0.46 mm here in the manual (2026-03-02)',
    );
    const again = answered(apart.text, typed(apart.text));
    expect(again.kind).toBe('checked');
    expect(readEngineType(again.text).engine?.differs).toEqual([]);
  });

  it.each([
    ['who typed the figures in', entered, { by: 'odo  ferrick', on: '2026-03-02' }, /typed these figures in/],
    ['who does not sign', entered, { by: ' ', on: '2026-03-02' }, /nobody signs/],
    ['of a file without an author', quillfeatherText, checker, /does not say who/],
    ['of a file with an error', changed(entered, ['cylinders: 3', 'cylinders: x']), checker, /has errors/],
  ])('is refused to one %s', (_, text, by, says) => {
    const checked = secondCheck(text, typed(entered), by);
    expect(checked.kind === 'refused' && checked.refusal.what).toMatch(says);
  });

  it('is refused while a figure is left out or cannot be read', () => {
    const left = new Map([...typed(entered)].filter(([at]) => at !== float));
    expect(secondCheck(entered, left, checker)).toMatchObject({
      refusal: { what: 'a figure has not been typed in yet', where: expect.stringContaining('end float') },
    });
    expect(secondCheck(entered, typed(entered, { [float]: 'NaN mm' }), checker)).toMatchObject({
      refusal: { what: expect.stringContaining('no number') },
    });
  });
});

describe('the next version', () => {
  const next = (before: string, after: string) => {
    const version = nextVersion(before, after, { by: 'Ilse Quarrow', on: '2026-04-01' });
    if (version.kind === 'refused') throw new Error(version.refusal.what);
    return readEngineType(version.value).engine;
  };

  it('keeps author and check where no critical figure changed', () => {
    const before = answered(entered, typed(entered)).text;
    expect(next(before, changed(before, ['title: crankshaft end float', 'title: end float']))).toMatchObject({
      version: 3,
      entered: { by: 'Odo Ferrick' },
      checked: { by: 'Perpetua Sallow' },
    });
  });

  it('has a new author and no check where one did', () => {
    const before = answered(entered, typed(entered)).text;
    const engine = next(before, changed(before, ['greatest: 0.40 mm', 'greatest: 0.41 mm']));
    expect(engine?.entered).toEqual({ by: 'Ilse Quarrow', on: '2026-04-01' });
    expect(engine?.checked).toBeUndefined();
  });

  it('settles a difference by touching its figure, and leaves the others', () => {
    const datum = 'pump-timing/datum';
    const apart = answered(entered, typed(entered, { [float]: '0.46 mm', [datum]: '83.50 mm' })).text;
    const engine = next(apart, changed(apart, ['greatest: 0.40 mm', 'greatest: 0.46 mm']));
    expect(engine?.differs.map(({ at }) => at)).toEqual([datum]);
  });

  it('is refused to another type', () => {
    const other = changed(entered, ['id: quillfeather-3w', 'id: quillfeather-4']);
    expect(nextVersion(entered, other, checker)).toMatchObject({ refusal: { where: 'id' } });
  });
});
