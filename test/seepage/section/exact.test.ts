import { afterAll, describe, expect, test } from 'vitest';
import { solveSaturated } from '../../../lib/seepage/section/index.js';
import { EXACT_CASES, errorsOf } from './exactCases.js';
import { largestError, layeredColumn, SMOOTH_CASES } from './smoothCases.js';

/** The table of convergence, printed when SECTION_TABLE is set. */
const table: string[] = [];
const row = (name: string, what: string, errors: number[]) =>
  table.push(
    `| ${name} | ${what} | ${errors.map((e) => e.toExponential(1)).join(' | ')} | ${Math.log2(Math.abs(errors[1] / errors[2])).toFixed(2)} |`,
  );
afterAll(() => {
  if (process.env.SECTION_TABLE)
    console.log(
      ['| case | compared | coarse | default | fine | order |', '|---|---|---|---|---|---|', ...table].join(
        '\n',
      ),
    );
});

describe.each(EXACT_CASES)('$name ($source)', (exact) => {
  const runs = ([0, 1, 2] as const).map((level) => errorsOf(exact, level));

  test('the flow balance closes', () => {
    for (const { imbalance } of runs) expect(Math.abs(imbalance)).toBeLessThan(1e-8);
  });

  test.each(Object.keys(exact.exact))('%s: below 0.01 at the default grid, and falling', (what) => {
    const errors = runs.map((run) => run.errors[what]);
    row(exact.name, what, errors);
    const [coarse, standard, fine] = errors.map(Math.abs);
    expect(standard).toBeLessThan(0.01);
    // Below a thousandth the shape of a pipe's hole counts as much as the cells.
    if (exact.pipes) expect(fine).toBeLessThan(Math.max(standard, 2e-3));
    else if (coarse > 1e-9) {
      expect(Math.log2(coarse / standard)).toBeGreaterThan(0.8);
      expect(Math.log2(standard / fine)).toBeGreaterThan(0.8);
    }
  });
});

test.each(SMOOTH_CASES)('$name: second order', (smooth) => {
  const errors = [1, 2, 3].map((level) => largestError(smooth, level));
  row(smooth.name, 'head', errors);
  expect(Math.log2(errors[0] / errors[1])).toBeGreaterThan(1.85);
  expect(Math.log2(errors[1] / errors[2])).toBeGreaterThan(1.9);
});

test.each([
  ['one cell a layer', [0, 0.2, 0.5, 1]],
  ['uneven cells', [0, 0.13, 0.2, 0.22, 0.31, 0.5, 0.51, 0.77, 1]],
])('across layers the scheme is exact: %s', (_, lines) => {
  const column = layeredColumn(lines);
  const section = column.section(0);
  const { flows } = solveSaturated(section);
  expect(flows.out.bottom / column.flux).toBeCloseTo(1, 12);
  expect(largestError(column, 0)).toBeLessThan(1e-12);
});
