import { LEVEL_RIM } from '../site/index.js';
import type { Report } from './report.js';

/** Highest water of a month, m above the datum. */
export interface MonthWater {
  low_m: number;
  middle_m: number;
  high_m: number;
  /** middle year; null where there is none */
  uphill_m: number | null;
  ring_m: number | null;
}

/** The highest water of each month. */
export function monthWaters({ result, pond }: Report): MonthWater[] {
  return result.water.by_month.map(({ table_depth_m, uphill_depth_m, tub_level_m }) => ({
    low_m: -table_depth_m.p90,
    middle_m: -table_depth_m.p50,
    high_m: -table_depth_m.p10,
    uphill_m: pond.high_rim_m > LEVEL_RIM && uphill_depth_m ? -uphill_depth_m.p50 : null,
    ring_m: pond.ring_width_m > 0 && tub_level_m ? tub_level_m.p50 : null,
  }));
}
