import type { ClimateRecord } from '../climate/index.js';
import {
  fitPondLosses,
  OPEN_WATER,
  type PondInterval,
  type PondLosses,
  type PondStage,
} from '../pond/index.js';
import { latinNormals } from '../sampling/index.js';
import type { Survey, Warning } from '../survey/index.js';
import type { Assumptions } from './assumptions.js';
import type { Places } from './places.js';
import { roofInflow } from './roofIntoPond.js';
import type { Unknowns } from './unknowns.js';

/** A rule held to a mark at the water's edge, one standard deviation, m. Our choice. */
const READING_ERROR = 0.005;
/** Looks farther apart tell no leak, days: somebody may have topped up. Our choice. */
const LONGEST_INTERVAL = 45;
/** A leak known no better is not reckoned with, m/d. Our choice. */
const TELLING = 0.001;

/** Coefficient of open water and leak, m/d, one a sample. */
export interface PondLossDraws {
  coefficient: Float64Array;
  leak?: Float64Array;
}

/** What is drawn of a pond that nobody read. */
function lossesUnread(unknowns: Unknowns): PondLossDraws {
  const { coefficient, spread } = OPEN_WATER;
  return { coefficient: unknowns['open water'].map((z) => coefficient * Math.exp(spread * z)) };
}

/**
 * What is drawn of it by the looks at its own level, with what they tell said among the assumptions, and a leak among
 * the warnings.
 * @param fullLevel - m above the datum
 * @param seed - of the draws of the leak
 */
export function pondLossDraws(
  survey: Survey,
  places: Places,
  record: ClimateRecord,
  stage: PondStage,
  fullLevel: number,
  unknowns: Unknowns,
  seed: number,
  assume: Assumptions,
  warnings: Warning[],
): PondLossDraws {
  const looks = survey.looks
    .filter(({ pit, reading }) => pit === 'pond' && reading === 'level')
    .map(({ day, depth }) => ({ day, lacks: fullLevel - ((places.pondPoint ?? 0) - depth!) }))
    .sort((a, b) => a.day - b.day);
  if (looks.length === 0) return lossesUnread(unknowns);
  const intervals = intervalsOf(looks, record, stage, roofInflow(record, survey.site.roof_into_pond ?? 0));
  const found = fitPondLosses(intervals, READING_ERROR);
  const mm = (rate: number) => Number((1000 * rate).toPrecision(2));
  const used = `${looks.length} ${looks.length === 1 ? 'look' : 'looks'} at the pond`;
  if (intervals.length === 0 || found.leak.sd > TELLING) {
    const why = intervals.length === 0 ? 'none' : `it only to ± ${mm(found.leak.sd)} mm a day`;
    assume.add(
      'leak',
      0,
      'mm/d',
      `${used} tell ${why}: read it every week through dry months, and do not top it up between`,
    );
    return lossesUnread(unknowns);
  }
  if (found.leak.mean < 2 * found.leak.sd) {
    const most = mm(Math.max(found.leak.mean, 0) + 1.64 * found.leak.sd);
    assume.add('leak', 0, 'mm/d', `${used} show none; one of more than ${most} mm a day would show`);
    return drawn(fitPondLosses(intervals, READING_ERROR, false), unknowns, seed);
  }
  warnings.push({
    code: 'pond-leaks',
    message: `the pond falls by ${mm(found.leak.mean)} ± ${mm(found.leak.sd)} mm a day more than the air takes, by ${used}: find the leak first; the water runs under the liner`,
    file: 'water.csv',
  });
  assume.add(
    'leak',
    mm(found.leak.mean),
    'mm/d',
    `${used}, less rain and evaporation, as long as it is not mended`,
  );
  return drawn(found, unknowns, seed);
}

function drawn(
  { coefficient: c, leak, correlation }: PondLosses,
  unknowns: Unknowns,
  seed: number,
): PondLossDraws {
  const scores = unknowns['open water'];
  const coefficient = scores.map((z) => c.mean * Math.exp((c.sd / c.mean) * z));
  if (leak.sd === 0) return { coefficient };
  const rest = latinNormals(scores.length, 1, seed + 31);
  const own = Math.sqrt(1 - correlation ** 2);
  return {
    coefficient,
    leak: scores.map((z, s) => Math.max(leak.mean + leak.sd * (correlation * z + own * rest[s]), 0)),
  };
}

/** From look to look, where nothing can have run over, nothing was topped up and there was water. */
function intervalsOf(
  looks: readonly { day: number; lacks: number }[],
  record: ClimateRecord,
  stage: PondStage,
  led: Float64Array | undefined,
): PondInterval[] {
  const { rain, demand, firstDay } = record;
  const last = firstDay + rain.length;
  const sum = (daily: Float64Array, from: number, to: number) => {
    let total = 0;
    for (let d = Math.floor(from); d < to; d++)
      total += daily[d - firstDay] * (Math.min(d + 1, to) - Math.max(d, from));
    return total;
  };
  const intervals: PondInterval[] = [];
  let before = false;
  for (let i = 1; i < looks.length; i++) {
    const [from, to] = [looks[i - 1], looks[i]];
    const days = to.day - from.day;
    const known = from.day >= firstDay && to.day <= last && days > 0 && days <= LONGEST_INTERVAL;
    const water = areaAt(stage, (Math.max(from.lacks, 0) + Math.max(to.lacks, 0)) / 2);
    const brought = known && led ? sum(led, from.day, to.day) : 0;
    const gave = known ? (sum(rain, from.day, to.day) * stage.catchment + brought) / water : 0;
    const lost = to.lacks - from.lacks + gave;
    // As full as it may have got on the way, it lacked more than the readings may be off.
    const held = Math.min(from.lacks, to.lacks) - gave > READING_ERROR;
    const topped = lost < -3 * READING_ERROR;
    // Down at its floor it cannot fall further.
    const empty = Math.max(from.lacks, to.lacks) > stage.fall[stage.fall.length - 1] - 3 * READING_ERROR;
    const follows = before;
    before = known && held && !topped && !empty;
    if (before)
      intervals.push({ lost, rain: gave, evaporation: sum(demand, from.day, to.day), days, follows });
  }
  return intervals;
}

/** Water area at a fall below the brim, m². */
function areaAt({ fall, area }: PondStage, below: number): number {
  const at = fall.findIndex((level) => level >= below);
  return area[at < 0 ? area.length - 1 : at];
}
