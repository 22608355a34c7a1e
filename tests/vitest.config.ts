/** The suites: which files each takes, and how they run. */
import { defineConfig } from 'vitest/config';

/** Many generated cases, a second solver, processes of their own: seconds each, left out of a quick check. */
const THOROUGH = [
  'tests/plan/frontier.test.ts',
  'tests/cli/cli.test.ts',
  'tests/cli/light-document/parse-page.test.ts',
  'tests/cli/page-pool.test.ts',
  'tests/faults/backups.test.ts',
  'tests/faults/linear-time.test.ts',
  'tests/faults/pages.test.ts',
  'tests/fuzz/fuzz.test.ts',
  'tests/plan/data/knowledge-reach.test.ts',
  'tests/plan/properties.test.ts',
  'tests/plan/recipes.test.ts',
  'tests/plan/solver/programme.test.ts',
  'tests/read/hostile.test.ts',
  'tests/read/visible/languages.test.ts',
  'tests/rewrite/lines/round-trip.test.ts',
  'tests/rewrite/lines/scaled-lines.test.ts',
  'tests/store/backup/locked-file.test.ts',
  'tests/store/backup/round-trip.test.ts',
];

const BROWSER = ['tests/browser/**/*.test.ts'];

/** Nothing but Node; the food table and the words are loaded once a worker, not once a file. */
const NODE = {
  environment: 'node',
  isolate: false,
  // A busy machine takes several times as long.
  testTimeout: 60_000,
  setupFiles: ['tests/seed.ts'],
};

export default defineConfig({
  root: `${import.meta.dirname}/..`,
  test: {
    projects: [
      {
        test: {
          ...NODE,
          name: 'unit',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: [...BROWSER, ...THOROUGH],
        },
      },
      { test: { ...NODE, name: 'thorough', include: THOROUGH } },
      {
        // The built extension in installed browsers.
        test: {
          name: 'browser',
          include: BROWSER,
          environment: 'node',
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
});
