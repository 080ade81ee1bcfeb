/** @module Which tests there are: units beside the code, structure rules, stores, and the app in a real browser. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    maxWorkers: 2,
    projects: [
      {
        test: {
          name: 'unit',
          environment: 'node',
          setupFiles: ['test/property-seed.ts'],
          testTimeout: 30_000,
          include: ['{src,test,demo,bench,scripts}/**/*.test.{ts,tsx}'],
          exclude: ['test/{checks,store,browser}/**', '**/node_modules/**'],
        },
      },
      {
        test: {
          name: 'rules',
          environment: 'node',
          include: ['test/checks/**/*.test.ts'],
          exclude: ['test/checks/fixtures/**'],
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'store',
          environment: 'node',
          setupFiles: ['test/property-seed.ts'],
          include: ['test/store/**/*.test.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'browser',
          environment: 'node',
          include: ['test/browser/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // A busy machine paints late; what is waited for still has to come.
          expect: { poll: { timeout: 10_000 } },
          globalSetup: ['test/browser/built-web.ts'],
          // After all else: browsers want the machine to themselves. While one waits for its page, the other works.
          sequence: { groupOrder: 1 },
          maxWorkers: 2,
        },
      },
    ],
    coverage: { provider: 'v8', include: ['src/**/*.ts'], exclude: ['src/web/**', '**/*.test.ts'] },
  },
});
