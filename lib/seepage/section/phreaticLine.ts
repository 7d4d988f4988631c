import type { SectionPoint } from './polyline.js';
import type { Section } from './section.js';

/**
 * The water table: in each column of cells the highest place at which pressure turns to suction, by straight line
 * between the middles of cells; at the top of ground that is full. Columns that are dry to the base are left out.
 * @param section - grid and soils
 * @param head - of each cell, m above the datum of the grid
 * @returns points from left to right, m, z above the datum
 */
export function phreaticLine({ grid, soilOf }: Section, head: Float64Array): SectionPoint[] {
  const [nx, nz] = [grid.x.length - 1, grid.z.length - 1];
  const line: SectionPoint[] = [];
  for (let i = 0; i < nx; i++) {
    const x = (grid.x[i] + grid.x[i + 1]) / 2;
    for (let j = nz - 1; j >= 0; j--) {
      const k = j * nx + i;
      if (soilOf[k] < 0) continue;
      const z = (grid.z[j] + grid.z[j + 1]) / 2;
      const pressure = head[k] - z;
      if (pressure < 0) continue;
      const above = k + nx;
      if (j === nz - 1 || soilOf[above] < 0) line.push({ x, z: Math.min(grid.z[j + 1], z + pressure) });
      else {
        const over = (grid.z[j + 1] + grid.z[j + 2]) / 2;
        const suction = over - head[above];
        line.push({ x, z: z + ((over - z) * pressure) / (pressure + suction) });
      }
      break;
    }
  }
  return line;
}
