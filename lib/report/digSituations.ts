import type { ChanceRange, Governs, Situation, SituationWhy } from '../contract/index.js';
import {
  againstDig,
  deepestDug,
  dugDepth,
  openFactAt,
  plannedDigs,
  pressedMonths,
  seamWater,
  spareOver,
  worstDig,
  worstSeam,
} from '../digging/index.js';
import { levelOfDepth } from '../heads/index.js';
import { LEVEL_RIM, type Site } from '../site/index.js';
import type { JudgedMeasures } from './judgedMeasures.js';
import { restingOn } from './restingOn.js';

const WHY: Partial<Record<Governs, SituationWhy>> = {
  'floor-heave': 'floor-heaves',
  'side-slump': 'sides-slip',
  'wet-dig': 'too-wet',
};

/** The hole while it is dug, in the months named or in each, and the layer under pressure below it. */
export function digSituations(judged: JudgedMeasures): Situation[] {
  const { basis, measures, depth, verdict } = judged;
  const { site, dig } = basis;
  const dug = dugDepth(site, measures, depth);
  // Nobody digs a pond that is there, nor one that stands on the ground.
  if (site.pond.existing || dug <= 0) return [];
  const { acceptedRisk } = site.pond;
  const plans = plannedDigs(site, dig, measures, depth);
  return plans.flatMap(({ plan, chances }): Situation[] => {
    const worst = worstDig(chances);
    const governs = againstDig(worst, verdict.conditions, acceptedRisk);
    const open = governs !== 'none' && openFactAt(site, measures, depth, governs);
    const month = plans.length > 1 ? plan.months[0]! : null;
    const common = { of: judged.of, month, lowest_level_m: null, hours: null };
    const row: Situation = {
      ...common,
      situation: 'dig',
      level_m: -dug,
      water: {
        which: site.places.highRim > LEVEL_RIM ? 'uphill wall' : 'low side',
        statistic: { highest_of: 'dig', exceeded: 0.1 },
        level_m: plan.wetWater,
      },
      margin_m: null,
      chance: drawnRange(worst.chance, site),
      allowed: governs === 'none',
      why: governs === 'none' ? 'holds' : open ? 'not-known' : (WHY[governs] ?? 'condition'),
      governs,
      assumptions: restingOn('dig', judged.assumed),
    };
    const floor = levelOfDepth.compute(deepestDug(site, measures, depth));
    const hole = {
      floor,
      holds: floor,
      months: pressedMonths(measures, plan.months),
      exceeded: acceptedRisk,
    };
    const seam = worstSeam(site, hole);
    if (!seam) return [row];
    const holds = chances.heave <= acceptedRisk;
    return [
      row,
      {
        ...common,
        situation: 'seam',
        level_m: floor,
        water: {
          which: 'seam',
          statistic: { highest_of: 'dig', exceeded: acceptedRisk },
          level_m: -seamWater(seam, hole),
        },
        margin_m: spareOver(seam, hole),
        chance: drawnRange(chances.heave, site),
        allowed: holds,
        why: holds ? 'holds' : seam.assumed ? 'not-known' : 'floor-heaves',
        governs: holds ? 'none' : 'floor-heave',
        assumptions: restingOn('seam', judged.assumed),
      },
    ];
  });
}

/** A chance that one draw either meets or does not, with what drawing others may move it by. */
function drawnRange(chance: number, { water }: Site): ChanceRange {
  const half = 1.282 * Math.sqrt((chance * (1 - chance)) / water.samples);
  return { low: Math.max(chance - half, 0), middle: chance, high: Math.min(chance + half, 1), from: 'water' };
}
