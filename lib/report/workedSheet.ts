import type { Judged } from '../decision/index.js';
import { NOTHING } from '../heads/index.js';
import type { UnitSystem } from '../units/index.js';
import { ADVISED_AND_NOTHING, situationsOf } from './situations.js';
import { unitsOf } from './unitsOf.js';
import { levelsPart } from './workedBasics.js';
import { chanceParts } from './workedChance.js';
import { cutoffPart } from './workedCutoff.js';
import { depthParts } from './workedDepth.js';
import { designParts } from './workedDesign.js';
import { diggingParts } from './workedDig.js';
import { digChancePart } from './workedDigChance.js';
import { bedWaterParts, drainParts, neighbourParts } from './workedDrain.js';
import { emptiedPart } from './workedEmptied.js';
import type { WorkedPart } from './workedFrom.js';
import { groundPart } from './workedGround.js';
import { inflowPart, ringPart } from './workedInflow.js';
import { keptPart, standardParts } from './workedKept.js';
import { monthParts } from './workedMonths.js';
import { numbered } from './workedNumbers.js';
import { planPart } from './workedPlan.js';
import { workPart } from './workedWork.js';

/**
 * The worked calculation: the middle case (or the stated design case) run through the same formulas with a
 * recorder, so that nothing on the sheet is a second calculation.
 * @param a - from {@link assess} or {@link judge}
 * @param units - of the words; those of the survey where none are given
 * @returns parts with their steps, numbered through, each with equation, numbers put in and source
 */
export function workedSheet(a: Judged, units: UnitSystem = unitsOf(a)): WorkedPart[] {
  const { measures, depth } = a.decision;
  const situations = situationsOf(a, ADVISED_AND_NOTHING);
  return numbered([
    planPart(a, units),
    levelsPart(a, measures),
    groundPart(a, depth || a.site.pond.depth),
    ...ringPart(a),
    keptPart(a, units, NOTHING, 'With nothing done: the pond as it is kept'),
    ...(measures === NOTHING
      ? []
      : [keptPart(a, units, measures, 'With what is recommended: the pond as it is kept')]),
    ...cutoffPart(a),
    ...chanceParts(a, situations),
    ...digChancePart(a, situations),
    ...depthParts(a, situations),
    ...designParts(a, situations),
    ...monthParts(a, situations),
    ...emptiedPart(a),
    ...diggingParts(a, units),
    ...inflowPart(a, units),
    ...drainParts(a),
    ...bedWaterParts(a),
    ...workPart(a),
    ...neighbourParts(a),
    ...standardParts(a),
  ]);
}
