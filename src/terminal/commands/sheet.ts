/** @module `endfloat sheet`: a measuring sheet to print, fill in by hand and type in later. */
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import type { EngineType } from '../../engine/engine-type.ts';
import { sheetBoxes } from '../../measure/sheet-box.ts';
import { type Answer, answer } from '../../quantity/refusal.ts';
import { measuringSheet, type OnTheBench } from '../../record/measuring-sheet.ts';
import { type Given, lastValue, type Outcome, type TerminalCommand } from '../command.ts';
import { engineOnFile, notUsable } from '../engine-file.ts';
import { writeWhole } from '../output-file.ts';
import { plain } from '../plain.ts';
import { findJob, inWorkshop, storeOptions } from '../workshop.ts';

const written = async (given: Given, engine: EngineType, bench?: OnTheBench): Promise<Answer<Outcome>> => {
  const html = measuringSheet(engine, bench);
  const boxes = sheetBoxes(engine).map(({ code, cell }) => ({ box: code, ...cell }));
  const path = lastValue(given, 'to');
  if (path === undefined) return answer({ text: html, json: { html, boxes } });
  const file = await writeWhole(path, html, given.world);
  if (file.kind === 'refused') return file;
  return answer({
    text: `Measuring sheet with ${boxes.length} boxes written to ${plain(file.value)}`,
    json: { file: file.value, boxes },
  });
};

export const sheet: TerminalCommand = {
  name: 'sheet',
  summary: 'write a measuring sheet (HTML for A4) to print and fill in by hand',
  usage: ['sheet ENGINE-FILE', 'sheet JOB'],
  about:
    'Boxes stand in the order of entry. Type them in later as a table with the columns box and reading: endfloat take JOB FILE.\nWithout --to the page goes to stdout.',
  options: [...storeOptions, { name: 'to', value: 'PATH', says: 'the file to write' }],
  words: [1, 1],
  run: async (given) => {
    const [named = ''] = given.words;
    if (named !== '-' && !existsSync(resolve(given.world.folder, named)) && !/[./\\]/.test(named))
      return inWorkshop(given, false, async (store) => {
        const found = await findJob(store, named);
        if (found.kind === 'refused') return found;
        const { booked, sheet: of } = found.value.job;
        return written(given, of.engine, { job: booked.number, plate: booked.plate, owner: booked.owner });
      });
    const read = await engineOnFile(named, given.world);
    if (read.kind === 'refused') return read;
    return read.value.engine ? written(given, read.value.engine) : answer(notUsable(read.value));
  },
};
