/** Unit weight of water at about 5 °C, N/m³ (9.81 kN/m³, the value used in the codes cited). */
export const UNIT_WEIGHT_OF_WATER = 9810;
/** Standard gravity, m/s² (CGPM 1901). */
export const GRAVITY = 9.80665;
/** Seconds in a day. */
export const SECONDS_PER_DAY = 86400;
/** Levels that differ by no more are one: half of the millimetre to which they are measured, m. Our choice. */
export const LEVEL_RESOLUTION = 0.0005;
