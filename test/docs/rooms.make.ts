/** Made on demand by `npm run reference`: a page a room, with all that is public of it. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { PROJECT } from '../notebook/notebooks.js';
import { publicApi } from './publicApi.js';
import { ROOMS, roomReference } from './roomReference.js';

test('a page a room in out/reference', () => {
  const api = publicApi();
  const out = join(PROJECT, 'out', 'reference');
  mkdirSync(out, { recursive: true });
  for (const room of ROOMS.keys()) writeFileSync(join(out, `${room}.md`), roomReference(room, api));
  expect(ROOMS.size).toBeGreaterThan(20);
});
