import type { Stencil } from './stencil.js';

/** Which rows, or columns, the coarser grid keeps. */
export interface CoarseLines {
  /** number kept */
  count: number;
  /** for each fine line: the coarse line it is, or the one before it (−1: none) */
  parent: Int32Array;
  /** 1 where the line is kept */
  kept: Uint8Array;
}

/**
 * Leaves out as many lines as may be, the weakest first, never two side by side: water runs along a strong line, a
 * blanket or a sand seam, which its neighbours could not stand for.
 * @param strength - sum of the couplings along each line
 */
export function coarseLines(strength: Float64Array): CoarseLines {
  const n = strength.length;
  const order = Array.from({ length: n }, (_, i) => i).sort((a, b) => strength[a] - strength[b]);
  const kept = new Uint8Array(n).fill(1);
  for (const i of order) if (kept[i - 1] !== 0 && kept[i + 1] !== 0) kept[i] = 0;
  const parent = new Int32Array(n);
  let count = 0;
  for (let i = 0; i < n; i++) {
    count += kept[i];
    parent[i] = count - 1;
  }
  return { count, parent, kept };
}

/** Sum of the couplings along each row and along each column. */
export function lineStrengths({ nx, nz, east, north }: Stencil): {
  rows: Float64Array;
  columns: Float64Array;
} {
  const rows = new Float64Array(nz);
  const columns = new Float64Array(nx);
  for (let j = 0; j < nz; j++)
    for (let i = 0; i < nx; i++) {
      const k = nx + 1 + j * nx + i;
      rows[j] += east[k];
      columns[i] += north[k];
    }
  return { rows, columns };
}
