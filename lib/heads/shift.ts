/** A perturbation of the inputs, for tipping points. */
export interface Shift {
  /** water outside everywhere, m */
  water: number;
  /** pond level, m */
  pond: number;
  /** factor on the permeability */
  permeability: number;
}
export const NO_SHIFT: Shift = { water: 0, pond: 0, permeability: 1 };
