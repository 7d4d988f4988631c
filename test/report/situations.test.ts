/** Design situations: against the rest of the answer, against levels counted again, and in the order that physics gives. */
import { describe, expect, test } from 'vitest';

import { monthsToEmpty } from '../../lib/contract/index.js';
import { assess, parseSurvey, type Result, reportOf, type Situation, siteModel } from '../../lib/index.js';

import { answerLines } from '../../lib/text/answerLines.js';
import { generatedGarden } from '../guard/generate.js';
import { sweep } from '../sweep.js';

// 62: no depth worth digging, though a slab would keep the liner down.
const SEEDS = [62, ...Array.from({ length: 14 }, (_, i) => 301 + i)];
const NEAR = 2e-5;

function answered(seed: number) {
  const survey = parseSurvey(generatedGarden(seed).files);
  const assessment = assess(siteModel(survey, { seed: 1, samples: 64 }));
  const report = reportOf(assessment);
  return { assessment, report, result: report.result };
}

const pick = (result: Result, of: Situation['of'], situation: Situation['situation']) =>
  result.situations.filter((each) => each.of === of && each.situation === situation);

describe.each(sweep(SEEDS, 2))('garden %i', (seed) => {
  const { assessment, report, result } = answered(seed);
  const { pond, water } = assessment.site;
  const possible = result.options.filter((option) => option.possible);

  test('every option that can be had stands in it once a situation and month', () => {
    const keys = result.situations.map(({ of, situation, month }) => `${of} ${situation} ${month}`);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { option } of possible) {
      expect(pick(result, option, 'full')).toHaveLength(1);
      expect(pick(result, option, 'emptied').map(({ month }) => month)).toEqual(
        Array.from({ length: 12 }, (_, i) => i + 1),
      );
    }
  });

  test('levels, hours and verdicts are those of the options', () => {
    for (const option of possible) {
      const emptied = pick(result, option.option, 'emptied');
      expect(emptied.map(({ lowest_level_m }) => lowest_level_m)).toEqual(option.lowest_safe_level_m);
      expect(emptied.map(({ hours }) => hours)).toEqual(option.hours_empty_safe);
      const [kept] = pick(result, option.option, 'drawn-down');
      expect(kept!.allowed).toBe(option.full.safe);
    }
  });

  test('a margin is level against level', () => {
    const ballast = new Map(assessment.options.map(({ name, measures }) => [name, measures?.ballast ?? 0]));
    for (const row of result.situations) {
      if (row.margin_m === null || row.water?.which === 'seam') continue;
      const held =
        row.of !== 'recommended' ? (ballast.get(row.of) ?? 0) : assessment.decision.measures.ballast;
      // An empty liner's level has what lies on it already.
      const emptied = row.situation === 'outlet-flood' || row.lowest_level_m !== null || row.hours !== null;
      const spare = row.level_m - row.water!.level_m;
      const fits = [spare, spare + held].some((each) => Math.abs(each - row.margin_m!) < NEAR * 10);
      expect(fits || emptied, JSON.stringify(row)).toBe(true);
      if (emptied) expect(row.margin_m).toBeCloseTo(spare, 4);
    }
  });

  test('the design water with nothing done is the last rung of the ladder, and the ladder climbs', () => {
    const years = result.water.ladder.filter(({ highest_of }) => highest_of === 'year');
    expect(years.at(-1)!.exceeded).toBe(Math.min(0.05, pond.acceptedRisk));
    const design = years.find(({ exceeded }) => exceeded === pond.acceptedRisk)!;
    const [full] = pick(result, 'no-drain', 'full');
    if (full) expect(full.water!.level_m).toBeCloseTo(design.outside_m!, 4);
    years.slice(1).forEach((rung, i) => {
      for (const place of ['low_side_m', 'uphill_wall_m', 'ring_m', 'outside_m'] as const)
        if (rung[place] !== null) expect(rung[place]).toBeGreaterThanOrEqual(years[i]![place]! - NEAR);
    });
  });

  test('chances of an emptied pond with nothing done are the years counted again', () => {
    const wished = pond.emptiedIn === 'any' ? [] : pond.emptiedIn;
    for (const row of pick(result, 'no-drain', 'emptied')) {
      // In these the years that fail are counted, not those in which water stands.
      if (wished.includes(row.month!) || (pond.emptiedIn === 'any' && row.lowest_level_m === null)) continue;
      let above = 0;
      const { clayLow, clayHigh, tub, samples, years } = water;
      for (let i = row.month! - 1; i < samples * years * 12; i += 12) {
        const head = Math.max(
          clayLow.emptied[i]!,
          clayHigh.emptied[i]!,
          tub?.asIs.emptied[i] ?? Number.NEGATIVE_INFINITY,
        );
        if (head > row.level_m + 0.0005) above++;
      }
      expect(row.chance!.middle).toBeCloseTo(above / (samples * years), 2);
      expect(row.chance!.low).toBeLessThanOrEqual(row.chance!.middle);
      expect(row.chance!.high).toBeGreaterThanOrEqual(row.chance!.middle);
    }
  });

  test('what is recommended may be emptied in the months its rules give, and no others', () => {
    const rows = pick(result, 'recommended', 'emptied');
    if (rows.length === 0) return;
    expect(rows.filter(({ allowed }) => allowed).map(({ month }) => month)).toEqual(
      monthsToEmpty(result.recommendation),
    );
    expect(rows.map(({ lowest_level_m }) => lowest_level_m)).toEqual(
      report.limits.lowestSafeLevel.map((level) => level && Number(level.toPrecision(6))),
    );
  });

  test('where nothing is dug nothing is built, and nothing may be emptied that is not told so', () => {
    const { option, also } = result.recommendation;
    if (option !== 'move' && option !== 'do-not-dig') return;
    expect(also).toEqual([]);
    const free = pick(result, 'no-drain', 'emptied').every(({ lowest_level_m }) => lowest_level_m === null);
    expect(answerLines(result, 'metric').join(' ').includes('in any month')).toBe(free);
  });

  test('without its drain nothing holds better', () => {
    for (const of of new Set(result.situations.map((row) => row.of))) {
      const works = pick(result, of, 'emptied');
      for (const blocked of pick(result, of, 'drain-blocked')) {
        const same = blocked.month === null ? pick(result, of, 'drawn-down')[0] : works[blocked.month - 1];
        expect(blocked.margin_m!).toBeLessThanOrEqual(same!.margin_m! + NEAR);
        if (blocked.allowed && same!.why !== 'not-known') expect(same!.allowed).toBe(true);
      }
    }
  });

  test('what fails is named, and only then', () => {
    for (const row of result.situations) {
      expect(row.governs === 'none', JSON.stringify(row)).toBe(row.allowed);
      expect(['holds', 'briefly'].includes(row.why)).toBe(row.allowed);
      for (const item of row.assumptions) expect(result.assumptions.map((each) => each.item)).toContain(item);
    }
  });
});
