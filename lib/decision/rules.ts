import type { Basis } from '../basis/index.js';
import { codeAndValues, type ObstacleValues, type Rule, ruleOf } from '../contract/index.js';
import { bindingUnread, dugDepth, gravelLeftOut, isPressed } from '../digging/index.js';
import type { TubGeometry } from '../groundwater/index.js';
import { drainLevel, floorLevel, isAsBuilt, NOTHING, oldDrainOf, readingsOf } from '../heads/index.js';
import { lawfulOutlets, questionOf } from '../options/index.js';
import type { Site } from '../site/index.js';
import type { AddRule } from './addRule.js';
import type { Judged } from './assess.js';
import type { Decision } from './decide.js';
import { emptyingRules } from './emptyingRules.js';
import { withLowering } from './loweringRule.js';
import { oldDrainRule } from './oldDrainRule.js';
import { placeRules } from './placeRules.js';
import { pressureRule } from './pressureRule.js';
import { rebuildRule } from './rebuildRule.js';
import { fillingRule, monthRule, pumpingRule, rimRule, sideRules, ventRule, wallRule } from './sideRules.js';
import { stoppedRule } from './stoppedRule.js';
import { stopOf } from './stops.js';
import { topUpRule } from './topUpRule.js';
import { unknownRules } from './unknownRules.js';

/** Rules of use that go with what is recommended. */
export function rulesOf({ basis, decision: d, limits, drain: designed }: Judged): Rule[] {
  const { site } = basis;
  const stop = stopOf(site);
  if (stop) return stop.rules;
  const rules: Rule[] = [];
  const add: AddRule = (key, values, bounds) => rules.push(ruleOf(key, values, bounds));
  const { drain, cutoff, raise, way, ballast } = d.measures;
  const { catchment, tub, pond, places, survey } = site;

  if (survey.site.wet_plants === 'yes' && survey.site.protected_ground !== 'no')
    add('ask-regulator/wet-plants', {});
  const ask = questionOf(site, d.measures);
  if (ask) add('ask-way/boundary', ask);
  if (d.option === 'measure-first') measureFirstRule(site, d, add);
  add(readingsOf(site, 'dip-pipe').length > 0 ? 'dip-pipe/there' : 'dip-pipe/to-lay', {});
  // Another spot has another water.
  if (d.option !== 'move') emptyingRules(site, d, limits, add);
  if (d.option !== 'move') topUpRule(basis, d, add);
  if (drain?.kind === 'outlet' || cutoff !== undefined) {
    add('flap/outlet', { below: floodStaysBelow(d) });
    add('animal-guard/outlet', {});
  }
  if (drain || cutoff !== undefined) add('inspection-pipe/head', {});
  if (drain?.kind === 'sump') add('pump-alarm/sump', {});
  oldDrainRule(basis, d, add);
  if (site.warnings.some(({ code }) => code === 'pond-leaks')) add('mend-leak/pond', {});
  if (drain || cutoff !== undefined) stoppedRule(basis, d, add);
  if (way === 'keptOut' || ((drain || tub) && (catchment.uphillArea > 0 || catchment.roofArea > 0)))
    add('keep-surface-water-out/led-away', { counted: way === 'keptOut' });
  else if (rainStands(basis)) add('keep-surface-water-out/rain', {});
  if (gravelLeftOut(site, d.measures)) add('leave-gravel-out/no-outlet', {});
  if (tub?.exit && !drain) ringOutletRule(site, tub, add);
  if (!pond.existing) sideRules(basis, d, add);
  if (!pond.existing) monthRule(basis, d, add);
  if (!pond.existing) pressureRule(site, d, add);
  if (!pond.existing) pumpingRule(basis, d, add);
  if (pond.existing) wallRule(site, d, add);
  if (pond.existing) rebuildRule(basis, d, add);
  unknownRules(site, d, add);
  if (d.option === 'vent' || d.also.includes('vent')) ventRule(basis, d, add);
  // A slab has to be cast on the empty liner first.
  if (ballast <= 0) fillingRule(site, limits, add);
  if (d.governs === 'footing') {
    add('ask-engineer/footing', {});
    add('notify-neighbour/footing', {});
  } else {
    const wished = dugDepth(site, NOTHING, pond.depth);
    // What was read of the water of a wish that is had says that it holds.
    const pressed = isWishHad(site, d)
      ? !pond.existing && bindingUnread(site, wished).length > 0
      : isPressed(site, wished);
    if (ballast > 0) add('ask-engineer/slab', {});
    if (d.governs === 'floor-heave' || pressed) add('ask-engineer/pressure', {});
  }
  if (
    (drain || cutoff !== undefined) &&
    survey.site.shrinkable_clay === 'yes' &&
    places.houses.some((h) => h.distance < 10)
  )
    add('ask-engineer/lowered-house', {});
  if (raise > 0) add('keep-old-ground-open/bank', { away: survey.pond.overflow === 'away' }, { level_m: 0 });
  rimRule(site, d, add);
  if (d.option !== 'move') placeRules(site, add);
  if ((drain && !isAsBuilt(d.measures)) || cutoff !== undefined) add('notify-neighbour/outlet', {});
  // One code may speak of several things.
  const same = new Set<string>();
  const each = rules.filter(({ code, subject, values }) => {
    const said = JSON.stringify([code, subject, values]);
    return !same.has(said) && same.add(said);
  });
  return withLowering(each, designed);
}

/** Whether the depth wished for is what is recommended. */
const isWishHad = ({ pond }: Site, { verdict, depth }: Decision) =>
  verdict?.safe === true && depth === pond.depth;

/** Whether the flood at the outlet was levelled, and stands below what the drain holds the water at. */
function floodStaysBelow({ measures, depth }: Decision): boolean {
  const { drain, cutoffTo } = measures;
  if (drain?.kind === 'outlet')
    return (
      drain.outlet.flood !== undefined && drain.flood < drainLevel(measures, floorLevel(depth, measures))
    );
  return cutoffTo?.flood !== undefined && cutoffTo.flood < cutoffTo.level;
}

/** What to find out first, and how. */
function measureFirstRule(site: Site, d: Decision, add: AddRule): void {
  if (oldDrainOf(site)) add('measure-first/old-drain', {});
  else if (d.open === 'seam') add('measure-first/seam', {});
  else if (d.open === 'footing') add('measure-first/footing', {});
  else if (d.governs === 'evidence') add('measure-first/season', {});
  else {
    const lacking = lawfulOutlets(site).why;
    if (lacking?.asks) add('measure-first/place', codeAndValues<ObstacleValues>(lacking));
    else add('measure-first/discharge', {});
  }
}

/** The way out of the ring: whether its fill lets the water get there, and whether a flood comes in by it. */
function ringOutletRule({ pond }: Basis['site'], { exit, flooded }: TubGeometry, add: AddRule): void {
  const { fill, width } = pond.ring;
  if (flooded !== undefined && flooded > pond.fullLevel) {
    add('ring-outlet/flooded', {}, { level_m: flooded });
    return;
  }
  const slow = fill === 'gravel' || width === 0 ? null : fill;
  add('ring-outlet/open', { slow }, { level_m: exit!.level });
}

/** Rain on an open ring that makes a difference, m. Our choice. */
const TELLING = 0.01;

/** Whether rain on the ring, with nothing led to it, raises the highest water outside in one year of ten. */
function rainStands({ site, highs }: Basis): boolean {
  if (!site.tub || site.catchment.capped) return false;
  const high = (way: 'asIs' | 'keptOut') => highs.yearly({ way }, 0.9);
  return high('asIs') > high('keptOut') + TELLING;
}
