/** What leaves the ground of the pond, m³/s: before, over the brim, out of the drain as is likely and at the high end; null: not known. */
export interface Flows {
  before: number;
  brim: number;
  drain: number | null;
  drain_high: number | null;
}

/** What the pond and its drain change for others. m, m³/s. */
export interface NextDoor {
  /** where the water comes out; level above the datum, way from the pond and to the boundary, null: not surveyed */
  exit: {
    /** `cutoff`: a drain uphill, that ends there */
    kind: 'outlet' | 'sump' | 'cutoff' | 'brim';
    name: string;
    level_m: number | null;
    distance_m: number | null;
    to_boundary_m: number | null;
  };
  /** water of the full pond that a bank or edging holds above the lowest ground at the rim: how high, and how much at most, m³; null: none */
  held: { above_m: number; volume_m3: number } | null;
  /** where a full pond runs over: the lowest ground of the rim, or away as planned */
  overflow: 'rim' | 'away';
  /** from the pond's edge */
  boundary_m: number | null;
  /** houses whose ground is lower than the full pond or where water comes out, the lowest first */
  downhill: { name: string; neighbour: boolean; below_m: number; distance_m: number }[];
  /** mean of the wet half-year from the weather; null without weather */
  winter_day: Flows | null;
  storm: Flows & { rain_m: number; seconds: number; named: boolean };
  /** `neighbour`: a house next door; null: no house */
  lowered: {
    name: string;
    neighbour: boolean | null;
    distance_m: number;
    likely_m: number;
    most_m: number;
    words: string;
  }[];
  /** distance within which a lowering of the water can be told at all; 0: nowhere, null: not known */
  felt_m: number | null;
}
