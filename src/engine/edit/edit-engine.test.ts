/** @module Edits of an engine type: what each does to the file, and what it must leave alone. */
import { describe, expect, it } from 'vitest';
import { mudlarkText, quillfeatherText } from '../../../test/engines/demo-engines.ts';
import { readEngineType } from '../read-engine-type.ts';
import { editEngine } from './edit-engine.ts';
import type { EngineEdit } from './engine-edit.ts';

const edited = (text: string, ...edits: readonly EngineEdit[]) => {
  const done = editEngine(text, edits);
  if (done.kind === 'refused') throw new Error(JSON.stringify(done.refusal));
  return done.value;
};

const refusal = (...edits: readonly EngineEdit[]) => {
  const done = editEngine(quillfeatherText, edits);
  return done.kind === 'refused' ? done.refusal : undefined;
};

const rocker = {
  title: 'rocker shaft diameter',
  at: 'head',
  wears: 'smaller',
  limits: { new: { least: '17.97 mm', greatest: '18.00 mm' }, wear: { least: '17.92 mm' } },
  source: 'sheet 9',
};

describe('an edit', () => {
  it('adds a characteristic, changes its limit and takes it out again', () => {
    const added = edited(quillfeatherText, {
      kind: 'set entry',
      in: 'characteristics',
      name: 'rocker-shaft',
      entry: rocker,
    });
    expect(added.troubles).toEqual([]);
    expect(added.engine?.characteristics.get('rocker-shaft')?.limits?.goesBack.least).toBe(17.92);
    const changed = edited(added.text, {
      kind: 'set limit',
      of: { characteristic: 'rocker-shaft' },
      side: 'wear.least',
      figure: '0.7054 in',
    });
    expect(changed.engine?.characteristics.get('rocker-shaft')?.limits?.goesBack.least).toBeCloseTo(
      17.917,
      3,
    );
    const gone = edited(changed.text, { kind: 'remove entry', in: 'characteristics', name: 'rocker-shaft' });
    expect(gone.text).toBe(quillfeatherText);
  });

  it('keeps a figure with its last zeros, and fractions of an inch, as printed', () => {
    const { text, engine } = edited(mudlarkText, {
      kind: 'set limit',
      of: { characteristic: 'ring-gap' },
      side: 'wear.greatest',
      figure: '1/32 in (0.80 mm)',
    });
    expect(text).toContain('greatest: 1/32 in (0.80 mm)');
    expect(engine?.characteristics.get('ring-gap')?.limits?.printed['wear.greatest']).toEqual({
      text: '1/32',
      unit: 'in',
    });
  });

  it('takes a group of limits out with its last figure', () => {
    const { text, engine } = edited(quillfeatherText, {
      kind: 'set limit',
      of: { characteristic: 'end-float' },
      side: 'wear.greatest',
      figure: undefined,
    });
    expect(text).toContain('limits: { new: { least: 0.10 mm, greatest: 0.25 mm } }');
    expect(engine?.characteristics.get('end-float')?.limits?.goesBack.greatest).toBe(0.25);
  });

  it('sets a limit of a size step, adds a step and takes one out', () => {
    const step = {
      name: '0.75',
      limits: { new: { least: '54.220 mm', greatest: '54.240 mm' }, wear: { least: '54.180 mm' } },
    };
    const more = edited(
      quillfeatherText,
      { kind: 'set size step', component: 'mains', step },
      {
        kind: 'set limit',
        of: { component: 'mains', step: '0.75' },
        side: 'wear.least',
        figure: '54.185 mm',
      },
    );
    expect(more.text).toContain(
      "        - name: '0.75'\n          limits: { new: { least: 54.220 mm, greatest: 54.240 mm }, wear: { least: 54.185 mm } }\n",
    );
    // Nobody offers the journals in that size, nor shells for them: the linter sees the new step.
    expect(more.troubles.map(({ what }) => what).join()).toContain('0.75');
    const less = edited(more.text, { kind: 'remove size step', component: 'mains', step: '0.75' });
    expect(less.text).toBe(quillfeatherText);
  });

  it('adds, changes and takes out a component and an offer', () => {
    const { engine, text } = edited(
      quillfeatherText,
      {
        kind: 'set entry',
        in: 'components',
        name: 'rocker-shaft',
        entry: {
          title: 'rocker shaft',
          at: 'head',
          together: true,
          'judged-by': [],
          'put-back': false,
          life: '6000 h',
        },
      },
      {
        kind: 'set offer',
        offer: {
          component: 'rocker-shaft',
          does: 'replace',
          size: 'standard',
          supplier: 'Tump Lane Engine Parts',
          price: '31.50',
          per: 'set',
          days: 4,
        },
      },
    );
    expect(engine?.offers.at(-1)).toMatchObject({ component: 'rocker-shaft', cents: 3150 });
    const last = (engine?.offers.length ?? 0) - 1;
    const gone = edited(
      text,
      { kind: 'remove offer', at: last },
      { kind: 'remove entry', in: 'components', name: 'rocker-shaft' },
    );
    expect(gone.text).toBe(quillfeatherText);
  });

  it('may leave troubles behind, which are told where they stand', () => {
    const { engine, troubles, text } = edited(quillfeatherText, {
      kind: 'set limit',
      of: { characteristic: 'end-float' },
      side: 'new.least',
      figure: 'a tenth',
    });
    expect(engine).toBeUndefined();
    expect(troubles).toMatchObject([{ where: 'characteristics, end-float, limits, new, least' }]);
    expect(text.split('\n')[(troubles[0]?.line ?? 0) - 1]).toContain('least: a tenth');
  });

  it.each([
    ['NaN mm', /no number/],
    ['1e99 mm', /far too large/],
    ['1e300 mm', /far too large/],
    ['−', /sign without a number/],
    ['1,234.5 mm', /two ways/],
    ['54,97 mm', undefined],
    ['2 9/16 in', undefined],
  ])('with the figure %s is read or told, and the figure stays as typed', (figure, says) => {
    const { text, troubles } = edited(mudlarkText, {
      kind: 'set limit',
      of: { characteristic: 'end-float' },
      side: 'new.greatest',
      figure,
    });
    expect(text).toContain(figure);
    const errors = troubles.filter(({ weight }) => weight === 'error' && says?.test(weight) !== undefined);
    if (says) expect(errors.map(({ what }) => what).join()).toMatch(says);
    else expect(troubles.filter(({ what }) => what.startsWith(`'${figure}'`))).toEqual([]);
  });

  it('that names what is not there is refused with the nearest name, and nothing is done', () => {
    expect(refusal({ kind: 'remove entry', in: 'characteristics', name: 'end-flote' })).toMatchObject({
      what: 'there is no characteristic end-flote',
      remedy: expect.stringContaining('end-float'),
    });
    expect(
      refusal({
        kind: 'set limit',
        of: { component: 'mains', step: '0.26' },
        side: 'new.least',
        figure: '1 mm',
      })?.remedy,
    ).toContain('0.25');
    expect(refusal({ kind: 'remove offer', at: 500 })?.what).toBe('there is no offer no. 501');
    expect(refusal({ kind: 'set size step', component: 'head', step: { name: '0.25' } })?.what).toBe(
      'head has no sizes yet',
    );
  });

  it('of a file that is no engine type says where it cannot be read', () => {
    const done = editEngine('title: "open', []);
    expect(done).toMatchObject({ kind: 'refused', refusal: { where: expect.stringContaining('line') } });
  });

  it('of nothing leaves every byte and says what reading says', () => {
    const done = edited(quillfeatherText);
    expect(done.text).toBe(quillfeatherText);
    expect(done.troubles).toEqual(readEngineType(quillfeatherText).troubles);
  });
});
