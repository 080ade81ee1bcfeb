/** @module Tables line up, and what people typed cannot move the cursor. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { table } from './table.ts';

describe('a table', () => {
  it('lines its columns up, figures to the right', () => {
    expect(
      table(
        [{ head: 'Place' }, { head: 'Value', right: true }],
        [
          ['main.1', '54.961 mm'],
          ['big-end.12', '9.1 mm'],
        ],
      ),
    ).toBe('Place           Value\nmain.1      54.961 mm\nbig-end.12     9.1 mm\n');
  });

  it('of no rows is nothing', () => {
    expect(table([{ head: 'Place' }], [])).toBe('');
  });

  it('has a line for each row and no control characters, whatever is in it', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.string({ unit: 'binary' }), fc.string()), { minLength: 1 }),
        (rows) => {
          const lines = table([{ head: 'A' }, { head: 'B' }], rows).split('\n');
          expect(lines).toHaveLength(rows.length + 2);
          expect(lines.join('')).not.toMatch(/[\p{Cc}\u202a-\u202e]/u);
        },
      ),
    );
  });
});
