import { describe, expect, test } from 'vitest';
import { type Basis, basisOf } from '../../lib/basis/index.js';
import { LEVEL_RESOLUTION, SECONDS_PER_DAY } from '../../lib/formula/index.js';
import type { DrainState, Measures } from '../../lib/heads/index.js';
import { optionsOf } from '../../lib/options/index.js';
import { chancesOf } from '../../lib/reliability/index.js';
import {
  letFall,
  meanRise,
  permeabilityBySample,
  rungBelow,
  type Site,
  siteModel,
} from '../../lib/site/index.js';
import { steepestByGround } from '../../lib/uplift/index.js';
import { drainFor } from '../../lib/works/index.js';
import { briefDemo, edited, surveyOf, withItem } from '../folder.js';
import { sweep } from '../sweep.js';

const NONE = Number.NEGATIVE_INFINITY;

/** Highest water at the worst place; a drain uphill keeps the uphill wall at its own level, or at the low side's. */
const highestOutside = (m: Measures, low: number, uphill: number, ring: number) =>
  Math.max(low, ring, m.cutoff === undefined ? uphill : Math.min(uphill, Math.max(m.cutoff, low)));

/** Level that a drain lets its bed fall to: its underside 0.15 m below the floor, or what 1 % of fall leaves from the foot of the side. */
function bedLevel({ drain, raise }: Measures, floor: number): number {
  if (drain?.kind !== 'outlet') return floor - 0.15;
  const { sideSlope, shelf } = drain.sides;
  const depth = raise - floor;
  const inset = sideSlope * depth + (shelf && depth > shelf.depth ? shelf.width : 0);
  const run = drain.outlet.distance + inset;
  return Math.max(floor - 0.15, drain.outlet.level + 0.01 * run);
}

/** Head that a drain leaves of the undrained one: 0.03 m over bed or receiver; without a flap never below the receiver. */
function leftBy(m: Measures, floor: number, state: DrainState, receiver: number, undrained: number): number {
  if (!m.drain || state === 'blocked') return undrained;
  const bed = bedLevel(m, floor);
  if (m.drain.kind === 'sump') return Math.min(undrained, bed + 0.03);
  const led = Math.min(undrained, Math.max(bed, receiver) + 0.03);
  return state === 'works' ? led : Math.max(led, receiver);
}

/** Plan of a pond at a depth below its rim, m². */
function planAt({ shape, length, width, sideSlope, shelf }: Site['pond']['shape'], depth: number): number {
  const inset = 2 * (sideSlope * depth + (shelf && depth > shelf.depth ? shelf.width : 0));
  const sides = [length, width].map((side) => Math.max(side - inset, 0));
  return (shape === 'box' ? 1 : Math.PI / 4) * sides[0]! * sides[1]!;
}

/** Water in ring and bed between two levels, m³. */
function waterBetween(tub: NonNullable<Site['tub']>, low: number, high: number): number {
  const within = (from: number, to: number) => Math.max(Math.min(high, to) - Math.max(low, from), 0);
  return (
    tub.ringArea * tub.ringPorosity * within(tub.floor, Number.POSITIVE_INFINITY) +
    tub.bedArea * tub.bedPorosity * within(tub.floor - tub.bedThickness, tub.floor)
  );
}

/** A side of some height too steep for a layer in it, with the water outside at a head: the slopes asked for, one by one. */
function slips({ ground, pond }: Site, side: number, head: number): boolean {
  const wet = Math.min(Math.max((head + side) / side, 0), 1);
  return ground.sides.some(
    ({ top, texture, structure }) =>
      side > 0 &&
      top < side - 0.05 &&
      pond.shape.sideSlope + 0.01 < steepestByGround(texture, structure, wet) - 1e-9,
  );
}

/** A floor that weighs less than 1.25 times what presses from a seam, in the month of emptying or the one it ends in. */
function heaves(
  { ground, pond }: Site,
  draws: Basis['draws'],
  s: number,
  month: number,
  floor: number,
  ballast: number,
): boolean {
  return ground.seams.some(({ top, heads, headSpread, coverWeight }) => {
    const months = [0, 1].map((later) => heads[(month + later) % 12]);
    const pressure = top - Math.min(...months) - headSpread * draws.seamHead[s];
    const plug = (coverWeight + 700 * draws.unitWeight[s]) * (top - floor);
    return pressure > 0 && plug + 9810 * (pond.floorBallast + ballast) < 1.25 * 9810 * pressure - 1e-6;
  });
}

/**
 * The chance by plain enumeration of samples, years, states of the drain and spells of the flood, at one depth, by what
 * the design says of heads, drains and volumes: what the quick search over depths must equal.
 */
function enumerated(basis: Basis, m: Measures, depth: number): number {
  const { site, draws, sides } = basis;
  const { pond, water } = site;
  const { drain } = m;
  const floor = m.raise - depth;
  const drawn = pond.fullLevel + m.raise - letFall(pond.kept) + m.ballast;
  // Concrete of 24 kN/m³ weighs all of it where no water stands over it.
  const bareSlab = (m.ballast * 24) / (24 - 9.81);
  const hold = floor + pond.floorBallast + bareSlab;
  const flood = drain?.kind === 'outlet' ? drain.flood : NONE;
  const ditch = drain?.kind === 'outlet' ? (drain.outlet.ditch ?? NONE) : flood;
  const wet = site.wetMonths.map((month) => month - 1);
  const floods: { spell?: number; share: number }[] =
    drain?.kind === 'outlet'
      ? [
          { share: 1 - 1 / site.floodEvery },
          ...wet.flatMap((month) =>
            [0, 1, 2].map((third) => ({
              spell: 3 * month + third,
              share: 1 / site.floodEvery / wet.length / 3,
            })),
          ),
        ]
      : [{ share: 1 }];
  const plans =
    pond.emptiedIn === 'any' ? Array.from({ length: 12 }, (_, i) => [i]) : [pond.emptiedIn.map((i) => i - 1)];
  const tubs = water.tub?.[m.way];
  const overDays = (highest: number, at: number) => meanRise(highest, water.rises, at, hold, rungBelow(hold));
  const designed = drainFor(basis, m, depth);
  const { shape } = pond;
  const flatRadius = Math.sqrt((planAt(shape, 0) + planAt(shape, depth)) / 2 / Math.PI);
  /** Seepage of a sample at the highest water of all its years: 4 k r times the head above the drain. */
  const seepage = (s: number) => {
    let high = NONE;
    for (let i = s * draws.years; i < (s + 1) * draws.years; i++)
      high = Math.max(
        high,
        highestOutside(m, draws.clayLow[i], draws.clayHigh[i], draws.tub?.[m.way][i] ?? NONE),
      );
    return 4 * permeabilityBySample(site, depth)(s) * flatRadius * Math.max(high - bedLevel(m, floor), 0);
  };
  const overwhelmed = (s: number) => {
    const { inflow, totalInflow, reserve } = designed!;
    const ratio = Math.min(...['pipe', 'pipe entry', 'bed', 'pump'].map((l) => reserve[l] ?? 1e9));
    return seepage(s) > ratio * totalInflow - (totalInflow - inflow.clay);
  };
  const fills = (s: number) => {
    if (!designed?.sump) return false;
    const { ring_storm, roof, uphill } = designed.inflow;
    const { cutSeconds } = draws.reliability;
    const storm = (ring_storm + roof + uphill) * Math.min(site.survey.site.storm_hours ?? 3600, cutSeconds);
    return seepage(s) * cutSeconds + storm > designed.sump.storage;
  };
  const totals = plans.map((plan) => {
    let failing = 0;
    for (let s = 0; s < draws.samples; s++) {
      const { flapStuck, powerOut } = draws.reliability;
      // More water than the drain takes in the worst year of the sample: as if blocked.
      const beyond = drain !== undefined && overwhelmed(s);
      const shut = beyond ? 1 : draws.blocked[s];
      const pumpless = draws.pumpOut[s] + (1 - draws.pumpOut[s]) * (fills(s) ? powerOut : 0);
      const out = drain?.kind === 'sump' ? shut + (1 - shut) * pumpless : shut;
      const states: [DrainState, number][] = !drain
        ? m.cutoff === undefined
          ? [['works', 1]]
          : [
              ['blocked', shut],
              ['works', 1 - shut],
            ]
        : drain.kind === 'sump'
          ? [
              ['blocked', out],
              ['works', 1 - out],
            ]
          : [
              ['blocked', out],
              ['works', (1 - out) * (1 - flapStuck)],
              ['flap-stuck', (1 - out) * flapStuck],
            ];
      for (let y = 0; y < draws.years; y++) {
        const i = s * draws.years + y;
        const level = (from: Float32Array, month: number) => from[i * 12 + month];
        for (const [state, chance] of states)
          for (const { spell, share } of floods) {
            // A drain uphill that is blocked leaves the water behind the uphill wall.
            const uphill = state === 'blocked' ? { ...m, cutoff: undefined } : m;
            const outside = (low: number, high: number, ring: number) =>
              highestOutside(uphill, low, high, ring);
            const yearly = outside(draws.clayLow[i], draws.clayHigh[i], draws.tub?.[m.way][i] ?? NONE);
            const receiver = spell === undefined ? ditch : flood;
            const failsDrawn = leftBy(m, floor, state, receiver, yearly) > drawn + LEVEL_RESOLUTION;
            const failsEmptied = plan.some((month) => {
              const ring = tubs ? level(tubs.emptied, month) : NONE;
              const [low, high] = [water.clayLow, water.clayHigh].map(({ emptied }) => level(emptied, month));
              // A third of a month is met from the month before on by the days that run over.
              const meets =
                spell !== undefined &&
                (spell - 3 * month + 36) % 36 < 3 + Math.ceil((pond.daysEmpty - 1) / 10);
              const relieved = (undrained: number) =>
                leftBy(m, floor, state, meets ? flood : ditch, undrained);
              const head = relieved(outside(low, high, ring));
              // The clay gives water by its own head; what the ring gives is what stands in it.
              const own = relieved(outside(low, high, NONE));
              const rise = (site.tub ? own : head) - hold;
              const mean = site.tub || !tubs ? overDays(Math.max(low, high), i * 12 + month) : rise;
              const returned = Math.max(relieved(NONE) - hold, 0);
              const area = Math.max(planAt(shape, depth), 0.05);
              const radius = Math.sqrt((area + planAt(shape, Math.max(depth - rise, 0))) / 2 / Math.PI);
              const stands =
                site.tub && Math.min(ring, head) > hold + LEVEL_RESOLUTION
                  ? waterBetween(site.tub, hold, Math.min(ring, head))
                  : 0;
              const seeped =
                rise > LEVEL_RESOLUTION
                  ? 4 *
                    permeabilityBySample(site, depth)(s) *
                    radius *
                    Math.min(mean + returned, rise) *
                    Math.ceil(pond.daysEmpty) *
                    SECONDS_PER_DAY
                  : 0;
              const lifts = stands >= 0.02 * area || stands + seeped > 0.02 * area;
              const side = depth - m.raise;
              // Uphill it is higher by what the ground rises, and the water stands so much lower in it.
              const upTo = side > 0 ? site.places.highRim : 0;
              // A bank on its edge weighs as so much more of it.
              const topped = side > 0 ? Math.max(upTo, m.raise + Math.max(pond.fullLevel, 0)) : 0;
              const stand = sides(depth);
              const height = stand
                ? head > LEVEL_RESOLUTION - side / 2
                  ? stand.softWet[s]
                  : stand.softDry[s]
                : Number.POSITIVE_INFINITY;
              return (
                lifts ||
                Math.max(height, 0) < side + topped ||
                slips(site, side, head) ||
                slips(site, side + upTo, head - upTo) ||
                heaves(site, draws, s, month, depth - m.raise, bareSlab)
              );
            });
            if (failsDrawn || failsEmptied) failing += chance * share;
          }
      }
    }
    return failing / (draws.samples * draws.years);
  });
  return Math.max(...totals);
}

const DEPTHS = [0.25, 0.5, 0.9, 1.3];

describe.each(sweep(['clay-slope', 'clay-hollow', 'loam-terrace'], 1))(
  'the search over depths equals plain enumeration: %s',
  (name) => {
    const files = briefDemo(name);
    const variants: [string, Record<string, string>][] = [
      ['as planned', files],
      [
        'two months, softer sides',
        withItem(withItem(files, 'pond.csv', 'emptied_in', '3;9'), 'pond.csv', 'edging_load', '20', 'kPa'),
      ],
      ['no month named', edited(files, 'pond.csv', (text) => text.replace(/^emptied_in,.*\n/m, ''))],
    ];
    test.each(sweep(variants, 2))(
      '%s',
      (_, survey) => {
        const basis = basisOf(siteModel(surveyOf(survey), { samples: 8 }));
        for (const { measures } of optionsOf(basis)) {
          if (!measures) continue;
          const quick = chancesOf(basis, measures, DEPTHS);
          DEPTHS.forEach((depth, d) => {
            expect(quick[d].perYear).toBeCloseTo(enumerated(basis, measures, depth), 10);
          });
        }
      },
      60000,
    );
  },
);

test('the search equals plain enumeration: sand under pressure below, and silt in the sides', () => {
  const files = edited(briefDemo('clay-slope'), 'pits.csv', (text) =>
    text
      .replace('P1,1.2,2.2,clay,,,,2,,blocky,', 'P1,1.2,1.6,silt,,,,2,,,')
      .concat('P1,1.6,2.4,sand,,,,,,,,,,,\n'),
  );
  const sealed = {
    ...files,
    'heads.csv': 'place,month,depth_m,spread_m\nbelow:P1,high,0.9,0.2\nbelow:P1,9,1.4,0.2\n',
  };
  const ponds = [
    sealed,
    withItem(sealed, 'pond.csv', 'emptied_in', '3;9'),
    withItem(sealed, 'pond.csv', 'days_empty', '20', 'd'),
  ];
  const between = ponds.map((survey) => {
    const basis = basisOf(siteModel(surveyOf(survey), { samples: 8 }));
    return optionsOf(basis).reduce((count, { measures }) => {
      if (!measures) return count;
      const quick = chancesOf(basis, measures, DEPTHS);
      DEPTHS.forEach((depth, d) => {
        expect(quick[d].perYear).toBeCloseTo(enumerated(basis, measures, depth), 10);
      });
      return (
        count + quick.filter(({ modes }) => modes['floor-heave']! > 0 && modes['floor-heave']! < 1).length
      );
    }, 0);
  });
  expect(Math.max(...between)).toBeGreaterThan(0);
});

describe('the search equals plain enumeration for an odd pond', () => {
  const shelf = { shelf_depth: '0.3 m', shelf_width: '0.5 m', side_slope: '0.3' };
  const slab = { ballast: 'slab', ballast_thickness: '0.1 m', days_empty: '12' };
  const gravelBed = {
    bedding: 'gravel',
    bedding_thickness: '0.1 m',
    ring_width: '0.2 m',
    ring_fill: 'gravel',
  };
  const odd: [string, string, Record<string, string>][] = [
    ['a shelf, in a ring that ends above the floor', 'clay-hollow', { ...shelf, ring_depth: '0.4 m' }],
    ['a shelf, raised', 'clay-slope', { ...shelf, highest_raise: '0.6 m', shape: 'round' }],
    ['a slab in a ring deeper than the floor', 'clay-hollow', { ...slab, ...gravelBed, ring_depth: '1.5 m' }],
    ['a slab over gravel', 'clay-slope', { ...slab, ...gravelBed, shape: 'oval' }],
    ['sides that slump half way down', 'clay-slope', { ...shelf, edging_load: '30 kPa', emptied_in: '1;6' }],
  ];
  test.each(sweep(odd, 2))('%s', (_, name, items) => {
    const files = Object.entries(items).reduce((all, [item, cell]) => {
      const [value, unit = ''] = cell.split(' ');
      return withItem(all, 'pond.csv', item, value, unit);
    }, briefDemo(name));
    const one =
      items.shape === 'round' ? edited(files, 'pond.csv', (t) => t.replace(/^width,.*\n/m, '')) : files;
    const basis = basisOf(siteModel(surveyOf(one), { samples: 8 }));
    const depths = [0.2, 0.3, 0.35, 0.5, 0.8, 1.1, 1.5];
    let between = 0;
    for (const { measures } of optionsOf(basis)) {
      if (!measures) continue;
      const quick = chancesOf(basis, measures, depths);
      depths.forEach((depth, d) => {
        expect(quick[d].perYear).toBeCloseTo(enumerated(basis, measures, depth), 10);
        between += Number(quick[d].perYear > 0 && quick[d].perYear < 1);
      });
    }
    expect(between).toBeGreaterThan(0);
  });
});

const FLOODS: [string, string][] = [
  ['a ring beside a brook that floods above the floor', '98.4'],
  ['and above the pond', '100.2'],
];

test.each(sweep(FLOODS, 1))('the search equals plain enumeration: %s', (_, flood) => {
  const flooding = edited(briefDemo('loam-terrace'), 'levels.csv', (text) =>
    text.replace('brook-flood,flood,66,94,', `brook-flood,flood,66,${flood},`),
  );
  const basis = basisOf(siteModel(surveyOf(flooding), { samples: 8 }));
  const drained = optionsOf(basis).find(({ name }) => name === 'drain-to-outlet')?.measures;
  const chances = chancesOf(basis, drained!, DEPTHS);
  expect(Math.max(...chances.map(({ perYear }) => perYear))).toBeGreaterThan(0);
  DEPTHS.forEach((depth, d) => {
    expect(chances[d].perYear).toBeCloseTo(enumerated(basis, drained!, depth), 10);
  });
});
