import type { Reading, Task } from '../drain/index.js';

/** What is looked after of a drain, and when. */
export const TASKS: Record<Task, string> = {
  'inspection-pipe': 'Every autumn and after storms: look into the inspection pipe.',
  flush:
    'Every second year: flush the pipe with a hose from the inspection pipe until it runs clear; keep what comes out in a jar. Grit that settles at once is bed; a cloud that stays is clay, and the filter is failing.',
  leak: 'Water running out in dry weeks: the liner leaks; find it before the pond is topped up.',
  flap: 'Every autumn: free the flap, clear the guard, cut the grass at the mouth.',
  pumps:
    'Every month of the wet half-year: lift the float of each pump and of the alarm; change the battery once a year.',
};

/** What a look into the inspection pipe says. */
export const READINGS: Record<Reading['says'], string> = {
  free: 'free: the drain works',
  'at-the-liner': 'water stands at the liner: keep the pond full, free the outlet, then flush',
  storm: 'the storm is running off: look again tomorrow',
  blocked: 'water stands in the bed without rain: the outlet, the flap or the pipe is blocked; flush it',
};
