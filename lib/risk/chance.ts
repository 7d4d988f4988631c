import { BED_LOSS } from '../drain/index.js';
import { method, SECONDS_PER_DAY, type Use, unrecorded } from '../formula/index.js';
import { relievedHead, tubVolume, unflappedHead } from '../groundwater/index.js';
import { discInflow } from '../seepage/index.js';
import type { Site } from '../site/index.js';
import { fillTime, LIFT_VOLUME_DEPTH, planArea } from '../uplift/index.js';
import { type Draws, FLAP_STUCK } from './draws.js';
import { drainLevel, floorLevel, lowestUsualLevel, type Measures } from './measures.js';
import type { Governs } from './result.js';

export const chanceMethod = method({
  title: 'Chance of failing in a year',
  what:
    'Mean over samples of the share of failing weather years. One sample is one draw of everything unknown but ' +
    'fixed, run through all weather years; a year fails when on any day the head outside beats what holds the liner.',
  assumptions: [
    'states: full and drawn down all year; emptied for the days planned from the first of each month planned, where ' +
      'the water also needs time to arrive; power out for a sump',
    "the ditch's flood is taken to come every year: for the yearly high on the worst day, for an emptying in one " +
      'wet month drawn at random',
    'over a life: mean over samples of 1 − (1 − share)^years, because unlucky ground is unlucky every year',
  ],
  source: 'Monte Carlo; checked against closed forms',
});

/** A perturbation of the site, for tipping points. */
export interface Shift {
  /** water outside everywhere, m */
  water: number;
  /** pond level, m */
  pond: number;
  /** factor on the conductivity */
  conductivity: number;
}
export const NO_SHIFT: Shift = { water: 0, pond: 0, conductivity: 1 };

/** Chance of an option at a depth. */
export interface Chance {
  perYear: number;
  /** of the mean over samples */
  standardError: number;
  /** share of failing years, one a sample */
  shares: Float64Array;
  /** chance of each mode by itself, a year */
  modes: Partial<Record<Governs, number>>;
}

/**
 * Head outside as measures leave it, at the worst place, for measures and a floor level.
 * @returns a function of the levels in the clay at the low side, behind the uphill wall and in the ring, of whether
 * the drain is blocked and its flap stuck, and of the receiving water; all m above the datum
 */
export function headWith(m: Measures, floor: number, use: Use = unrecorded) {
  const { cutoff, drain } = m;
  const level = drain ? drainLevel(drain, floor) : Number.NaN;
  const sump = drain?.kind === 'sump';
  return (
    low: number,
    high: number,
    tub: number,
    blocked: boolean,
    flapStuck: boolean,
    receiver: number,
  ): number => {
    const uphill = cutoff === undefined ? high : Math.min(high, Math.max(cutoff, low));
    const undrained = Math.max(uphill, low, tub);
    if (!drain || blocked) return undrained;
    if (sump) return use(relievedHead, undrained, level, level, BED_LOSS);
    return flapStuck
      ? use(unflappedHead, undrained, level, receiver, BED_LOSS)
      : use(relievedHead, undrained, level, receiver, BED_LOSS);
  };
}

/** Seconds until an emptied liner lifts, for a head above the floor and what stands in the ring. */
export function secondsToLift(
  site: Site,
  depth: number,
  floor: number,
  head: number,
  tub: number,
  k: number,
  use: Use = unrecorded,
): number {
  if (head <= floor) return Number.POSITIVE_INFINITY;
  const floorArea = Math.max(planArea(site.pond.shape, depth), 0.05);
  const volume = LIFT_VOLUME_DEPTH * floorArea;
  const standing = site.tub && tub > floor ? tubVolume(site.tub, tub) - tubVolume(site.tub, floor) : 0;
  if (standing >= volume) return 0;
  const gathering = (floorArea + planArea(site.pond.shape, Math.max(depth - (head - floor), 0))) / 2;
  const inflow = use(discInflow, k, Math.sqrt(gathering / Math.PI), head - floor);
  return use(fillTime, (volume - standing) / floorArea, floorArea, inflow);
}

/**
 * Chance a year that measures fail at a depth.
 * @param depth - on the axis of the wish, m
 * @param subset - samples to count over; absent: all
 */
export function chanceOf(
  site: Site,
  draws: Draws,
  m: Measures,
  depth: number,
  shift: Shift = NO_SHIFT,
  subset?: ArrayLike<number>,
): Chance {
  const { water, pond } = site;
  const { years } = draws;
  const count = subset?.length ?? draws.samples;
  const shares = new Float64Array(count);
  const floor = floorLevel(depth, m);
  const full = pond.fullLevel + m.raise + shift.pond + m.ballast;
  const drawn = lowestUsualLevel(site, m) + shift.pond + m.ballast;
  const emptiedHold = floor + pond.floorBallast + m.ballast;
  const days = pond.daysEmpty * SECONDS_PER_DAY;
  const months =
    pond.emptiedIn === 'any' ? [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11] : pond.emptiedIn.map((x) => x - 1);
  const tubYear = draws.tub?.[m.way];
  const tubWindow = water.tub?.[m.way].window;
  const sump = m.drain?.kind === 'sump';
  const flood = m.drain?.kind === 'outlet' ? m.drain.flood : Number.NEGATIVE_INFINITY;
  const calm = m.drain?.kind === 'outlet' ? (m.drain.outlet.ditch ?? Number.NEGATIVE_INFINITY) : flood;
  const nothing = Number.NEGATIVE_INFINITY;
  const headOf = headWith(m, floor);
  let fullFails = 0;
  let drawnFails = 0;
  let powerFails = 0;
  const emptiedFails = new Float64Array(12);
  let emptiedYears = 0;
  const failsWith = new Float64Array(12);
  const perMonth = pond.emptiedIn === 'any' ? new Float64Array(12 * count) : undefined;
  for (let j = 0; j < count; j++) {
    const s = subset ? subset[j] : j;
    const blockedChance = sump ? draws.pumpOut[s] : draws.blocked[s];
    const k = water.conductivity[s] * shift.conductivity;
    let failing = 0;
    for (let y = 0; y < years; y++) {
      const i = s * years + y;
      const blocked = m.drain !== undefined && draws.luckDrain[i] < blockedChance;
      const stuck = draws.luckFlap[i] < FLAP_STUCK;
      const head = headOf(
        draws.clayLow[i] + shift.water,
        draws.clayHigh[i] + shift.water,
        tubYear ? tubYear[i] : nothing,
        blocked,
        stuck,
        flood,
      );
      const failsDrawn = head > drawn;
      if (head > full) fullFails++;
      if (failsDrawn) {
        drawnFails++;
        if (sump && blocked) powerFails++;
      }
      let failsEmptied = false;
      for (const month of months) {
        const w = i * 12 + month;
        const tub = tubWindow ? tubWindow[w] : nothing;
        const receiver = draws.floodMonth[i] === month ? flood : calm;
        const h = headOf(
          water.clayLow.window[w] + shift.water,
          water.clayHigh.window[w] + shift.water,
          tub,
          blocked,
          stuck,
          receiver,
        );
        // A working drain keeps the ring down too.
        const lifts =
          h > emptiedHold && secondsToLift(site, depth, emptiedHold, h, Math.min(tub, h), k) < days;
        if (!lifts) {
          if (perMonth && failsDrawn) perMonth[j * 12 + month]++;
          continue;
        }
        emptiedFails[month]++;
        failsEmptied = true;
        if (perMonth) perMonth[j * 12 + month]++;
      }
      if (failsEmptied) emptiedYears++;
      if (failsDrawn || (failsEmptied && !perMonth)) failing++;
    }
    shares[j] = failing / years;
  }
  if (perMonth) {
    // No month of emptying was named: each is tried by itself and the worst one counts.
    for (let m12 = 0; m12 < 12; m12++)
      for (let j = 0; j < count; j++) failsWith[m12] += perMonth[j * 12 + m12];
    const worst = failsWith.indexOf(Math.max(...failsWith));
    for (let j = 0; j < count; j++) shares[j] = perMonth[j * 12 + worst] / years;
  }
  const mean = shares.reduce((a, b) => a + b, 0) / count;
  const variance = shares.reduce((a, v) => a + (v - mean) ** 2, 0) / Math.max(count - 1, 1);
  const n = count * years;
  const emptied = (perMonth ? Math.max(...emptiedFails) : emptiedYears) / n;
  return {
    perYear: mean,
    standardError: Math.sqrt(variance / count),
    shares,
    modes: {
      'lift-full': fullFails / n,
      'lift-drawn-down': drawnFails / n,
      'lift-emptied': emptied,
      ...(sump ? { 'lift-power-out': powerFails / n } : {}),
    },
  };
}

/** Chance over a life: unlucky ground is unlucky every year. */
export function lifeChance(shares: Float64Array, years: number): number {
  return shares.reduce((a, share) => a + 1 - (1 - share) ** years, 0) / shares.length;
}
