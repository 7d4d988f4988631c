import type { Basis } from '../basis/index.js';
import { undrainedHeads } from '../basis/index.js';
import type { Obstacle } from '../contract/index.js';
import { conveyanceOf, FLOW_LINKS, SOIL_LINKS } from '../drain/index.js';
import { method } from '../formula/index.js';
import type { Measures } from '../heads/index.js';
import { NO_SHIFT, type Shift } from '../heads/index.js';
import { discInflow } from '../seepage/index.js';
import { permeabilityBySample } from '../site/index.js';
import { drainInputOf } from '../works/index.js';

export const carryingMethod = method({
  title: 'Capacity of a drain against the water that comes',
  what:
    'The drain is designed at every depth. A link that takes less than the likely inflow, or lets the soil through, refuses ' +
    'the drain there. In a sample whose ground brings more in its wettest year than the links take, the drain counts as ' +
    'blocked; in one that fills bed and sump before a power cut ends, the cut counts as one without a pump.',
  assumptions: [
    'seepage by the permeability and the highest water of the sample; rain, run-off and leak at their likely end',
    'a drain that takes less than what comes lowers nothing: a bound on the safe side',
    'fall and flood are no matter of capacity: the level that the drain holds has them',
  ],
  source: 'design of the drain; disc on a half-space',
});

/** What a drain takes at a depth, and what it must; depths alike share their arrays. */
export interface Carrying {
  /** why the drain cannot be had here; absent: it can */
  lacks?: Obstacle;
  /** samples whose ground brings more than the links take: 1 */
  overwhelmed: Uint8Array;
  /** samples that fill bed and sump before a power cut ends: 1; absent without a pump */
  filled?: Uint8Array;
}

/** The drain of measures against the water of every sample, by depth; see {@link carryingMethod}. */
export function carryingOf(
  basis: Basis,
  m: Measures,
  depths: ArrayLike<number>,
  shift: Shift = NO_SHIFT,
): Carrying[] {
  const { drain } = m;
  if (!drain) return [];
  const { draws, site, emptyings } = basis;
  const { samples, years, reliability } = draws;
  const { yearly } = undrainedHeads(draws, emptyings, m, shift.water);
  const highest = Float64Array.from({ length: samples }, (_, s) =>
    yearly.subarray(s * years, (s + 1) * years).reduce((a, b) => Math.max(a, b)),
  );
  let before: Carrying | undefined;
  return Array.from(depths, (depth): Carrying => {
    const { input, radius, level, storm } = drainInputOf(basis, m, drain, depth);
    const { reserve, totalInflow, sump } = conveyanceOf(input);
    const { clay } = input.inflow;
    const takes =
      totalInflow * Math.min(...FLOW_LINKS.map((link) => reserve[link] ?? Number.POSITIVE_INFINITY));
    const room = takes - (totalInflow - clay);
    const overwhelmed = new Uint8Array(samples);
    const filled = sump && new Uint8Array(samples);
    const inStorm =
      (totalInflow - clay - input.inflow.leak) * Math.min(storm.seconds, reliability.cutSeconds);
    const permeability = permeabilityBySample(site, depth);
    let same = before !== undefined;
    for (let s = 0; s < samples; s++) {
      const k = permeability(s) * shift.permeability;
      const seepage = discInflow.compute(k, radius, Math.max(highest[s] - level, 0));
      overwhelmed[s] = Number(seepage > room);
      if (sump && filled) filled[s] = Number(seepage * reliability.cutSeconds + inStorm > sump.storage);
      same &&= overwhelmed[s] === before?.overwhelmed[s] && filled?.[s] === before?.filled?.[s];
    }
    const over = same ? before! : { overwhelmed, filled };
    before = {
      overwhelmed: over.overwhelmed,
      filled: over.filled,
      lacks: lackOf(depth, reserve, totalInflow),
    };
    return before;
  });
}

/** Why the drain of measures cannot be had at a depth; undefined: it can, or there is none. */
export function lackAt(basis: Basis, m: Measures, depth: number): Obstacle | undefined {
  if (!m.drain) return undefined;
  const { reserve, totalInflow } = conveyanceOf(drainInputOf(basis, m, m.drain, depth).input);
  return lackOf(depth, reserve, totalInflow);
}

/** The link with the least reserve, where that is below 1. */
function lackOf(depth: number, reserve: Record<string, number>, inflow: number): Obstacle | undefined {
  const least = (links: readonly string[]) =>
    links.filter((l) => reserve[l] < 1).sort((a, b) => reserve[a] - reserve[b])[0];
  const narrow = least(FLOW_LINKS);
  if (narrow)
    return {
      governs: 'capacity',
      code: 'link-too-narrow',
      values: { link: narrow, depth_m: depth, takes_m3_s: inflow * reserve[narrow], comes_m3_s: inflow },
    };
  const open = least(SOIL_LINKS);
  if (open)
    return {
      governs: 'envelope',
      code: 'soil-comes-through',
      values: { link: open, share: reserve[open] },
    };
  return undefined;
}
