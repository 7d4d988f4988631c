/** Cases without a singular point, on which the second order of the scheme must show. */
import {
  evenLines,
  middleOf,
  type Section,
  type SectionSoil,
  solveSaturated,
} from '../../../lib/seepage/section/index.js';
import { groundOf, halved, UNIFORM } from './ground.js';

/** A section and its exact heads. */
export interface SmoothCase {
  name: string;
  section: (level: number) => Section;
  exact: (x: number, z: number) => number;
}

const tight: SectionSoil = { ...UNIFORM, across: 0.3, down: 0.1 };

/**
 * Two layers that conduct unequally across and downwards, head cos(πx) f(z) with f and the flow continuous at z = ½:
 * each layer's f grows at the rate π √(across/down).
 */
function layered(): SmoothCase {
  const rate = (soil: SectionSoil) => Math.PI * Math.sqrt(soil.across / soil.down);
  const [low, high] = [rate(UNIFORM), rate(tight)];
  const slope = (UNIFORM.down * low * Math.sinh(low / 2)) / (tight.down * high);
  const f = (z: number) =>
    z < 0.5
      ? Math.cosh(low * z)
      : Math.cosh(low / 2) * Math.cosh(high * (z - 0.5)) + slope * Math.sinh(high * (z - 0.5));
  const exact = (x: number, z: number) => (Math.cos(Math.PI * x) * f(z)) / f(1);
  return {
    name: 'manufactured, two anisotropic layers',
    exact,
    // Uneven lines, so that the order is not that of an even grid only.
    section: (level) =>
      groundOf({
        x: halved(
          evenLines(0, 1, 16).map((x) => x + 0.03 * Math.sin(2 * Math.PI * x)),
          level,
        ),
        z: halved(evenLines(0, 1, 16), level),
        soils: [UNIFORM, tight],
        soilAt: (_, z) => (z < 0.5 ? 0 : 1),
        top: exact,
      }),
  };
}

/** A strip fed evenly from above and drained at one end: h = w (L² − x²)/2KD, the parabola of Dupuit. */
function strip(): SmoothCase {
  return {
    name: 'strip fed from above (Dupuit)',
    exact: (x) => (1 - x * x) / 2,
    section: (level) => {
      const x = halved(evenLines(0, 1, 8), level);
      const section = groundOf({ x, z: evenLines(0, 1, 1), right: () => 0 });
      return { ...section, supply: Float64Array.from({ length: x.length - 1 }, (_, i) => x[i + 1] - x[i]) };
    },
  };
}

/** Flow across layers: heads fall in straight lines, which the scheme holds exactly on any grid. */
export function layeredColumn(lines: number[]): SmoothCase & { flux: number } {
  const soils = [1, 1e-3, 0.1].map((k): SectionSoil => ({ ...UNIFORM, across: k, down: k }));
  const bounds = [0, 0.2, 0.5, 1];
  const flux = 1 / soils.reduce((sum, s, l) => sum + (bounds[l + 1] - bounds[l]) / s.down, 0);
  const layerAt = (z: number) => (z < 0.2 ? 0 : z < 0.5 ? 1 : 2);
  return {
    name: 'column of layers',
    flux,
    exact: (_, z) =>
      soils.reduce(
        (sum, s, l) =>
          sum + (flux * Math.min(Math.max(z - bounds[l], 0), bounds[l + 1] - bounds[l])) / s.down,
        0,
      ),
    section: () =>
      groundOf({
        x: evenLines(0, 1, 1),
        z: Float64Array.from(lines),
        soils,
        soilAt: (_, z) => layerAt(z),
        top: () => 1,
        bottom: () => 0,
      }),
  };
}

export const SMOOTH_CASES = [layered(), strip()];

/** Largest error over the cells. */
export function largestError({ section, exact }: SmoothCase, level: number): number {
  const ground = section(level);
  const { head } = solveSaturated(ground);
  return head.reduce((worst, h, k) => {
    const at = middleOf(ground.grid, k);
    return Math.max(worst, Math.abs(h - exact(at.x, at.z)));
  }, 0);
}
