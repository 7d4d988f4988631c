/** The tests that mutation testing runs: those that hold the formulas and the core files. */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: [
      'test/formula/*.test.ts',
      'test/sampling/sampling.test.ts',
      'test/soil/greenAmpt.test.ts',
      'test/climate/monthlyBookkeeping.test.ts',
      'test/groundwater/{columnRun,tableStore}.test.ts',
      'test/uplift/linerPressure.test.ts',
      'test/drain/{links,pipe}.test.ts',
      'test/drain/cases.test.ts',
    ],
  },
});
