import { type Basis, basisOf } from '../basis/index.js';
import { firstOfSeason } from '../climate/index.js';
import { KNOWN_BELOW, type Measurement, type NextMeasurement } from '../contract/index.js';
import { perDig, worstDig } from '../digging/index.js';
import { BED_THICKNESS } from '../drain/index.js';
import { LEVEL_RESOLUTION, method } from '../formula/index.js';
import type { Measures } from '../heads/index.js';
import { FLOOD_ABOVE, floodOf } from '../heads/index.js';
import { type Option, optionsOf, outletsOf } from '../options/index.js';
import { deepestLogged, type Seam, type Site } from '../site/index.js';
import { decide } from './decide.js';
import { type Loss, lossesOf } from './loss.js';

export const openFactsMethod = method({
  title: 'What a look at an open fact is worth',
  what:
    'A fact of the site that nobody looked up may turn out in a few ways. The site is decided anew for each; the worth of ' +
    'looking is the expected loss of the best choice made blindly less that of the best choice in each case.',
  assumptions: [
    'a ditch without a flood mark floods 0.2, 0.4 or 0.8 m above its ordinary water, with chances of 3, 4 and 3 in 10; where an ' +
      'outlet has no ditch, water stands at it, 0.4 or 0.8 m above it, with the same chances (our choice)',
    'a drain may end at a low way out of the ring in one of two (our choice)',
    'below a log that ends less than 0.5 m under the dig a seam under the pressure of the wet season is found once in 10 ' +
      'holes (our choice)',
    'a seam that nobody looked into in the wet half-year stands no higher than it was seen in one of two (our choice)',
    'with fewer than three rim points on the plan what is drawn near the pond stands as far off as it is from them in one of two, ' +
      'else so near as the pond may reach (our choice)',
    'a dig that heaves, slumps or floods is a failure at the loss of one',
    'where a case leaves only another spot, that has no price here: the worth then comes out too low',
  ],
  source: 'preposterior analysis (Raiffa & Schlaifer 1961); chances and loss our choice',
});

/** How a fact may turn out. */
interface Case {
  chance: number;
  site: Site;
}

/** A fact to be looked up without waiting for a wet season. */
interface OpenFact {
  what: Measurement;
  where: string | null;
  month: number | null;
  /** whether as deep as it may be dug then is another answer too */
  deeper?: true;
  cases: Case[];
}

/** How high a flood that nobody marked may be, m above the ordinary water of a ditch, and above an outlet without one. Our choice. */
const FLOODS = [
  { chance: 0.3, above: FLOOD_ABOVE / 2, atOutlet: 0 },
  { chance: 0.4, above: FLOOD_ABOVE, atOutlet: FLOOD_ABOVE },
  { chance: 0.3, above: 2 * FLOOD_ABOVE, atOutlet: 2 * FLOOD_ABOVE },
];
/** Chance that a drain may end at the low way out of the ring, with no water standing over it. Our choice. */
const MAY_END_THERE = 0.5;
const SEAM_CHANCE = 0.1;
/** Chance that a seam stands no higher in the wet half-year than it was seen, or than its top. Our choice. */
const SEAM_AT_REST = 0.5;
/** Spread of the pressure in a seam that nobody has seen, m. Our choice. */
const SEAM_SPREAD = 0.2;

/** Chance that the pond lies on the other side of its rim points than what is drawn near it. Our choice. */
const OTHER_SIDE = 0.5;

/** Worth of looking up what the survey leaves open, and the chance that it changes the answer. */
export function openFacts(basis: Basis, options: Option[], loss: Loss): NextMeasurement[] {
  const base = decide(basis, options);
  if (!base.verdict) return [];
  return factsOf(basis).flatMap(({ what, where, month, deeper, cases }) => {
    const decided = cases.map(({ site, chance }) => {
      const moved = basisOf(site, basis);
      const { option, measures, depth, verdict } = decide(
        moved,
        optionsOf(moved),
        undefined,
        base.change ?? null,
      );
      const choice = verdict && option !== 'move' && option !== 'measure-first' ? [{ measures, depth }] : [];
      const turns = option !== base.option || (deeper === true && depth > base.depth + LEVEL_RESOLUTION);
      return { basis: moved, chance, turns, choice };
    });
    const chance_to_change = decided.reduce((sum, { turns, chance }) => sum + (turns ? chance : 0), 0);
    if (chance_to_change === 0) return [];
    const choices = [base, ...decided.flatMap(({ choice }) => choice)];
    const losses = choices.map((choice) => decided.map((turn) => lossIn(turn.basis, choice, loss)));
    const mean = (values: number[]) => values.reduce((sum, v, i) => sum + v * decided[i].chance, 0);
    const blind = Math.min(...losses.map(mean));
    const seeing = mean(decided.map((_, i) => Math.min(...losses.map((row) => row[i]))));
    return [
      { what, where, month, waits: false, chance_to_change, worth_drains: Math.max(blind - seeing, 0) },
    ];
  });
}

function factsOf(basis: Basis): OpenFact[] {
  const { site, highs } = basis;
  const { places, pond, ground } = site;
  const facts: OpenFact[] = [];
  const month = firstOfSeason(site.wetMonths);
  const unmarked = outletsOf(basis).filter(({ flood }) => flood === undefined);
  if (unmarked.length > 0)
    facts.push({
      what: 'ditch-in-flood',
      where: unmarked[0].name,
      month,
      cases: FLOODS.map(({ chance, above, atOutlet }) => ({
        chance,
        site: {
          ...site,
          places: {
            ...places,
            outlets: places.outlets.map((o) =>
              o.flood !== undefined
                ? o
                : { ...o, flood: o.ditch === undefined ? o.level + atOutlet : o.ditch + above },
            ),
          },
        },
      })),
    });
  const { lowWayOut } = places;
  if (lowWayOut && places.outlets.length === 0 && site.survey.site.discharge_allowed === 'yes')
    facts.push({
      what: 'outlet-at-spill',
      where: lowWayOut.name,
      month,
      cases: [
        { chance: 1 - MAY_END_THERE, site },
        {
          chance: MAY_END_THERE,
          site: {
            ...site,
            places: { ...places, outlets: [{ ...lowWayOut, flood: lowWayOut.flood ?? lowWayOut.level }] },
          },
        },
      ],
    });
  const log = deepestLogged(site);
  const bottom = log && log.bottom - log.ground;
  if (
    !pond.existing &&
    ground.seams.length === 0 &&
    log &&
    bottom! > 0 &&
    bottom! < pond.depth + BED_THICKNESS + KNOWN_BELOW
  ) {
    const pressure = highs.yearly({ way: 'asIs' }, 0.5);
    const seam: Seam = {
      pit: log.pit,
      top: bottom!,
      heads: new Array(12).fill(-pressure),
      headDepth: -pressure,
      headSpread: SEAM_SPREAD,
      assumed: false,
      coverWeight: log.weight,
      from: [],
    };
    facts.push({
      what: 'deeper-hole',
      where: log.pit,
      month,
      cases: [
        { chance: 1 - SEAM_CHANCE, site },
        { chance: SEAM_CHANCE, site: { ...site, ground: { ...ground, seams: [seam] } } },
      ],
    });
  }
  if (!pond.existing && places.shortOfRim) {
    const asDrawn = <P extends { distance: number; drawn?: number }>(points: P[]) =>
      points.map((p) => ({ ...p, distance: p.drawn ?? p.distance }));
    facts.push({
      what: 'rim-corners',
      where: null,
      month: null,
      deeper: true,
      cases: [
        { chance: 1 - OTHER_SIDE, site },
        {
          chance: OTHER_SIDE,
          site: {
            ...site,
            places: { ...places, footings: asDrawn(places.footings), houses: asDrawn(places.houses) },
          },
        },
      ],
    });
  }
  const open = ground.seams.filter((seam) => seam.assumed);
  if (open.length > 0) {
    const atRest = (seam: Seam): Seam =>
      seam.assumed
        ? {
            ...seam,
            heads: new Array(12).fill(seam.known ?? seam.top),
            headDepth: seam.known ?? seam.top,
            assumed: false,
          }
        : seam;
    facts.push({
      what: 'seam-pipe',
      where: open[0].pit,
      month,
      cases: [
        { chance: 1 - SEAM_AT_REST, site },
        {
          chance: SEAM_AT_REST,
          site: { ...site, ground: { ...ground, seams: ground.seams.map(atRest) } },
        },
      ],
    });
  }
  return facts;
}

/** Expected loss of a choice in one case, in drains: its cost, its failures, and a dig that fails. */
function lossIn(
  basis: Basis,
  { measures, depth }: { measures: Measures; depth: number },
  loss: Loss,
): number {
  const { site } = basis;
  const met = floodedAs(site, measures);
  const inUse = lossesOf(basis, met, depth, loss);
  const dig = site.pond.existing ? 0 : worstDig(perDig(site, basis.dig, met, depth)).chance;
  return inUse.reduce((sum, v) => sum + v, 0) / inUse.length + loss.failure * dig;
}

/** Measures whose ditch floods as high as it does at a site. */
function floodedAs({ places }: Site, m: Measures): Measures {
  const { drain } = m;
  if (drain?.kind !== 'outlet') return m;
  const outlet = places.outlets.find(({ name }) => name === drain.outlet.name) ?? drain.outlet;
  return { ...m, drain: { ...drain, outlet, flood: floodOf(outlet) } };
}
