/** The tests of `npm test`: two files at a time, since by itself vitest leaves one of two cores idle. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: { include: ['test/**/*.test.ts'], maxWorkers: 2, testTimeout: 60_000, hookTimeout: 60_000 },
});
