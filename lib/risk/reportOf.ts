import { isoDate } from '../climate/index.js';
import { BED_LOSS } from '../drain/index.js';
import { relievedHead } from '../groundwater/index.js';
import { type Percentiles, percentiles } from '../sampling/index.js';
import type { Assessment } from './assess.js';
import { drainLevel, floorLevel } from './measures.js';
import type { Report, WaterDay } from './result.js';
import { resultOf } from './resultOf.js';

/** Everything figures and page show of an assessment. */
export function reportOf(a: Assessment): Report {
  const { site, decision } = a;
  const { pond, places } = site;
  const drain = decision.measures.drain;
  return {
    result: resultOf(a),
    units: site.survey.site.show_units ?? 'metric',
    curves: a.curves,
    accepted_risk: pond.acceptedRisk,
    pond: {
      shape: pond.shape.shape,
      length_m: pond.shape.length,
      width_m: pond.shape.width,
      depth_m: pond.depth,
      side_slope: pond.shape.sideSlope,
      full_level_m: pond.fullLevel,
      usual_drawdown_m: pond.usualDrawdown,
      ring_width_m: pond.ring.width,
      ring_depth_m: pond.ring.depth ?? pond.depth,
      bedding_m: pond.bedding.thickness,
      high_rim_m: places.highRim,
      emptied_in: pond.emptiedIn,
    },
    emptying: a.limits.empty.map(({ seconds, governs }, i) => ({
      month: i + 1,
      hours: hoursOf(seconds),
      ends: governs,
      lift_hours: a.limits.liftTimes[i].map((t) => ({ water_m: t.depth, hours: hoursOf(t.seconds) })),
    })),
    drain: a.drain,
    outlet:
      drain?.kind === 'outlet'
        ? {
            name: drain.outlet.name,
            level_m: drain.outlet.level,
            distance_m: drain.outlet.distance,
            flood_m: drain.outlet.flood ?? null,
          }
        : null,
    water_year: waterYear(a),
    dips: site.dips.map((d) => ({
      day: d.day,
      date: isoDate(d.day),
      depth_m: d.depth,
      says: d.says,
      pit: d.pit,
    })),
  };
}

const hoursOf = (seconds: number) => (Number.isFinite(seconds) ? seconds / 3600 : null);

/** Daily bands over the weather; twelve months of an ordinary year where there is no weather for the table. */
export function waterYear({ site, decision, basis: { draws } }: Assessment): WaterDay[] {
  const { water } = site;
  const drain = decision.measures.drain;
  const level = drain && drainLevel(drain, floorLevel(decision.depth, decision.measures));
  const calm =
    drain?.kind === 'outlet' ? (drain.outlet.ditch ?? Number.NEGATIVE_INFINITY) : Number.NEGATIVE_INFINITY;
  const row = (date: string, clay: Float64Array, tub: Float64Array | undefined): WaterDay => {
    const undrained = tub ? clay.map((h, i) => Math.max(h, tub[i])) : clay;
    const flip = (p: Percentiles): Percentiles => ({ p10: -p.p90, p50: -p.p50, p90: -p.p10 });
    return {
      date,
      table_depth_m: flip(percentiles(clay)),
      tub_level_m: tub ? percentiles(tub) : null,
      head_undrained_m: percentiles(undrained),
      head_drained_m:
        level === undefined
          ? null
          : percentiles(undrained.map((u) => relievedHead.compute(u, level, calm, BED_LOSS))),
    };
  };
  const { daily } = water;
  if (daily) {
    const gather = (from: Float32Array, d: number) =>
      Float64Array.from({ length: daily.samples }, (_, s) => from[s * daily.days + d]);
    const tub = site.tub && daily.tub?.asIs;
    return Array.from({ length: daily.days }, (_, d) =>
      row(isoDate(daily.firstDay + d), gather(daily.clay, d), tub && gather(tub, d)),
    );
  }
  const n = draws.samples * draws.years;
  const month = (levels: Float32Array, m: number) =>
    Float64Array.from({ length: n }, (_, i) => levels[i * 12 + m]);
  return Array.from({ length: 12 }, (_, m) =>
    row(
      `--${String(m + 1).padStart(2, '0')}`,
      month(water.clayLow.month, m),
      water.tub && month(water.tub.asIs.month, m),
    ),
  );
}
