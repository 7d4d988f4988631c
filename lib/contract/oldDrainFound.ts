/** What is known of an old drain that is not counted on; dates ISO 8601, levels m above the datum. */
export type OldDrainFound =
  | { state: 'stopped'; date: string; level_m: number }
  | { state: 'works'; highest_m: number }
  /** the last look, null: nobody looked */
  | { state: 'unsure'; last: string | null };
