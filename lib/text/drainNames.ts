import type { DrainInflow } from '../drain/index.js';

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
