/** What a survey folder says, in SI, with the place each value came from. Nothing here is a default or a guess. */

import type { Consistency, Mottles, Structure, Texture } from '../soil/index.js';

/** Where a value stood. `line` counts from 1 and includes the header. */
export interface Origin {
  file: string;
  line?: number;
  column?: string;
}

/** Something worth telling that did not stop the reading; data on the result, never console output. */
export interface Warning extends Origin {
  code: string;
  message: string;
}

export type YesNo = 'yes' | 'no' | 'unknown';

export const COVERS = ['lawn', 'bare', 'paved', 'woodland'] as const;
export type Cover = (typeof COVERS)[number];

/** `site.csv`. Lengths m, areas m², times s, flows m³/s. Absent = the survey does not say. */
export interface SiteFacts {
  name?: string;
  /** degrees, north positive */
  latitude?: number;
  show_units?: 'metric' | 'us';
  /** ISO 3166-1 alpha-2, in capitals */
  country?: string;
  uphill_area?: number;
  uphill_cover?: Cover;
  roof_area?: number;
  /** of a roof whose downpipe runs into the pond */
  roof_into_pond?: number;
  storm_rain?: number;
  storm_hours?: number;
  mains_power?: YesNo;
  pump_acceptable?: YesNo;
  discharge_allowed?: YesNo;
  protected_ground?: YesNo;
  wet_plants?: YesNo;
  shrinkable_clay?: YesNo;
  organic_smell?: YesNo;
  outlet_setback?: number;
  /** whether every outlet lies within the boundary, and as far from it as `outlet_setback` asks */
  outlet_within_boundary?: YesNo;
  /** years from one year with a silted or crushed drain, a stuck flap, a pump that stands unattended, to the next */
  drain_blocked_once_in?: number;
  flap_stuck_once_in?: number;
  pump_out_once_in?: number;
  /** years from one power cut of `power_cut_hours`, s, to the next */
  power_cut_once_in?: number;
  power_cut_hours?: number;
  abstraction_limit?: number;
  /** years from one flood of the ditch to the next, a plain number */
  flood_every?: number;
  highest_water_mark?: number;
  /** years, a plain number */
  life?: number;
}

export const SHAPES = ['box', 'round', 'oval'] as const;
export const RING_FILLS = ['clay', 'topsoil', 'sand', 'gravel'] as const;
export const BEDDINGS = ['none', 'sand', 'gravel', 'mat'] as const;
export const LINERS = ['epdm', 'pvc', 'hdpe', 'other'] as const;
export const BALLASTS = ['none', 'gravel', 'slab'] as const;
export const OVERFLOWS = ['ring', 'away'] as const;
export const WALLS = ['none', 'block', 'concrete'] as const;

/** `pond.csv`. Lengths m, areas m², pressures Pa; `full_level` on the mark of levels.csv. */
export interface PondFacts {
  shape?: (typeof SHAPES)[number];
  length?: number;
  width?: number;
  area?: number;
  depth?: number;
  /** horizontal to 1 vertical */
  side_slope?: number;
  shelf_depth?: number;
  shelf_width?: number;
  full_level?: number;
  water_above_rim_ground?: number;
  highest_raise?: number;
  ring_width?: number;
  ring_depth?: number;
  ring_fill?: (typeof RING_FILLS)[number];
  /** conductivity of the fill, m/s */
  ring_ksat?: number;
  ring_cap?: 'yes' | 'no';
  bedding?: (typeof BEDDINGS)[number];
  bedding_thickness?: number;
  liner?: (typeof LINERS)[number];
  ballast?: (typeof BALLASTS)[number];
  ballast_thickness?: number;
  /** upright sides held by masonry or concrete */
  wall?: (typeof WALLS)[number];
  /** fraction (1 % = 0.01) */
  floor_fall?: number;
  edging_load?: number;
  /** a level held so far below full, m */
  usual_drawdown?: number;
  /** topped up when it has fallen by so much, m */
  kept_within?: number | 'never';
  /** where it goes when the pond is full: into the ring around it, or led away */
  overflow?: (typeof OVERFLOWS)[number];
  /** months 1–12; 'never' */
  emptied_in?: number[] | 'never';
  /** days, a plain number */
  days_empty?: number;
  built_in?: number[];
  filled_in?: number[];
  margin?: number;
  /** chance a year, 0–1 */
  accepted_risk?: number;
  state?: 'planned' | 'existing';
  bulge?: 'yes' | 'no';
  /** a drain lies under the pond that is there */
  old_drain?: 'yes' | 'no';
}

/** A row of `pits.csv`: a layer in a hole. Depths m below the ground at the pit. */
export interface LayerRow {
  pit: string;
  top: number;
  bottom: number;
  texture?: Texture;
  /** mass fractions 0–1 of the fine earth */
  sand?: number;
  silt?: number;
  clay?: number;
  /** mass fractions 0–1 */
  stones?: number;
  organic?: number;
  structure?: Structure;
  mottles?: Mottles;
  consistency?: Consistency;
  /** saturated hydraulic conductivity, m/s */
  ksat?: number;
  /** undrained strength, Pa */
  strength?: number;
  photo?: string;
  note?: string;
  origin: Origin;
}

/** A row of `water.csv`. Depth m below the ground at the pit (negative above it), already corrected for `pipe_top`. */
export interface Look {
  pit: string;
  /** days since 1970-01-01, with the time of day as fraction (0.5 when no time is given) */
  day: number;
  /** its time of day is given */
  timed: boolean;
  reading: 'opened' | 'bailed' | 'level' | 'dry' | 'strike';
  /** level or floor, m below ground; absent for 'dry' */
  depth?: number;
  /** floor of the hole, m below ground */
  holeDepth?: number;
  holeDiameter?: number;
  pipeBore?: number;
  /** depth below which water can enter, m below ground; absent: open hole */
  openFrom?: number;
  covered?: 'yes' | 'no';
  note?: string;
  origin: Origin;
}

/** A row of `soakage.csv`. */
export interface SoakageLook {
  pit: string;
  test: string;
  /** s since the start of the test */
  time: number;
  depthToWater: number;
  holeDepth?: number;
  holeDiameter?: number;
  soakedBefore?: 'yes' | 'no';
  origin: Origin;
}

/** A row of `heads.csv`: a level already known. */
export interface HeadRow {
  /** a pit, 'site', 'uphill' or 'below:<pit>' */
  place: string;
  month: number | 'high';
  /** m below the ground of that place */
  depth: number;
  /** one standard deviation, m */
  spread?: number;
  source?: string;
  origin: Origin;
}

export const LEVEL_ROLES = [
  'spot',
  'pit',
  'rim',
  'outlet',
  'discharge',
  'ditch',
  'flood',
  'spill',
  'pond',
  'dip-pipe',
  'footing',
  'boundary',
  'house',
  'neighbour-house',
  'well',
  'other',
] as const;
export type LevelRole = (typeof LEVEL_ROLES)[number];

/** A row of `levels.csv`. Metres; level above the survey's own mark. */
export interface LevelPoint {
  point: string;
  role: LevelRole;
  x?: number;
  y?: number;
  /** from the pond's edge */
  distance?: number;
  level: number;
  note?: string;
  origin: Origin;
}

/** A row of `weather.csv`. rain and et0 in m, temperatures in °C; absent = missing that day. */
export interface WeatherDay {
  /** days since 1970-01-01 */
  day: number;
  rain?: number;
  tmin?: number;
  tmax?: number;
  et0?: number;
}

/** A row of `climate.csv`: an ordinary month. rain and et0 in m a month, °C. */
export interface ClimateMonth {
  month: number;
  rain?: number;
  tmean?: number;
  et0?: number;
  origin: Origin;
}

/** A row of `prices.csv`. */
export interface PriceRow {
  item: string;
  unit: string;
  price: number;
  origin: Origin;
}

/** A survey as read: numbers in SI, every row with its place in the files. */
export interface Survey {
  /** site.csv `name`, else the folder's name */
  name: string;
  /** SHA-256 over the files read, in hexadecimal */
  digest: string;
  /** SHA-256 of each file that was read, as it lay in the folder */
  digests: Record<string, string>;
  /** the files that were there */
  files: string[];
  site: SiteFacts;
  pond: PondFacts;
  /** place of each item of site.csv and pond.csv */
  origins: { site: Partial<Record<keyof SiteFacts, Origin>>; pond: Partial<Record<keyof PondFacts, Origin>> };
  /** by pit, then by top */
  layers: LayerRow[];
  /** by day */
  looks: Look[];
  /** by test, then by time */
  soakage: SoakageLook[];
  /** by place, then by month, 'high' last */
  heads: HeadRow[];
  /** as in the file, which joins boundary points */
  levels: LevelPoint[];
  /** by day, one row a day */
  weather: WeatherDay[];
  climate: ClimateMonth[];
  prices: PriceRow[];
  warnings: Warning[];
}
