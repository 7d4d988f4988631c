import { cellAt } from './grid.js';
import type { SectionPoint } from './polyline.js';
import { conductancesOf, type Section } from './section.js';

/**
 * Which way the water moves, and how fast: the flux at a point of ground that is full, m/s, from what passes the faces of
 * its cell.
 * @returns a function of the point; undefined where there is no soil, or above the water table
 */
export function fluxOf(
  section: Section,
  head: Float64Array,
): (point: SectionPoint) => SectionPoint | undefined {
  const { grid, soilOf } = section;
  const { nx, right, above } = conductancesOf(section);
  return ({ x, z }) => {
    const [i, j] = [cellAt(grid.x, x), cellAt(grid.z, z)];
    const k = j * nx + i;
    if (soilOf[k] < 0 || head[k] < z) return undefined;
    const passes = (from: number, to: number, conductance: number) =>
      conductance > 0 ? conductance * (head[from] - head[to]) : 0;
    const across = [i > 0 ? passes(k - 1, k, right[k - 1]) : 0, i + 1 < nx ? passes(k, k + 1, right[k]) : 0];
    const up = [
      j > 0 ? passes(k - nx, k, above[k - nx]) : 0,
      k + nx < soilOf.length ? passes(k, k + nx, above[k]) : 0,
    ];
    return {
      x: (across[0] + across[1]) / 2 / (grid.z[j + 1] - grid.z[j]),
      z: (up[0] + up[1]) / 2 / (grid.x[i + 1] - grid.x[i]),
    };
  };
}
