import { join } from 'node:path';
import { expect, test } from 'vitest';
import { PROJECT } from '../notebook/notebooks.js';
import type { Check } from './check.js';
import { CHECKS } from './index.js';

const six = (value: number) => String(Number(value.toPrecision(6)));
const cell = (text: string) => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** Difference in two digits; rounding, which another computer may do otherwise, is none. */
function row(group: string, { kind, what, source, covers, expected, tolerance, ours }: Check): string {
  const value = ours();
  const difference = value - expected;
  const rounding = Math.abs(difference) <= Math.max(1e-9 * Math.abs(expected), 1e-12 * Math.abs(tolerance));
  const mine = rounding || (expected === 0 && Math.abs(value) < 1e-9) ? expected : value;
  const told = mine === expected ? '0' : String(Number(difference.toPrecision(2)));
  return [group, kind, what, source, six(expected), six(mine), told, six(tolerance), covers.join(' ')]
    .map(cell)
    .join(',');
}

test('the table of checks for the notebook is what the checks say (else: npm run docs)', async () => {
  const rows = Object.entries(CHECKS).flatMap(([group, checks]) => checks.map((check) => row(group, check)));
  const text = ['group,kind,what,source,expected,ours,difference,tolerance,covers', ...rows].join('\n');
  await expect(`${text}\n`).toMatchFileSnapshot(join(PROJECT, 'notebooks', 'checked-against.csv'));
});
