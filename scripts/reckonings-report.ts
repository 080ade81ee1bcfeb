/** @module Writes docs/reckonings.md from what the tests noted, and says where it is stale. */
import { readFileSync, writeFileSync } from 'node:fs';
import type { Reporter, TestModule } from 'vitest/node';
import type { OutsideCheck } from '../test/outside-check.ts';
import { reckoningsTable, uncheckedSums } from './reckonings-table.ts';

const file = new URL('../docs/reckonings.md', import.meta.url);

const checksIn = (modules: readonly TestModule[]): readonly OutsideCheck[] =>
  modules.flatMap((module) =>
    [...module.children.allTests()].flatMap((test) => [...(test.meta().outsideChecks ?? [])]),
  );

/** Why the published table is not what the tests noted; undefined where it is, or where a test was left out. */
export const staleTable = (modules: readonly TestModule[]): string | undefined => {
  const skipped = modules.some((module) => [...module.children.allTests('skipped')].length > 0);
  if (skipped) return undefined;
  const checks = checksIn(modules);
  const unchecked = uncheckedSums(checks);
  if (unchecked.length > 0) return `held against nothing from outside the project: ${unchecked.join(', ')}`;
  return readFileSync(file, 'utf8') === reckoningsTable(checks)
    ? undefined
    : 'docs/reckonings.md is not what the tests noted: run `npm run reckonings` and look at what changed';
};

export default class ReckoningsReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    writeFileSync(file, reckoningsTable(checksIn(modules)));
  }
}
