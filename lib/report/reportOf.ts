import { drawdownOf } from '../basis/index.js';
import { isoDate } from '../climate/index.js';
import { BEFORE_DIGGING, type Report } from '../contract/index.js';
import type { Assessment, Judged } from '../decision/index.js';
import { beddingLaid } from '../digging/index.js';
import { isAsBuilt, NOTHING } from '../heads/index.js';
import { digWindow, type PondKept, tubYear } from '../site/index.js';
import type { UnitSystem } from '../units/index.js';
import { stormOf } from '../works/index.js';
import { fittedWater } from './fittedWater.js';
import { lowerByReading, lowerToday } from './lowerToday.js';
import { nextDoor } from './nextDoor.js';
import { resultOf } from './resultOf.js';
import { settingOutOf } from './settingOut.js';
import { slabOn } from './slabOn.js';
import { unitsOf } from './unitsOf.js';
import { waterYear } from './waterYear.js';
import { withoutWeather } from './withoutWeather.js';

/** Spacing of the depths of the digging window, m. */
const DIG_STEP = 0.2;

/** How a report is told. */
interface Telling {
  units?: UnitSystem;
  quick?: boolean;
}

/**
 * Everything figures and page show of an assessment.
 * @param a - from {@link assess} or {@link judge}
 * @param telling - `units` of the words, those of the survey where none are given; `quick` leaves out what a step of a
 *   what-if does not show: water year, digging window, tub
 * @returns plain data; depths and levels m from the lowest natural ground at the rim
 */
export function reportOf(
  a: Judged & Partial<Assessment>,
  { units = unitsOf(a), quick = false }: Telling = {},
): Report {
  const { site, decision } = a;
  const { pond, places } = site;
  const drain = decision.measures.drain;
  return {
    result: resultOf(a, { units, quick }),
    units,
    rules: site.country.rules,
    drawn: { seed: site.seed, samples: site.water.samples },
    curves: a.curves,
    advised: a.advised,
    accepted_risk: pond.acceptedRisk,
    high_m: a.basis.highs.yearly(NOTHING, 0.9),
    life_years: site.life,
    pond: {
      shape: pond.shape.shape,
      length_m: pond.shape.length,
      width_m: pond.shape.width,
      depth_m: pond.depth,
      side_slope: pond.shape.sideSlope,
      full_level_m: pond.fullLevel,
      usual_drawdown_m: drawdownOf(a.basis, 0.5),
      kept: keptOf(pond.kept),
      ring_width_m: pond.ring.width,
      ring_depth_m: pond.ring.depth ?? pond.depth,
      bedding_m: pond.bedding.thickness,
      bedding_laid_m: beddingLaid(a.site, decision.measures),
      high_rim_m: places.highRim,
      emptied_in: pond.emptiedIn,
      margin_m: pond.margin,
      days_empty: decision.change?.days_empty ?? pond.daysEmpty,
      existing: pond.existing,
    },
    emptying: a.limits.empty.map(({ seconds, governs }, i) => ({
      month: i + 1,
      hours: hoursOf(seconds),
      ends: governs,
      lift_hours: a.limits.liftTimes[i].map((t) => ({ water_m: t.depth, hours: hoursOf(t.seconds) })),
    })),
    fitted: fittedWater(a.site),
    drain: a.drain,
    slab: slabOn(site, decision),
    outlet:
      drain?.kind === 'outlet'
        ? {
            name: drain.outlet.name,
            level_m: drain.outlet.level,
            distance_m: drain.outlet.distance,
            flood_m: drain.outlet.flood ?? null,
            flood_every: site.floodEvery,
          }
        : null,
    water_year: quick ? [] : waterYear(a),
    dips: site.dips.map((d) => ({
      day: d.day,
      date: isoDate(d.day),
      depth_m: d.depth,
      says: d.says,
      pit: d.pit,
    })),
    setting_out: quick ? null : settingOut(a, units),
    digging: quick ? null : digWindow(site.water, pond.shape, digDepths(pond.depth)),
    tub: quick ? null : (tubYear(site, stormOf(site)) ?? null),
    limits: a.limits,
    next_door: nextDoor(site, decision, a.drain),
    lower_today: lowerToday(a),
    lower_by_reading: lowerByReading(a),
    points: site.survey.levels.map(({ point, role, x, y, distance, level }) => ({
      name: point,
      role,
      x_m: x ?? null,
      y_m: y ?? null,
      distance_m: distance ?? null,
      level_m: level - places.datum,
    })),
    pits: site.survey.layers
      .filter(({ photo, note }) => photo || note)
      .map(({ pit, photo, note }) => ({ pit, photo: photo ?? null, note: note ?? null })),
    without_weather: withoutWeather(site),
  };
}

/** Where what is dug lies; nothing for a pond that waits, and for one that is there and stays as it is. */
function settingOut({ site, decision, drain }: Judged, units: UnitSystem): Report['setting_out'] {
  const { pond, places, survey } = site;
  const { measures, depth, option } = decision;
  const { raise } = measures;
  if (BEFORE_DIGGING.includes(option) || depth <= 0) return null;
  if (pond.existing && (isAsBuilt(measures) || (!drain && raise === 0))) return null;
  return settingOutOf({
    pond: {
      shape: pond.shape,
      depth,
      raise,
      fullLevel: pond.fullLevel,
      ringWidth: pond.ring.width,
      ringDepth: pond.ring.depth ?? depth,
    },
    levels: survey.levels,
    datum: places.datum,
    highRim: places.highRim,
    bedding: beddingLaid(site, measures),
    drain,
    units,
  });
}

const hoursOf = (seconds: number) => (Number.isFinite(seconds) ? seconds / 3600 : null);

/** Depths about the wish, the wish among them. */
function digDepths(wish: number): number[] {
  const below = Math.floor((wish - 0.1) / DIG_STEP + 1e-9);
  return Array.from({ length: below + 3 }, (_, i) => Number((wish + (i - below) * DIG_STEP).toFixed(3)));
}

function keptOf(kept: PondKept): Report['pond']['kept'] {
  if ('held' in kept) return { habit: 'held', within_m: null };
  return Number.isFinite(kept.within)
    ? { habit: 'topped-up', within_m: kept.within }
    : { habit: 'never', within_m: null };
}
