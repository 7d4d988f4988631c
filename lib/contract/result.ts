import type { Percentiles } from '../sampling/index.js';
import type { Assumption } from '../site/index.js';
import type { Warning } from '../survey/index.js';
import type { DesignSheet } from './designSheet.js';
import type { Governs } from './governs.js';
import type { Advice, OptionName } from './optionNames.js';
import type { RuleWithText } from './rule.js';
import type { LadderRung, Situation } from './situation.js';
import type { Water } from './water.js';
import type { Instead, WishChange } from './wishChange.js';

/** `result.json`: the contract with whoever reads it. Levels m above the lowest natural ground at the rim. */

/** Chances of failing while it is dug, each for itself. */
export interface PerDig {
  heave: number;
  slump: number;
  wet_floor: number;
  /** factors the first two are counted against */
  factor: { heave: number; slump: number };
}

/** What is to be dug, filled and bought. */
export interface WorkResult {
  quantities: { item: string; amount: number; unit: string; sides_m?: [number, number] }[];
  hours_by_hand: number;
  /** in the money of prices.csv; null without prices */
  cost: number | null;
  unpriced: string[];
}

/** What an option comes to at the wish. */
interface OptionFigures {
  /** `upkeep`: what of it comes of a drain, flap or pump found out of order, by assumed or surveyed reliability */
  risk_at_wish: { per_year: number; standard_error: number; upkeep: number };
  risk_in_life: number;
  per_dig: PerDig;
  /** `where`: the water that decides in the worst tenth of years */
  full: { net_head_m: Percentiles; where: Water; safe: boolean };
  /** of the option at the wish, with the pond's own */
  work: WorkResult;
  /** January to December; null: may be emptied */
  lowest_safe_level_m: (number | null)[];
  /** the water that sets that level, January to December */
  lowest_safe_level_water: Water[];
  /** January to December; null: no limit */
  hours_empty_safe: (number | null)[];
}

interface OptionBasics {
  option: OptionName;
  why_not: string | null;
  /** 0: not even shallow; null: no limit down to depth_searched_m */
  safe_depth_m: number | null;
  depth_searched_m: number;
  governs: Governs;
}

/** An option that can be had at the wish. */
export type PossibleOption = OptionBasics & OptionFigures & { possible: true };

/** An option as `result.json` has it; one that cannot be had at the wish has no figures there: null. */
export type OptionResult =
  | PossibleOption
  | (OptionBasics & { possible: false } & { [Figure in keyof OptionFigures]: null });

/** An option of a result by name, where it can be had. */
export function possibleOption(
  { options }: Pick<Result, 'options'>,
  name: OptionName,
): PossibleOption | undefined {
  return options.find((each): each is PossibleOption => each.option === name && each.possible);
}

/** The recommendation as `result.json` has it. */
export interface Recommendation {
  option: Advice;
  also: Advice[];
  /** on the axis of the wish: from the rim's ground, which `raise_m` lifts, to the liner's lowest point */
  depth_m: number;
  raise_m: number;
  /** deepest that holds with all that is built at once, used as wished; 0: no depth, null: every depth that was judged */
  safe_depth_m: number | null;
  governs: Governs;
  reason: string;
  rules: RuleWithText[];
  close_call: boolean;
  /** what is done otherwise than wished, and makes it safe; null: as wished */
  change: WishChange | null;
  /** the drain recommended is the one that lies under the pond already */
  as_built: boolean;
  /** the most telling first */
  measure_next: {
    what: string;
    where: string;
    month: number | null;
    /** it takes a wet half-year */
    waits: boolean;
    chance_to_change: number;
    /** expected loss it saves, in drains */
    worth_drains: number;
  }[];
}

/** The recommended drain as `result.json` has it. */
export interface DrainResult {
  inflow_m3_s: { clay: number; ring_storm: number; roof: number; uphill: number; leak: number };
  pipe_diameter_m: number;
  pipe_capacity_m3_s: number;
  fall_needed_m: number;
  fall_available_m: number | null;
  outlet: string;
  weakest_link: string;
  reserve: Record<string, number>;
  /** of the drain alone, as they are bought; all of it is `build` */
  quantities: WorkResult['quantities'];
}

/** Share of the doubt about the chance that an input carries. */
export interface Driver {
  input: string;
  /** of the variance that would go if it were known */
  first_order: number;
  /** of the variance that would stay if all else were known; null where it was not found by itself */
  total: number | null;
}

/** A levelled spot with the answer there, the best first. */
export interface SpotResult {
  spot: string;
  planned: boolean;
  option: Advice;
  depth_m: number;
  /** depth to the water in the round shown, below the ground there */
  water_depth_m: number;
  spread_m: number;
  reason: string;
}

/** A value of an input at which the answer changes. */
export interface TippingPoint {
  input: string;
  /** at which the answer changes */
  value: number;
  unit: string;
  /** as measured or planned; percentiles where it is not known exactly */
  now: number | Percentiles;
  from: Advice;
  to: Advice;
  /** then safe only as long as it is emptied in some months alone */
  emptying_ruled: boolean;
}

/** The contract's `result.json`. */
export interface Result {
  contract: 2;
  /** `sha256` over all files read, `files` of each by itself */
  survey: { name: string; sha256: string; files: Record<string, string> };
  ground: {
    layers: {
      pit: string;
      top_m: number;
      bottom_m: number;
      texture: string;
      ksat_m_s: Percentiles;
      evidence: string[];
    }[];
  };
  water: {
    seasonal_high_depth_m: Percentiles;
    /** what else speaks of the seasonal high, and whether it agrees */
    seasonal_high_evidence: {
      source: 'mottles and grey' | 'highest mark remembered';
      depth_m: number;
      /** one standard deviation */
      spread_m: number;
      says: 'agrees' | 'higher' | 'lower';
    }[];
    /** wet seasons in which somebody looked, by their rain among all of the weather record: 1 the wettest */
    seasons_looked_in: { from: string; to: string; rank: number; of: number }[];
    spill_level_m: number;
    model: string;
    closure_mm: number;
    by_month: {
      month: number;
      /** of the month's highest water, in the clay at the low side of the pond */
      table_depth_m: Percentiles;
      /** of all days of the month, at the low side; null where the water is not known day by day */
      daily_depth_m: Percentiles | null;
      /** of the month's highest water behind the uphill wall, below the same ground; null without an uphill side */
      uphill_depth_m: Percentiles | null;
      /** of the month's highest water in the ring; a dry one stands at its floor */
      tub_level_m: Percentiles | null;
      dry_floor_chance: number;
    }[];
    /** every water that is spoken of, by its statistic; see {@link LadderRung} */
    ladder: LadderRung[];
    /** the pond as it is kept, beside that water */
    pond: PondYear;
  };
  options: OptionResult[];
  /** options and the recommendation in every design situation; what is told of them elsewhere is read from here */
  situations: Situation[];
  /** the situations of what is recommended by the rules of the country; null where none could be reckoned */
  design_sheet: DesignSheet | null;
  recommendation: Recommendation;
  /** beside a drain or slab: the wish used otherwise, which needs none; beside less depth: more of it, never emptied; null: neither */
  instead: Instead | null;
  drain: DrainResult | null;
  /** all that is to be dug, filled and bought as recommended; null where nothing is dug yet */
  build: WorkResult | null;
  /** with nothing done, and as recommended */
  uplift_check: UpliftCheck[];
  tipping_points: TippingPoint[];
  drivers: Driver[];
  spots: SpotResult[];
  assumptions: Assumption[];
  warnings: Warning[];
}

/** A pond's own year as its level is kept, with nothing done about the water outside. */
export interface PondYear {
  by_month: {
    month: number;
    /** most that the pond lacks in the month, m below full */
    drawdown_m: Percentiles;
    /** filled up in the month by hose, barrel or float valve, m³; null where a level is held */
    top_up_m3: Percentiles | null;
    /** level of the pond less the head outside, on the day of the month on which it is least; positive holds */
    net_head_m: Percentiles;
  }[];
  /** filled up in a year, m³: `p90` is a dry one; null where a level is held */
  top_up_year_m3: Percentiles | null;
  /** 1–12, in which the net head of the worst year in ten is least, or within 10 mm of it */
  danger_months: number[];
}

/** The one check without chances: uplift of the floor at the usual lowest pond level. */
export interface UpliftCheck {
  option: Advice;
  depth_m: number;
  /** yearly highest water outside that 95 % of years stay below, m above the datum */
  high_m: number;
  /** usual lowest pond level and floor, m above the datum */
  pond_m: number;
  floor_m: number;
  /** head held by a slab on the liner, m */
  ballast_m: number;
  /** partial factors: of the UK's annex there, else the recommended ones */
  factor: { lifting: number; holding: number };
  /** factored pressures on the floor, Pa */
  lifting_pa: number;
  holding_pa: number;
  /** lifting over holding: at most 1 is verified */
  utilisation: number;
  met: boolean;
}

/** Risk against depth of one option, for the figure and the slider. */
export interface DepthCurve {
  option: OptionName;
  possible: boolean;
  depth_m: number[];
  per_year: number[];
  /** what of it comes of upkeep, see {@link PossibleOption} */
  upkeep: number[];
  /** the larger of the chances per dig */
  per_dig: number[];
  governs: Governs[];
  safe: boolean[];
}
