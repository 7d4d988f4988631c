import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's own folder, two above this room's compiled files; notebooks are run from a copy of the project. */
export const PROJECT = fileURLToPath(new URL('../../', import.meta.url));

/** Version of the library. */
export const VERSION: string = JSON.parse(readFileSync(join(PROJECT, 'package.json'), 'utf8')).version;
