/** What the last look into the dip pipe under the liner allows. Levels m above the datum. */
export interface LowerToday {
  date: string;
  /** 1–12 */
  month: number;
  /** water under the liner; for a dry pipe the floor of the pipe, below which it stands */
  water_m: number;
  dry: boolean;
  /** lowest pond level on that day; null: may be emptied */
  lowest_m: number | null;
  /** lowest level of that month without a dip; null: may be emptied */
  month_lowest_m: number | null;
}

/** How low the pond may be let by what the dip pipe shows, month by month. Levels m above the datum. */
export interface LowerByReading {
  /** water under the liner, rising */
  water_m: number[];
  /** lowest pond level by month, January first, for each of these waters; null: may be emptied */
  lowest_m: (number | null)[][];
  /** of these waters, above which the drain has stopped; null: there is none under the floor */
  stopped_above_m: number | null;
  /** that the water stands higher behind the uphill wall than in the pipe, at most, less the head that a slab holds */
  rise_m: number;
}
