/**
 * A symmetric operator on a rectangle of cells: what a cell keeps for itself, less what it shares with its
 * neighbours. Vectors carry a frame of zeros, so that a loop over cells may look past the edge.
 */
export interface Stencil {
  nx: number;
  nz: number;
  /** diagonal */
  centre: Float64Array;
  /** coupling with the cell to the right, and with the one above; positive where they pull alike */
  east: Float64Array;
  north: Float64Array;
  /** coupling across corners, on coarsened grids */
  corners?: { northEast: Float64Array; northWest: Float64Array };
}

/** Vector for a rectangle of cells, with its frame. */
export function framed(nx: number, nz: number): Float64Array {
  return new Float64Array(nx * nz + 2 * (nx + 1));
}

/** The cells of a framed vector, row by row from the bottom. */
export function cellsOf(vector: Float64Array, nx: number, nz: number): Float64Array {
  return vector.subarray(nx + 1, nx + 1 + nx * nz);
}

/**
 * r = b − A x; all framed.
 * @param every - 2: on every second column only, from the first on, where the columns between were relaxed last and
 *   nothing is left
 */
export function residual(
  s: Stencil,
  b: Float64Array,
  x: Float64Array,
  r: Float64Array,
  every: 1 | 2 = 1,
): void {
  const { nx, nz, centre, east, north, corners } = s;
  for (let start = nx + 1; start < nx + 1 + nx * nz; start += nx) {
    const end = start + nx;
    for (let k = start; k < end; k += every)
      r[k] =
        b[k] -
        centre[k] * x[k] +
        east[k] * x[k + 1] +
        east[k - 1] * x[k - 1] +
        north[k] * x[k + nx] +
        north[k - nx] * x[k - nx];
    if (!corners) continue;
    const { northEast, northWest } = corners;
    for (let k = start; k < end; k += every)
      r[k] +=
        northEast[k] * x[k + nx + 1] +
        northEast[k - nx - 1] * x[k - nx - 1] +
        northWest[k] * x[k + nx - 1] +
        northWest[k - nx + 1] * x[k - nx + 1];
  }
}

/** y = A x, framed, for an operator without corners; returns x·y. */
export function multiply(s: Stencil, x: Float64Array, y: Float64Array): number {
  const { nx, nz, centre, east, north } = s;
  const end = nx + 1 + nx * nz;
  let product = 0;
  for (let k = nx + 1; k < end; k++) {
    const v =
      centre[k] * x[k] -
      east[k] * x[k + 1] -
      east[k - 1] * x[k - 1] -
      north[k] * x[k + nx] -
      north[k - nx] * x[k - nx];
    y[k] = v;
    product += v * x[k];
  }
  return product;
}
