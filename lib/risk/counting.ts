/** A perturbation of the site, for tipping points. */
export interface Shift {
  /** water outside everywhere, m */
  water: number;
  /** pond level, m */
  pond: number;
  /** factor on the conductivity */
  conductivity: number;
}
export const NO_SHIFT: Shift = { water: 0, pond: 0, conductivity: 1 };

/** What a chance is counted over, beside the site's draws. */
export interface Counting {
  shift?: Shift;
  /** samples to count over; absent: all */
  subset?: ArrayLike<number>;
}
