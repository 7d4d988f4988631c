/** What seeps to an empty floor, by one closed form, and how long it takes to lift a liner. */
import type { GuardSite } from './site.js';
import type { Told } from './told.js';

/** Water under the liner that counts as lifted, m (the project's contract). */
export const LIFTED = 0.02;

/** Floor of the pond at a depth below its rim, m². */
export function floorArea({ pond }: GuardSite, depth: number): number {
  const side = (full: number) => Math.max(full - 2 * pond.slope * depth, 0.3);
  return side(pond.length) * side(pond.width);
}

/** Permeability of the ground the pond stands in, m/s: the middle told for each layer touched, by thickness, the tightest pit. */
export function conductivity({ ground }: Told, depth: number): number {
  const pits = [...new Set(ground.layers.map(({ pit }) => pit))];
  const means = pits.map((pit) => {
    const parts = ground.layers
      .filter((l) => l.pit === pit && l.bottom_m > 0.35)
      .map((l) => ({
        k: l.ksat_m_s.p50,
        thick: Math.min(l.bottom_m, depth + 0.5) - Math.max(l.top_m, 0.3),
      }))
      .filter(({ thick }) => thick > 0.05);
    const thick = parts.reduce((sum, p) => sum + p.thick, 0);
    return thick > 0 ? parts.reduce((sum, p) => sum + p.k * p.thick, 0) / thick : 1e-9;
  });
  return means.length > 0 ? Math.min(...means) : 1e-9;
}

/** Inflow to a disc at the top of deep ground: Q = 4 K r h (Hvorslev 1951, case 3; the floor alone, no sides). m³/s. */
export function inflow(k: number, area: number, head: number): number {
  return 4 * k * Math.sqrt(area / Math.PI) * Math.max(head, 0);
}

/** Days until the water that counts has come under the floor. */
export function daysToLift(k: number, area: number, head: number): number {
  return (LIFTED * area) / inflow(k, area, head) / 86_400;
}
