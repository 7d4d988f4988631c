/** A look at the water, ready for the fit. */
export interface Dip {
  /** days since 1970-01-01 */
  day: number;
  /** m below the ground */
  depth: number;
  /** the level itself, a bound the table lies below, or one it lies above */
  says: 'level' | 'below' | 'above';
  /** one standard deviation of the reading, m */
  error: number;
}
