import { readFileSync } from 'node:fs';
import {
  actualVapourPressure,
  atmosphericPressure,
  clearSkyRadiation,
  dayLength,
  heatExponent,
  heatIndex,
  monthlyDayLength,
  netLongwaveRadiation,
  netRadiation,
  ordinaryYear,
  psychrometricConstant,
  runBookkeeping,
  type StationDay,
  saturationVapourPressure,
  soilHeatFlux,
  soilRetention,
  solarDeclination,
  solarRadiationFromRange,
  solarRadiationFromSunshine,
  stationEvaporation,
  sunsetAngle,
  thornthwaiteHot,
  thornthwaiteYear,
  vapourPressureSlope,
  windAtTwoMetres,
} from '../../lib/climate/index.js';
import { flowAzimuth, hydraulicGradient, waterTablePlane } from '../../lib/groundwater/index.js';
import { augerHoleRate, augerHoleUnfilled } from '../../lib/seepage/index.js';
import type { Check } from './check.js';

const FAO56 = 'Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56';
const radians = (degrees: number) => (degrees * Math.PI) / 180;
const fixture = (name: string) =>
  JSON.parse(readFileSync(new URL(`../fixtures/climate/${name}.json`, import.meta.url), 'utf8'));

const published =
  (source: string, covers: string[]) =>
  (what: string, ours: () => number, expected: number, tolerance: number): Check => ({
    covers,
    what,
    kind: 'published',
    source,
    ours,
    expected,
    tolerance,
  });
const exact =
  (source: string, covers: string[]) =>
  (what: string, ours: () => number, expected: number, tolerance: number): Check => ({
    covers,
    what,
    kind: 'exact',
    source,
    ours,
    expected,
    tolerance,
  });

/** A row of a printed table: argument, figure. */
const table = (
  make: ReturnType<typeof published>,
  what: (x: number) => string,
  f: (x: number) => number,
  rows: [number, number][],
  tolerance: number,
) => rows.map(([x, expected]) => make(what(x), () => f(x), expected, tolerance));

const vapour: Check[] = [
  ...table(
    published(`${FAO56}, Annex 2 Table 2.3`, ['saturationVapourPressure']),
    (T) => `saturation vapour pressure at ${T} °C, kPa`,
    saturationVapourPressure.compute,
    [
      [2, 0.706],
      [5, 0.872],
      [8, 1.073],
      [10, 1.228],
      [12, 1.403],
      [15, 1.705],
      [18, 2.064],
      [20, 2.338],
      [26, 3.361],
      [30, 4.243],
      [38, 6.625],
    ],
    0.00051,
  ),
  ...table(
    published(`${FAO56}, Annex 2 Table 2.4`, ['vapourPressureSlope']),
    (T) => `slope of the vapour pressure curve at ${T} °C, kPa/°C`,
    vapourPressureSlope.compute,
    [
      [1, 0.047],
      [5, 0.061],
      [10, 0.082],
      [15, 0.11],
      [20, 0.145],
      [25, 0.189],
      [30, 0.243],
      [35, 0.311],
      [40, 0.393],
    ],
    0.00051,
  ),
  {
    covers: ['atmosphericPressure'],
    what: 'pressure at 1800 m, kPa',
    kind: 'published',
    source: `${FAO56}, Example 2 (read second-hand)`,
    ours: () => atmosphericPressure.compute(1800),
    expected: 81.8,
    tolerance: 0.05,
  },
  {
    covers: ['psychrometricConstant'],
    what: 'psychrometric constant at 1800 m, kPa/°C',
    kind: 'published',
    source: `${FAO56}, Example 2 (read second-hand)`,
    ours: () => psychrometricConstant.compute(atmosphericPressure.compute(1800)),
    expected: 0.054,
    tolerance: 0.0005,
  },
  published(`${FAO56}, Example 5 (its printed line leaves out the division by 2, its result has it)`, [
    'actualVapourPressure',
  ])(
    'vapour pressure of a day of 18–25 °C and 82–54 %, kPa',
    () =>
      actualVapourPressure.compute(
        saturationVapourPressure.compute(18),
        0.82,
        saturationVapourPressure.compute(25),
        0.54,
      ),
    1.7,
    0.005,
  ),
];

const sunset = (latitude: number, day: number) =>
  sunsetAngle.compute(radians(latitude), solarDeclination.compute(day));
const sun: Check[] = [
  published(`${FAO56}, Example 8`, ['sunsetAngle'])(
    'sunset angle at 20° S on 3 September, rad',
    () => sunset(-20, 246),
    1.527,
    0.0006,
  ),
  published(`${FAO56}, Example 9`, ['dayLength'])(
    'day length at 20° S on 3 September, h',
    () => dayLength.compute(sunset(-20, 246)),
    11.7,
    0.05,
  ),
  published(`${FAO56}, Example 10`, ['dayLength'])(
    'day length at 22.9° S on 15 May, h',
    () => dayLength.compute(sunset(-22.9, 135)),
    10.9,
    0.05,
  ),
  published(`${FAO56}, Example 17`, ['dayLength'])(
    'day length at 13°44′ N on 15 April, h',
    () => dayLength.compute(sunset(13 + 44 / 60, 105)),
    12.31,
    0.01,
  ),
  exact('symmetry: at the equator every day has twelve hours', ['sunsetAngle', 'dayLength'])(
    'day length at the equator at midsummer, h',
    () => dayLength.compute(sunset(0, 172)),
    12,
    1e-12,
  ),
  published(`${FAO56}, Example 10`, ['solarRadiationFromSunshine'])(
    'radiation at Rio de Janeiro with 220 h of sun in May, MJ/m²/d',
    () => solarRadiationFromSunshine.compute(220 / 31 / dayLength.compute(sunset(-22.9, 135)), 25.1),
    14.5,
    0.06,
  ),
  published(`${FAO56}, Example 15`, ['solarRadiationFromRange'])(
    'radiation at Lyon in July from 14.8–26.6 °C, MJ/m²/d',
    () => solarRadiationFromRange.compute(0.16, 26.6 - 14.8, 40.6),
    22.3,
    0.06,
  ),
  published(`${FAO56}, Example 11`, ['clearSkyRadiation'])(
    'clear-sky radiation at Rio de Janeiro in May, MJ/m²/d',
    () => clearSkyRadiation.compute(0, 25.1),
    18.8,
    0.06,
  ),
  published(`${FAO56}, Example 11 (lists 38.8 and 35.8 for the two emissions and uses 38.7 and 35.7)`, [
    'netLongwaveRadiation',
  ])(
    'net long-wave radiation at Rio de Janeiro in May, MJ/m²/d',
    () => netLongwaveRadiation.compute(25.1, 19.1, 2.1, 14.5 / 18.8),
    3.5,
    0.06,
  ),
  ...table(
    published(`${FAO56}, Annex 2 Table 2.8`, ['netLongwaveRadiation']),
    (T) => `emission of a black body at ${T} °C, MJ/m²/d`,
    // With no vapour to speak of and a factor of cloud of 1, what is left is the emission times 0.34 − 0.14 √p.
    (T) => netLongwaveRadiation.compute(T, T, 1, 1) / (0.34 - 0.14),
    [
      [1, 27.7],
      [5, 29.35],
      [10, 31.52],
      [15, 33.81],
      [20, 36.21],
      [25, 38.75],
      [30, 41.41],
    ],
    0.011,
  ),
  published(`${FAO56}, Example 12 (prints 11.1 for 0.77 × 14.5 = 11.165)`, ['netRadiation'])(
    'net radiation from 14.5 and 3.5 MJ/m²/d',
    () => netRadiation.compute(14.5, 3.5),
    7.6,
    0.07,
  ),
  published(`${FAO56}, Example 13`, ['soilHeatFlux'])(
    'heat into the ground in April, 14.1 and 18.8 °C around it, MJ/m²/d',
    () => soilHeatFlux.compute(18.8, 14.1),
    0.33,
    0.002,
  ),
  ...table(
    published(`${FAO56}, Annex 2 Table 2.9`, ['windAtTwoMetres']),
    (z) => `wind at 2 m over wind at ${z} m`,
    (z) => windAtTwoMetres.compute(1, z),
    [
      [1, 1.178],
      [2, 1],
      [3, 0.921],
      [5, 0.838],
      [10, 0.748],
    ],
    0.00051,
  ),
  published(`${FAO56}, Example 14`, ['windAtTwoMetres'])(
    'wind at 2 m from 3.2 m/s at 10 m, m/s',
    () => windAtTwoMetres.compute(3.2, 10),
    2.4,
    0.05,
  ),
];

const bangkok = { latitude: 13 + 44 / 60, altitude: 2, coastal: true };
const lyon = { latitude: 45 + 43 / 60, altitude: 200 };
const april: StationDay = {
  tmin: 25.6,
  tmax: 34.8,
  vapourPressure: 2.85,
  wind: 2,
  sunshine: 8.5,
  soilHeat: 0.14,
};
const july: StationDay = { tmin: 14.8, tmax: 26.6 };
const covers = [
  'penmanMonteith',
  'netLongwaveRadiation',
  'clearSkyRadiation',
  'vapourPressureSlope',
  'psychrometricConstant',
];
const [ex16, ex17, ex20] = [16, 17, 20].map((n) => published(`${FAO56}, Example ${n}`, covers));
const recalled = (what: string, ours: () => number, expected: number, tolerance: number): Check => ({
  ...published(`${FAO56}, Example 18 (from memory)`, covers)(what, ours, expected, tolerance),
  kind: 'recalled',
});
const uccle = stationEvaporation(
  {
    tmin: 12.3,
    tmax: 21.5,
    vapourPressure: actualVapourPressure.compute(
      saturationVapourPressure.compute(12.3),
      0.84,
      saturationVapourPressure.compute(21.5),
      0.63,
    ),
    wind: windAtTwoMetres.compute(10 / 3.6, 10),
    sunshine: 9.25,
  },
  187,
  { latitude: 50.8, altitude: 100 },
);

const combination: Check[] = [
  ex16(
    'clear-sky radiation at Bangkok in April, MJ/m²/d',
    () => clearSkyRadiation.compute(0, 38.06),
    28.5,
    0.06,
  ),
  {
    ...ex16(
      'net radiation at Bangkok in April from temperatures, MJ/m²/d',
      () =>
        stationEvaporation({ tmin: 25.6, tmax: 34.8, vapourPressure: 2.85 }, 105, { ...bangkok, altitude: 0 })
          .net,
      13.9,
      0.06,
    ),
    source: `${FAO56}, Example 16 (prints 3.0 for the long-wave loss and takes off 2.9; latitude −0.24 rad where +0.24 is meant)`,
  },
  ex17(
    'radiation at Bangkok in April with 8.5 h of sun, MJ/m²/d',
    () => stationEvaporation(april, 105, bangkok).solar,
    22.65,
    0.01,
  ),
  ex17('long-wave loss there, MJ/m²/d', () => stationEvaporation(april, 105, bangkok).longwave, 3.11, 0.01),
  ex17('net radiation there, MJ/m²/d', () => stationEvaporation(april, 105, bangkok).net, 14.33, 0.01),
  {
    ...ex17(
      'reference evaporation at Bangkok in April, mm/d',
      () => 1000 * stationEvaporation(april, 105, bangkok).et0,
      5.72,
      0.005,
    ),
    source: `${FAO56}, Example 17 (one printed factor shows 0.0667 for the psychrometric constant of 0.0674)`,
  },
  ex20(
    'radiation at Lyon in July from temperatures, MJ/m²/d',
    () => stationEvaporation(july, 196, lyon).solar,
    22.29,
    0.01,
  ),
  ex20('clear-sky radiation there, MJ/m²/d', () => stationEvaporation(july, 196, lyon).clearSky, 30.58, 0.01),
  ex20('net radiation there, MJ/m²/d', () => stationEvaporation(july, 196, lyon).net, 13.48, 0.01),
  ex20(
    'reference evaporation at Lyon in July from temperatures alone, mm/d',
    () => 1000 * stationEvaporation(july, 196, lyon).et0,
    4.56,
    0.005,
  ),
  ex20(
    'the same with 1 m/s of wind, mm/d',
    () => 1000 * stationEvaporation({ ...july, wind: 1 }, 196, lyon).et0,
    4.2,
    0.05,
  ),
  ex20(
    'the same with 3 m/s of wind, mm/d',
    () => 1000 * stationEvaporation({ ...july, wind: 3 }, 196, lyon).et0,
    4.8,
    0.05,
  ),
  recalled('net radiation at Uccle on 6 July, MJ/m²/d', () => uccle.net, 13.28, 0.01),
  recalled('reference evaporation at Uccle on 6 July, mm/d', () => 1000 * uccle.et0, 3.88, 0.005),
];

const aberdeen = fixture('thornthwaite-aberdeen');
const aberdeenYear = () => thornthwaiteYear(aberdeen.tmean_C, aberdeen.latitude_deg);
const aberdeenIndex = () => (aberdeen.tmean_C as number[]).reduce((sum, T) => sum + heatIndex.compute(T), 0);
const worked = 'worked example in the documentation of a general evapotranspiration library, Aberdeen 2014';

/** Thornthwaite 1948, Fig. 13, mm a month of 30 days of twelve hours. */
const HOT: [number, number][] = [
  [26.5, 135],
  [28, 147.8],
  [30, 162.1],
  [32, 173.1],
  [34, 180.5],
  [36, 184.3],
  [38, 185],
];

const monthly: Check[] = [
  ...(aberdeen.daylight_h as number[]).map((hours, m) =>
    published(worked, ['dayLength'])(
      `mean day length of month ${m + 1} at Aberdeen, h`,
      () => monthlyDayLength(aberdeen.latitude_deg)[m],
      hours,
      1e-5,
    ),
  ),
  ...(aberdeen.pet_mm as number[]).map((mm, m) =>
    published(worked, ['thornthwaite', 'heatIndex', 'heatExponent'])(
      `Thornthwaite's evaporation of month ${m + 1} at Aberdeen, mm`,
      () => 1000 * aberdeenYear()[m],
      mm,
      0.0002,
    ),
  ),
  exact('the same polynomial nested (Horner)', ['heatExponent'])(
    'exponent at the heat index of Aberdeen',
    () => heatExponent.compute(aberdeenIndex()),
    ((6.75e-7 * 27.5874031 - 7.71e-5) * 27.5874031 + 1.792e-2) * 27.5874031 + 0.49239,
    1e-8,
  ),
  ...HOT.map(([T, mm]) =>
    published(
      'Thornthwaite 1948, Fig. 13 (values read second-hand; the polynomial for them runs up to 2 % high)',
      ['thornthwaiteHot'],
    )(`evaporation of a month of ${T} °C, mm`, () => 1000 * thornthwaiteHot.compute(12, 30, T), mm, 3.5),
  ),
];

const rockford = fixture('bookkeeping-rockford');
const metres = (mm: number[]) => mm.map((v) => v / 1000);
const rain = metres(rockford.rain_mm);
const demand = metres(rockford.pe_mm);
const ROCKFORD = 'Ritter & Dyer, The Physical Environment, Table 10.3, Rockford';
const straight = () => ordinaryYear(rain, demand, rockford.capacity_mm / 1000, 'straight');
const sum = (values: number[]) => values.reduce((a, b) => a + b, 0);
const columns: [string, string, (m: number) => number][] = [
  ['storage', 'storage_mm', (m) => straight().storage[m]],
  ['change of storage', 'change_mm', (m) => straight().storage[m] - straight().storage[(m + 11) % 12]],
  ['evaporation', 'actual_mm', (m) => straight().drawn[m]],
  ['deficit', 'deficit_mm', (m) => straight().deficit[m]],
  ['surplus', 'surplus_mm', (m) => straight().surplus[m]],
];

const bookkeeping: Check[] = [
  ...columns.flatMap(([what, key, ours]) =>
    (rockford[key] as number[]).map((mm, m) =>
      published(ROCKFORD, ['monthlyBookkeeping'])(
        `${what} of month ${m + 1} at Rockford, mm`,
        () => 1000 * ours(m),
        mm,
        1e-9,
      ),
    ),
  ),
  published(ROCKFORD, ['monthlyBookkeeping'])(
    'evaporation of the year at Rockford, mm',
    () => 1000 * sum(straight().drawn),
    634,
    1e-9,
  ),
  exact(
    `${ROCKFORD}: the months sum to 247 and close the year, 881 = 634 + 247; the printed total says 258`,
    ['monthlyBookkeeping'],
  )('surplus of the year at Rockford, mm', () => 1000 * sum(straight().surplus), 881 - 634, 1e-9),
  exact('C exp(−accumulated loss/C), Thornthwaite & Mather 1955, against the step form', ['soilRetention'])(
    'water left at Rockford after three dry months, m',
    () => runBookkeeping(rain.slice(5, 8), demand.slice(5, 8), 0.09, 0.09, 'exponential').storage[2],
    0.09 * Math.exp(-(17 + 57 + 42) / 90),
    1e-12,
  ),
  exact('limit: a small loss is drawn in full', ['soilRetention'])(
    'loss from a full store, ratio',
    () => (0.1 - soilRetention.compute(0.1, 1e-7, 0.1)) / 1e-7,
    1,
    1e-6,
  ),
];

/** Three holes on a plane whose slope is a 3-4-5 triangle: 0.012, −0.009. */
const HOLES = [
  [0, 0, 10],
  [40, 5, 9.565],
  [12, 30, 10.126],
].map(([x, y, head]) => ({ x, y, head }));
const plane = () => waterTablePlane([HOLES], 0.01)!;
const threePoint = exact('exact plane with a 3-4-5 gradient', [
  'hydraulicGradient',
  'flowAzimuth',
  'waterTablePlaneFit',
]);

const ground: Check[] = [
  threePoint('slope along x through three holes', () => plane().slopeX, -0.012, 1e-12),
  threePoint('slope along y through three holes', () => plane().slopeY, 0.009, 1e-12),
  threePoint('gradient through three holes', () => plane().gradient, 0.015, 1e-12),
  threePoint('direction of flow through three holes, degrees', () => plane().azimuth!, 126.869898, 1e-5),
  threePoint('head at a fourth place, m', () => plane().headAt(20, 20).head, 10 - 0.24 + 0.18, 1e-12),
  exact('geometry', ['hydraulicGradient'])(
    'gradient of slopes 3 and 4 %',
    () => hydraulicGradient.compute(0.03, 0.04),
    0.05,
    1e-15,
  ),
  ...(
    [
      [1, 0, 270],
      [-1, 0, 90],
      [0, 1, 180],
      [0, -1, 0],
    ] as const
  ).map(([a, b, azimuth]) =>
    exact('compass', ['flowAzimuth'])(
      `water that rises along (${a}, ${b}) flows to, degrees`,
      () => flowAzimuth.compute(0.1 * a, 0.1 * b),
      azimuth,
      1e-12,
    ),
  ),
  exact('dy/dt = −a y (2 − y/D), Ernst, by a difference of 1e-4/a', ['augerHoleUnfilled'])(
    'filling of an open hole against its equation, ratio',
    () => {
      const [a, t, h] = [1e-5, 4e4, 10];
      const u = (s: number) => augerHoleUnfilled.compute(0.9, a, s);
      return (u(t + h) - u(t - h)) / (2 * h) / (-a * u(t) * (2 - u(t)));
    },
    1,
    1e-6,
  ),
  exact('algebra: an empty hole fills by tanh(a t)', ['augerHoleUnfilled'])(
    'part unfilled at a t = 1',
    () => augerHoleUnfilled.compute(1, 1e-5, 1e5),
    1 - Math.tanh(1),
    1e-12,
  ),
  exact('4.63 r² v/((H + 20 r)(2 − y/H) y) is K: the unit form of Ernst, put in both ways', [
    'augerHoleRate',
  ])(
    'permeability back from the filling rate, m/d',
    () => {
      const [r, H, y, v] = [0.04, 1.26, 0.284, 0.00112];
      // dy/dt = a y (2 − y/H): the rate that the reading implies, and the K that gives it.
      const a = v / (y * (2 - y / H));
      return (a / augerHoleRate.compute(1, H, r)) * 86400;
    },
    0.690417,
    1e-5,
  ),
];

export const climateChecks: Check[] = [
  ...vapour,
  ...sun,
  ...combination,
  ...monthly,
  ...bookkeeping,
  ...ground,
];
