import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { PROJECT } from '../notebook/notebooks.js';

/** `**` and `Math.exp` may differ in the last bit between versions; nothing may grow from that. */
const OTHER = process.versions.node.startsWith('24.') ? '22' : '24';
const PROGRAM = `
  import { assess, resultOf, siteModel } from '${PROJECT}dist/index.js';
  import { readSurvey } from '${PROJECT}dist/node.js';
  const { warnings, assumptions, ...result } = resultOf(assess(siteModel(readSurvey(process.argv[1]), { samples: 200 })));
  console.log(JSON.stringify(result));
`;

function flat(value: unknown, path = ''): [string, unknown][] {
  if (value === null || typeof value !== 'object') return [[path, value]];
  return Object.entries(value).flatMap(([key, one]) => flat(one, `${path}.${key}`));
}

test(`Node ${OTHER} gives the same numbers to a millionth, and chances to one sample`, () => {
  const folder = mkdtempSync(join(tmpdir(), 'second-node-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  writeFileSync(join(folder, 'package.json'), '{ "private": true }');
  execFileSync('npm', ['install', '--no-audit', '--no-fund', `node@${OTHER}`], { cwd: folder });
  const other = join(folder, 'node_modules', '.bin', 'node');
  expect(execFileSync(other, ['--version'], { encoding: 'utf8' })).toMatch(new RegExp(`^v${OTHER}\\.`));
  for (const survey of ['clay-slope', 'clay-hollow', 'loam-terrace']) {
    const run = (node: string) =>
      flat(
        JSON.parse(
          execFileSync(node, ['--input-type=module', '-e', PROGRAM, join(PROJECT, 'datasets', survey)], {
            encoding: 'utf8',
          }),
        ),
      );
    const here = run(process.execPath);
    const there = new Map(run(other));
    expect(there.size).toBe(here.length);
    for (const [path, value] of here) {
      const beside = there.get(path);
      if (typeof value !== 'number' || typeof beside !== 'number') expect(beside, path).toBe(value);
      else {
        const slack = /per_year|standard_error|risk_in_life|per_dig|chance/.test(path)
          ? 1 / 200
          : 1e-6 * Math.abs(value);
        expect(Math.abs(beside - value), `${survey}${path}`).toBeLessThanOrEqual(slack + 1e-9);
      }
    }
  }
}, 300_000);
