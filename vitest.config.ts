import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** All cores: by itself vitest leaves one free, which on two cores doubles the time. */
export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    environment: 'node',
    testTimeout: 20_000,
    maxWorkers: availableParallelism(),
  },
});
