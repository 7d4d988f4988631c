/** What `npm test` runs before the tests, side by side: the build, the lint and the types of library and tests. */
import { spawn } from 'node:child_process';

process.chdir(import.meta.dirname);

const run = (...args) =>
  new Promise((done) => {
    const child = spawn(process.execPath, args, { stdio: 'inherit' });
    child.on('exit', (code) => done(code === 0));
  });

const done = await Promise.all([
  run('.build.mjs'),
  run('node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings'),
  run('node_modules/typescript/bin/tsc', '-p', 'test/tsconfig.json'),
]);
if (done.includes(false)) process.exit(1);
