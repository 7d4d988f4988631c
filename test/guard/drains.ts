/** What a drain has to carry, where it ends, and what the receiver does. */
import type { Claim } from './claims.js';
import { type Danger, type Kind, LEVEL, m } from './danger.js';
import { conductivity, daysToLift, floorArea, inflow } from './flow.js';
import { watersIn } from './lift.js';
import type { GuardSite } from './site.js';
import type { Told } from './told.js';
import { wetness, yearlyHighs } from './waters.js';

/** The strongest pump anybody keeps in a garden sump for years: 10 m³/h. Common practice. */
const GARDEN_PUMP = 10 / 3600;
/** A pipe laid as flat as any is laid: 1 in 400. Common practice. */
const FLATTEST = 1 / 400;
/** Links told as heights, which are judged as levels below. */
const HEIGHTS = ['fall', 'outlet in flood'];

export function drainDangers(site: GuardSite, told: Told, claim: Claim): Danger[] {
  if (!claim.drain) return [];
  const { verdict } = claim;
  const undrained = Math.max(...yearlyHighs(site, told).map(({ p50 }) => p50));
  const area = floorArea(site, claim.raise - claim.floor);
  const q = inflow(conductivity(told, site.pond.depth), area, undrained - claim.floor);
  const found: [Kind, string][] = [];
  if (claim.recommended && told.drain) {
    for (const [link, ratio] of Object.entries(told.drain.reserve))
      if (ratio < 1 && !HEIGHTS.includes(link))
        found.push(['reserve', `${link} carries ${ratio.toFixed(2)} of what comes`]);
    if (told.drain.pipe_capacity_m3_s < q)
      found.push([
        'reserve',
        `pipe ${told.drain.pipe_capacity_m3_s} m³/s, inflow at least ${q.toFixed(5)} m³/s`,
      ]);
  }
  if (claim.drain === 'sump' && q > GARDEN_PUMP)
    found.push(['reserve', `${(q * 86_400).toFixed(0)} m³/d at least to be pumped`]);
  if (claim.drain === 'outlet') found.push(...outletDangers(site, told, claim, undrained));
  return found.map(([kind, why]) => ({ verdict, kind, why }));
}

function outletDangers(site: GuardSite, told: Told, claim: Claim, undrained: number): [Kind, string][] {
  const outlet = outletFor(site, told, claim);
  if (!outlet || Number.isNaN(outlet.distance)) return [];
  const floor = claim.floor + claim.bareSlab;
  const full = site.pond.full + claim.raise + claim.ballast;
  const level = outlet.level + outlet.distance * FLATTEST;
  const wet = wetness(site);
  const k = conductivity(told, site.pond.depth);
  const area = floorArea(site, claim.raise - claim.floor);
  const found: [Kind, string][] = [];
  for (const month of claim.days > 0 ? claim.months : []) {
    const water = Math.max(...watersIn(site, told, claim, month).map(({ p90 }) => p90));
    const led = Math.min(water, level);
    // What the drain leaves above the floor has to bring its water before half the days are over.
    if (led > floor + 2 * LEVEL && daysToLift(k, area, led - floor) < claim.days / 2)
      found.push([
        'outlet',
        `${outlet.name} drains to ${m(level)}, floor ${m(floor)}, water in month ${month} ${m(water)}`,
      ]);
    // Nobody empties a pond in the season in which its ditch floods and calls it safe, unless the flood is rare.
    const season = wet && (wet[month - 1] as number) > 0.95 && Math.min(...wet) < 0.1;
    if (claim.recommended && season && Math.min(water, outlet.flood ?? -9) > floor + 2 * LEVEL)
      found.push([
        'flood',
        `emptied in month ${month}, in the season of floods to ${m(outlet.flood as number)}; floor ${m(floor)}`,
      ]);
  }
  if (outlet.flood !== undefined && Math.min(undrained, outlet.flood) > full + LEVEL)
    found.push(['flood', `full ${m(full)}, the flood ${m(outlet.flood)}, undrained ${m(undrained)}`]);
  return found.slice(0, 1);
}

/** The outlet a claim drains to: as told for the recommendation, else the one that drains lowest. */
function outletFor({ outlets }: GuardSite, told: Told, claim: Claim) {
  const named = claim.recommended && outlets.find(({ name }) => told.drain?.outlet.includes(name));
  const fall = (o: (typeof outlets)[number]) => o.level + o.distance * FLATTEST;
  return named || [...outlets].sort((a, b) => fall(a) - fall(b))[0];
}
