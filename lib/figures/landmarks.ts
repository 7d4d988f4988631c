/** Points of the survey that tell a reader where things are; the rest would only crowd a plan. */
export const LANDMARKS: readonly string[] = [
  'pit',
  'outlet',
  'discharge',
  'ditch',
  'house',
  'neighbour-house',
  'footing',
  'well',
  'spill',
  'dip-pipe',
];
