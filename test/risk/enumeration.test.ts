import { describe, expect, test } from 'vitest';
import { isWetHalf } from '../../lib/climate/index.js';
import { SECONDS_PER_DAY } from '../../lib/formula/index.js';
import {
  type Basis,
  basisOf,
  chancesOf,
  type DrainState,
  emptiedHold,
  FLAP_STUCK,
  floorLevel,
  lowestUsualLevel,
  type Measures,
  optionsOf,
  relievedBy,
  secondsToLift,
  undrainedHead,
} from '../../lib/risk/index.js';
import { siteModel } from '../../lib/site/index.js';
import { demoFiles, edited, surveyOf, withItem } from '../folder.js';

/**
 * The chance by plain enumeration of samples, years, courses of the drain and months of the flood, at one depth, the
 * time to lift in full: what the quick search over depths must equal.
 */
function enumerated({ site, draws, sides }: Basis, m: Measures, depth: number): number {
  const { pond, water } = site;
  const { drain } = m;
  const floor = floorLevel(depth, m);
  const drawn = lowestUsualLevel(site, m) + m.ballast;
  const hold = emptiedHold(site, m, depth);
  const flood = drain?.kind === 'outlet' ? drain.flood : Number.NEGATIVE_INFINITY;
  const ditch = drain?.kind === 'outlet' ? (drain.outlet.ditch ?? Number.NEGATIVE_INFINITY) : flood;
  const wet = Array.from({ length: 12 }, (_, i) => i).filter((i) => isWetHalf(i + 1, site.latitude));
  const plans =
    pond.emptiedIn === 'any' ? Array.from({ length: 12 }, (_, i) => [i]) : [pond.emptiedIn.map((i) => i - 1)];
  const tubs = water.tub?.[m.way];
  const totals = plans.map((plan) => {
    let failing = 0;
    for (let s = 0; s < draws.samples; s++) {
      const out = drain?.kind === 'sump' ? draws.pumpOut[s] : draws.blocked[s];
      const states: [DrainState, number][] = !drain
        ? [['works', 1]]
        : drain.kind === 'sump'
          ? [
              ['blocked', out],
              ['works', 1 - out],
            ]
          : [
              ['blocked', out],
              ['works', (1 - out) * (1 - FLAP_STUCK)],
              ['flap-stuck', (1 - out) * FLAP_STUCK],
            ];
      for (let y = 0; y < draws.years; y++) {
        const i = s * draws.years + y;
        const level = (from: Float32Array, month: number) => from[i * 12 + month];
        const yearly = undrainedHead(
          m.cutoff,
          draws.clayLow[i],
          draws.clayHigh[i],
          draws.tub?.[m.way][i] ?? Number.NEGATIVE_INFINITY,
        );
        for (const [state, chance] of states)
          for (const flooded of wet) {
            const failsDrawn = relievedBy(m, floor, state, flood)(yearly) > drawn;
            const failsEmptied = plan.some((month) => {
              const tub = tubs ? level(tubs.window, month) : Number.NEGATIVE_INFINITY;
              const undrained = undrainedHead(
                m.cutoff,
                level(water.clayLow.window, month),
                level(water.clayHigh.window, month),
                tub,
              );
              const head = relievedBy(m, floor, state, month === flooded ? flood : ditch)(undrained);
              const seconds = secondsToLift(
                site,
                depth,
                hold,
                head,
                Math.min(tub, head),
                water.conductivity[s],
              );
              const side = depth - m.raise;
              const stands = sides
                ? head > -side / 2
                  ? sides.softWet[s]
                  : sides.softDry[s]
                : Number.POSITIVE_INFINITY;
              return seconds < pond.daysEmpty * SECONDS_PER_DAY || Math.max(stands, 0) < side;
            });
            if (failsDrawn || failsEmptied) failing += chance / wet.length;
          }
      }
    }
    return failing / (draws.samples * draws.years);
  });
  return Math.max(...totals);
}

const DEPTHS = [0.25, 0.5, 0.9, 1.3];

describe.each(['clay-hollow', 'clay-slope', 'loam-terrace'])(
  'the search over depths equals plain enumeration: %s',
  (name) => {
    const files = demoFiles(name);
    test.each([
      ['as planned', files],
      ['no month named', edited(files, 'pond.csv', (text) => text.replace(/^emptied_in,.*\n/m, ''))],
      [
        'two months, softer sides',
        withItem(withItem(files, 'pond.csv', 'emptied_in', '3;9'), 'pond.csv', 'edging_load', '20', 'kPa'),
      ],
    ])(
      '%s',
      (_, survey) => {
        const basis = basisOf(siteModel(surveyOf(survey), { samples: 12 }));
        for (const { measures } of optionsOf(basis)) {
          if (!measures) continue;
          const quick = chancesOf(basis, measures, DEPTHS);
          DEPTHS.forEach((depth, d) => {
            expect(quick[d].perYear).toBeCloseTo(enumerated(basis, measures, depth), 10);
          });
        }
      },
      20000,
    );
  },
);

describe('the search equals plain enumeration for an odd pond', () => {
  const shelf = { shelf_depth: '0.3 m', shelf_width: '0.5 m', side_slope: '0.3' };
  const slab = { ballast: 'slab', ballast_thickness: '0.1 m', days_empty: '12' };
  const gravelBed = {
    bedding: 'gravel',
    bedding_thickness: '0.1 m',
    ring_width: '0.2 m',
    ring_fill: 'gravel',
  };
  test.each([
    ['a shelf, in a ring that ends above the floor', 'clay-hollow', { ...shelf, ring_depth: '0.4 m' }],
    ['a shelf, raised', 'clay-slope', { ...shelf, highest_raise: '0.6 m', shape: 'round' }],
    ['a slab in a ring deeper than the floor', 'clay-hollow', { ...slab, ...gravelBed, ring_depth: '1.5 m' }],
    ['a slab over gravel', 'clay-slope', { ...slab, ...gravelBed, shape: 'oval' }],
    ['sides that slump half way down', 'clay-slope', { ...shelf, edging_load: '30 kPa', emptied_in: '1;6' }],
  ] as [string, string, Record<string, string>][])('%s', (_, name, items) => {
    const files = Object.entries(items).reduce((all, [item, cell]) => {
      const [value, unit = ''] = cell.split(' ');
      return withItem(all, 'pond.csv', item, value, unit);
    }, demoFiles(name));
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

test.each([
  ['a ring beside a brook that floods above the floor', '98.4'],
  ['and above the pond', '100.2'],
])('the search equals plain enumeration: %s', (_, flood) => {
  const flooding = edited(demoFiles('loam-terrace'), 'levels.csv', (text) =>
    text.replace('brook-flood,flood,66,94,', `brook-flood,flood,66,${flood},`),
  );
  const basis = basisOf(siteModel(surveyOf(flooding), { samples: 12 }));
  const drained = optionsOf(basis).find(({ name }) => name === 'drain-to-outlet')?.measures;
  const chances = chancesOf(basis, drained!, DEPTHS);
  expect(Math.max(...chances.map(({ perYear }) => perYear))).toBeGreaterThan(0);
  DEPTHS.forEach((depth, d) => {
    expect(chances[d].perYear).toBeCloseTo(enumerated(basis, drained!, depth), 10);
  });
});
