import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** Benches by folder, and the tools of others they need. */
const NEEDS = {
  waterTable: ['cc', 'numpy'],
  greenAmpt: ['cc'],
  section: ['scipy'],
  whatIf: [],
};
const TOOLS = {
  cc: ['cc', '--version'],
  numpy: ['python3', '-c', 'import numpy'],
  scipy: ['/usr/bin/python3', '-c', 'import scipy'],
};
const missing = (tool) => spawnSync(TOOLS[tool][0], TOOLS[tool].slice(1)).status !== 0;

export const BENCHES = Object.keys(NEEDS);

/**
 * Runs a bench to its end.
 * @param {string} name - of {@link BENCHES}
 * @param {...string} args - of it
 * @returns what it printed, its exit status and its claims; or the tools it lacks
 */
export function ranBench(name, ...args) {
  const lacking = NEEDS[name].filter(missing);
  if (lacking.length > 0) return { lacking };
  const script = fileURLToPath(new URL(`${name}/run.mjs`, import.meta.url));
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, ...args], { encoding: 'utf8' });
  const claims = stdout
    .split('\n')
    .filter((line) => line.startsWith('claim '))
    .map((line) => JSON.parse(line.slice('claim '.length)));
  return { lacking, status, stdout, stderr, claims };
}
