/** @module What would settle an unsure verdict is told beneath the verdicts, with the shop's own instruments. */
import { describe, expect, it } from 'vitest';
import { micrometer, readAll, sheetOf, typed } from '../../test/engines/small-engine.ts';
import { judgeAll } from '../measure/judge.ts';
import { settling } from '../measure/settling.ts';
import { settlingLines } from './settling-lines.ts';

const sheet = sheetOf(readAll('main.1', 'main-journal-diameter', ['54.980', '54.975', '54.934', '54.978']));
const fine = { ...micrometer, name: 'mic-fine', permissibleError: typed('0.001') };

describe('what would settle it', () => {
  it('is one line for each unsure verdict', () => {
    const lines = settlingLines(settling(sheet, judgeAll(sheet), [fine]));
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(/^Unsure: main\.1 main-journal-diameter\. Read rear vertical with mic-fine/);
  });

  it('goes by the instruments of the job where the shop has no others', () => {
    const [line] = settlingLines(settling(sheet, judgeAll(sheet)));
    expect(line).toContain('Nothing in the register settles it');
    expect(settling(sheetOf([]), judgeAll(sheetOf([])))).toEqual([]);
  });
});
