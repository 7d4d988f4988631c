import { framed } from './stencil.js';

/**
 * How the excess of each cell changes with the heads around it: a five-point operator that is not symmetric, as water
 * under suction goes down rather than up. Framed vectors; what neighbours take off is positive.
 */
export interface Slope {
  nx: number;
  nz: number;
  centre: Float64Array;
  fromRight: Float64Array;
  fromLeft: Float64Array;
  fromAbove: Float64Array;
  fromBelow: Float64Array;
}

/** r = b − J x, framed. */
export function slopeResidual(s: Slope, b: Float64Array, x: Float64Array, r: Float64Array): void {
  const { nx, nz, centre, fromRight, fromLeft, fromAbove, fromBelow } = s;
  const end = nx + 1 + nx * nz;
  for (let k = nx + 1; k < end; k++)
    r[k] =
      b[k] -
      centre[k] * x[k] +
      fromRight[k] * x[k + 1] +
      fromLeft[k] * x[k - 1] +
      fromAbove[k] * x[k + nx] +
      fromBelow[k] * x[k - nx];
}

/** y = J x, framed. */
export function slopeTimes(s: Slope, x: Float64Array, y: Float64Array): void {
  const { nx, nz, centre, fromRight, fromLeft, fromAbove, fromBelow } = s;
  const end = nx + 1 + nx * nz;
  for (let k = nx + 1; k < end; k++)
    y[k] =
      centre[k] * x[k] -
      fromRight[k] * x[k + 1] -
      fromLeft[k] * x[k - 1] -
      fromAbove[k] * x[k + nx] -
      fromBelow[k] * x[k - nx];
}

/** Rows and columns of a slope, factored. */
export interface SlopeLines {
  rowInverse: Float64Array;
  rowLower: Float64Array;
  columnInverse: Float64Array;
  columnLower: Float64Array;
}

/** Factors rows and columns into `lines`, or into new room. */
export function factorSlope(s: Slope, lines: SlopeLines = roomForLines(s)): SlopeLines {
  const { nx, nz, centre, fromRight, fromLeft, fromAbove, fromBelow } = s;
  const { rowInverse, rowLower, columnInverse, columnLower } = lines;
  const end = nx + 1 + nx * nz;
  for (let k = nx + 1; k < end; k++) {
    rowLower[k] = fromLeft[k] * rowInverse[k - 1];
    rowInverse[k] = 1 / (centre[k] - rowLower[k] * fromRight[k - 1]);
    columnLower[k] = fromBelow[k] * columnInverse[k - nx];
    columnInverse[k] = 1 / (centre[k] - columnLower[k] * fromAbove[k - nx]);
  }
  return lines;
}

function roomForLines({ nx, nz }: Slope): SlopeLines {
  const room = () => framed(nx, nz);
  return { rowInverse: room(), rowLower: room(), columnInverse: room(), columnLower: room() };
}

/** Solves every second row of J x = b, from `first`, for the values that suit the rows beside it. */
export function sweepRows(
  s: Slope,
  lines: SlopeLines,
  b: Float64Array,
  x: Float64Array,
  first: number,
): void {
  const { nx, nz, fromRight, fromAbove, fromBelow } = s;
  const { rowInverse, rowLower } = lines;
  for (let j = first; j < nz; j += 2) {
    const start = nx + 1 + j * nx;
    let carried = 0;
    for (let k = start; k < start + nx; k++) {
      carried = b[k] + fromAbove[k] * x[k + nx] + fromBelow[k] * x[k - nx] + rowLower[k] * carried;
      x[k] = carried;
    }
    carried = 0;
    for (let k = start + nx - 1; k >= start; k--) {
      carried = (x[k] + fromRight[k] * carried) * rowInverse[k];
      x[k] = carried;
    }
  }
}

/** The same for every second column. */
export function sweepColumns(
  s: Slope,
  lines: SlopeLines,
  b: Float64Array,
  x: Float64Array,
  first: number,
): void {
  const { nx, nz, fromRight, fromLeft, fromAbove } = s;
  const { columnInverse, columnLower } = lines;
  for (let j = 0; j < nz; j++) {
    const end = nx + 1 + (j + 1) * nx;
    for (let k = nx + 1 + j * nx + first; k < end; k += 2)
      x[k] = b[k] + fromRight[k] * x[k + 1] + fromLeft[k] * x[k - 1] + columnLower[k] * x[k - nx];
  }
  for (let j = nz - 1; j >= 0; j--) {
    const end = nx + 1 + (j + 1) * nx;
    for (let k = nx + 1 + j * nx + first; k < end; k += 2)
      x[k] = (x[k] + fromAbove[k] * x[k + nx]) * columnInverse[k];
  }
}
