import type { Basis } from '../basis/index.js';
import type { LadderRung, Result } from '../contract/index.js';
import { tubBottom } from '../groundwater/index.js';
import { NOTHING } from '../heads/index.js';
import { quantile } from '../sampling/index.js';
import { LEVEL_RIM } from '../site/index.js';

/** Shares of years that exceed the yearly highest waters of the ladder; the accepted one is added. */
const YEARLY = [0.5, 0.1, 0.05];

/**
 * The ladder of waters: every statistic that is spoken of, at every place where water is, with nothing done.
 * @param basis - of a judgement
 * @param months - of `result.json`
 * @returns the middle of the days and the highest of each month in a middle year, then the highest of the year, the rarest last
 */
export function ladderOf(basis: Basis, months: Result['water']['by_month']): LadderRung[] {
  const { site, draws, highs } = basis;
  const monthly = months.flatMap(
    ({ month, daily_depth_m, table_depth_m, uphill_depth_m, tub_level_m }): LadderRung[] => {
      const rung = { exceeded: 0.5, month, uphill_wall_m: null, ring_m: null, outside_m: null };
      return [
        ...(daily_depth_m ? [{ ...rung, highest_of: 'day' as const, low_side_m: -daily_depth_m.p50 }] : []),
        {
          ...rung,
          highest_of: 'month',
          low_side_m: -table_depth_m.p50,
          uphill_wall_m: uphill_depth_m && -uphill_depth_m.p50,
          ring_m: tub_level_m ? tub_level_m.p50 : null,
          outside_m: highs.monthly(NOTHING, month, 0.5),
        },
      ];
    },
  );
  const uphill = site.places.highRim > LEVEL_RIM;
  const dry = site.tub ? tubBottom(site.tub) : Number.NEGATIVE_INFINITY;
  const shares = [...new Set([...YEARLY, site.pond.acceptedRisk])].sort((a, b) => b - a);
  return [
    ...monthly,
    ...shares.map((exceeded): LadderRung => {
      const at = (levels: Float32Array) => quantile(Float64Array.from(levels), 1 - exceeded);
      return {
        exceeded,
        highest_of: 'year',
        month: null,
        low_side_m: at(draws.clayLow),
        uphill_wall_m: uphill ? at(draws.clayHigh) : null,
        ring_m: draws.tub ? at(draws.tub.asIs.map((level) => Math.max(level, dry))) : null,
        outside_m: highs.yearly(NOTHING, 1 - exceeded),
      };
    }),
  ];
}
