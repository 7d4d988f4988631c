/** A number of ours against one from outside, and where that one stands. */
export interface Check {
  /** export names of the formulas and methods it exercises */
  covers: string[];
  what: string;
  /**
   * published: printed by a standard, handbook, paper, worked example or table that was read;
   * exact: a closed form, conservation law or limit; recalled: published, but written down from memory
   */
  kind: 'published' | 'exact' | 'recalled';
  source: string;
  ours: () => number;
  expected: number;
  /** absolute */
  tolerance: number;
}
