/** The tests of `npm test`. */
import { defineConfig } from 'vitest/config';
import { built } from './built.config.js';
import { LongestFirst } from './longestFirst.js';

export default defineConfig({
  ...built,
  // Two files at a time, since by itself vitest leaves one of two cores idle; modules are shared between them.
  test: {
    ...built.test,
    include: ['test/**/*.test.ts'],
    maxWorkers: 2,
    isolate: false,
    sequence: { sequencer: LongestFirst },
  },
});
