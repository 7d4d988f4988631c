import type { CoarseLines } from './coarseLines.js';
import { framed, type Stencil } from './stencil.js';

/**
 * How a fine grid takes its values from the coarse one: four weights a cell, for the coarse cells below left, below
 * right, above left and above right.
 */
export interface Prolongation {
  columns: CoarseLines;
  rows: CoarseLines;
  weights: Float64Array;
}

/** Share of its diagonal below which a cell counts as tied to its own line only. */
const NOTHING = 1e-14;

/**
 * Weights that follow the operator, so that a layer, a liner or a sheet pile is not averaged across (black-box
 * multigrid).
 */
export function prolongationOf(s: Stencil, columns: CoarseLines, rows: CoarseLines): Prolongation {
  const { nx, nz, centre, east, north, corners } = s;
  const weights = new Float64Array(4 * framed(nx, nz).length);
  const northEast = corners?.northEast;
  const northWest = corners?.northWest;
  for (let j = 0; j < nz; j++)
    for (let i = 0; i < nx; i++) {
      if (columns.kept[i] === 0 && rows.kept[j] === 0) continue;
      const k = nx + 1 + j * nx + i;
      const w = 4 * k;
      if (columns.kept[i] === 0) {
        let west = east[k - 1];
        let right = east[k];
        if (northEast && northWest) {
          west += northWest[k] + northEast[k - nx - 1];
          right += northEast[k] + northWest[k - nx + 1];
        }
        const own = Math.max(centre[k] - north[k] - north[k - nx], west + right);
        if (own <= NOTHING * centre[k]) continue;
        weights[w] = west / own;
        weights[w + 1] = right / own;
      } else if (rows.kept[j] === 0) {
        let below = north[k - nx];
        let above = north[k];
        if (northEast && northWest) {
          below += northEast[k - nx - 1] + northWest[k - nx + 1];
          above += northEast[k] + northWest[k];
        }
        const own = Math.max(centre[k] - east[k] - east[k - 1], below + above);
        if (own <= NOTHING * centre[k]) continue;
        weights[w] = below / own;
        weights[w + 2] = above / own;
      } else weights[w] = 1;
    }
  for (let j = 0; j < nz; j++) {
    if (rows.kept[j] !== 0) continue;
    for (let i = 0; i < nx; i++) {
      if (columns.kept[i] !== 0) continue;
      // A cell between lines: by its own balance from the four beside it, whose weights are known.
      const k = nx + 1 + j * nx + i;
      const w = 4 * k;
      const [toWest, toEast, toSouth, toNorth] = [east[k - 1], east[k], north[k - nx], north[k]];
      const [west, right, below, above] = [w - 4, w + 4, w - 4 * nx, w + 4 * nx];
      const one = 1 / centre[k];
      weights[w] = one * (toWest * weights[west] + toSouth * weights[below]);
      weights[w + 1] = one * (toEast * weights[right] + toSouth * weights[below + 1]);
      weights[w + 2] = one * (toWest * weights[west + 2] + toNorth * weights[above]);
      weights[w + 3] = one * (toEast * weights[right + 2] + toNorth * weights[above + 1]);
      if (northEast && northWest) {
        weights[w] += one * northEast[k - nx - 1];
        weights[w + 1] += one * northWest[k - nx + 1];
        weights[w + 2] += one * northWest[k];
        weights[w + 3] += one * northEast[k];
      }
    }
  }
  return { columns, rows, weights };
}

/**
 * coarse = Pᵀ fine, framed
 * @param stride - 2 where fine is nought on every second column
 */
export function restrict(
  { columns, rows, weights }: Prolongation,
  fine: Float64Array,
  coarse: Float64Array,
  stride: 1 | 2 = 1,
): void {
  const [nx, nz, cx] = [columns.parent.length, rows.parent.length, columns.count];
  const { parent } = columns;
  coarse.fill(0);
  for (let j = 0; j < nz; j++) {
    const row = nx + 1 + j * nx;
    const below = cx + 1 + rows.parent[j] * cx;
    for (let i = 0; i < nx; i += stride) {
      const v = fine[row + i];
      const w = 4 * (row + i);
      const c = below + parent[i];
      coarse[c] += weights[w] * v;
      coarse[c + 1] += weights[w + 1] * v;
      coarse[c + cx] += weights[w + 2] * v;
      coarse[c + cx + 1] += weights[w + 3] * v;
    }
  }
}

/** fine += P coarse, framed */
export function prolong(
  { columns, rows, weights }: Prolongation,
  coarse: Float64Array,
  fine: Float64Array,
): void {
  const [nx, nz, cx] = [columns.parent.length, rows.parent.length, columns.count];
  const { parent } = columns;
  for (let j = 0; j < nz; j++) {
    const row = nx + 1 + j * nx;
    const below = cx + 1 + rows.parent[j] * cx;
    for (let i = 0; i < nx; i++) {
      const w = 4 * (row + i);
      const c = below + parent[i];
      fine[row + i] +=
        weights[w] * coarse[c] +
        weights[w + 1] * coarse[c + 1] +
        weights[w + 2] * coarse[c + cx] +
        weights[w + 3] * coarse[c + cx + 1];
    }
  }
}
