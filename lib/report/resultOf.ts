import { decidingDay, decidingWater, pondYear } from '../basis/index.js';
import { calendarOf } from '../climate/index.js';
import type {
  DrainResult,
  OptionResult,
  RankedSpot,
  Result,
  SpotResult,
  WorkResult,
} from '../contract/index.js';
import { BEFORE_DIGGING } from '../contract/index.js';
import type { Assessment, Judged } from '../decision/index.js';
import { tubBottom } from '../groundwater/index.js';
import { safeDepth } from '../options/index.js';
import { lifeChance, monthlyLimits, upliftCheck, verdictAt } from '../reliability/index.js';
import { type Percentiles, percentiles, Remembered } from '../sampling/index.js';
import { LEVEL_RIM, monthValues, type Site, seasonRanks, type WaterEnsemble } from '../site/index.js';
import { logPercentiles } from '../soil/index.js';
import type { Survey, Warning } from '../survey/index.js';
import { DRIVER_NAMES, MOVED_NAMES, obstacleText, spotText } from '../text/index.js';
import type { UnitSystem } from '../units/index.js';
import { checkedMeasures } from './checkedMeasures.js';
import { costOf, unusedPrices } from './cost.js';
import { designSheetOf } from './designSheet.js';
import { ladderOf } from './ladder.js';
import { recommend } from './recommend.js';
import { ADVISED_AND_NOTHING, situationsOf } from './situations.js';
import { unitsOf } from './unitsOf.js';
import { type Work, workOf } from './work.js';

/**
 * The contract's `result.json` of an assessment; numbers with 6 significant digits.
 * @param a - from {@link assess}, or {@link judge}: that has neither drivers nor tipping points nor spots
 * @param told - `units` of the words, those of the survey where none are given; `quick`: design situations of what is
 * recommended and of nothing done only, as a step of a what-if shows them
 * @returns plain data, ready for JSON; the unit is in each name
 * @throws Error naming a number that is not finite
 */
export function resultOf(
  a: Judged & Partial<Assessment>,
  { units = unitsOf(a), quick = false }: { units?: UnitSystem; quick?: boolean } = {},
): Result {
  const { site } = a;
  const { survey, ground, water } = site;
  const works = a.options.map(({ measures }) =>
    measures ? workOf(a.basis, measures, site.pond.depth) : null,
  );
  const months = Array.from({ length: 12 }, (_, m) => monthOf(a, m));
  const situations = situationsOf(a, quick ? ADVISED_AND_NOTHING : undefined);
  return rounded({
    contract: 2,
    survey: { name: survey.name, sha256: survey.digest, files: survey.digests },
    ground: {
      layers: ground.layers.map(({ row, texture, permeability }) => ({
        pit: row.pit,
        top_m: row.top,
        bottom_m: row.bottom,
        texture,
        ksat_m_s: logPercentiles(permeability),
        evidence: permeability.evidence,
      })),
    },
    water: {
      seasonal_high_depth_m: percentiles(a.basis.draws.clayLow.map((h) => -h)),
      seasonal_high_evidence: site.highEvidence.map(({ source, depth, spread, says }) => ({
        source,
        depth_m: depth,
        spread_m: spread,
        says,
      })),
      seasons_looked_in: seasonsLookedIn(site),
      spill_level_m: site.tub?.exit?.level ?? Math.min(0, site.places.spill ?? 0),
      model: site.waterModel,
      closure_mm: water.closure * 1000,
      by_month: months,
      ladder: ladderOf(a.basis, months),
      pond: pondYear(a.basis),
    },
    options: a.options.map((_, i) => optionResult(a, i, works[i], units)),
    situations,
    design_sheet: designSheetOf(a, situations),
    recommendation: recommend(a, units),
    instead: a.instead ?? null,
    drain: drainResult(a),
    build: buildOf(a),
    uplift_check: checkedMeasures(a).map(({ option, m, depth }) => upliftCheck(a, option, m, depth)),
    tipping_points: (a.tippingPoints ?? []).map((point) => ({ ...point, input: MOVED_NAMES[point.input] })),
    drivers: (a.drivers ?? []).map((driver) => ({ ...driver, input: DRIVER_NAMES[driver.input] })),
    spots: (a.spots ?? []).map((spot) => spotResult(spot, units)),
    assumptions: a.assumptions,
    warnings: [...site.warnings, ...priceWarnings(works, survey)],
  });
}

/** Wet seasons with a look, each from one month to another as `2023-10`. */
function seasonsLookedIn({ record, wetMonths, dips }: Site): Result['water']['seasons_looked_in'] {
  if (!record) return [];
  const named = ({ month, year }: { month: number; year: number }) =>
    `${year}-${String(month).padStart(2, '0')}`;
  return seasonRanks(
    record,
    wetMonths,
    dips.map(({ day }) => day),
  ).map(({ from, to, rank, of }) => ({ from: named(from), to: named(to), rank, of }));
}

/** Levels as depths: the high end of one is the low end of the other. */
const depthsOf = ({ p10, p50, p90 }: Percentiles): Percentiles => ({ p10: -p90, p50: -p50, p90: -p10 });

function monthOf(a: Judged, m: number): Result['water']['by_month'][number] {
  const { water, pond } = a.site;
  const n = water.samples * water.years;
  const floor = -pond.depth;
  let dry = 0;
  for (let i = 0; i < n; i++) if (water.clayLow.month[i * 12 + m] < floor) dry++;
  return {
    month: m + 1,
    table_depth_m: depthsOf(monthBands(water.clayLow.month)[m]),
    daily_depth_m: water.daily ? depthsOf(dailyBands(water.daily)[m]) : null,
    uphill_depth_m: a.site.places.highRim > LEVEL_RIM ? depthsOf(monthBands(water.clayHigh.month)[m]) : null,
    tub_level_m: a.site.tub && water.tub ? monthBands(water.tub.asIs.month, tubBottom(a.site.tub))[m] : null,
    dry_floor_chance: dry / n,
  };
}

/** Bands of the days of each month. */
function dailyBands(daily: NonNullable<WaterEnsemble['daily']>): Percentiles[] {
  return bands.of(daily, '', () => {
    const months = Array.from({ length: 12 }, () => [] as number[]);
    for (let d = 0; d < daily.days; d++) months[calendarOf(daily.firstDay + d).month - 1].push(d);
    return months.map((days) => {
      const levels = new Float64Array(days.length * daily.samples);
      for (let s = 0, i = 0; s < daily.samples; s++)
        for (const d of days) levels[i++] = daily.clay[s * daily.days + d];
      return percentiles(levels);
    });
  });
}

const bands = new Remembered<Percentiles[]>();

/**
 * Bands of the twelve months of an ensemble; sought once for it, as a what-if leaves the water as it is.
 * @param dry - where a store without water stands
 */
function monthBands(levels: Float32Array, dry = Number.NEGATIVE_INFINITY): Percentiles[] {
  return bands.of(levels, '', () =>
    Array.from({ length: 12 }, (_, m) =>
      percentiles(monthValues(levels, m + 1).map((level) => Math.max(level, dry))),
    ),
  );
}

/** None of an option that cannot be had: what would be written would be another's. */
const NO_FIGURES = {
  possible: false,
  risk_at_wish: null,
  risk_in_life: null,
  per_dig: null,
  full: null,
  work: null,
  lowest_safe_level_m: null,
  lowest_safe_level_water: null,
  hours_empty_safe: null,
} as const;

function spotResult(spot: RankedSpot, units: UnitSystem): SpotResult {
  const { against: _, higher_m: _m, by: _by, if_higher: _if, ...told } = spot;
  return { ...told, reason: spotText(spot, units) };
}

function optionResult(a: Judged, index: number, work: Work | null, units: UnitSystem): OptionResult {
  const { site, basis } = a;
  const { name, measures, why } = a.options[index];
  const curve = a.curves[index];
  const basics = { option: name, depth_searched_m: curve.depth_m[curve.depth_m.length - 1] };
  if (!measures)
    return {
      ...basics,
      ...NO_FIGURES,
      why_not: obstacleText(why!, units),
      safe_depth_m: 0,
      governs: why!.governs,
    };
  const { pond, survey } = site;
  const v = verdictAt(basis, measures, pond.depth);
  const safe = safeDepth(curve, { depth: pond.depth, safe: v.safe });
  // Where the sides meet nothing is dug: what fails first lies above.
  const first = v.safe || (v.governs === 'sides-meet' && safe.depth !== null);
  const told = { ...basics, safe_depth_m: safe.depth, governs: first ? safe.governs : v.governs };
  const { lacks } = v.chance;
  if (lacks) return { ...told, ...NO_FIGURES, why_not: obstacleText(lacks, units) };
  const limits = monthlyLimits(basis, measures, pond.depth);
  // The higher the head the lower the net head: the quantiles change places.
  const net = (p: number) => {
    const day = decidingDay(basis, measures, pond.depth, 1 - p);
    return day.pond + measures.ballast - day.head;
  };
  return {
    ...told,
    possible: true,
    why_not: null,
    risk_at_wish: {
      per_year: v.chance.perYear,
      standard_error: v.chance.error.standardError,
      upkeep: v.chance.upkeep,
    },
    risk_in_life: lifeChance(v.chance.shares, site.life),
    per_dig: v.dig,
    full: {
      net_head_m: { p10: net(0.1), p50: net(0.5), p90: net(0.9) },
      where: decidingWater(basis, measures, pond.depth, 0.9),
      safe: (v.chance.modes['lift-drawn-down'] ?? 0) <= pond.acceptedRisk,
    },
    work: workResult(work!, survey),
    lowest_safe_level_m: limits.lowestSafeLevel,
    lowest_safe_level_water: limits.lowestSafeLevel.map((_, month) =>
      decidingWater(basis, measures, pond.depth, 1 - pond.acceptedRisk, month + 1),
    ),
    hours_empty_safe: limits.empty.map(({ seconds, governs }) =>
      governs === 'none' ? null : seconds / 3600,
    ),
  };
}

function workResult(work: Work, { prices }: Survey): WorkResult {
  const cost = costOf(work, prices);
  return {
    quantities: work.quantities,
    hours_by_hand: work.seconds / 3600,
    cost: cost?.sum ?? null,
    unpriced: cost?.unpriced ?? [],
  };
}

/** The work of what is recommended, at its depth and with its change of use. */
function buildOf({ basis, decision, site }: Judged): WorkResult | null {
  const { option, measures, depth } = decision;
  if (BEFORE_DIGGING.includes(option)) return null;
  return workResult(workOf(decision.changed ?? basis, measures, depth), site.survey);
}

function priceWarnings(works: (Work | null)[], { prices }: Survey): Warning[] {
  const used = works.filter((w) => w !== null);
  return unusedPrices(used, prices).map(({ item, unit, origin }) => ({
    code: 'price-not-used',
    message: `no option asks for '${item}' by the ${unit}: name it as the lists of quantities do`,
    ...origin,
  }));
}

function drainResult({ drain }: Judged): DrainResult | null {
  if (!drain) return null;
  return {
    inflow_m3_s: drain.inflow,
    pipe_diameter_m: drain.pipeDiameter,
    pipe_capacity_m3_s: drain.pipeCapacity,
    fall_needed_m: drain.fallNeeded,
    fall_available_m: drain.fallAvailable ?? null,
    outlet: drain.outlet,
    weakest_link: drain.weakestLink,
    reserve: drain.reserve,
    quantities: drain.quantities,
  };
}

/** Every number to 6 significant digits; a number that is not finite is an error of ours, never written. */
function rounded<T>(value: T, path = 'result'): T {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`${path} is ${value}`);
    return Number(value.toPrecision(6)) as T;
  }
  if (Array.isArray(value)) return value.map((v, i) => rounded(v, `${path}[${i}]`)) as T;
  if (value !== null && typeof value === 'object')
    return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, rounded(v, `${path}.${k}`)])) as T;
  return value;
}
