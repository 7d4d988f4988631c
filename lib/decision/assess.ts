import { type Basis, basisOf } from '../basis/index.js';
import type {
  DepthCurve,
  DriverShare,
  Instead,
  MonthlyLimits,
  NextMeasurement,
  RankedSpot,
  SiteDrain,
  TurningPoint,
} from '../contract/index.js';
import { assumeUpkeep } from '../heads/index.js';
import { depthCurve, type Option, optionsOf } from '../options/index.js';
import { driversOf, monthlyLimits } from '../reliability/index.js';
import { Assumptions, type Pond, type Site } from '../site/index.js';
import { builtBy, type Decision, decide, insteadOf } from './decide.js';
import { drainOf } from './drainOf.js';
import { decisionForWish, dugOtherwise } from './dugOtherwise.js';
import { LOSS, type Loss } from './loss.js';
import { measureNext, mostTelling, worthWaiting } from './measureNext.js';
import { openFacts } from './openFacts.js';
import { elsewhere, spotsOf } from './spots.js';
import { tippingPoints } from './tippingPoints.js';

/** A site judged: every option against depth, and the decision; all that a step of a what-if shows. */
export interface Judged {
  site: Site;
  basis: Basis;
  /** what a judgement as wished rests on; `basis` where the pond is not to be dug otherwise */
  wished: Basis;
  options: Option[];
  curves: DepthCurve[];
  /** what is decided against depth, as wished: it may be several options at once, as none of `curves` is */
  advised: DepthCurve;
  decision: Decision;
  limits: MonthlyLimits;
  drain: SiteDrain | null;
  measureNext: NextMeasurement[];
  loss: Loss;
  assumptions: Site['assumptions'];
}

/** What is decided against depth, used as wished, and at its own depth. */
export function advisedCurve(basis: Basis, decision: Decision): DepthCurve {
  return depthCurve(basis, { name: builtBy(decision), measures: decision.measures }, decision.depth);
}

/** A site judged, with what else is worth looking up, what drives the answer, where it turns, and other spots. */
export interface Assessment extends Judged {
  tippingPoints: TurningPoint[];
  drivers: DriverShare[];
  spots: RankedSpot[];
  /** beside a drain or slab: the wish used otherwise, which needs none */
  instead: Instead | null;
}

/** What a what-if may change without running the water again. */
export interface Change
  extends Partial<
    Pick<Pond, 'depth' | 'fullLevel' | 'kept' | 'highestRaise' | 'emptiedIn' | 'acceptedRisk' | 'margin'>
  > {
  /** what decisions are weighed by */
  loss?: Loss;
}

/**
 * Judges a site: chance against depth for every option, the stops, the decision and the drain it needs.
 * @param site - from {@link siteModel}
 * @param change - what-if on the pond; the water outside stays as simulated
 * @param before - an earlier judgement: what it rests on and counted is kept where the change leaves it as it was
 * @returns for {@link recommend}, {@link resultOf}, {@link reportOf} and the figures
 */
export function assess(site: Site, change: Change = {}, before?: Judged): Assessment {
  return explained(judge(site, change, before));
}

/** Adds to a judgement what takes a multiple of its time: open facts, what drives the answer, where it turns, and other spots. */
export function explained(judged: Judged): Assessment {
  const { site, basis, options, decision } = judged;
  return {
    ...judged,
    measureNext: [...judged.measureNext, ...openFacts(basis, options, judged.loss)].sort(mostTelling),
    drivers: driversOf(basis, decision.measures, decision.depth || site.pond.depth),
    tippingPoints: tippingPoints(basis, options),
    spots: spotsOf(basis, options, decision),
    instead: soDug(insteadOf(basis, options, decision), decision),
  };
}

/** What may be done instead was judged in the pond as it is to be dug, and holds in no other. */
function soDug(instead: Instead | null, { change }: Decision): Instead | null {
  if (!instead || !change) return instead;
  const { side_slope, built_in } = change;
  return {
    ...instead,
    change: {
      ...(built_in && { built_in }),
      ...(side_slope !== undefined && { side_slope }),
      ...instead.change,
    },
  };
}

/**
 * {@link assess} without what takes a multiple of its time: open facts, drivers, tipping points and other spots.
 * @param site - from {@link siteModel}
 * @param change - what is other than surveyed
 * @param before - an earlier judgement, as for {@link assess}
 * @returns for {@link recommend}, {@link resultOf} and {@link reportOf}
 */
export function judge(site: Site, { loss = LOSS, ...change }: Change = {}, before?: Judged): Judged {
  const changed: Site = { ...site, pond: { ...site.pond, ...change } };
  const wished = basisOf(changed, before?.wished);
  const asWished = { basis: wished, options: optionsOf(wished) };
  const first = decide(wished, asWished.options);
  const dug = dugOtherwise(wished, first);
  const { basis, options } = dug ?? asWished;
  const here = dug?.decision ?? first;
  const curves = options.map((o) => depthCurve(basis, o));
  const next = measureNext(basis, options, here, loss);
  const decided = elsewhere(basis, options, here);
  const decision: Decision =
    worthWaiting(next, loss) && !changed.pond.existing && !decided.spot
      ? { ...decisionForWish(decided, dug), option: 'measure-first', also: [], governs: 'evidence' }
      : decisionForWish(decided, dug);
  const drain = drainOf(basis, decision);
  const kept = new Assumptions();
  if (decision.measures.cutoff !== undefined) assumeUpkeep('cutoff', site.survey.site, false, kept);
  return {
    site: basis.site,
    basis,
    wished,
    options,
    curves,
    advised: advisedCurve(basis, decision),
    decision,
    limits: monthlyLimits(decision.changed ?? basis, decision.measures, decision.depth || changed.pond.depth),
    drain,
    measureNext: next,
    loss,
    assumptions: [...site.assumptions, ...(drain?.assumptions ?? []), ...kept.list],
  };
}
