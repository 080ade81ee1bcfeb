/** @module Runs every bench, or those whose name holds a word given, and prints ratios: below 1, ours is quicker. */
import { readdirSync } from 'node:fs';
import type { Bench, BenchRow } from './bench.ts';

const here = new URL('.', import.meta.url);

const benches = async (): Promise<readonly Bench[]> => {
  const files = readdirSync(here).filter((file) => file.endsWith('.bench.ts'));
  return Promise.all(files.sort().map(async (file) => (await import(new URL(file, here).href)) as Bench));
};

const figure = (value: number): string => {
  if (!Number.isFinite(value)) return String(value);
  return Math.abs(value) >= 100 ? value.toFixed(0) : value.toPrecision(3);
};

const cells = (row: BenchRow): readonly string[] => [
  row.what,
  `${figure(row.ours)} ${row.unit}`,
  `${figure(row.other)} ${row.unit}`,
  figure(row.ours / row.other),
  row.note === undefined ? row.against : `${row.against}; ${row.note}`,
];

const table = (rows: readonly BenchRow[]): string => {
  const lines = [['what', 'ours', 'other', 'ratio', 'against'], ...rows.map(cells)];
  const widths =
    lines[0]?.map((_, column) => Math.max(...lines.map((line) => line[column]?.length ?? 0))) ?? [];
  return lines
    .map((line) =>
      line
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
};

const words = process.argv.slice(2);
const asked = (await benches()).filter(({ name }) => words.every((word) => name.includes(word)));
if (asked.length === 0) {
  console.error(
    words.length > 0 ? `no bench is named ${words.join(' ')}` : 'there is no *.bench.ts beside this file',
  );
  process.exitCode = 2;
}
for (const { name, run } of asked) {
  console.log(`\n${name}`);
  try {
    console.log(table(await run()));
  } catch (error) {
    console.error(`failed: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
    process.exitCode = 1;
  }
}
