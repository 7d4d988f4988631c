/** The tests that take minutes or a network, and every sweep whole: `npm run test:long`. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { built } from './built.config.js';

const here = fileURLToPath(new URL('.', import.meta.url));
const sweeping = readdirSync(here, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.test.ts') && readFileSync(here + path, 'utf8').includes("/sweep.js'"))
  .map((path) => `test/${path.replaceAll('\\', '/')}`);

export default defineConfig({
  ...built,
  test: {
    ...built.test,
    include: ['test/**/*.long.ts', ...sweeping],
    env: { UNDERPOND_SWEEP: 'all' },
    maxWorkers: 2,
    testTimeout: 900_000,
  },
});
