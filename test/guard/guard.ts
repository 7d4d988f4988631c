/**
 * The guard: a second mind that asks of everything a result calls safe whether the plain equations let it be so.
 * It takes the survey's rows and the told result, nothing of the decision, and finds a lower bound of danger: middle
 * permeability, heavy clay, strong sides, no drawdown. What it calls dangerous is so by a wide margin; what it passes
 * may still be dangerous.
 */
import { besideDanger } from './beside.js';
import { type Claim, depthClaim, insteadClaim, recommendedClaim, wishClaim } from './claims.js';
import type { Check, Danger } from './danger.js';
import { drainDangers } from './drains.js';
import { emptiedDanger, keptDanger } from './lift.js';
import { hoursDangers, keptLevelDangers, lowestLevelDangers, waterDangers } from './months.js';
import { seamDanger } from './seams.js';
import { sideDangers } from './sides.js';
import { guardSite } from './site.js';
import type { Told } from './told.js';
import { hasRawWater, wetness } from './waters.js';

export interface Ruling {
  /** verdicts that were judged */
  judged: number;
  /** verdicts that nothing could be said of, and why */
  unjudged: { verdict: string; why: string }[];
  dangers: Danger[];
}

const CHECKS: Check[] = [emptiedDanger, keptDanger, seamDanger, sideDangers, besideDanger, drainDangers];

/** What a chance a year is of. */
const IN_USE: Check[] = [emptiedDanger, keptDanger];

/**
 * Judges all that a result calls safe: its recommendation, the safe depth of every option and its chance
 * as wished, levels and hours and water by month.
 */
export function guard(files: Record<string, string | Uint8Array>, told: Told): Ruling {
  const site = guardSite(files);
  const recommended = recommendedClaim(site, told);
  const claims = [
    recommended,
    insteadClaim(site, told),
    ...told.options.map((option) => depthClaim(site, option)),
  ].filter((claim): claim is Claim => claim !== undefined);
  const unjudged: Ruling['unjudged'] = [];
  if (site.layers.length === 0) unjudged.push({ verdict: 'sides and seams', why: 'no pit log' });
  if (!wetness(site) && !hasRawWater(site))
    unjudged.push({ verdict: 'water by month', why: 'neither weather nor water by month is given' });
  if (recommended?.drain === 'outlet' && site.outlets.every(({ distance }) => Number.isNaN(distance)))
    unjudged.push({ verdict: 'outlet', why: 'how far it lies is not said' });
  const wishes = told.options
    .map((option) => wishClaim(site, option))
    .filter((claim): claim is Claim => claim !== undefined);
  const months = [
    lowestLevelDangers(site, told),
    hoursDangers(site, told),
    keptLevelDangers(site, told, recommended),
    waterDangers(site, told),
  ];
  return {
    judged: claims.length + wishes.length + months.reduce((sum, { judged }) => sum + judged, 0),
    unjudged,
    dangers: [
      ...claims.flatMap((claim) => CHECKS.flatMap((check) => check(site, told, claim))),
      ...wishes.flatMap((claim) => IN_USE.flatMap((check) => check(site, told, claim))),
      ...months.flatMap(({ dangers }) => dangers),
    ],
  };
}
