import { defineConfig } from 'vitest/config';

/** Two suites: `unit` is pure and parallel; `browser` drives Chromium over one built site, two files at a time: they mostly wait. */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/{calc,components,site}/**/*.test.ts'],
          testTimeout: 20_000,
          // the check's threads come and go by the hundred here, and V8 now and then loses count of the pages of code that
          // it guards with these keys: "Check failed: jit_page.has_value()", which ends the process
          execArgv: ['--no-memory-protection-keys'],
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 90_000,
          hookTimeout: 120_000,
          maxWorkers: 2,
        },
      },
    ],
  },
});
