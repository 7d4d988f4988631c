/** Whether the way of a pipe to where it ends crosses the boundary, or comes too near to it; m. */
export interface WayQuestion {
  to: string;
  distance_m: number;
  /** null: nobody said where it is */
  boundary_m: number | null;
  /** null: none was given */
  setback_m: number | null;
}
