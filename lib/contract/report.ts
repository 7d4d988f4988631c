import type { Percentiles } from '../sampling/index.js';
import type { DigWindow, RulesName, TubYear } from '../site/index.js';
import type { LevelRole } from '../survey/index.js';
import type { FittedParameter } from './fittedWater.js';
import type { LowerByReading, LowerToday } from './lowerTodayFound.js';
import type { MonthlyLimits } from './monthLimits.js';
import type { NextDoor } from './nextDoorChanges.js';
import type { DepthCurve, Result } from './result.js';
import type { SettingOut } from './settingOut.js';
import type { SiteDrain } from './siteDrain.js';
import type { SlabLaid } from './slabLaid.js';

/** Everything the figures and the page show, as plain data. */
export interface Report {
  result: Result;
  units: 'metric' | 'us';
  /** whose rules for digging and for the sheet hold */
  rules: RulesName;
  /** what the draws were begun with, and how many */
  drawn: { seed: number; samples: number };
  curves: DepthCurve[];
  /** what is recommended against depth, used as wished: it may be several options at once, as none of `curves` is */
  advised: DepthCurve;
  accepted_risk: number;
  /** highest water outside in nine years of ten with nothing done, m above the datum */
  high_m: number;
  pond: {
    shape: 'box' | 'round' | 'oval';
    length_m: number;
    width_m: number;
    depth_m: number;
    side_slope: number;
    full_level_m: number;
    /** how far it falls in a middle year, m */
    usual_drawdown_m: number;
    /** by what habit: a level held, topped up when it has fallen by `within_m`, never */
    kept: { habit: 'held' | 'topped-up' | 'never'; within_m: number | null };
    ring_width_m: number;
    ring_depth_m: number;
    bedding_m: number;
    /** of it, what this answer lays under the liner: none over a drain's bed, nor where it would only hold water */
    bedding_laid_m: number;
    high_rim_m: number;
    emptied_in: number[] | 'any';
    margin_m: number;
    /** that it stands empty, as planned or as changed */
    days_empty: number;
    /** it is there already */
    existing: boolean;
  };
  /** years that chances in its life are counted over */
  life_years: number;
  /** how long the pond may stand empty with what is recommended, January first; null: no limit */
  emptying: {
    month: number;
    hours: number | null;
    /** what ends it */
    ends: 'lift' | 'sides' | 'heave' | 'none';
    /** until 10, 20 and 50 mm of water have come under the floor */
    lift_hours: { water_m: number; hours: number | null }[];
  }[];
  /** of the daily store of the water, in the order in which it uses them; none where no daily store was run */
  fitted: FittedParameter[];
  /** the drain as designed, with all that goes with it; put into words by `drainWords` */
  drain: SiteDrain | null;
  /** what this answer casts on the liner; null: nothing */
  slab: SlabLaid | null;
  outlet: {
    name: string;
    level_m: number;
    distance_m: number;
    flood_m: number | null;
    flood_every: number;
  } | null;
  /** daily bands over the weather, else twelve monthly rows; depth m below ground, levels m */
  water_year: WaterDay[];
  /** looks at the water in the ground, m below the datum ground */
  dips: { day: number; date: string; depth_m: number; says: 'level' | 'below' | 'above'; pit: string }[];
  /** where what is dug lies; null where nothing is, and in a quick what-if */
  setting_out: SettingOut | null;
  /** months and depths in which the floor of a dig stays dry */
  digging: DigWindow | null;
  /** how long water stands in the tub; null where no permeable layer touches the liner, and in a quick what-if */
  tub: TubYear | null;
  /** of what is recommended, at its depth */
  limits: MonthlyLimits;
  next_door: NextDoor;
  lower_today: LowerToday | null;
  /** the same for any reading of the pipe */
  lower_by_reading: LowerByReading;
  /** levelled points in the order of the file; x and y on the survey's own axes, level above the datum */
  points: {
    name: string;
    role: LevelRole;
    x_m: number | null;
    y_m: number | null;
    distance_m: number | null;
    level_m: number;
  }[];
  pits: { pit: string; photo: string | null; note: string | null }[];
  /** how the water is known of a survey without daily weather that would use it; null: it has it, or has no use for it */
  without_weather: { water: 'by month' | 'looks' | 'unknown'; twelve_months: boolean } | null;
}

/** A row of `water-year.csv`. `date` is ISO 8601, or `--MM` for a month of an ordinary year. */
export interface WaterDay {
  date: string;
  /** at the low side of the pond, as are the heads under the liner below */
  table_depth_m: Percentiles;
  /** level in the clay behind the uphill wall; null without an uphill side */
  uphill_wall_m: Percentiles | null;
  tub_level_m: Percentiles | null;
  /** of the pond as it is kept; of a month its lowest */
  pond_level_m: Percentiles;
  head_undrained_m: Percentiles;
  head_drained_m: Percentiles | null;
}
