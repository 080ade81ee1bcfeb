/** @module Every example in the core's doc comments comes out as it says. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { examplesIn, faultOf } from './examples.ts';
import { pureFiles, root } from './files.ts';

type Names = Record<string, unknown>;

const load = async (path: string): Promise<Names> => ({
  ...(await import(pathToFileURL(join(root, path)).href)),
});

const files = pureFiles();
const examples = files.flatMap((file) =>
  examplesIn(file).map((example) => ({ ...example, path: file.path })),
);
let quantities: Names = {};

beforeAll(async () => {
  const modules = await Promise.all(
    files
      .map(({ path }) => path)
      .filter((path) => path.startsWith('src/quantity/'))
      .map(load),
  );
  quantities = Object.assign({}, ...modules);
});

describe('an example in a doc comment comes out as it says', () => {
  it.each(examples)('$at $expression', async (example) => {
    expect(faultOf(example, { ...quantities, ...(await load(example.path)) })).toBeUndefined();
  });
});

describe('an example', () => {
  const first = (...lines: readonly string[]) =>
    examplesIn({
      path: 'src/a.ts',
      text: `/** @module A. */\n\n/**\n${lines.map((line) => ` * ${line}`).join('\n')}\n */\n`,
    })[0];
  const names = {
    half: (value: number) => value / 2,
    answered: (value: unknown) => ({ kind: 'answer', value }),
    uncertain: (value: number) => ({ value, terms: [] }),
    refused: () => ({ kind: 'refused' }),
  };
  const fault = (...lines: readonly string[]) => {
    const example = first(...lines);
    return example ? faultOf(example, names) : 'not found';
  };

  it('is found with its line, over several lines, up to the next tag', () => {
    expect(first('A half.', '@example half(', '  6.39,', ') // 3.195 mm', '@source none')).toEqual({
      at: 'src/a.ts:5',
      expression: 'half(\n6.39,\n)',
      expected: '3.195 mm',
    });
  });

  it('holds to half a unit of the last digit printed', () => {
    expect(fault('@example half(6.3909) // 3.195 mm')).toBeUndefined();
    expect(fault('@example half(6.3915) // 3.195 mm')).toBe('gives 3.19575, not 3.195');
    expect(fault('@example half(-2.4e9) // -1.2e9 Pa')).toBeUndefined();
  });

  it('sees through an answer and an uncertain value', () => {
    expect(fault('@example answered(uncertain(1.5)) // 1.5 mm')).toBeUndefined();
    expect(fault("@example answered('3/4') // '3/4'")).toBeUndefined();
    expect(fault("@example answered('2.5 thou') // 2.5 thou")).toBeUndefined();
    expect(fault('@example answered([1, { a: 2 }]) // [1, { a: 2 }]')).toBeUndefined();
    expect(fault('@example refused() // refused')).toBeUndefined();
  });

  it.each([
    ['@example half(6) // 4', 'gives 3, not 4'],
    ['@example half(6) // "3"', 'gives 3, not "3"'],
    ['@example half(6) // refused', 'gives 3'],
    ['@example refused() // 3', 'gives {"kind":"refused"}, not 3'],
    ['@example half(6)', 'says nothing of what comes out: end it with // and the value'],
    ['@example quarter(6) // 1.5', 'does not run: quarter is not defined'],
  ])('is seen to be wrong: %s', (line, what) => {
    expect(fault(line)).toBe(what);
  });
});
