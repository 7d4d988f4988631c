import { drawdownOf } from '../basis/index.js';
import { MONTHS } from '../climate/index.js';
import type { Situation, SituationName } from '../contract/index.js';
import { monthsEmpty, type OverSeam, seamWater, spareOver, worstSeam } from '../digging/index.js';
import { type Use, unrecorded } from '../formula/index.js';
import { emptiedHold, floorLevel, fullLevel, type Measures } from '../heads/index.js';
import { keptHeaves, seamShares } from '../reliability/index.js';
import type { Site } from '../site/index.js';
import { withSlab } from '../uplift/index.js';
import { rangeFrom } from './chanceRange.js';
import type { JudgedMeasures } from './judgedMeasures.js';
import { restingOn } from './restingOn.js';

/** The pond over the water of a seam: full, as low as it gets in use, and emptied from any day of a month on; none without a seam. */
export function seamSituations(judged: JudgedMeasures): Situation[] {
  const { basis, measures: m, depth } = judged;
  const { site, draws } = basis;
  if (site.ground.seams.length === 0) return [];
  const { daysEmpty, acceptedRisk } = site.pond;
  const row = (situation: SituationName, month: number | null, level: number, shares: Float64Array) => {
    const over = overWith(site, m, depth, { situation, month, level_m: level });
    const seam = worstSeam(site, over)!;
    const chance = rangeFrom(shares, 'water');
    const allowed = chance.middle <= acceptedRisk;
    return {
      of: judged.of,
      situation,
      month,
      level_m: level,
      water: {
        which: 'seam',
        statistic: { highest_of: month === null ? 'year' : 'emptying', exceeded: acceptedRisk },
        level_m: -seamWater(seam, over),
      },
      margin_m: spareOver(seam, over),
      lowest_level_m: null,
      hours: null,
      chance,
      allowed,
      why: allowed ? 'holds' : seam.assumed ? 'not-known' : 'floor-heaves',
      governs: allowed ? 'none' : 'floor-heave',
      assumptions: restingOn(situation, judged.assumed),
    } satisfies Situation;
  };
  const brim = fullLevel(site, m);
  const heaves = keptHeaves(basis, m, [depth], 0)!;
  const drawn = Float64Array.from({ length: draws.samples }, (_, s) => {
    const years = heaves.drawn.subarray(s * draws.years, (s + 1) * draws.years);
    return years.filter((first) => first === 0).length / draws.years;
  });
  return [
    row(
      'seam-full',
      null,
      brim,
      Float64Array.from(heaves.full, (first) => Number(first === 0)),
    ),
    row('seam-drawn-down', null, brim - drawdownOf(basis, 1 - acceptedRisk), drawn),
    ...MONTHS.map((month) =>
      row(
        'seam-emptied',
        month,
        emptiedHold(site, m, depth),
        seamShares(basis, m, depth, monthsEmpty(month, daysEmpty), floorLevel(depth, m)),
      ),
    ),
  ];
}

/** What a pond in a row has over its floor, and the months whose water in the seam is held against it. */
export function overWith(
  { pond }: Site,
  m: Measures,
  depth: number,
  { situation, month, level_m }: Pick<Situation, 'situation' | 'month' | 'level_m'>,
  use: Use = unrecorded,
): OverSeam {
  const floor = floorLevel(depth, m);
  const emptied = situation === 'seam-emptied' && month !== null;
  return {
    floor,
    // What holds an empty liner stands in the level of its row.
    holds: emptied ? level_m : use(withSlab, level_m, pond.floorBallast + m.ballast),
    months: emptied ? monthsEmpty(month, pond.daysEmpty) : MONTHS,
    exceeded: pond.acceptedRisk,
  };
}
