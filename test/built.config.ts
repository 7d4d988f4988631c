/** Tests run the library as built and as users do: more than twice as quick as from source. */
import { fileURLToPath } from 'node:url';
import type { ViteUserConfig } from 'vitest/config';

const dist = fileURLToPath(new URL('../dist/', import.meta.url));

export const built = {
  resolve: { alias: [{ find: /^(?:\.\.\/)+lib\/(.+)$/, replacement: `${dist}$1` }] },
  test: { testTimeout: 120_000, hookTimeout: 120_000, server: { deps: { external: [/\/dist\//] } } },
} satisfies ViteUserConfig;
