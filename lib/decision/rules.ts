import type { Basis } from '../basis/index.js';
import type { MonthlyLimits, Rule } from '../contract/index.js';
import type { TubGeometry } from '../groundwater/index.js';
import { isAsBuilt, oldDrainOf, readingsOf } from '../heads/index.js';
import { lawfulOutlets, questionOf } from '../options/index.js';
import type { Decision } from './decide.js';
import { emptyingRules, rebuildRule } from './emptyingRules.js';
import { oldDrainRule } from './oldDrainRule.js';
import { placeRules } from './placeRules.js';
import {
  type AddRule,
  fillingRule,
  monthRule,
  pumpingRule,
  rimRule,
  sideRules,
  ventOf,
  wallRule,
} from './sideRules.js';
import { stoppedRule } from './stoppedRule.js';
import { stopOf } from './stops.js';
import { topUpRule } from './topUpRule.js';
import { unknownRules } from './unknownRules.js';

/** A drain in shrinkable clay with a house near. */
export const LOWERS_BESIDE_HOUSE =
  'A drain lowers the water in shrinkable clay beside a house: ask a licensed engineer first.';

/** Rules of use that go with a decision. */
export function rulesOf(basis: Basis, d: Decision, limits: MonthlyLimits): Rule[] {
  const { site } = basis;
  const stop = stopOf(site);
  if (stop) return stop.rules;
  const rules: Rule[] = [];
  const add: AddRule = (code, text, extra = {}) => rules.push({ code, text, ...extra });
  const { drain, cutoff, raise, way, ballast } = d.measures;
  const { catchment, tub, pond, places, survey } = site;

  if (survey.site.wet_plants === 'yes' && survey.site.protected_ground !== 'no')
    add(
      'ask-regulator',
      'Rushes and other plants of wet ground grow here: ask whether the ground is protected before any spade goes in.',
    );
  const ask = questionOf(site, d.measures);
  if (ask) add('ask-way', `Before anything is bought, ask ${ask}.`);
  const lacking = lawfulOutlets(site).why;
  if (d.option === 'measure-first')
    add(
      'measure-first',
      oldDrainOf(site)
        ? 'Find out what the old drain does before anything is built: it is cheaper than any of the works.'
        : d.open === 'seam'
          ? 'Put a pipe into the layer under the clay, open in that layer only, and read it every week through one wet half-year before it is dug.'
          : d.open === 'footing'
            ? 'Find out how deep the footing goes before it is dug: a small hole beside the wall, down to its underside.'
            : d.governs === 'evidence'
              ? 'Put in two sealed standpipes and read them every week through one wet half-year before the liner is bought.'
              : lacking?.asks
                ? `Measure before anything is bought: ${lacking.text}.`
                : 'Ask, and get it in writing, whether and where the water may be led away before the liner is bought.',
    );
  add(
    'dip-pipe',
    readingsOf(site, 'dip-pipe').length > 0
      ? 'Read the dip pipe before the pond is lowered.'
      : 'Put a dip pipe down to the low point beside the liner and read it before the pond is lowered.',
  );
  // Another spot has another water.
  if (d.option !== 'move') emptyingRules(site, d, limits, add);
  if (d.option !== 'move') topUpRule(basis, d, add);
  if (drain?.kind === 'outlet' || cutoff !== undefined) {
    add('flap', 'Fit a flap at the outlet, so that the ditch in flood does not fill the bed.');
    add('animal-guard', 'Fit a guard against animals at the outlet and clear it every autumn.');
  }
  if (drain || cutoff !== undefined)
    add(
      'inspection-pipe',
      'Bring the pipe up to the surface at its head; look into it every autumn and after storms, and flush it when water stands in it.',
    );
  if (drain?.kind === 'sump') {
    add(
      'pump-alarm',
      'Two pumps, one of them on a battery, and a high-water alarm on a battery too; test them every month of the wet half-year.',
    );
  }
  oldDrainRule(basis, d, add);
  if (site.warnings.some(({ code }) => code === 'pond-leaks'))
    add(
      'mend-leak',
      'The pond loses more than the air takes: find and mend the leak before anything else is done. What is told here counts with it.',
    );
  if (drain) stoppedRule(basis, d, add);
  if (way === 'keptOut' || ((drain || tub) && (catchment.uphillArea > 0 || catchment.roofArea > 0)))
    add(
      'keep-surface-water-out',
      'Turn run-off and downpipes away uphill of the pond and cap the ring with rammed clay.',
    );
  else if (rainStands(basis))
    add(
      'keep-surface-water-out',
      'Cap the ring with rammed clay: the rain that falls on it alone stands higher against the liner than the water in the ground.',
    );
  if (!drain && tub && !tub.exit && holdsWater(pond))
    add(
      'leave-gravel-out',
      'Leave sand and gravel out from under and around the liner: without an outlet they only hold water there.',
    );
  if (tub?.exit && !drain) ringOutletRule(site, tub, add);
  if (!pond.existing) sideRules(basis, d, add);
  if (!pond.existing) monthRule(basis, d, add);
  if (!pond.existing) pumpingRule(basis, d, add);
  if (pond.existing) wallRule(site, d, add);
  if (pond.existing) rebuildRule(basis, d, add);
  unknownRules(site, d, add);
  if (d.option === 'vent' || d.also.includes('vent')) add('vent-high-point', ventOf(basis, d).words);
  fillingRule(site, limits, add);
  if (d.governs === 'footing') {
    add('ask-engineer', 'Ask a licensed engineer before digging near a footing.');
    add(
      'notify-neighbour',
      'Tell the neighbour in writing before digging near the boundary or a wall; many places require notice.',
    );
  } else if (d.governs === 'floor-heave' || ballast > 0)
    add(
      'ask-engineer',
      ballast > 0
        ? 'Have a licensed engineer design slab and facings.'
        : 'Ask a licensed engineer: water under pressure lies below the clay.',
    );
  if (
    (drain || cutoff !== undefined) &&
    survey.site.shrinkable_clay === 'yes' &&
    places.houses.some((h) => h.distance < 10)
  )
    add('ask-engineer', LOWERS_BESIDE_HOUSE);
  if (raise > 0)
    add(
      'keep-old-ground-open',
      'Leave the old ground beside the bank as the way out for water; do not dam it.',
      { level_m: 0 },
    );
  rimRule(site, d, add);
  if (d.option !== 'move') placeRules(site, add);
  if ((drain && !isAsBuilt(d.measures)) || cutoff !== undefined)
    add('notify-neighbour', 'Tell the neighbour where the water comes out before the pipe is laid.');
  // One code may speak of several things.
  return rules.filter((r, i) => rules.findIndex((o) => o.code === r.code && o.text === r.text) === i);
}

/** The way out of the ring: whether its fill lets the water get there, and whether a flood comes in by it. */
function ringOutletRule({ pond }: Basis['site'], { exit, flooded }: TubGeometry, add: AddRule): void {
  const { fill, width } = pond.ring;
  if (flooded !== undefined && flooded > pond.fullLevel) {
    add(
      'ring-outlet',
      'In flood the water in the swale stands above the full pond and fills the ring from there: close that way with rammed clay, and run the analysis again without it.',
      { level_m: flooded },
    );
    return;
  }
  const slow =
    fill === 'gravel' || width === 0
      ? ''
      : ` Water gets there through ${fill} only slowly: from the far side of the pond it stands higher than the swale.`;
  add('ring-outlet', `Keep the way out of the ring open at the swale.${slow}`, { level_m: exit!.level });
}

/** Rain on an open ring that makes a difference, m. Our choice. */
const TELLING = 0.01;

/** Whether rain on the ring, with nothing led to it, raises the highest water outside in one year of ten. */
function rainStands({ site, highs }: Basis): boolean {
  if (!site.tub || site.catchment.capped) return false;
  const high = (way: 'asIs' | 'keptOut') => highs.yearly({ way }, 0.9);
  return high('asIs') > high('keptOut') + TELLING;
}

/** Whether sand or gravel lies under the liner or around it. */
function holdsWater({ bedding, ring }: Basis['site']['pond']): boolean {
  const grains = ['sand', 'gravel'];
  return grains.includes(bedding.kind) || (ring.width > 0 && grains.includes(ring.fill));
}
