/** How far a drain uphill keeps the water behind the uphill wall down. */
import type { Judged } from '../decision/index.js';
import { CUTOFF, cutoffHead, cutoffLevel, keptByCutoff } from '../options/index.js';
import { permeabilityAt } from '../soil/index.js';
import { assumed, Recording } from './workedFrom.js';

/** The level it keeps, where one is recommended. */
export function cutoffPart({ site, decision }: Judged): Recording[] {
  if (decision.measures.cutoff === undefined) return [];
  const r = new Recording(
    'The cut-off drain uphill',
    'What the trench uphill leaves standing behind the uphill wall. Where the water in the clay stands lower, or the trench is blocked, the simulated water counts.',
    site.survey.levels.filter(({ role }) => role === 'rim').map(({ origin }) => origin),
  )
    .tell(cutoffHead, {
      d: assumed(`${CUTOFF.distance} m off the wall: common practice`),
      N: assumed('2 mm a day of a wet winter: our choice'),
    })
    // As deep as wished it is a step of the ground.
    .tell(permeabilityAt, {
      m: assumed('median of the layers around the pond as wished'),
      s: assumed('spread of the layers around the pond as wished'),
      z: assumed('the 10 % end of a normal distribution'),
    })
    .tell(cutoffLevel, {
      g: assumed('the highest rim of levels.csv, above its lowest'),
      D: assumed(`as deep as the pond, at most ${CUTOFF.depth} m: common practice`),
    });
  keptByCutoff(site, r.use);
  return [r];
}
