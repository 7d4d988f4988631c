import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';

const project = fileURLToPath(new URL('../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'consumer-'));
const run = (command: string, ...args: string[]) =>
  execFileSync(command, args, { cwd: folder, encoding: 'utf8' });

/** The package as somebody installs it: packed, in a folder that holds nothing else. */
beforeAll(() => {
  // The build of the test run is packed as it is: packing must not rebuild under other tests.
  execFileSync('npm', ['pack', '--ignore-scripts', '--pack-destination', folder], { cwd: project });
  const tarball = readdirSync(folder).find((f) => f.endsWith('.tgz'))!;
  writeFileSync(join(folder, 'package.json'), '{ "name": "consumer", "private": true, "type": "module" }');
  run('npm', 'install', '--no-audit', '--no-fund', `./${tarball}`);
  cpSync(join(project, 'datasets', 'clay-slope'), join(folder, 'survey'), { recursive: true });
}, 300_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const PROGRAM = `import { assess, recommend, siteModel } from 'underpond';
import { readSurvey } from 'underpond/node';
const site = siteModel(readSurvey('survey'), { seed: 1, samples: 100 });
console.log(recommend(assess(site)).option);
`;

test('answers a survey from ESM', () => {
  writeFileSync(join(folder, 'answer.mjs'), PROGRAM);
  expect(run('node', 'answer.mjs').trim()).toBe('drain-to-outlet');
});

test('type-checks under nodenext, and refuses what is wrong', () => {
  const tsc = join(project, 'node_modules', 'typescript', 'bin', 'tsc');
  const check = (file: string) =>
    run(
      'node',
      tsc,
      '--noEmit',
      '--strict',
      '--skipLibCheck',
      '--module',
      'nodenext',
      '--target',
      'es2022',
      file,
    );
  writeFileSync(join(folder, 'answer.mts'), PROGRAM);
  expect(check('answer.mts')).toBe('');
  writeFileSync(join(folder, 'wrong.mts'), PROGRAM.replace('seed: 1', "seed: 'one'"));
  expect(() => check('wrong.mts')).toThrow();
});
