/** What a result calls safe, taken apart into claims that can be judged one by one. */
import type { GuardSite } from './site.js';
import type { Told, ToldOption } from './told.js';

export interface Claim {
  verdict: string;
  /** liner's lowest point, m above the datum */
  floor: number;
  /** bottom of the dig, m below the datum */
  dug: number;
  raise: number;
  /** head that a slab may hold, m: under water, and with no water over it */
  ballast: number;
  bareSlab: number;
  drain?: 'outlet' | 'sump';
  /** surface water turned away: the ring's water as surveyed is not what stands there */
  keptOut: boolean;
  /** months in which an emptying may begin, and for how many days */
  months: number[];
  days: number;
  recommended: boolean;
}

const BUILT = [
  'no-drain',
  'surface-water-only',
  'cutoff-drain',
  'drain-to-outlet',
  'drain-to-sump',
  'raise-pond',
  'ballast',
];
/** Advice that calls a pond of this depth safe here. */
const CALLS_SAFE = [...BUILT, 'shallower', 'vent'];
/** Head held by the thickest slab the library offers, 0.3 m of concrete: 0.3 × (24 − 9.81) ÷ 9.81 under water, 0.3 × 24 ÷ 9.81 without. */
const THICKEST_SLAB = 0.3 * ((24 - 9.81) / 9.81);
const THICKEST_BARE = 0.3 * (24 / 9.81);
/** A drain's bed lies under the liner, m: the least that is built. */
const BED = 0.1;

const ALL_YEAR = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];

/** The recommended pond, if one is called safe. */
export function recommendedClaim(site: GuardSite, told: Told): Claim | undefined {
  const { option, also, depth_m, raise_m, rules, change } = told.recommendation;
  if (!CALLS_SAFE.includes(option) || depth_m <= 0) return undefined;
  const names = [option, ...also];
  const only = rules.filter(({ code }) => code === 'empty-only-in');
  const never = rules
    .filter(({ code }) => code === 'do-not-lower')
    .flatMap(({ months }) => months ?? ALL_YEAR);
  const months =
    only.length > 0
      ? only.flatMap(({ months }) => months ?? ALL_YEAR)
      : ALL_YEAR.filter((month) => !never.includes(month));
  return claimOf(site, names, {
    verdict: 'recommendation',
    depth: depth_m,
    raise: raise_m,
    months,
    days: change?.days_empty ?? site.pond.days,
    recommended: true,
  });
}

/** The pond as wished but used otherwise, told beside what is built. */
export function insteadClaim(site: GuardSite, { instead }: Told): Claim | undefined {
  if (!instead) return undefined;
  return claimOf(site, [instead.option], {
    verdict: 'used otherwise',
    depth: site.pond.depth,
    raise: instead.raise_m,
    months: instead.change.emptied_in ?? site.pond.months,
    days: instead.change.days_empty ?? site.pond.days,
    recommended: false,
  });
}

/** The depth that an option calls safe. */
export function depthClaim(site: GuardSite, option: ToldOption): Claim | undefined {
  if (!option.possible || option.safe_depth_m === 0) return undefined;
  return claimOf(site, [option.option], {
    verdict: `safe depth of ${option.option}`,
    depth: option.safe_depth_m ?? option.depth_searched_m,
    // The raise of an option is not told: the most that is allowed is the most that can help.
    raise: option.option === 'raise-pond' ? site.pond.highestRaise : 0,
    months: site.pond.months,
    days: site.pond.days,
    recommended: false,
  });
}

/** A chance a year that an option is told to keep within what is accepted, at the depth wished. */
export function wishClaim(site: GuardSite, option: ToldOption): Claim | undefined {
  if (!option.possible || option.risk_at_wish!.per_year > site.pond.accepted) return undefined;
  return claimOf(site, [option.option], {
    verdict: `chance of ${option.option}`,
    depth: site.pond.depth,
    raise: option.option === 'raise-pond' ? site.pond.highestRaise : 0,
    months: site.pond.months,
    days: site.pond.days,
    recommended: false,
  });
}

function claimOf(
  { pond }: GuardSite,
  names: string[],
  {
    verdict,
    depth,
    raise,
    months,
    days,
    recommended,
  }: Pick<Claim, 'verdict' | 'raise' | 'months' | 'days' | 'recommended'> & { depth: number },
): Claim {
  const drain = names.includes('drain-to-outlet')
    ? 'outlet'
    : names.includes('drain-to-sump')
      ? 'sump'
      : undefined;
  return {
    verdict,
    floor: raise - depth,
    dug: Math.max(depth - raise + (drain ? BED : pond.bedding), 0),
    raise,
    ballast: names.includes('ballast') ? THICKEST_SLAB : 0,
    bareSlab: names.includes('ballast') ? THICKEST_BARE : 0,
    ...(drain && { drain }),
    keptOut: names.includes('surface-water-only') || drain !== undefined,
    months,
    days,
    recommended,
  };
}
