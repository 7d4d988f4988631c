import type { Measurement } from '../contract/index.js';

/** What may still be looked up, and how. */
export const MEASUREMENT_NAMES: Record<Measurement, string> = {
  'season-of-dips':
    'weekly dips in a sealed standpipe through the wet half-year, the days after heavy rain among them',
  'recovery-test': 'a recovery test: bail the hole and time how fast the water comes back',
  'ditch-in-flood':
    'the level of the ditch in flood: the line of debris on its bank, or whoever has seen it full',
  'deeper-hole': 'a deeper hole, half a metre below the dig: sand under pressure there would lift the floor',
  'seam-pipe':
    'how high the water rises in the layer under the clay: a pipe open in that layer only, in the wet half-year',
};

/** Where there is no hole yet. */
export const POND_SITE = 'the pond site';
