import { formula } from '../formula/index.js';

/** Flow of a pipe running full by gravity. */
export const manningFull = formula({
  title: 'Capacity of a pipe running full (Manning)',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'pi*D^2/4*(D/4)^(2/3)*sqrt(S)/n',
  parameters: {
    D: { meaning: 'inside diameter', unit: 'm', min: 0.02, max: 1 },
    S: { meaning: 'fall', unit: 'm/m', min: 0.0005, max: 0.2 },
    n: { meaning: 'roughness', unit: 's/m^(1/3)', min: 0.008, max: 0.03 },
  },
  compute: (D: number, S: number, n: number) => (((Math.PI * D * D) / 4) * (D / 4) ** (2 / 3) * Math.sqrt(S)) / n,
  validity: 'steady turbulent flow, pipe full and free at its end',
  source: 'Manning; capacities of IPC 2018 Table 1106.2',
});

/** Roughness of corrugated drain pipe: 0.015 (NRCS, from memory) to 0.022 (Caltrans); the rough end is used. */
export const CORRUGATED_ROUGHNESS = 0.022;

/** Common perforated pipe, inside diameter m (2, 3, 4, 6 inch; 50, 80, 100, 150 mm), smallest first. */
export const PIPE_DIAMETERS = [0.05, 0.075, 0.1, 0.15];

/** Least fall laid in a garden: 1 %, steep enough to see with a string line. Common practice. */
export const LEAST_FALL = 0.01;

/**
 * Smallest common pipe that carries an inflow at a fall with half its capacity to spare, and at least 100 mm,
 * which can be flushed and looked into; the largest one where none does, so that its reserve below 1 is seen.
 */
export function choosePipe(inflow: number, fall: number): { diameter: number; capacity: number } {
  for (const diameter of PIPE_DIAMETERS) {
    const capacity = manningFull.compute(diameter, fall, CORRUGATED_ROUGHNESS);
    if (diameter >= 0.1 && capacity >= 2 * inflow) return { diameter, capacity };
  }
  const largest = PIPE_DIAMETERS[PIPE_DIAMETERS.length - 1];
  return { diameter: largest, capacity: manningFull.compute(largest, fall, CORRUGATED_ROUGHNESS) };
}
