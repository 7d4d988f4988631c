import { describe, expect, test } from 'vitest';
import {
  balanceFigure,
  type Figure,
  figureSvg,
  liftTimeFigure,
  pressureFigure,
  sideFigure,
} from '../../lib/figures/index.js';
import {
  clayArrival,
  liftBalances,
  liftTimes,
  linerProfile,
  type PondShape,
  waterOfStates,
} from '../../lib/uplift/index.js';

const POND: PondShape = {
  shape: 'box',
  length: 4,
  width: 3,
  sideSlope: 0.6,
  shelf: { depth: 0.25, width: 0.35 },
};
const profile = linerProfile(POND, 0.9);
const waters = waterOfStates(profile, 0, 0.1, { outside: -0.2 });
const rows = [
  {
    name: 'tight clay',
    times: liftTimes(2.7, { clay: clayArrival(POND, 0.9, 0.7, 1e-9), ring: 0, storm: 0 }),
    sides: 5e5,
  },
  { name: 'dry', times: liftTimes(2.7, { clay: 0, ring: 0, storm: 0 }), sides: Number.POSITIVE_INFINITY },
  { name: 'a full ring', times: liftTimes(2.7, { clay: 0, ring: 0.2, storm: 0 }), sides: 0 },
];
const clay = (kPa: number) => ({ strength: 1000 * kPa, unitWeight: 18500, edgingLoad: 0 });

interface Trace {
  name: string;
  x: number[];
  y: (number | string)[];
}
/** Every number in a structure. */
function numbersIn(thing: unknown): number[] {
  if (typeof thing === 'number') return [thing];
  return thing !== null && typeof thing === 'object' ? Object.values(thing).flatMap(numbersIn) : [];
}

const traces = (figure: Figure) => figure.data as Trace[];

describe.each(['wide', 'narrow'] as const)('%s', (size) => {
  describe.each(['metric', 'us'] as const)('%s', (units) => {
    test.each<[string, Figure]>([
      ['full', pressureFigure(profile, waters.full, 'full', units, size)],
      ['emptied', pressureFigure(profile, waters.emptied, 'emptied', units, size)],
      ['balance', balanceFigure(liftBalances(profile, waters), units, size)],
      ['times', liftTimeFigure(rows, units, size)],
      ['sides', sideFigure(clay(14), 0.9, units, size)],
    ])('%s: every number is one, and the words say the same in those units', (_, figure) => {
      for (const number of numbersIn([figure.data, figure.layout]))
        expect(Number.isFinite(number)).toBe(true);
      for (const { x, y } of traces(figure)) expect(x).toHaveLength(y.length);
      expect(figure.alt).not.toMatch(/NaN|Infinity|undefined/);
      if (units === 'us') expect(figure.alt).not.toMatch(/\d (m|mm|kPa)\b/);
      else expect(figure.alt).not.toMatch(/\d (in|ft|lb)\b/);
    });
  });
});

test('the section is to scale, symmetric, and tells where the outside wins', () => {
  const figure = pressureFigure(profile, waters.emptied, 'emptied', 'metric');
  const liner = traces(figure).find(({ name }) => name === 'liner')!;
  expect(liner.x.map((x, i) => x + liner.x[liner.x.length - 1 - i]!)).toEqual(
    liner.x.map(() => expect.closeTo(4, 6)),
  );
  expect((figure.layout as { yaxis: object }).yaxis).toMatchObject({ scaleanchor: 'x' });
  expect(figure.alt).toContain('The water outside wins from −0.20 m down to −0.90 m');
  expect(pressureFigure(profile, waters.full, 'full', 'metric').alt).toContain('wins nowhere');
});

test('the balance says what lacks', () => {
  expect(balanceFigure(liftBalances(profile, waters), 'metric').alt).toMatch(
    /full: .*factor 1.29.*emptied: .*lacks 0.70 m/,
  );
});

test('a row without an end has no dot beyond the axis, and says so', () => {
  const dots = traces(liftTimeFigure(rows, 'metric')).find(({ name }) => name.startsWith('2 cm'))!;
  expect(dots.x).toEqual([60, null, null]);
  expect(liftTimeFigure(rows, 'metric').alt).toMatch(
    /dry: no end .*the sides allow no end.*a full ring: no time/,
  );
});

test('the sides: a slope, upright, or none stands', () => {
  const alt = (kPa: number, depth = 0.9) => sideFigure(clay(kPa), depth, 'metric').alt;
  expect(alt(14)).toMatch(/0\.\d+ to 1 or flatter stands/);
  expect(alt(70)).toContain('upright sides stand');
  expect(alt(6, 1.5)).toContain('no slope stands');
});

test.each<[string, Figure, string]>([
  ['balance', balanceFigure(liftBalances(profile, waters), 'metric'), "unknown trace 'bar'"],
  ['times', liftTimeFigure(rows, 'metric'), 'invalid place NaN'],
])('the figure of the %s is for plotly.js only, and figureSvg says why', (_, figure, why) => {
  expect(() => figureSvg(figure, 700, 'x')).toThrow(why);
});
