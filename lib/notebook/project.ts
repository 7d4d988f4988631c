import { fileURLToPath } from 'node:url';

/** The project's own folder, two above this room's compiled files; notebooks are run from a copy of the project. */
export const PROJECT = fileURLToPath(new URL('../../', import.meta.url));
