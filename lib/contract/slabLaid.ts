/** A concrete slab that is laid on the liner, with facings on its sides. */
export interface SlabLaid {
  /** on the floor, m */
  thickness_m: number;
  /** of the facings, square to the sides, m; null where no weight holds sides so steep: they are walls then */
  facing_m: number | null;
  /** level across a side: what a facing takes of the pond's width there, m */
  across_m: number;
  /** held by the full pond without it, and with it, m³ */
  volume_m3: number;
  left_m3: number;
  /** months (1–12) in which the liner lies dry for it to be cast */
  cast_in: number[];
}
