import { formula, type Use, unrecorded } from '../formula/index.js';
import { FOOT, INCH } from '../units/index.js';
import { orificeFlow } from './inflow.js';

/**
 * Share of the perforations taken to be blocked, 0–1. A manufacturer's chart assumes half; from three quarters after years to
 * none when new: our choice.
 */
export const BLOCKED = { most: 0.75, likely: 0.5, least: 0 };

/** Open area of perforated pipe, m² a metre: 1 in² a foot, the least of ASTM F405 (from memory) for 4 in tubing. */
const OPEN_AREA = INCH ** 2 / FOOT;

/** Open area of a length of pipe. */
export const openArea = formula({
  title: 'Open area of the perforated pipe',
  symbol: 'A',
  unit: 'm²',
  expression: 'a*(1 - b)*L',
  parameters: {
    a: { meaning: 'open area of a metre of pipe', unit: 'm²/m', min: 0, max: 0.1 },
    b: { meaning: 'share that is blocked', unit: '-', min: 0, max: 1 },
    L: { meaning: 'length of perforated pipe', unit: 'm', min: 0, max: 1000 },
  },
  compute: (a: number, b: number, L: number) => a * (1 - b) * L,
  validity: 'openings alike along the pipe',
  source: 'geometry',
});

/**
 * Flow that gets into a perforated pipe, by {@link orificeFlow}.
 * @param length - of the pipe, m
 * @param head - of water in the bed above the openings, m, 0 and more
 * @param blocked - share of the openings, 0–1
 * @param use - what evaluates the formulas, for a record
 * @returns m³/s
 */
export function entryCapacity(
  length: number,
  head: number,
  blocked = BLOCKED.likely,
  use: Use = unrecorded,
): number {
  return use(orificeFlow, use(openArea, OPEN_AREA, blocked, length), head);
}
