import { isoDate } from '../climate/index.js';
import type { WaterDay } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { BED_LOSS } from '../drain/index.js';
import { relievedHead, tubBottom, tubHead } from '../groundwater/index.js';
import { drainLevel, floorLevel } from '../heads/index.js';
import { type Percentiles, percentiles } from '../sampling/index.js';
import { LEVEL_RIM, monthValues, uphillLevel } from '../site/index.js';

/** Daily bands over the weather; twelve months of an ordinary year where there is no weather for the table. */
export function waterYear({ site, decision }: Judged): WaterDay[] {
  const { water, pond } = site;
  const { daily } = water;
  const held = 'held' in pond.kept ? percentiles([pond.fullLevel - pond.kept.held]) : undefined;
  const drain = decision.measures.drain;
  const dry = site.tub ? tubBottom(site.tub) : Number.NEGATIVE_INFINITY;
  const headOf = (z: number) => (site.tub ? tubHead(site.tub, z) : z);
  const level = drain && drainLevel(decision.measures, floorLevel(decision.depth, decision.measures));
  const calm =
    drain?.kind === 'outlet' ? (drain.outlet.ditch ?? Number.NEGATIVE_INFINITY) : Number.NEGATIVE_INFINITY;
  const uphill = site.places.highRim > LEVEL_RIM;
  const row = (
    date: string,
    clay: Float64Array,
    tub: Float64Array | undefined,
    high: Float64Array,
    lacks: Float64Array | undefined,
  ): WaterDay => {
    const table = percentiles(clay);
    const undrained = tub ? clay.map((h, i) => Math.max(h, headOf(tub[i]))) : clay;
    const flip = (p: Percentiles): Percentiles => ({ p10: -p.p90, p50: -p.p50, p90: -p.p10 });
    return {
      date,
      table_depth_m: flip(table),
      uphill_wall_m: uphill ? percentiles(high) : null,
      tub_level_m: tub ? percentiles(tub.map((z) => Math.max(z, dry))) : null,
      pond_level_m: held ?? percentiles(lacks!.map((below) => pond.fullLevel - below)),
      head_undrained_m: tub ? percentiles(undrained) : table,
      head_drained_m:
        level === undefined
          ? null
          : percentiles(undrained.map((u) => relievedHead.compute(u, level, calm, BED_LOSS))),
    };
  };
  if (daily) {
    const gather = (from: Float32Array, d: number) => {
      const levels = new Float64Array(daily.samples);
      for (let s = 0; s < levels.length; s++) levels[s] = from[s * daily.days + d];
      return levels;
    };
    const tub = site.tub && daily.tub?.asIs;
    return Array.from({ length: daily.days }, (_, d) => {
      const low = gather(daily.clay, d);
      const high = low.map((level, s) => uphillLevel(level, water.rise[s], water.highRim));
      const lacks = held ? undefined : gather(daily.drawdown!, d);
      return row(isoDate(daily.firstDay + d), low, tub && gather(tub, d), high, lacks);
    });
  }
  const month = (levels: Float32Array, m: number) => monthValues(levels, m + 1);
  return Array.from({ length: 12 }, (_, m) =>
    row(
      `--${String(m + 1).padStart(2, '0')}`,
      month(water.clayLow.month, m),
      water.tub && month(water.tub.asIs.month, m),
      month(water.clayHigh.month, m),
      held ? undefined : month(water.pond!.drawdown, m),
    ),
  );
}
