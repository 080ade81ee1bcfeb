/** @module What changed between two versions: told by figure, and nothing else told. */
import { describe, expect, it } from 'vitest';
import { changed, quillfeatherText } from '../../../test/engines/demo-engines.ts';
import { changesBetween } from './changes.ts';

const between = (before: string, after: string) => {
  const changes = changesBetween(before, after);
  return changes.kind === 'answer' ? changes.value : changes.refusal;
};

describe('the changes between two versions', () => {
  it('are none where only comments, layout, version and signatures differ', () => {
    const after = changed(
      quillfeatherText,
      ['version: 1', 'version: 2'],
      ['# In the order in which hands take them.', '# Another comment.'],
      ['cylinders: 3', '\ncylinders:   3'],
      ['by: Perpetua Sallow', 'by: Odo Ferrick'],
    );
    expect(between(quillfeatherText, after)).toEqual([]);
  });

  it('name each figure with what it was and is', () => {
    const after = changed(
      quillfeatherText,
      ['wear: { greatest: 0.40 mm }', 'wear: { greatest: 0.38 mm }'],
      ['stages: [40 N·m, 70 N·m, 95 N·m]', 'stages: [40 N·m, 75 N·m, 95 N·m]'],
    );
    expect(between(quillfeatherText, after)).toEqual([
      {
        kind: 'changed',
        where: 'characteristics, end-float, limits, wear, greatest',
        before: '0.40 mm',
        after: '0.38 mm',
      },
      {
        kind: 'changed',
        where: 'fasteners, main-cap-bolts, stages',
        before: '[40 N·m, 70 N·m, 95 N·m]',
        after: '[40 N·m, 75 N·m, 95 N·m]',
      },
    ]);
  });

  it('tell an offer put in front as one that was added, and a step by its name', () => {
    const offer = `offers:
  - { component: head, does: machine, size: standard, supplier: Oddy & Thrale, price: '40.00', per: set, days: 2 }`;
    const after = changed(
      quillfeatherText,
      ['offers:', offer],
      ['wear: { least: 54.430 mm }', 'wear: { least: 54.420 mm }'],
    );
    expect(between(quillfeatherText, after)).toEqual([
      {
        kind: 'changed',
        where: 'components, mains, sizes, steps, 0.50, limits, wear, least',
        before: '54.430 mm',
        after: '54.420 mm',
      },
      expect.objectContaining({ kind: 'added', where: 'offers, head machine standard Oddy & Thrale' }),
    ]);
  });

  it('tell what was taken out', () => {
    const after = changed(quillfeatherText, [
      'limits: { new: { least: 0.10 mm, greatest: 0.25 mm }, wear: { greatest: 0.40 mm } }',
      'limits: { new: { least: 0.10 mm, greatest: 0.25 mm } }',
    ]);
    expect(between(quillfeatherText, after)).toEqual([
      {
        kind: 'taken out',
        where: 'characteristics, end-float, limits, wear',
        before: '{ greatest: 0.40 mm }',
      },
    ]);
  });

  it('are refused where one of the two cannot be read', () => {
    expect(between(quillfeatherText, 'a: "')).toMatchObject({ where: expect.stringMatching(/^line/) });
  });
});
