import type { Stencil } from './stencil.js';

/** A stencil factored outright, its cells taken along the shorter side so that the band is narrow. */
export interface BandedFactor {
  /** cells beside the diagonal that a row reaches */
  band: number;
  /** row by row, the band and then the inverse of the diagonal */
  rows: Float64Array;
  /** place in a framed vector of each cell, in the order of the rows */
  place: Int32Array;
  /** room for a solution */
  values: Float64Array;
}

/** Multiplications that a factorisation takes, about. */
export function bandedWork({ nx, nz }: Stencil): number {
  return nx * nz * (Math.min(nx, nz) + 1) ** 2;
}

/** Factors a stencil as L Lᵀ. */
export function factorBanded(s: Stencil): BandedFactor {
  const { nx, nz, centre, east, north, corners } = s;
  const n = nx * nz;
  const short = Math.min(nx, nz);
  const along = nx <= nz;
  const band = short + 1;
  const width = band + 1;
  const rows = new Float64Array(n * width);
  const place = new Int32Array(n);
  for (let row = 0; row < n; row++) {
    const [inner, outer] = [row % short, Math.floor(row / short)];
    const [i, j] = along ? [inner, outer] : [outer, inner];
    const k = nx + 1 + j * nx + i;
    place[row] = k;
    const at = row * width;
    rows[at + band] = centre[k];
    // Couplings with cells that come before: one back, and the three of the line before.
    if (inner > 0) rows[at + band - 1] = -(along ? east[k - 1] : north[k - nx]);
    if (outer === 0) continue;
    rows[at + 1] = -(along ? north[k - nx] : east[k - 1]);
    if (!corners) continue;
    const { northEast, northWest } = corners;
    if (inner > 0) rows[at] = -northEast[k - nx - 1];
    if (inner < short - 1) rows[at + 2] = -(along ? northWest[k - nx + 1] : northWest[k]);
  }
  for (let row = 0; row < n; row++) {
    const at = row * width;
    for (let c = Math.max(row - band, 0); c <= row; c++) {
      const other = c * width;
      // Both rows reach back to the later of their first columns.
      const first = Math.max(row - band, c - band, 0);
      let sum = rows[at + c - row + band];
      for (let m = first; m < c; m++) sum -= rows[at + m - row + band] * rows[other + m - c + band];
      rows[at + c - row + band] = c < row ? sum * rows[other + band] : 1 / Math.sqrt(sum);
    }
  }
  return { band, rows, place, values: new Float64Array(n) };
}

/** x = A⁻¹ b, framed. */
export function solveBanded(
  { band, rows, place, values }: BandedFactor,
  b: Float64Array,
  x: Float64Array,
): void {
  const width = band + 1;
  const n = place.length;
  for (let row = 0; row < n; row++) {
    const at = row * width + band - row;
    let sum = b[place[row]];
    for (let m = Math.max(row - band, 0); m < row; m++) sum -= rows[at + m] * values[m];
    values[row] = sum * rows[at + row];
  }
  for (let row = n - 1; row >= 0; row--) {
    const at = row * width + band - row;
    const value = values[row] * rows[at + row];
    values[row] = value;
    x[place[row]] = value;
    for (let m = Math.max(row - band, 0); m < row; m++) values[m] -= rows[at + m] * value;
  }
}
