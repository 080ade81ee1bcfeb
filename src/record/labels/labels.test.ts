/** @module Labels: they lie on their sheets, their letters are read at arm's length, their codes keep to the standard. */
import { beforeAll, describe, expect, it } from 'vitest';
import { awaitingDecision } from '../../../demo/jobs/awaiting-decision.ts';
import { brambleholt, mudlark, quillfeather } from '../../../test/engines/demo-engines.ts';
import { qrCode } from '../../drawing/qr-code.ts';
import type { EngineType } from '../../engine/engine-type.ts';
import { tagsOf } from '../../job/home/tag.ts';
import { readTag } from '../../job/home/tag-text.ts';
import type { OpenJob } from '../../job/job.ts';
import { cardDrawn } from './card.ts';
import { labelDrawn, scannedText } from './label.ts';
import { labelSizes, spotsOf } from './label-size.ts';
import { labelsPage } from './labels-page.ts';
import { armsLength, capitalOf, capitalReadFrom, lettered } from './legible.ts';

const engines = [quillfeather(), brambleholt(), mudlark()];
let job: OpenJob;
beforeAll(async () => {
  job = (await awaitingDecision()).job();
});
const of = (engine: EngineType): OpenJob => ({ ...job, sheet: { ...job.sheet, engine } });

describe('letters', () => {
  it('are as high as the standard asks for from their distance', () => {
    // source: 22 minutes of arc seen from 1 m; from 6 m 5 minutes are the 8.73 mm of the 6/6 line of a sight chart
    expect(capitalReadFrom(1)).toBeCloseTo(6.4, 2);
    expect((capitalReadFrom(6) * 5) / 22).toBeCloseTo(8.73, 2);
    expect(capitalReadFrom(armsLength)).toBeCloseTo(4.48, 2);
  });

  it('fill a box with whole words, a number kept with its word', () => {
    expect(lettered('fuel pump 3', { width: 30, height: 20 }, 8).lines).toEqual(['fuel', 'pump 3']);
    const set = lettered('rear seal housing', { width: 30, height: 20 }, 30);
    expect(set.lines.join(' ')).toBe('rear seal housing');
    expect(set.height).toBeLessThanOrEqual(20 + 1e-9);
    expect(lettered('x'.repeat(200), { width: 1, height: 1 }, 5).size).toBeGreaterThan(0);
    expect(lettered('', { width: 9, height: 9 }, 5)).toMatchObject({ lines: [''], size: 5 });
  });
});

describe.each(labelSizes)('labels of $name', (size) => {
  it('lie on the sheet, none over another', () => {
    for (const [at, { x, y }] of spotsOf(size).entries()) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(y).toBeGreaterThanOrEqual(0);
      const [width, height] = size.turned
        ? [size.label.height, size.label.width]
        : [size.label.width, size.label.height];
      expect(x + width).toBeLessThanOrEqual(size.page.width + 1e-9);
      expect(y + height).toBeLessThanOrEqual(size.page.height + 1e-9);
      const next = spotsOf(size)[at + 1];
      if (next?.y === y) expect(next.x).toBeGreaterThanOrEqual(x + width - 1e-9);
    }
  });

  it.each(engines)(
    'name every part in letters that are read at arm’s length, with a code of modules that a camera tells apart',
    (engine) => {
      for (const tag of tagsOf(engine)) {
        const { module, nameSize } = (size.card ? cardDrawn : labelDrawn)(of(engine), tag, size.label);
        expect(capitalOf(nameSize), tag.title).toBeGreaterThanOrEqual(capitalReadFrom(armsLength) - 0.07);
        // common practice, no source: cameras and scanners want modules of at least 0.4 mm or so
        expect(module, tag.title).toBeGreaterThanOrEqual(0.5);
        // On a printer with 8 dots a millimetre a module is whole dots.
        expect(module * 8).toBe(Math.round(module * 8));
      }
    },
  );

  it('begin where the sheet is not used up yet, and leave none out', () => {
    const tags = tagsOf(job.sheet.engine).slice(0, 9);
    for (const skip of [0, 5, 500]) {
      const page = labelsPage(job, { size, tags, skip });
      expect([...page.matchAll(/data-tag="([^"]*)"/g)].map(([, id]) => id)).toEqual(tags.map(({ id }) => id));
    }
    const spots = size.columns * size.rows;
    const one = labelsPage(job, { size, tags: tags.slice(0, 1), skip: spots - 1 });
    expect(one.match(/<svg/g)?.length).toBe(1);
  });
});

describe('the code of a tag', () => {
  it('holds a text that reads back to it', () => {
    for (const tag of tagsOf(job.sheet.engine)) {
      const read = readTag(job, scannedText(job, tag));
      expect(read.kind === 'answer' ? read.value : read.refusal).toEqual(tag);
    }
  });

  it('is as wide as the standard has it, with four light modules all round', () => {
    // source: ISO/IEC 18004, version 1 has 21 modules a side and 4 more a version; level H in capitals takes 10 signs
    // in version 1 and 20 in version 2
    const code = qrCode('J-2/SUMP.1');
    expect(code).toHaveLength(21 + 8);
    expect(qrCode('J-2/PISTON.1')).toHaveLength(25 + 8);
    for (const [at, row] of code.entries()) {
      const quiet = at < 4 || at >= code.length - 4 ? row : [...row.slice(0, 4), ...row.slice(-4)];
      expect(quiet).not.toContain(true);
    }
    expect(code[4]?.slice(4, 11)).toEqual(Array(7).fill(true));
  });
});

it('a job whose number holds marks and letters of its own has labels all the same', () => {
  const odd: OpenJob = { ...job, booked: { ...job.booked, number: '26/031 <ж> & Söhne' } };
  const [size] = labelSizes;
  if (!size) throw new Error('no label size');
  const page = labelsPage(odd, { size, tags: tagsOf(odd.sheet.engine) });
  expect(page).not.toContain('<ж>');
  for (const tag of tagsOf(odd.sheet.engine)) {
    const read = readTag(odd, scannedText(odd, tag));
    expect(read.kind === 'answer' ? read.value.id : read.refusal.what).toBe(tag.id);
  }
});
