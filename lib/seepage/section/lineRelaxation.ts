import { framed, type Stencil } from './stencil.js';

/** A stencil with its rows and columns factored, each a tridiagonal system that is solved at a stroke. */
export interface LineFactors {
  /** one over the pivots of the rows, and what a pivot passes on */
  rowInverse: Float64Array;
  rowLower: Float64Array;
  columnInverse: Float64Array;
  columnLower: Float64Array;
}

/** Factors rows and columns. */
export function factorLines({ nx, nz, centre, east, north }: Stencil): LineFactors {
  const room = () => framed(nx, nz);
  const [rowInverse, rowLower, columnInverse, columnLower] = [room(), room(), room(), room()];
  const end = nx + 1 + nx * nz;
  for (let k = nx + 1; k < end; k++) {
    // The coupling of a last cell with the first of the next row is nought, which starts each row afresh.
    rowLower[k] = east[k - 1] * rowInverse[k - 1];
    rowInverse[k] = 1 / (centre[k] - east[k - 1] * rowLower[k]);
    columnLower[k] = north[k - nx] * columnInverse[k - nx];
    columnInverse[k] = 1 / (centre[k] - north[k - nx] * columnLower[k]);
  }
  return { rowInverse, rowLower, columnInverse, columnLower };
}

/** Solves every second row, from `first`, for the values that suit the rows beside it. */
export function relaxRows(s: Stencil, f: LineFactors, b: Float64Array, x: Float64Array, first: number): void {
  const { nx, nz, north, corners } = s;
  const { rowInverse, rowLower } = f;
  for (let j = first; j < nz; j += 2) {
    const start = nx + 1 + j * nx;
    const end = start + nx;
    let carried = 0;
    if (corners) {
      const { northEast, northWest } = corners;
      for (let k = start; k < end; k++) {
        carried =
          b[k] +
          north[k] * x[k + nx] +
          north[k - nx] * x[k - nx] +
          northEast[k] * x[k + nx + 1] +
          northEast[k - nx - 1] * x[k - nx - 1] +
          northWest[k] * x[k + nx - 1] +
          northWest[k - nx + 1] * x[k - nx + 1] +
          rowLower[k] * carried;
        x[k] = carried;
      }
    } else
      for (let k = start; k < end; k++) {
        carried = b[k] + north[k] * x[k + nx] + north[k - nx] * x[k - nx] + rowLower[k] * carried;
        x[k] = carried;
      }
    carried = 0;
    for (let k = end - 1; k >= start; k--) {
      carried = x[k] * rowInverse[k] + rowLower[k + 1] * carried;
      x[k] = carried;
    }
  }
}

/** The same where nothing is known yet: x becomes nought, then every second row, from the first on, is solved for itself. */
export function startRows(
  { nx, nz }: Stencil,
  { rowInverse, rowLower }: LineFactors,
  b: Float64Array,
  x: Float64Array,
): void {
  for (let j = 0; j < nz; j++) {
    const start = nx + 1 + j * nx;
    const end = start + nx;
    if (j % 2 === 1) {
      x.fill(0, start, end);
      continue;
    }
    let carried = 0;
    for (let k = start; k < end; k++) {
      carried = b[k] + rowLower[k] * carried;
      x[k] = carried;
    }
    carried = 0;
    for (let k = end - 1; k >= start; k--) {
      carried = x[k] * rowInverse[k] + rowLower[k + 1] * carried;
      x[k] = carried;
    }
  }
}

/** Solves every second column, from `first`. */
export function relaxColumns(
  s: Stencil,
  f: LineFactors,
  b: Float64Array,
  x: Float64Array,
  first: number,
): void {
  const { nx, nz, east, corners } = s;
  const { columnInverse, columnLower } = f;
  for (let j = 0; j < nz; j++) {
    const end = nx + 1 + (j + 1) * nx;
    if (corners) {
      const { northEast, northWest } = corners;
      for (let k = nx + 1 + j * nx + first; k < end; k += 2)
        x[k] =
          b[k] +
          east[k] * x[k + 1] +
          east[k - 1] * x[k - 1] +
          northEast[k] * x[k + nx + 1] +
          northEast[k - nx - 1] * x[k - nx - 1] +
          northWest[k] * x[k + nx - 1] +
          northWest[k - nx + 1] * x[k - nx + 1] +
          columnLower[k] * x[k - nx];
    } else
      for (let k = nx + 1 + j * nx + first; k < end; k += 2)
        x[k] = b[k] + east[k] * x[k + 1] + east[k - 1] * x[k - 1] + columnLower[k] * x[k - nx];
  }
  for (let j = nz - 1; j >= 0; j--) {
    const end = nx + 1 + (j + 1) * nx;
    for (let k = nx + 1 + j * nx + first; k < end; k += 2)
      x[k] = x[k] * columnInverse[k] + columnLower[k + nx] * x[k + nx];
  }
}
