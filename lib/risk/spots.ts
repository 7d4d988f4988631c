import { method } from '../formula/index.js';
import type { SpotHead } from '../site/index.js';
import type { Basis } from './basis.js';
import { type Decision, decide, shiftedBy } from './decide.js';
import type { Option } from './options.js';
import type { SpotResult } from './result.js';
import { sayer } from './say.js';
import { NO_SHIFT } from './shift.js';

export const spotsMethod = method({
  title: 'Candidate spots, ranked',
  what:
    'The same pond at every levelled spot: the water outside moved by the difference of its depth below the ground ' +
    'there, decided again; ranked by what can be had with least, then by the depth to water.',
  assumptions: [
    'ground, surface water and outlets as at the planned spot: only the water table differs',
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

/** Spots ranked; empty where fewer than two have a known head. */
export function spotsOf(basis: Basis, options: Option[], base: Decision): SpotResult[] {
  const { spots } = basis.site.spots;
  const planned = spots.find((s) => s.planned);
  if (!planned || spots.length < 2 || !base.verdict) return [];
  const { length } = sayer(basis.site);
  /** Water higher by so much below the ground of the spot than below that of the planned one. */
  const rise = (spot: SpotHead) => planned.depth - spot.depth;
  const decided = (water: number) => decide(basis, options, shiftedBy(basis, { ...NO_SHIFT, water }));
  const judged = spots.map((spot) => {
    const d = decided(rise(spot));
    const shallow = decided(rise(spot) + (spot.planned ? 0 : spot.spread)).option;
    const rank = ORDER.indexOf(d.option) - d.depth / 100;
    const side = rise(spot) > 0 ? 'nearer the ground' : 'deeper';
    return {
      rank,
      result: {
        spot: spot.name,
        planned: spot.planned,
        option: d.option,
        depth_m: d.depth,
        water_depth_m: spot.depth,
        spread_m: spot.spread,
        reason: spot.planned
          ? 'the planned spot'
          : `water ${length(Math.abs(rise(spot)))} ${side} than at ${planned.name}, by the ${spot.by}${
              shallow === d.option
                ? ''
                : `; if it is ${length(spot.spread)} higher still, ${shallow.replaceAll('-', ' ')}`
            }`,
      },
    };
  });
  return judged
    .sort((a, b) => a.rank - b.rank || b.result.water_depth_m - a.result.water_depth_m)
    .map(({ result }) => result);
}
