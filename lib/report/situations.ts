import { decidingDay, decidingWater } from '../basis/index.js';
import { MONTHS } from '../climate/index.js';
import type { ChanceRange, MonthlyLimits, Situation } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import {
  emptiedHold,
  fullLevel,
  isDrained,
  type Measures,
  reliefBounds,
  withoutDrain,
} from '../heads/index.js';
import {
  monthlyDesign,
  monthlyLimits,
  seamLevel,
  sharesBySample,
  type Verdict,
  verdictAt,
} from '../reliability/index.js';
import { spareHead } from '../uplift/index.js';
import { rangeFrom } from './chanceRange.js';
import { digSituations } from './digSituations.js';
import { emptiedCounted } from './emptiedCounted.js';
import type { JudgedMeasures } from './judgedMeasures.js';
import { restingOn } from './restingOn.js';
import { seamSituations } from './seamSituations.js';

/** What is recommended, and the pond with nothing done. */
export const ADVISED_AND_NOTHING: readonly Situation['of'][] = ['no-drain', 'recommended'];

/**
 * Every option that can be had at the wish, and what is recommended, in every design situation.
 * @param a - from {@link assess} or {@link judge}
 * @param only - of these options only
 * @returns rows as in `result.json`
 */
export function situationsOf(
  a: Omit<Judged, 'curves' | 'advised'>,
  only?: readonly Situation['of'][],
): Situation[] {
  return judgedMeasures(a, (of) => only?.includes(of) ?? true).flatMap((judged) => [
    ...keptSituations(judged),
    ...emptiedSituations(judged, 'emptied', judged.measures, judged.limits),
    ...drainSituations(judged),
    ...digSituations(judged),
    ...seamSituations(judged),
  ]);
}

function judgedMeasures(
  a: Parameters<typeof situationsOf>[0],
  asked: (of: Situation['of']) => boolean,
): JudgedMeasures[] {
  const { basis, decision, site } = a;
  const { pond } = site;
  const assumed = a.assumptions.map(({ item }) => item);
  const wished = pond.emptiedIn === 'any' ? [] : pond.emptiedIn;
  const options = a.options.flatMap(({ name, measures }): JudgedMeasures[] => {
    if (!measures || !asked(name)) return [];
    const verdict = verdictAt(basis, measures, pond.depth);
    if (verdict.chance.lacks) return [];
    const limits = monthlyLimits(basis, measures, pond.depth);
    const planned = verdict.safe ? wished : [];
    return [{ of: name, basis, measures, depth: pond.depth, verdict, limits, planned, assumed }];
  });
  const { measures, verdict, change, changed = basis } = decision;
  if (!verdict || decision.depth <= 0 || ADVISED_ELSEWHERE.has(decision.option) || !asked('recommended'))
    return options;
  const planned = verdict.safe && decision.option !== 'measure-first' ? (change?.emptied_in ?? wished) : [];
  return [
    ...options,
    {
      of: 'recommended',
      basis: changed,
      measures,
      depth: decision.depth,
      verdict,
      limits: a.limits,
      planned,
      assumed,
    },
  ];
}

/** Advice that is of no pond to be dug at this place as it is. */
const ADVISED_ELSEWHERE: ReadonlySet<string> = new Set(['move', 'do-not-dig', 'measure-first']);

/** The pond full to the brim, and as it is kept: of the year, and as it is kept by the month. */
function keptSituations(judged: JudgedMeasures): Situation[] {
  const { basis, measures: m, depth, verdict } = judged;
  const { acceptedRisk } = basis.site.pond;
  const p = 1 - acceptedRisk;
  const yearly = {
    full: verdict.chance.sharesIn('lift-full'),
    'drawn-down': verdict.chance.sharesIn('lift-drawn-down'),
  };
  const chances = {
    full: rangeOf(yearly.full!, verdict),
    'drawn-down': rangeOf(yearly['drawn-down']!, verdict),
  };
  const row = (situation: 'full' | 'drawn-down', month: number | null): Situation => {
    const day = decidingDay(basis, m, depth, p, month ?? undefined);
    const full = situation === 'full';
    const level = full ? fullLevel(basis.site, m) : day.pond;
    const margin = spareOf(level + m.ballast, day.head);
    const chance = month === null ? chances[situation] : null;
    const heaves = (month === null ? MONTHS : [month]).some(
      (each) => (seamLevel(basis, m, depth, each, 0) ?? Number.NEGATIVE_INFINITY) > level + LEVEL_RESOLUTION,
    );
    // A year that holds by its volume holds in each of its months.
    const allowed =
      chances[situation].middle <= acceptedRisk || (month !== null && margin >= -LEVEL_RESOLUTION && !heaves);
    const breaks = !allowed && heaves && margin >= -LEVEL_RESOLUTION;
    return {
      of: judged.of,
      situation,
      month,
      level_m: level,
      water: {
        which: decidingWater(basis, m, depth, p, month ?? undefined),
        statistic: { highest_of: month === null ? 'year' : 'month', exceeded: acceptedRisk },
        level_m: day.head,
      },
      margin_m: margin,
      lowest_level_m: null,
      hours: null,
      chance,
      allowed,
      why: allowed ? 'holds' : breaks ? 'floor-heaves' : 'lifts',
      governs: allowed ? 'none' : breaks ? 'floor-heave' : full ? 'lift-full' : 'lift-drawn-down',
      assumptions: restingOn(situation, judged.assumed),
    };
  };
  return [row('full', null), row('drawn-down', null), ...MONTHS.map((month) => row('drawn-down', month))];
}

/** The pond emptied, begun on any day of a month. */
function emptiedSituations(
  judged: JudgedMeasures,
  situation: 'emptied' | 'drain-blocked',
  m: Measures,
  limits: MonthlyLimits,
): Situation[] {
  const { basis, depth, verdict } = judged;
  const { site } = basis;
  const { acceptedRisk } = site.pond;
  const hold = emptiedHold(site, m, depth);
  return MONTHS.map((month): Situation => {
    const lowest = limits.lowestSafeLevel[month - 1]!;
    const { seconds, governs } = limits.empty[month - 1];
    const planned = situation === 'emptied' && judged.planned.includes(month);
    const briefly = lowest !== null && planned;
    // Where no month was named each was counted by itself.
    const alone = site.pond.emptiedIn === 'any' && situation === 'emptied' && lowest === null;
    const standing = emptiedCounted(basis, m, depth, month, situation === 'emptied');
    const water = monthlyDesign(basis, m, depth, month).emptied;
    const barred = limits.barred[month - 1];
    const lifts = water > hold + LEVEL_RESOLUTION;
    const failing = barred ?? (lifts ? 'lift-emptied' : lowest !== null ? 'side-slump' : 'none');
    return {
      of: judged.of,
      situation,
      month,
      level_m: hold,
      water: {
        which: decidingWater(basis, m, depth, 1 - acceptedRisk, month),
        statistic: { highest_of: 'emptying', exceeded: acceptedRisk },
        level_m: water,
      },
      margin_m: spareOf(hold, water),
      lowest_level_m: lowest,
      hours: governs === 'none' ? null : seconds / 3600,
      chance: planned
        ? rangeOf(verdict.chance.shares, verdict)
        : alone
          ? rangeOf(verdict.chance.sharesOfPlan(month - 1), verdict)
          : rangeFrom(sharesBySample(standing.counted), standing.from),
      allowed: lowest === null || briefly,
      why:
        lowest === null
          ? 'holds'
          : briefly
            ? 'briefly'
            : failing === 'floor-heave'
              ? 'floor-heaves'
              : failing === 'side-slump'
                ? 'sides-slip'
                : 'lifts',
      governs: lowest === null || briefly ? 'none' : failing,
      assumptions: restingOn(situation, judged.assumed),
    };
  });
}

/** What is left when something fails that was built. */
function drainSituations(judged: JudgedMeasures): Situation[] {
  const { basis, measures: m, depth } = judged;
  if (!isDrained(m)) return [];
  const { acceptedRisk } = basis.site.pond;
  const without = withoutDrain(m);
  const blocked: JudgedMeasures = {
    ...judged,
    measures: without,
    verdict: verdictAt(basis, without, depth),
    limits: monthlyLimits(basis, without, depth),
    planned: [],
  };
  const kept = keptSituations(blocked).find(
    ({ situation, month }) => situation === 'drawn-down' && month === null,
  )!;
  const rows: Situation[] = [
    { ...kept, situation: 'drain-blocked', assumptions: restingOn('drain-blocked', judged.assumed) },
    ...emptiedSituations(blocked, 'drain-blocked', without, blocked.limits),
  ];
  const { drain } = m;
  if (!drain) return rows;
  if (drain.kind === 'sump') {
    const chance = rangeOf(judged.verdict.chance.sharesIn('lift-power-out')!, judged.verdict, 'upkeep');
    const allowed = chance.middle <= acceptedRisk;
    return [
      ...rows,
      {
        ...kept,
        situation: 'power-out',
        chance,
        allowed,
        why: allowed ? 'holds' : 'lifts',
        governs: allowed ? 'none' : 'lift-power-out',
        assumptions: restingOn('power-out', judged.assumed),
      },
    ];
  }
  const hold = emptiedHold(basis.site, m, depth);
  const head = reliefBounds(m, hold, 'works', drain.flood).most;
  const margin = spareOf(hold, head);
  const allowed = margin >= -LEVEL_RESOLUTION;
  return [
    ...rows,
    {
      of: judged.of,
      situation: 'outlet-flood',
      month: null,
      level_m: hold,
      water: {
        which: 'receiver',
        statistic: { highest_of: 'flood', exceeded: Math.min(1, 1 / basis.site.floodEvery) },
        level_m: head,
      },
      margin_m: margin,
      lowest_level_m: null,
      hours: null,
      chance: null,
      allowed,
      why: allowed ? 'holds' : 'lifts',
      governs: allowed ? 'none' : 'outlet-flood',
      assumptions: restingOn('outlet-flood', judged.assumed),
    },
  ];
}

/** What a level has over a water, m; below a micrometre there is none. */
function spareOf(level: number, water: number): number {
  return spareHead.compute(level, water);
}

/** A verdict's share of failing years by sample as a range. */
function rangeOf(shares: Float64Array, { chance }: Verdict, from?: ChanceRange['from']): ChanceRange {
  return rangeFrom(
    shares,
    from ?? (chance.upkeep > 0.5 * chance.perYear && chance.perYear > 0 ? 'upkeep' : 'water'),
  );
}
