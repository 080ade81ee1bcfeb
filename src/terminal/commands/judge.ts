/** @module `endfloat judge`: verdicts and doubts of a readings file, or of a job. */
import { doubtsOf } from '../../measure/doubts.ts';
import { judgeAll } from '../../measure/judge.ts';
import { settling } from '../../measure/settling.ts';
import { answer } from '../../quantity/refusal.ts';
import type { TerminalCommand } from '../command.ts';
import { mendLine } from '../row-lines.ts';
import { settlingLines } from '../settling-lines.ts';
import { sheetOf, sheetOptions } from '../sheet-source.ts';
import { asked, counts, countsText, doubtLines, judgedJson, verdictTable } from '../verdict-table.ts';

export const judge: TerminalCommand = {
  name: 'judge',
  summary:
    'say of each characteristic whether it is within, outside or unsure, and which readings look wrong',
  usage: ['judge ENGINE-FILE READINGS-FILE', 'judge JOB'],
  about:
    'Readings are CSV, XLSX or JSON; endfloat template ENGINE-FILE writes a blank sheet.\nSizes are judged for going back by ISO 14253-1: within or outside only where the spread leaves no doubt.\nExit code 1 when rows of the file are in error: they are told and left out.',
  options: sheetOptions,
  words: [1, 2],
  run: async (given) => {
    const sourced = await sheetOf(given);
    if (sourced.kind === 'refused') return sourced;
    if (sourced.value.kind === 'no') return answer(sourced.value.outcome);
    const { sheet, warnings, rowsLeftOut } = sourced.value;
    const judged = judgeAll(sheet);
    const known = judged.filter((one) => one.value !== undefined);
    const doubts = doubtsOf(sheet);
    const unsure = settling(sheet, judged);
    return answer({
      text: [
        verdictTable(known, sheet.engine),
        `\n${countsText(judged)}.\n`,
        ...[...settlingLines(unsure), ...doubtLines(doubts)].map((line) => `${line}\n`),
      ].join(''),
      json: {
        engine: { id: sheet.engine.id, title: sheet.engine.title, version: sheet.engine.version },
        conformance: sheet.conformance,
        counts: counts(judged),
        verdicts: asked(judged).map((one) => judgedJson(one, sheet.engine)),
        unsure,
        doubts,
      },
      warnings: rowsLeftOut === undefined ? warnings : [...warnings, mendLine(rowsLeftOut)],
      ...(rowsLeftOut === undefined ? {} : { no: true as const }),
    });
  },
};
