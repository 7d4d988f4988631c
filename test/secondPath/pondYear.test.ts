/**
 * The pond's own year against an independent script (`pondYear.ts`), four habits in four climates: two with measured days,
 * two of published monthly means made into days by a seeded generator of this test.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { keptHeads, pondYear } from '../../lib/basis/index.js';
import { judge } from '../../lib/decision/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { chanceOf } from '../../lib/reliability/chance.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from '../risk/base.js';
import { sweep } from '../sweep.js';
import { LATITUDE, realDays } from '../weather.js';
import { areaAt, type Plan } from './pond.js';
import { daysOfNormals, type Habit, pondDays } from './pondYear.js';
import { type Day, daysOf, referenceEt } from './weather.js';

const PLAN: Plan = { shape: 'box', length: 4, width: 3, sideSlope: 1 };
const DEPTH = 1;
const SAMPLES = 24;
/** Levels that differ by half a millimetre are one. */
const ROUNDING = 0.0005;
const MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];

interface Climate {
  latitude: number;
  csv: string;
  /** rain and reference evapotranspiration, m a day */
  days: (Pick<Day, 'year' | 'month'> & { rain: number; et0: number })[];
}

const iso = (day: number) => new Date(day * 86_400_000).toISOString().slice(0, 10);

function measured(station: keyof typeof LATITUDE): Climate {
  const rows = realDays(station).map((d) => [iso(d.day), 1000 * d.rain!, d.tmin, d.tmax].join(','));
  const csv = `date,rain_mm,tmin_c,tmax_c\n${rows.join('\n')}\n`;
  const latitude = LATITUDE[station];
  const days = daysOf(csv).map((d) => ({ ...d, rain: d.rain / 1000, et0: referenceEt(latitude, d) / 1000 }));
  return { latitude, csv, days };
}

function published(file: string, latitude: number, seed: number): Climate {
  const { rain_mm, pe_mm } = JSON.parse(
    readFileSync(new URL(`../fixtures/climate/${file}.json`, import.meta.url), 'utf8'),
  );
  const made = daysOfNormals(rain_mm, pe_mm, 21, seed);
  const csv = `date,rain_mm,et0_mm\n${made.map((d) => [iso(d.day), d.rain, d.et0].join(',')).join('\n')}\n`;
  return {
    latitude,
    csv,
    days: made.map((d) => ({ ...d, rain: d.rain / 1000, et0: d.et0 / 1000 })),
  };
}

const HABITS: [string, Habit, item: string, value: string][] = [
  ['topped up within 0.10 m', { within: 0.1 }, 'kept_within', '0.1'],
  ['topped up within 0.05 m', { within: 0.05 }, 'kept_within', '0.05'],
  ['never topped up', { within: Number.POSITIVE_INFINITY }, 'kept_within', 'never'],
  ['held 0.10 m low', { held: 0.1 }, 'usual_drawdown', '0.1'],
];

function siteOf({ csv, latitude }: Climate, brim: number, item: string, value: string) {
  const { 'heads.csv': _, ...base } = baseSurvey();
  let files: Record<string, string> = { ...base, 'weather.csv': csv };
  files['pond.csv'] = files['pond.csv']!.replace(/^usual_drawdown.*\n/m, '');
  files = withItem(files, 'site.csv', 'latitude', String(latitude), 'deg');
  files = withItem(files, 'pond.csv', 'water_above_rim_ground', String(brim), 'm');
  files = withItem(files, 'pond.csv', item, value, value === 'never' ? '' : 'm');
  return siteModel(surveyOf(files), { samples: SAMPLES });
}

const quantile = (values: ArrayLike<number>, p: number): number => {
  const sorted = Float64Array.from(values).sort();
  const at = p * (sorted.length - 1);
  const low = Math.floor(at);
  return sorted[low]! + (at - low) * ((sorted[low + 1] ?? sorted[low]!) - sorted[low]!);
};
const mean = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0) / values.length;

/** Years from October to September that are whole, counted from 0; −1 in the first and last. */
function yearsOf(days: Climate['days']): { of: number[]; count: number } {
  const named = days.map(({ year, month }) => (month >= 10 ? year : year - 1));
  const whole = [...new Set(named)].filter((name) => named.filter((n) => n === name).length >= 365);
  return { of: named.map((name) => whole.indexOf(name)), count: whole.length };
}

interface Told {
  /** most that each month lacks, m, January first; litres a year; whether a year lifts; of all samples and years */
  lacks: number[][];
  litres: number[];
  lifts: number[];
  /** least that the pond stands above the water outside in each month, m */
  spare: number[][];
}

const nothingTold = (): Told => ({
  lacks: MONTHS.map(() => []),
  litres: [],
  lifts: [],
  spare: MONTHS.map(() => []),
});

/** Own pond and the library's, of the same draws of the coefficient of open water, beside the same water outside. */
function compared(climate: Climate, brim: number, habit: Habit, item: string, value: string) {
  const site = siteOf(climate, brim, item, value);
  const { water, unknowns } = site;
  const { days } = climate;
  const { of, count } = yearsOf(days);
  expect(site.record!.years).toBe(count);
  const own = nothingTold();
  const told = nothingTold();
  const { basis } = judge(site);
  const sums = keptHeads(basis, NOTHING);
  const floor = 0.02 * areaAt(PLAN, DEPTH);
  const rain = days.map((d) => d.rain);
  for (let s = 0; s < SAMPLES; s++) {
    const coefficient = 1.05 * Math.exp(0.15 * unknowns['open water'][s]!);
    const evaporation = days.map((d) => coefficient * d.et0);
    const pond = pondDays({ plan: PLAN, brim, depth: DEPTH }, rain, evaporation, habit);
    const clay = water.daily!.clay.subarray(s * days.length, (s + 1) * days.length);
    const most = Array.from({ length: count }, () => new Float64Array(12));
    const least = most.map(() => new Float64Array(12).fill(Number.POSITIVE_INFINITY));
    const litres = new Float64Array(count);
    const lifted = new Uint8Array(count);
    days.forEach(({ month }, d) => {
      const y = of[d]!;
      if (y < 0) return;
      const lacks = pond.lacks[d]!;
      most[y]![month - 1] = Math.max(most[y]![month - 1]!, lacks);
      least[y]![month - 1] = Math.min(least[y]![month - 1]!, brim - lacks - clay[d]!);
      litres[y]! += 1000 * pond.toppedUp[d]!;
      // A pond below its brim rises by what comes under its liner; held, that is let go.
      const taken = 'held' in habit ? 0 : floor / areaAt(PLAN, Math.max(lacks - brim, 0));
      const above = clay[d]! - ROUNDING;
      if (above - (brim - lacks) > taken || above > brim) lifted[y] = 1;
    });
    for (let y = 0; y < count; y++) {
      const i = s * water.years + y;
      const kept = water.pond;
      MONTHS.forEach((_, m) => {
        own.lacks[m]!.push(most[y]![m]!);
        own.spare[m]!.push(least[y]![m]!);
        if (kept) told.lacks[m]!.push(kept.drawdown[i * 12 + m]!);
      });
      own.litres.push(litres[y]!);
      if (kept) told.litres.push(1000 * kept.topUp.subarray(i * 12, i * 12 + 12).reduce((a, b) => a + b, 0));
      own.lifts.push(lifted[y]!);
      // What the library lets be: 20 mm over the floor, spread over the full pond.
      const letBe = 'held' in habit ? 0 : floor / areaAt(PLAN, 0);
      const holds = brim + ROUNDING;
      told.lifts.push(Number(sums[i]! > holds + letBe || basis.draws.clayHigh[i]! > holds));
    }
  }
  // A short record is counted with wetter and drier twins besides.
  const chance = water.years === count ? chanceOf(basis, NOTHING, DEPTH).perYear : undefined;
  return { own, told, chance, year: water.years === count ? pondYear(basis) : undefined };
}

/**
 * By hand from monthly sums, on 12 m² without sides: how low it stands after the dry months in the middle year, mm, and
 * what is topped up, L, when all that the dry months take is given back. Real days lack more (the month's largest is
 * before its rain; rain on a full pond runs over), sides give rain to less water. Summers of Seattle 424, 425, 577 mm, of
 * New York 203, 216, 361 mm; Berkeley's means take 112 mm a year more than falls, until the water is small enough: 450 mm.
 */
const CLIMATES = [
  ['Seattle, measured, dry summers', measured('Seattle'), 0.1, { lacks: 425, litres: 5100 }],
  ['New York, measured, rain in summer', measured('New York'), 0.03, { lacks: 216, litres: 3300 }],
  [
    'Rockford, published means, continental',
    published('bookkeeping-rockford', 42.3, 3),
    0.1,
    { lacks: 138, litres: 1660 },
  ],
  [
    'Berkeley, published means, mediterranean',
    published('budget-berkeley', 37.9, 4),
    0.03,
    { lacks: 450, litres: 5200 },
  ],
] as const;

describe.each(sweep(CLIMATES, 1))('%s', (_, climate, brim, hand) => {
  const answers = new Map(
    HABITS.map(([name, habit, item, value]) => [name, compared(climate, brim, habit, item, value)]),
  );

  test.each(HABITS)('%s: the same levels, litres and lifted years', (name, habit) => {
    const { own, told, chance } = answers.get(name)!;
    // A step a day on volume against 24 on level.
    if (!('held' in habit)) {
      for (const p of [0.5, 0.9])
        MONTHS.forEach((_, m) => {
          const [ours, theirs] = [quantile(own.lacks[m]!, p), quantile(told.lacks[m]!, p)];
          expect(Math.abs(theirs - ours), `month ${m + 1}, ${p}`).toBeLessThan(Math.max(0.003, 0.01 * ours));
        });
      for (const p of [0.5, 0.9]) {
        const litres = quantile(own.litres, p);
        expect(Math.abs(quantile(told.litres, p) - litres)).toBeLessThanOrEqual(0.01 * litres);
      }
    }
    expect(Math.abs(mean(told.lifts) - mean(own.lifts))).toBeLessThan(0.01);
    if (chance !== undefined) expect(Math.abs(chance - mean(own.lifts))).toBeLessThan(0.01);
  });

  test.each(HABITS)('%s: the year that is told', (name, habit) => {
    const { own, year } = answers.get(name)!;
    if (!year) return;
    year.by_month.forEach(({ drawdown_m, net_head_m, top_up_m3 }, m) => {
      for (const [p, at] of [
        [0.1, 'p10'],
        [0.5, 'p50'],
        [0.9, 'p90'],
      ] as const) {
        const lacks = quantile(own.lacks[m]!, p);
        expect(Math.abs(drawdown_m[at] - lacks)).toBeLessThan(Math.max(0.003, 0.01 * lacks));
        // Where it is metres, a day's difference in when it is filled up shows.
        const spare = quantile(own.spare[m]!, p);
        expect(Math.abs(net_head_m[at] - spare)).toBeLessThan(Math.max(0.006, 0.01 * Math.abs(spare)));
      }
      expect(top_up_m3 === null).toBe('held' in habit);
    });
    if ('held' in habit) expect(year.top_up_year_m3).toBeNull();
    else {
      const dry = quantile(own.litres, 0.9);
      expect(Math.abs(1000 * year.top_up_year_m3!.p90 - dry)).toBeLessThanOrEqual(0.01 * dry);
    }
    const spare = own.spare.map((values) => quantile(values, 0.1));
    // Within a millimetre or two of where the line of 10 mm is drawn it may fall either way.
    const within = (line: number) => MONTHS.filter((m) => spare[m - 1]! <= Math.min(...spare) + line);
    expect(year.danger_months).toEqual(expect.arrayContaining(within(0.006)));
    expect(within(0.014)).toEqual(expect.arrayContaining(year.danger_months));
  });

  test('as reckoned by hand', () => {
    const never = answers.get('never topped up')!.told;
    const worst = Math.max(...never.lacks.map((values) => quantile(values, 0.5)));
    expect((1000 * worst) / hand.lacks).toBeGreaterThan(0.9);
    expect((1000 * worst) / hand.lacks).toBeLessThan(1.4);
    const litres = quantile(answers.get('topped up within 0.10 m')!.told.litres, 0.5);
    expect(litres / hand.litres).toBeGreaterThan(0.7);
    expect(litres / hand.litres).toBeLessThan(1.4);
  });

  test('never topped up it lifts in many years; topped up hardly more often than the water outside stands over its brim', () => {
    const share = (name: string) => mean(answers.get(name)!.own.lifts);
    const [hand, half, never, held] = HABITS.map(([name]) => share(name));
    expect(never! - hand!).toBeGreaterThan(0.15);
    expect(half!).toBeLessThanOrEqual(hand!);
    expect(held! - hand!).toBeGreaterThan(0.4);
  });
});
