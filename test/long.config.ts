/** The tests that take minutes or a network: `npm run test:long`. */
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: { include: ['test/**/*.long.ts'], maxWorkers: 2, testTimeout: 900_000 },
});
