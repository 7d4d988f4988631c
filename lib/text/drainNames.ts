import type { DrainInflow, FallLink, Measure } from '../drain/index.js';

/** Sources of inflow as people name them. */
export const SOURCE_NAMES: Record<keyof DrainInflow | 'overflow', string> = {
  clay: 'seepage through the ground',
  ring_storm: 'rain on the dug ring',
  roof: 'water from the roof',
  uphill: 'run-off from uphill',
  overflow: 'overflow over the brim',
  leak: 'a small hole in the liner',
};

/** Links of a drain as people name them. */
export const LINK_NAMES: Record<string, string> = {
  pipe: 'pipe',
  'pipe entry': 'holes that let the water into the pipe',
  'pipe openings': 'stone around the pipe, against its holes',
  bed: 'bed that leads the water to the pipe',
  envelope: 'filter that keeps the soil out of the bed',
  fall: 'fall to the outlet',
  'outlet in flood': 'height above the ditch in flood',
  pump: 'pump',
};

/** Cheap measures that keep a source away, as people name them. */
export const MEASURE_NAMES: Record<Measure, string> = {
  cap: 'a cap of clay tamped firm over the ring, which still lets a twentieth in',
  downpipe: 'the downpipe led past the pond',
  swale: 'a swale or a low bank above the pond, the lawn regraded to it, which a twentieth still passes',
  spout: 'a spout at the rim that leads the overflow away from the ring',
  'tested-liner': 'the liner tested and mended before it is covered',
};

/** Steps of the fall budget as people name them. */
export const FALL_NAMES: Record<FallLink['link'], string> = {
  bed: 'bed under the floor',
  pipe: 'pipe in the bed',
  run: 'run to the outlet',
  drop: 'drop at the outlet',
  flood: 'floor above the flood',
};
