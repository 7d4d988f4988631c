/** The script of the what-if, bundled when the library is built. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { PROJECT } from './project.js';

/**
 * The source of the what-if: the library itself and the controls of the page, one script without imports.
 * @throws Error when the library was not built
 */
export async function liveScript(): Promise<string> {
  const path = join(PROJECT, 'dist', 'page', 'live.min.js');
  try {
    return await readFile(path, 'utf8');
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code !== 'ENOENT') throw cause;
    throw new Error("missing 'dist/page/live.min.js', the script of the what-if: npm run build", { cause });
  }
}
