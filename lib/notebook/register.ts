/** `npm run register-kernel`: lets a real Jupyter run the notebooks. */
import { join } from 'node:path';
import { writeKernelspec } from './kernelspec.js';
import { PROJECT } from './project.js';

const home = join(PROJECT, '.jupyter');
process.stdout.write(`wrote ${await writeKernelspec(home)}\n`);
process.stdout.write(`now: JUPYTER_PATH='${home}' jupyter notebook '${join(PROJECT, 'notebooks')}'\n`);
