/** The form as one file, from what was bundled when the library was built. */

import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { formHtml } from '../form/index.js';
import { partsOf } from '../page/liveScripts.js';
import { EnvironmentError } from './environmentError.js';
import { writeAtomically } from './files.js';
import { liveScript } from './liveScript.js';
import { PROJECT, VERSION } from './project.js';

/** Its name where none is given. */
const FORM_FILE = 'pond-form.html';

/**
 * The form: one HTML file to take outside on a phone, that needs nothing else.
 * @returns its text
 * @throws EnvironmentError when the library was not built
 */
export async function formText(): Promise<string> {
  const path = join(PROJECT, 'dist', 'form', 'form.min.js');
  const page = partsOf(await liveScript());
  if (!existsSync(path))
    throw new EnvironmentError(
      'not-built',
      "missing 'dist/form/form.min.js', the script of the form: npm run build",
    );
  return formHtml({
    script: readFileSync(path, 'utf8'),
    page,
    version: VERSION,
  });
}

/**
 * Writes the form whole or not at all; one that is there is replaced, as nothing typed is in it.
 * @param path of the file, or of a folder to put it in
 * @returns the path written
 */
export async function writeForm(path: string): Promise<string> {
  const file = /\.html?$/i.test(path) ? path : join(path, FORM_FILE);
  writeAtomically(file, await formText());
  return file;
}
