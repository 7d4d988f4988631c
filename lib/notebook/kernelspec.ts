/** Makes the kernel known to Jupyter, inside a folder of the project rather than in the user's home. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { writeAtomically } from './files.js';
import { kernelArguments } from './kernel.js';

/**
 * Writes `kernels/tslab/kernel.json` under a folder, to be named in `JUPYTER_PATH`.
 * @param folder created where missing
 * @returns the path of the kernelspec
 * @throws EnvironmentError when tslab is missing
 */
export async function writeKernelspec(folder: string): Promise<string> {
  const home = join(folder, 'kernels', 'tslab');
  const spec = {
    argv: [process.execPath, ...(await kernelArguments('{connection_file}'))],
    display_name: 'TypeScript',
    language: 'typescript',
  };
  mkdirSync(home, { recursive: true });
  const path = join(home, 'kernel.json');
  writeAtomically(path, `${JSON.stringify(spec, null, 2)}\n`);
  return path;
}
