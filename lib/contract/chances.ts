/** Least chance that is shown as a number: below it lies within what the sampling can tell. */
export const LEAST_CHANCE = 0.001;
