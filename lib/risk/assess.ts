import {
  designDrain,
  type Drain,
  type DrainInflow,
  linerLeak,
  rationalRunoff,
  STORM_RUNOFF,
} from '../drain/index.js';
import { CAP_LEAK } from '../groundwater/index.js';
import { discInflow } from '../seepage/index.js';
import { Assumptions, type Pond, type Site } from '../site/index.js';
import { outline, planArea } from '../uplift/index.js';
import { type Decision, decide, isCloseCall } from './decide.js';
import { depthCurve, depthsOf } from './depthCurve.js';
import { type Draws, drawsOf } from './draws.js';
import { measureNext } from './measureNext.js';
import { drainLevel, floorLevel, lowestUsualLevel } from './measures.js';
import { type MonthlyLimits, monthlyLimits } from './monthlyLimits.js';
import { designHigh, floodOf, type Option, optionsOf } from './options.js';
import { reasonOf } from './reason.js';
import type { DepthCurve, Recommendation, TippingPoint } from './result.js';
import { rulesOf } from './rules.js';
import { tippingPoints } from './tippingPoints.js';

/** A site judged: every option against depth, and the decision. */
export interface Assessment {
  site: Site;
  draws: Draws;
  options: Option[];
  curves: DepthCurve[];
  decision: Decision;
  limits: MonthlyLimits;
  drain: Drain | null;
  tippingPoints: TippingPoint[];
  assumptions: Site['assumptions'];
}

/** What a what-if may change without running the water again. */
export type Change = Partial<Pick<Pond, 'depth' | 'fullLevel' | 'usualDrawdown' | 'highestRaise' | 'emptiedIn' | 'acceptedRisk' | 'margin'>>;

/**
 * Judges a site: chance against depth for every option, the stops, the decision and the drain it needs.
 * @param site - from {@link siteModel}
 * @param change - what-if on the pond; the water outside stays as simulated
 */
export function assess(site: Site, change: Change = {}): Assessment {
  const changed: Site = { ...site, pond: { ...site.pond, ...change } };
  const assume = new Assumptions();
  const draws = drawsOf(changed);
  const options = optionsOf(changed, draws);
  const depths = depthsOf(changed);
  const curves = options.map((o) => depthCurve(changed, draws, o, depths));
  const decision = decide(changed, draws, options);
  const drain = drainOf(changed, draws, decision, assume);
  return {
    site: changed,
    draws,
    options,
    curves,
    decision,
    limits: monthlyLimits(changed, draws, decision.measures, decision.depth || changed.pond.depth),
    drain,
    tippingPoints: tippingPoints(changed, draws, options, decision),
    assumptions: [...site.assumptions, ...assume.list],
  };
}

/** The recommendation of an assessment, in words and numbers. */
export function recommend(a: Assessment): Recommendation {
  const { site, draws, options, decision, limits } = a;
  return {
    option: decision.option,
    also: decision.also,
    depth_m: decision.depth,
    raise_m: decision.measures.raise,
    governs: decision.governs,
    reason: reasonOf(site, decision),
    rules: rulesOf(site, decision, limits),
    close_call: isCloseCall(site, decision),
    measure_next: measureNext(site, draws, options, decision),
  };
}

/** A 3 mm hole, the kind nobody finds, m². Our choice. */
const LEAK_AREA = 7e-6;

function drainOf(site: Site, draws: Draws, d: Decision, assume: Assumptions): Drain | null {
  const { drain } = d.measures;
  if (!drain || d.option === 'do-not-dig' || d.option === 'measure-first' || d.option === 'move') return null;
  const floor = floorLevel(d.depth, d.measures);
  const level = drainLevel(drain, floor);
  const { shape } = site.pond;
  const floorArea = planArea(shape, d.depth);
  const sideArea = ((outline(shape) + outline(shape, d.depth)) / 2) * d.depth * Math.hypot(1, shape.sideSlope);
  const end =
    drain.kind === 'outlet'
      ? {
          kind: 'outlet' as const,
          name: drain.outlet.name,
          level: drain.outlet.level,
          distance: drain.outlet.distance,
          flood: floodOf(drain.outlet),
        }
      : { kind: 'sump' as const, name: 'sump', level, distance: drain.distance };
  if (drain.kind === 'outlet' && drain.outlet.flood === undefined)
    assume.add('flood level', floodOf(drain.outlet), 'm', 'no flood mark at the outlet: 0.4 m above its ordinary water');
  return designDrain({
    floor,
    floorArea,
    floorLength: Math.max(shape.length - 2 * shape.sideSlope * d.depth, 0.5),
    sideArea,
    inflow: inflowOf(site, draws, d, level, assume),
    end,
  });
}

function inflowOf(site: Site, draws: Draws, d: Decision, level: number, assume: Assumptions): DrainInflow {
  const { catchment, tub, pond, survey, ground } = site;
  const rain = assume.or(survey.site.storm_rain, 'storm_rain', 0.03, 'm', 'a heavy summer storm: 30 mm');
  const seconds = assume.or(survey.site.storm_hours, 'storm_hours', 3600, 's', 'falling in one hour');
  const intensity = rain / seconds;
  const kept = d.measures.way === 'keptOut';
  const open = !tub ? 0 : catchment.capped || kept ? CAP_LEAK : 1;
  const radius = Math.sqrt((planArea(pond.shape, 0) + planArea(pond.shape, d.depth)) / 2 / Math.PI);
  const head = Math.max(designHigh(draws, d.measures, 0.9) - level, 0);
  return {
    clay: discInflow.compute(ground.ksat.median, radius, head),
    ring_storm: open * intensity * (tub?.ringArea ?? 0),
    roof: open * rationalRunoff.compute(STORM_RUNOFF.roof, intensity, kept ? 0 : catchment.roofArea),
    uphill: open * rationalRunoff.compute(STORM_RUNOFF[catchment.cover], intensity, kept ? 0 : catchment.uphillArea),
    leak: linerLeak.compute(LEAK_AREA, Math.max(lowestUsualLevel(site, d.measures) - level, 0)),
  };
}
