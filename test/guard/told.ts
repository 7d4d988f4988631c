/** What the guard reads of `result.json`: the contract's names, written down here again so that nothing is taken over. */
export interface Band {
  p10: number;
  p50: number;
  p90: number;
}

export interface ToldRule {
  code: string;
  months?: number[];
  level_m?: number;
  text: string;
}

export interface ToldOption {
  option: string;
  possible: boolean;
  safe_depth_m: number | null;
  depth_searched_m: number;
  /** these are null where it is not possible */
  risk_at_wish: { per_year: number } | null;
  lowest_safe_level_m: (number | null)[] | null;
  hours_empty_safe: (number | null)[] | null;
}

export interface Told {
  ground: {
    layers: { pit: string; top_m: number; bottom_m: number; texture: string; ksat_m_s: Band }[];
  };
  water: {
    seasonal_high_depth_m: Band;
    by_month: { month: number; table_depth_m: Band; tub_level_m: Band | null }[];
  };
  options: ToldOption[];
  recommendation: {
    option: string;
    also: string[];
    depth_m: number;
    raise_m: number;
    reason: string;
    rules: ToldRule[];
    measure_next: { what: string }[];
    /** absent before it was told */
    change?: ToldChange | null;
  };
  instead?: { change: ToldChange; option: string; raise_m: number } | null;
  drain: { pipe_capacity_m3_s: number; outlet: string; reserve: Record<string, number> } | null;
  warnings: { message: string }[];
}

/** What is done otherwise than wished. */
export interface ToldChange {
  emptied_in?: number[];
  days_empty?: number;
}

/** Whether rules, reason, next measurements or warnings speak of something. */
export function speaksOf({ recommendation, warnings }: Told, about: RegExp): boolean {
  const { rules, reason, measure_next } = recommendation;
  const texts = [reason, ...rules.map(({ text }) => text), ...measure_next.map(({ what }) => what)];
  return [...texts, ...warnings.map(({ message }) => message)].some((text) => about.test(text));
}
