/** @module The blank measuring sheet: every cell once, in the order of entry, whatever the engine is called. */
import { describe, expect, it } from 'vitest';
import { changed, quillfeather, quillfeatherText } from '../../test/engines/demo-engines.ts';
import { instruments } from '../../test/engines/small-engine.ts';
import { readEngineType } from '../engine/read-engine-type.ts';
import { readReadings } from '../measure/import-readings.ts';
import { entryOrder } from '../measure/scheme.ts';
import { sheetBoxes } from '../measure/sheet-box.ts';
import { measuringSheet } from './measuring-sheet.ts';

const engine = quillfeather();
const engineOf = (text: string) => readEngineType(text).engine ?? engine;
const codesOn = (page: string) =>
  [...page.matchAll(/<span class="box">([^<]*)<\/span>/g)].map(([, code]) => code);

describe('a blank measuring sheet', () => {
  const page = measuringSheet(engine);

  it('has a box for every cell, in the order in which hands go', () => {
    expect(codesOn(page)).toEqual(sheetBoxes(engine).map(({ code }) => code));
    expect(codesOn(page)).toHaveLength(entryOrder(engine).length);
  });

  it('typed in from the first box to the last fills every cell in that order', () => {
    const typed = codesOn(page).map((code, at) => `${code};${at},5`);
    const { readings, troubles } = readReadings(['box;reading', ...typed].join('\n'), engine, instruments);
    expect(troubles.filter(({ weight }) => weight === 'error')).toEqual([]);
    expect(readings.map(({ cell }) => cell)).toEqual(entryOrder(engine));
  });

  it('says at each characteristic its unit, limits, page and where to write instrument and name', () => {
    expect(page).toContain('<bdi>main journal diameter</bdi>, in mm');
    expect(page).toContain(
      'as made 54.970 to 54.990 mm; may go back at least 54.930 mm (<bdi>invented, sheet 1</bdi>)',
    );
    expect(page).toContain('outside micrometer');
    expect(page).not.toContain('main journal ovality');
  });

  it('prints both figures where the manual does', () => {
    const both = engineOf(
      changed(quillfeatherText, ['wear: { greatest: 0.40 mm }', 'wear: { greatest: 0.40 mm (0.016 in) }']),
    );
    expect(measuringSheet(both)).toContain('may go back at most 0.40 mm (0.016 in)');
  });

  it('names the version that the numbers belong to, and the engine on the bench', () => {
    expect(page).toContain('<bdi>quillfeather-3w</bdi>, version 1');
    expect(measuringSheet(engine, { job: 'J-3', plate: 'QF 301' })).toContain('<b><bdi>QF 301</bdi></b>');
  });

  it('goes plane by plane where a scheme is too wide for the paper', () => {
    const wide = engine.characteristics.get('bore-diameter');
    if (!wide) throw new Error('the engine of the test has no bores');
    const planes = ['a', 'b', 'c', 'd', 'e'];
    const other = { ...engine, characteristics: new Map([['bore-diameter', { ...wide, planes }]]) };
    const sheet = measuringSheet(other);
    expect(codesOn(sheet)).toEqual(sheetBoxes(other).map(({ code }) => code));
    expect(sheet).toContain('<th scope="row"><bdi>cylinder bore 2, c</bdi></th>');
  });

  it('keeps words as words, whatever they are', () => {
    const other = measuringSheet({ ...engine, title: '<script>alert(1)</script>' }, { owner: '"><b>' });
    expect(other).not.toContain('<script>');
    expect(other).toContain('&quot;&gt;&lt;b&gt;');
  });
});
