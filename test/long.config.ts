/** The tests that take minutes or a network: `npm run test:long`. */
import { defineConfig } from 'vitest/config';
import { built } from './built.config.js';

export default defineConfig({
  ...built,
  test: { ...built.test, include: ['test/**/*.long.ts'], maxWorkers: 2, testTimeout: 900_000 },
});
