/**
 * Every claim of speed in one table: `npm run bench`. Each line compares ours with another's work in one run on this
 * machine; a bench whose tools are missing says so. Exit status 1 when one fails; a ratio not met is only told.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const BENCHES = {
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

const rows = [['claim', 'ours, ms', 'other, ms', 'ratio', 'at most', 'met']];
for (const [name, needs] of Object.entries(BENCHES)) {
  const lacking = needs.filter(missing);
  if (lacking.length > 0) {
    rows.push([name, '', '', '', '', `not run: needs ${lacking.join(', ')}`]);
    continue;
  }
  console.error(`${name} …`);
  const script = fileURLToPath(new URL(`${name}/run.mjs`, import.meta.url));
  const { status, stdout, stderr } = spawnSync(process.execPath, [script], { encoding: 'utf8' });
  if (status !== 0) {
    console.error(stderr);
    rows.push([name, '', '', '', '', 'failed']);
    process.exitCode = 1;
    continue;
  }
  for (const line of stdout.split('\n').filter((l) => l.startsWith('claim '))) {
    const { what, ours, other, than, most } = JSON.parse(line.slice('claim '.length));
    const ratio = ours / other;
    rows.push([
      `${what}: ours / ${than}`,
      ours.toPrecision(3),
      other.toPrecision(3),
      ratio.toFixed(2),
      String(most),
      ratio <= most ? 'yes' : 'no',
    ]);
  }
}
const widths = rows[0].map((_, i) => Math.max(...rows.map((row) => row[i].length)));
for (const row of rows)
  console.log(
    row
      .map((cell, i) => cell.padEnd(widths[i]))
      .join('  ')
      .trimEnd(),
  );
