import type { Basis } from '../basis/index.js';
import type { Advice, RankedSpot } from '../contract/index.js';
import { method } from '../formula/index.js';
import { NO_SHIFT, NOTHING } from '../heads/index.js';
import type { Option } from '../options/index.js';
import type { SpotHead } from '../site/index.js';
import { type Decision, decide, shiftedBy } from './decide.js';

export const spotsMethod = method({
  title: 'Candidate spots, ranked',
  what:
    'The same pond at every levelled spot: the water outside moved by the difference of its depth below the ground ' +
    'there, decided again; ranked by what can be had with least, then by the depth to water.',
  assumptions: [
    'ground, surface water and outlets as at the planned spot: only the water table differs',
    'where drain or concrete is the answer at the planned spot and another needs neither, even at the shallow end, moving is recommended',
    'at the shallow end of what is not known there (one standard deviation) the answer may differ, and that is said',
  ],
  source: 'levels of holes as in the heads at the spots',
});

/** Less trouble first. */
const ORDER = [
  'no-drain',
  'surface-water-only',
  'raise-pond',
  'shallower',
  'cutoff-drain',
  'drain-to-outlet',
  'drain-to-sump',
  'ballast',
  'vent',
  'measure-first',
  'move',
];

/** Answers that another spot may spare. */
const WORKS: Advice[] = ['cutoff-drain', 'drain-to-outlet', 'drain-to-sump', 'ballast'];

/** Spots ranked; empty where fewer than two have a known head. */
export function spotsOf(basis: Basis, options: Option[], base: Decision): RankedSpot[] {
  const { spots } = basis.site.spots;
  const planned = spots.find((s) => s.planned);
  if (!planned || spots.length < 2 || !base.verdict) return [];
  /** Water higher by so much below the ground of the spot than below that of the planned one. */
  const rise = (spot: SpotHead) => planned.depth - spot.depth;
  const decided = (water: number) =>
    decide(basis, options, shiftedBy(basis, { ...NO_SHIFT, water }), base.change ?? null);
  const judged = spots.map((spot) => {
    const d = decided(rise(spot));
    const shallow = decided(rise(spot) + (spot.planned ? 0 : spot.spread)).option;
    const rank = ORDER.indexOf(d.option) - d.depth / 100;
    return {
      rank,
      result: {
        spot: spot.name,
        planned: spot.planned,
        option: d.option,
        depth_m: d.depth,
        water_depth_m: spot.depth,
        spread_m: spot.spread,
        against: planned.name,
        higher_m: rise(spot),
        by: spot.by,
        if_higher: shallow === d.option ? null : shallow,
      },
    };
  });
  return judged
    .sort((a, b) => a.rank - b.rank || b.result.water_depth_m - a.result.water_depth_m)
    .map(({ result }) => result);
}

/**
 * The decision, or to move: where drain or concrete is the answer here, and the same pond needs neither at another
 * levelled spot, even with the water there one standard deviation higher than it was found.
 */
export function elsewhere(basis: Basis, options: Option[], base: Decision): Decision {
  const { spots } = basis.site.spots;
  const planned = spots.find((s) => s.planned);
  const eased = (option: Advice) => ORDER.indexOf(option) < ORDER.indexOf('raise-pond');
  if (!planned || !base.verdict || basis.site.pond.existing || !WORKS.includes(base.option)) return base;
  const serves = ({ depth, spread }: SpotHead) => {
    const water = planned.depth - depth + spread;
    const d = decide(basis, options, shiftedBy(basis, { ...NO_SHIFT, water }), base.change ?? null);
    return eased(d.option) && !d.emptyingRuled && d.depth === base.depth;
  };
  const spot = spots.filter((s) => !s.planned && serves(s)).sort((a, b) => b.depth - a.depth)[0];
  if (!spot) return base;
  return { ...base, option: 'move', also: [], measures: NOTHING, verdict: base.rejected[0]?.verdict, spot };
}
