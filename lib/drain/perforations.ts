import { orificeFlow } from './inflow.js';

/**
 * Share of the perforations taken to be blocked, 0–1. A manufacturer's chart assumes half; from three quarters after years to
 * none when new: our choice.
 */
export const BLOCKED = { most: 0.75, likely: 0.5, least: 0 };

/** Open area of perforated pipe, m² a metre: 1 in² a foot, the least of ASTM F405 (from memory) for 4 in tubing. */
export const OPEN_AREA = 0.0254 ** 2 / 0.3048;

/**
 * Flow that gets into a perforated pipe, by {@link orificeFlow}.
 * @param length - of the pipe, m
 * @param head - of water in the bed above the openings, m, 0 and more
 * @param blocked - share of the openings, 0–1
 * @returns m³/s
 */
export function entryCapacity(length: number, head: number, blocked = BLOCKED.likely): number {
  return orificeFlow.compute(OPEN_AREA * (1 - blocked) * length, head);
}
