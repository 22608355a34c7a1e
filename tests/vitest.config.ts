import { defineConfig } from 'vitest/config';

/** `unit` needs nothing but Node; `browser` drives the built extension in installed browsers. */
export default defineConfig({
  root: `${import.meta.dirname}/..`,
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: ['tests/browser/**', 'tests/speed/**'],
          environment: 'node',
          // The food table and the words are loaded once a worker, not once a file.
          isolate: false,
          testTimeout: 20_000,
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          environment: 'node',
          fileParallelism: false,
          testTimeout: 120_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
});
