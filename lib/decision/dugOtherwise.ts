import { type Basis, basisOf } from '../basis/index.js';
import { isOption, type OptionName, type WishChange } from '../contract/index.js';
import { bestDig, isDiggable } from '../digging/index.js';
import { LEVEL_RESOLUTION, method } from '../formula/index.js';
import { NOTHING } from '../heads/index.js';
import { type Option, optionsOf } from '../options/index.js';
import { depthsOf, type Verdict, verdictAt } from '../reliability/index.js';
import { type Decision, decide } from './decide.js';
import { DEARER, EASY } from './easedWish.js';
import { floorLeft } from './floorLeft.js';
import type { Changed } from './leastChange.js';
import { shapedAs, withSides } from './simulatedAs.js';
import { worthOf } from './worth.js';

export const dugOtherwiseMethod = method({
  title: 'The least change of the dig that makes it safe',
  what:
    'Whether the depth wished for can be had where the dig as planned, or the sides of the emptied pond, refuse it: dug in ' +
    'another month, with flatter sides, or both. Everything else is then of the pond so dug.',
  assumptions: [
    'another month costs nothing and comes first; then the steepest sides that hold, in steps of a quarter to 1, no flatter than 3 to 1; then both',
    'the outline at the rim stays, so the floor shrinks: half a metre of it is left on its shorter side, or it is not offered',
    'a footing that the dig comes too near to is not answered by flatter sides: what is dug beside it is less',
    'flatter sides come before a rim raised to dig less, and both before less depth; where all of the wish cannot be had, that of ' +
      'them which gives most, never emptied at 0.7 of its depth, before another spot; pump and concrete only where nothing is had without',
  ],
  source: 'our choice of changes and order; chances as of any dig',
});

/** Steps in which sides are eased, and the flattest tried: a liner is walked up. Our choice. */
const EASING = 0.25;
const FLATTEST = 3;
/** Shorter side of the floor that is left, m: room for feet and a spade. Our choice. */
const LEAST_FLOOR = 0.5;

/** A dig that is done otherwise than wished, and what is decided for it. */
interface DugOtherwise {
  change: WishChange;
  /** of the dig as wished, with nothing built */
  undone: Verdict;
  basis: Basis;
  options: Option[];
  /** of the pond so dug */
  decision: Decision;
}

/** The decision for a pond dug otherwise, as one of the pond as wished. */
export function decisionForWish(decision: Decision, dug: DugOtherwise | undefined): Decision {
  if (!dug) return decision;
  const { change, undone } = dug;
  return {
    ...decision,
    change: { ...change, ...decision.change },
    governs: undone.governs,
    rejected: [
      { candidate: { option: 'no-drain', measures: NOTHING }, verdict: undone },
      ...decision.rejected,
    ],
  };
}

/** The least change of the dig with which the depth wished for can be had; undefined where none is needed or none is enough. */
export function dugOtherwise(basis: Basis, here: Decision): DugOtherwise | undefined {
  const { pond } = basis.site;
  if (pond.existing || !here.verdict || here.governs === 'evidence') return undefined;
  const undone = verdictAt(basis, NOTHING, pond.depth);
  const slumps = isSlumping(basis, undone);
  const holds = isHad(basis, here);
  if (undone.diggable && (holds || !slumps)) return undefined;
  for (const { change, basis: dug } of digChanges(basis, undone, slumps && !holds)) {
    const options = optionsOf(dug);
    const decision = decide(dug, options);
    const easy = isOption(decision.option) && EASY.includes(decision.option) && decision.measures.raise === 0;
    if (isHad(dug, decision) && (easy || !holds)) return { change, undone, basis: dug, options, decision };
  }
  const short = here.option === 'move' || here.option === 'shallower' || here.open !== undefined;
  return short ? dugShallower(basis, here, undone, slumps) : undefined;
}

/** The change of the dig with which most can be had, where that is more than what is had dug as wished. */
function dugShallower(
  basis: Basis,
  here: Decision,
  undone: Verdict,
  slumps: boolean,
): DugOtherwise | undefined {
  let over = worthHad(basis, here);
  let best: DugOtherwise | undefined;
  for (const { change, basis: dug } of shallowerChanges(basis, undone, slumps, over)) {
    const options = optionsOf(dug);
    const decision = decide(dug, options);
    const worth = worthHad(dug, decision);
    if (worth <= over + LEVEL_RESOLUTION) continue;
    // Pump and concrete are no gain where something is had without.
    if (over > 0 && isDear(decision) && !isDear(best?.decision ?? here)) continue;
    if (
      change.side_slope &&
      Math.min(...floorLeft(dug.site.pond.shape, depthHad(dug, decision))) < LEAST_FLOOR
    )
      continue;
    best = { change, undone, basis: dug, options, decision };
    over = worth;
  }
  return best;
}

const isDear = ({ option, also }: Decision) =>
  [option, ...also].some((name) => DEARER.includes(name as OptionName));

/** Depth that a decision lets be dug as it is used by it, m; none where it lets nothing be dug. */
function depthHad({ site: { pond } }: Basis, { option, depth }: Decision): number {
  return option === 'shallower' ? depth : isOption(option) ? pond.depth : 0;
}

/** What that depth is worth, m. */
function worthHad(basis: Basis, decision: Decision): number {
  return worthOf(basis.site.pond, depthHad(basis, decision), decision.emptyingRuled);
}

/** Whether a decision gives the depth wished for, emptied as wished. */
function isHad({ site: { pond } }: Basis, { option, emptyingRuled, depth }: Decision): boolean {
  return isOption(option) && depth === pond.depth && (!emptyingRuled || pond.emptiedIn === 'any');
}

function isSlumping({ site: { pond } }: Basis, { chance }: Verdict): boolean {
  return pond.emptiedIn !== 'any' && (chance.modes['side-slump'] ?? 0) > pond.acceptedRisk;
}

function* digChanges(basis: Basis, { diggable, conditions }: Verdict, slumps: boolean): Generator<Changed> {
  const month = diggable ? undefined : monthInstead(basis);
  if (month && isDiggable(month.basis, NOTHING)) yield month;
  // Beside a footing less is dug, whatever the slope.
  if (conditions.some(({ governs, met }) => governs === 'footing' && met !== 'yes')) return;
  const flatter = flatterSides(basis, slumps);
  if (flatter) yield flatter;
  else if (month) {
    const both = flatterSides(month.basis, slumps);
    if (both) yield { change: { ...month.change, ...both.change }, basis: both.basis };
  }
}

/** Changes of the dig that let more be dug than some depth, though not all that is wished. */
function* shallowerChanges(
  basis: Basis,
  { diggable, conditions }: Verdict,
  slumps: boolean,
  over: number,
): Generator<Changed> {
  const month = diggable ? undefined : monthInstead(basis);
  if (month) yield month;
  if (conditions.some(({ governs, met }) => governs === 'footing' && met !== 'yes')) return;
  for (const from of month ? [basis, month.basis] : [basis]) {
    const sideSlope = slopeForMost(from, slumps, over);
    const then = sideSlope === undefined ? undefined : shapedAs(from, sideSlope);
    if (then)
      yield { change: { ...(from === basis ? {} : month?.change), side_slope: sideSlope }, basis: then };
  }
}

/** The steepest sides with which most can be dug, more than some depth; undefined where none are. */
function slopeForMost(basis: Basis, emptied: boolean, over: number): number | undefined {
  const { site } = basis;
  const { shape, wall } = site.pond;
  if (wall !== 'none') return undefined;
  let best: number | undefined;
  let deepest = over;
  for (let slope = nextSlope(shape.sideSlope); slope <= FLATTEST; slope += EASING) {
    const sloped = withSides(site, slope);
    const depths = depthsOf(sloped).filter(
      (depth) =>
        depth < site.pond.depth &&
        depth > deepest + LEVEL_RESOLUTION &&
        Math.min(...floorLeft(sloped.pond.shape, depth)) >= LEAST_FLOOR,
    );
    if (depths.length === 0) continue;
    const so = basisOf(sloped, basis);
    const stands = (depth: number) =>
      isDiggable(so, NOTHING, depth) && !(emptied && isSlumping(so, verdictAt(so, NOTHING, depth)));
    // What does not stand at one depth stands at no deeper one: halved.
    let [standing, falls] = [-1, depths.length];
    while (falls - standing > 1) {
      const middle = (standing + falls) >> 1;
      if (stands(depths[middle]!)) standing = middle;
      else falls = middle;
    }
    const at = depths[standing];
    if (at === undefined) continue;
    best = slope;
    deepest = at;
  }
  return best;
}

/** Dug in the month in which least goes wrong; undefined where no month was planned, or that one. */
function monthInstead(basis: Basis): Changed | undefined {
  const { site } = basis;
  const planned = site.pond.builtIn;
  if (!planned) return undefined;
  const in_ = (builtIn?: number[]) => basisOf({ ...site, pond: { ...site.pond, builtIn } }, basis);
  const any = in_();
  const { months } = bestDig(any.site, any.dig, NOTHING, site.pond.depth).plan;
  if (`${months}` === `${planned}`) return undefined;
  return { change: { built_in: months }, basis: in_(months) };
}

function nextSlope(slope: number): number {
  return (Math.floor(slope / EASING + 1e-9) + 1) * EASING;
}

/** Sides eased to the next slope that holds; undefined where no floor would be left, walls hold them, or none holds. */
function flatterSides(basis: Basis, emptied: boolean): Changed | undefined {
  const { site } = basis;
  const { shape, depth, wall } = site.pond;
  if (wall !== 'none') return undefined;
  for (let sideSlope = nextSlope(shape.sideSlope); sideSlope <= FLATTEST; sideSlope += EASING) {
    const eased = { ...shape, sideSlope };
    if (Math.min(...floorLeft(eased, depth)) < LEAST_FLOOR) return undefined;
    const so = basisOf(withSides(site, sideSlope), basis);
    if (!isDiggable(so, NOTHING)) continue;
    if (emptied && isSlumping(so, verdictAt(so, NOTHING, depth))) continue;
    const then = shapedAs(basis, sideSlope);
    return then && { change: { side_slope: sideSlope }, basis: then };
  }
  return undefined;
}
