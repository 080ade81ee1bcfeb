/** @module Writes what a test run came to, as the test command counts it: a file that did not load counts as failed. */
import { writeFileSync } from 'node:fs';
import type { SerializedError } from 'vitest';
import type { Reporter, TestCase, TestModule } from 'vitest/node';
import { staleTable } from './reckonings-report.ts';

const title = (test: TestCase): string => `${test.module.relativeModuleId}: ${test.fullName}`;

/** Reasons under which the run as a whole failed though no single test did. */
const moduleFaults = (module: TestModule): readonly string[] => {
  const hasFailed = [...module.children.allTests('failed')].length > 0;
  const errors = [...module.errors(), ...[...module.children.allSuites()].flatMap((suite) => suite.errors())];
  return errors.length > 0 || (!module.ok() && !hasFailed)
    ? [`${module.relativeModuleId}: ${errors.map((error) => error.message).join('; ') || 'did not finish'}`]
    : [];
};

export default class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly SerializedError[]): void {
    const file = process.env.TEST_REPORT;
    if (!file) return;
    const tests = modules.flatMap((module) => [...module.children.allTests()]);
    const withState = (state: string) => tests.filter((test) => test.result().state === state);
    const unfinished = withState('pending').map((test) => `${title(test)}: did not finish`);
    const report = {
      passed: withState('passed').length,
      failed: [
        ...withState('failed').map(title),
        ...unfinished,
        ...modules.flatMap(moduleFaults),
        ...unhandled.map((error) => `outside any test: ${error.message}`),
        // Only a run of every test has noted every check.
        ...(process.env.EVERY_TEST ? [staleTable(modules) ?? []].flat() : []),
      ],
      skipped: withState('skipped').map((test) => {
        const { note } = test.result() as { note?: string };
        return note === undefined ? title(test) : `${title(test)}: ${note}`;
      }),
    };
    writeFileSync(file, JSON.stringify(report));
  }
}
