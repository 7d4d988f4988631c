/** The script of the what-if, bundled when the library is built. */

import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';
import { partsOf } from '../page/liveScripts.js';
import { EnvironmentError } from './environmentError.js';
import { PROJECT } from './project.js';

/**
 * The script of a page: what runs at once, and the library packed behind it.
 * @throws EnvironmentError when the library was not built
 */
export async function liveScript(): Promise<string> {
  const path = join(PROJECT, 'dist', 'page', 'live.min.js');
  try {
    return await readFile(path, 'utf8');
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code !== 'ENOENT') throw cause;
    throw new EnvironmentError(
      'not-built',
      "missing 'dist/page/live.min.js', the script of the what-if: npm run build",
      { cause },
    );
  }
}

/**
 * The same unpacked: the library and what runs with it, one script without imports, for a cell that runs it whole.
 * @throws EnvironmentError when the library was not built
 */
export async function wholeScript(): Promise<string> {
  const { own, library } = partsOf(await liveScript());
  return `${own}\n${inflateSync(Buffer.from(library, 'base64'))}`;
}
