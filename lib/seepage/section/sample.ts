import { InputError } from '../../units/index.js';
import { cellAt } from './grid.js';
import type { Section } from './section.js';

/**
 * Head at a point, m: between the middles of the cells around it, those without soil or behind a tight sheet left out,
 * so that at a liner or a pile the head is that of the ground beside it.
 * @param section - grid and soils
 * @param head - of each cell, m above the datum of the grid
 * @param x - place to the right, m, as the grid counts it
 * @param z - place upwards, m above the datum of the grid
 * @returns m above the datum of the grid
 * @throws InputError where there is no soil
 */
export function headAt(section: Section, head: Float64Array, x: number, z: number): number {
  const { grid, soilOf, tightRight, tightAbove } = section;
  const nx = grid.x.length - 1;
  const [i, s] = beside(grid.x, x);
  const [j, t] = beside(grid.z, z);
  // The nearest cell, or for a point of an outline the first beside it that is soil.
  const corners = [0, 1, 2, 3]
    .map((p) => ({ a: p & 1, b: p >> 1, w: (p & 1 ? s : 1 - s) * (p >> 1 ? t : 1 - t) }))
    .sort((p, q) => q.w - p.w)
    .filter(({ a, b, w }) => w > 0 && soilOf[(j + b) * nx + i + a] >= 0);
  if (corners.length === 0) throw new InputError('invalid-input', `no ground at x ${x} m, z ${z} m`);
  const home =
    corners.find(({ a, b }) => i + a === cellAt(grid.x, x) && j + b === cellAt(grid.z, z)) ?? corners[0];
  const row = (j + home.b) * nx + i;
  const column = j * nx + i + home.a;
  const sheetAcross = tightRight?.[row] === 1;
  const sheetAbove = tightAbove?.[column] === 1;
  let [sum, weight] = [0, 0];
  for (const { a, b, w } of corners) {
    if ((sheetAcross && a !== home.a) || (sheetAbove && b !== home.b)) continue;
    sum += w * head[(j + b) * nx + i + a];
    weight += w;
  }
  return sum / weight;
}

/** The pair of cells whose middles are on both sides, and how far between them; flat beyond the last. */
function beside(lines: Float64Array, at: number): [number, number] {
  const cells = lines.length - 1;
  const middle = (i: number) => (lines[i] + lines[i + 1]) / 2;
  const k = cellAt(lines, at);
  const first = Math.min(Math.max(at < middle(k) ? k - 1 : k, 0), Math.max(cells - 2, 0));
  if (cells === 1) return [0, 0];
  const s = (at - middle(first)) / (middle(first + 1) - middle(first));
  return [first, Math.min(Math.max(s, 0), 1)];
}
