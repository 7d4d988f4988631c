import type { Prolongation } from './prolongation.js';
import { framed, type Stencil } from './stencil.js';

/** Fine neighbours of a cell that count, each pair once: itself, right, above, above right, above left. */
const STEPS: [di: number, dj: number][] = [
  [0, 0],
  [1, 0],
  [0, 1],
  [1, 1],
  [-1, 1],
];

/** The operator as the coarse cells feel it, Pᵀ A P. */
export function coarseOperator(fine: Stencil, { columns, rows, weights }: Prolongation): Stencil {
  const { nx, nz } = fine;
  const cx = columns.count;
  const plane = () => framed(cx, rows.count);
  const [centre, east, north, northEast, northWest] = [plane(), plane(), plane(), plane(), plane()];
  const planes = [fine.centre, fine.east, fine.north];
  if (fine.corners) planes.push(fine.corners.northEast, fine.corners.northWest);
  for (let d = 0; d < planes.length; d++) {
    const values = planes[d];
    const [di, dj] = STEPS[d];
    for (let j = 0; j < nz - dj; j++) {
      const shiftJ = rows.parent[j + dj] - rows.parent[j];
      for (let i = 0; i < nx; i++) {
        const k = nx + 1 + j * nx + i;
        if (values[k] === 0) continue;
        // A pair counts from both its ends, a diagonal once.
        const a = d === 0 ? values[k] / 2 : -values[k];
        const l = 4 * (k + dj * nx + di);
        const c = cx + 1 + rows.parent[j] * cx + columns.parent[i];
        const shiftI = columns.parent[i + di] - columns.parent[i];
        for (let p = 0; p < 4; p++) {
          const ap = a * weights[4 * k + p];
          if (ap === 0) continue;
          const from = c + (p & 1) + (p >> 1) * cx;
          for (let q = 0; q < 4; q++) {
            const v = ap * weights[l + q];
            if (v === 0) continue;
            const across = shiftI + (q & 1) - (p & 1);
            const up = shiftJ + (q >> 1) - (p >> 1);
            const to = from + across + up * cx;
            if (up === 0) {
              if (across === 0) centre[from] += 2 * v;
              else east[across > 0 ? from : to] -= v;
            } else if (across === 0) north[up > 0 ? from : to] -= v;
            else if (across === up) northEast[up > 0 ? from : to] -= v;
            else northWest[up > 0 ? from : to] -= v;
          }
        }
      }
    }
  }
  return { nx: cx, nz: rows.count, centre, east, north, corners: { northEast, northWest } };
}
