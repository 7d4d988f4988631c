/**
 * Every claim of speed in one table: `npm run bench`. Each line compares ours with another's work in one run on this
 * machine; a bench whose tools are missing says so. Exit status 1 when one fails; a ratio not met is only told.
 */
import { BENCHES, ranBench } from './benches.mjs';

const rows = [['claim', 'ours, ms', 'other, ms', 'ratio', 'at most', 'met']];
for (const name of BENCHES) {
  console.error(`${name} …`);
  const { lacking, status, stderr, claims } = ranBench(name);
  if (lacking.length > 0) {
    rows.push([name, '', '', '', '', `not run: needs ${lacking.join(', ')}`]);
    continue;
  }
  if (status !== 0) {
    console.error(stderr);
    rows.push([name, '', '', '', '', 'failed']);
    process.exitCode = 1;
    continue;
  }
  for (const { what, ours, other, than, most } of claims) {
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
