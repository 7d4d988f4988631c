import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { itInChromium } from '../chromium.js';
import { demoFiles } from '../folder.js';
import { PROJECT } from '../notebook/notebooks.js';

const folder = mkdtempSync(join(tmpdir(), 'consumer-'));
const run = (command: string, ...args: string[]) =>
  execFileSync(command, args, { cwd: folder, encoding: 'utf8' });
const TSC = join(PROJECT, 'node_modules', 'typescript', 'bin', 'tsc');
const tsc = (...args: string[]) =>
  run('node', TSC, '--strict', '--skipLibCheck', '--target', 'es2022', ...args);

let packed: { size: number; unpackedSize: number; filename: string };

/** The package as somebody installs it: packed, in a folder that holds nothing else. */
beforeAll(() => {
  // The build of the test run is packed as it is: packing must not rebuild under other tests.
  const args = ['pack', '--ignore-scripts', '--json', '--pack-destination', folder];
  [packed] = JSON.parse(execFileSync('npm', args, { cwd: PROJECT, encoding: 'utf8' }));
  writeFileSync(join(folder, 'package.json'), '{ "name": "consumer", "private": true, "type": "module" }');
  run('npm', 'install', '--no-audit', '--no-fund', `./${packed.filename}`);
  cpSync(join(PROJECT, 'datasets', 'clay-slope'), join(folder, 'survey'), { recursive: true });
  mkdirSync(join(folder, 'old'));
  writeFileSync(join(folder, 'old', 'package.json'), '{ "type": "commonjs" }');
}, 300_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const ANSWER = 'drain-to-outlet';
const BODY = `const site = siteModel(readSurvey('survey'), { seed: 1, samples: 100 });
console.log(recommend(assess(site)).option);
`;
const PROGRAM = `import { assess, recommend, siteModel } from 'underpond';
import { readSurvey } from 'underpond/node';
${BODY}`;

test('answers a survey from ESM', () => {
  writeFileSync(join(folder, 'answer.mjs'), PROGRAM);
  expect(run('node', 'answer.mjs').trim()).toBe(ANSWER);
});

test('answers a survey from CommonJS', () => {
  const requires = `const { assess, recommend, siteModel } = require('underpond');
const { readSurvey } = require('underpond/node');
`;
  writeFileSync(join(folder, 'answer.cjs'), requires + BODY);
  expect(run('node', 'answer.cjs').trim()).toBe(ANSWER);
});

/** The second resolution is that of the notebook kernel and of older projects. */
test.each([
  ['nodenext', 'answer.mts', 'answer.mjs'],
  ['node10', 'old/answer.ts', 'old/answer.js'],
])('type-checks under %s, refuses what is wrong, and answers as compiled', (resolution, file, made) => {
  const module = resolution === 'node10' ? 'commonjs' : resolution;
  const options = ['--module', module, '--moduleResolution', resolution];
  writeFileSync(join(folder, file), PROGRAM);
  expect(tsc(...options, file)).toBe('');
  expect(run('node', made).trim()).toBe(ANSWER);
  writeFileSync(join(folder, file), PROGRAM.replace('seed: 1', "seed: 'one'"));
  expect(() => tsc(...options, '--noEmit', file)).toThrow();
});

itInChromium('answers a survey in a browser, bundled, without a request', async (page) => {
  const program = `import { assess, parseSurvey, recommend, siteModel } from 'underpond';
const survey = parseSurvey(${JSON.stringify(demoFiles('clay-slope'))});
window.answer = recommend(assess(siteModel(survey, { seed: 1, samples: 100 }))).option;
`;
  writeFileSync(join(folder, 'page.mjs'), program);
  const [{ text }] = buildSync({
    absWorkingDir: folder,
    entryPoints: ['page.mjs'],
    bundle: true,
    minify: true,
    format: 'iife',
    platform: 'browser',
    write: false,
  }).outputFiles;
  await page.setContent('<!doctype html><title>pond</title>');
  await page.addScriptTag({ content: text });
  expect(await page.evaluate('window.answer')).toBe(ANSWER);
});

test('answers a survey as a command, with what it made beside no notebook', () => {
  const said = run('npx', '--no-install', 'underpond', 'survey', '--out', 'answers');
  expect(said).toContain('Drain to an outlet, dug 1.00 m deep');
  expect(said.trimEnd()).toMatch(/open answers\/survey\/page\.html$/);
  const { recommendation } = JSON.parse(
    readFileSync(join(folder, 'answers', 'survey', 'result.json'), 'utf8'),
  );
  expect(recommendation.option).toBe(ANSWER);
  expect(() => run('npx', '--no-install', 'underpond')).toThrow(/missing FOLDER/);
});

test('is as small as the README says, and brings nothing heavy', () => {
  const readme = readFileSync(join(PROJECT, 'README.md'), 'utf8');
  const [, mega, unpacked, direct, all, most] = readme
    .match(
      /under ([\d.]+) MB packed and ([\d.]+) MB\s+unpacked, with (\d+) dependencies \(under (\d+) packages and (\d+) MB/,
    )!
    .map(Number);
  expect(packed.size).toBeLessThan(mega * 1e6);
  expect(packed.unpackedSize).toBeLessThan(unpacked * 1e6);
  const own = JSON.parse(readFileSync(join(folder, 'node_modules', 'underpond', 'package.json'), 'utf8'));
  expect(Object.keys(own.dependencies)).toHaveLength(direct);
  const installed = run('npm', 'ls', '--all', '--parseable').trim().split('\n').slice(1);
  expect(installed.length).toBeLessThan(all);
  expect(Number(run('du', '-sk', 'node_modules').split('\t')[0]) / 1000).toBeLessThan(most);
  // What draws figures, shows frames and runs notebooks is the user's own choice.
  const heavy = ['@e965/xlsx', 'danfojs', 'markdown-it', 'plotly.js-dist-min', 'tslab', 'zeromq'];
  for (const name of heavy)
    expect(installed.some((path) => path.endsWith(`/node_modules/${name}`))).toBe(false);
});
