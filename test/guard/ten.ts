/** Ten small gardens that version 0.1.0 called safe, each with the danger by hand. Invented. */
import { Dice } from '../survey/generated.js';
import { CLIMATES, type Climate, weatherCsv } from './climate.js';
import type { Kind } from './danger.js';

export interface DangerousGarden {
  name: string;
  files: Record<string, string>;
  kind: Kind;
  /** why it is not safe as planned, from the numbers in the files alone */
  byHand: string;
}

type Facts = Record<string, string | number>;

/** Unit of each fact that needs one. */
const METRES =
  /^(length|width|depth|water_above|highest|ring_width|usual|bedding_thickness|highest_water|full_level)/;

const factsCsv = (facts: Facts) =>
  `item,value,unit,note\n${Object.entries(facts)
    .map(([item, value]) => `${item},${value},${METRES.test(item) && value !== 'none' ? 'm' : ''},`)
    .join('\n')}\n`;

const CLAY = `P1,0,0.25,clay loam,rooted,none,firm,,
P1,0.25,2.6,clay,massive,,firm,6e-7,60`;
const RIMS = `A,rim,0,10
B,rim,0,10
P1,pit,3,10`;
/** Depth to the water of each month, January first: a wet winter, a dry late summer. */
const WINTER = [0.3, 0.3, 0.35, 0.5, 0.7, 0.9, 1.1, 1.25, 1.3, 1.1, 0.7, 0.4];

function garden({
  site = {},
  pond = {},
  pits = CLAY,
  levels = '',
  heads = WINTER.map((depth, at) => `site,${at + 1},${depth},0.05,sealed pipe`),
  extra = {},
}: {
  site?: Facts;
  pond?: Facts;
  pits?: string;
  levels?: string;
  heads?: string[];
  extra?: Record<string, string>;
}): Record<string, string> {
  return {
    'site.csv': factsCsv({
      name: 'Ten Gardens',
      latitude: 52,
      uphill_area: 0,
      roof_area: 0,
      mains_power: 'yes',
      pump_acceptable: 'yes',
      discharge_allowed: 'yes',
      protected_ground: 'no',
      ...site,
    }),
    'pond.csv': factsCsv({
      shape: 'box',
      length: 5,
      width: 3,
      depth: 1,
      side_slope: 1,
      water_above_rim_ground: 0.1,
      usual_drawdown: 0.05,
      highest_raise: 0,
      ring_width: 0,
      bedding: 'none',
      emptied_in: 9,
      days_empty: 3,
      ...pond,
    }),
    'pits.csv': `pit,top_m,bottom_m,texture,structure,mottles,consistency,ksat_m_s,strength_kpa\n${pits}\n`,
    'levels.csv': `point,role,distance_m,level_m\n${RIMS}\n${levels}`,
    ...(heads.length > 0 && { 'heads.csv': `place,month,depth_m,spread_m,source\n${heads.join('\n')}\n` }),
    ...extra,
  };
}

const DEEP_WATER = Array.from({ length: 12 }, (_, at) => `site,${at + 1},1.7,0.05,sealed pipe`);
const OVER_SAND = `P1,0,0.3,clay loam,rooted,few,firm,,
P1,0.3,1.6,clay,massive,common,stiff,,
P1,1.6,2,sand,,grey,,,`;
/** The hole met sand at 1.6 m, and the water rose to 0.10 m below ground. */
const STRIKE = `pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_cm
P1,2024-08-10,10:00,opened,2,2,10
P1,2024-08-10,10:05,strike,1.6,2,10
P1,2024-08-10,15:00,level,0.12,2,10
P1,2024-08-11,09:00,level,0.1,2,10
`;
const MARITIME = CLIMATES.find(({ name }) => name === 'maritime') as Climate;
const MONSOON = CLIMATES.find(({ name }) => name === 'monsoon') as Climate;

export const TEN: DangerousGarden[] = [
  {
    name: 'emptied into winter',
    files: garden({ pond: { emptied_in: 8, days_empty: 200 } }),
    kind: 'emptied',
    byHand:
      'emptied from August for 200 days it stands empty in February: water 0.30 m down, floor at 1.00, head 0.70 m; ' +
      'K 6e-7, floor 3.0 × 1.0 m, r 0.98 m: Q = 4 × 6e-7 × 0.98 × 0.70 = 1.6e-6 m³/s, 0.06 m³ in 10 h',
  },
  {
    name: 'a seam nobody measured',
    files: garden({ pits: OVER_SAND, heads: DEEP_WATER, extra: { 'water.csv': STRIKE } }),
    kind: 'heave',
    byHand: 'sand from 1.6 m, water rose to −0.10 m: 19 × (1.6 − 1.0) ÷ (9.81 × 1.5) = 0.77',
  },
  {
    name: 'an existing pond over sand',
    files: garden({
      pond: { state: 'existing' },
      pits: OVER_SAND,
      heads: [...DEEP_WATER, 'below:P1,high,0.1,0.1,a pipe in the sand'],
    }),
    kind: 'heave',
    byHand: 'emptied in September the floor at 1.0 m is all that lies over the sand: 0.77 as above',
  },
  {
    name: 'upright in sand',
    files: garden({
      pond: { depth: 1.5, side_slope: 0 },
      pits: 'P1,0,0.25,sandy loam,rooted,none,firm,,\nP1,0.25,3,sand,,none,,,',
      heads: DEEP_WATER.map((row) => row.replace('1.7', '2.3')),
    }),
    kind: 'side',
    byHand: 'sand stands at its friction angle, 30 to 40°: 1.2 to 1.7 to 1, never upright at 1.5 m',
  },
  {
    name: 'monsoon ditch',
    files: garden({
      site: { latitude: 22.5 },
      pond: { ring_width: 0.15, ring_fill: 'topsoil', emptied_in: 8, days_empty: 4 },
      pits: CLAY.replace('6e-7', ''),
      heads: [],
      levels: 'out,outlet,20,8.4\nditch,ditch,21,8.2\nflood,flood,21,9.7\n',
      extra: { 'weather.csv': weatherCsv(MONSOON, 8, false, new Dice(6)) },
    }),
    kind: 'flood',
    byHand:
      'rain 310 mm against 108 mm evaporation in August: the ditch floods then, to −0.30 m, over the floor at −1.00',
  },
  {
    name: 'river gravel',
    files: garden({
      pond: {
        shape: 'oval',
        length: 6,
        width: 4,
        depth: 1.2,
        side_slope: 1.5,
        emptied_in: 3,
        bedding: 'sand',
      },
      pits: 'P1,0,0.3,sandy loam,rooted,none,firm,,\nP1,0.3,3,gravel,,none,,,',
      heads: [0.4, 0.4, 0.5, 0.6, 0.8, 0.9, 1, 1.05, 1.05, 0.9, 0.7, 0.5].map(
        (depth, at) => `site,${at + 1},${depth},0.1,neighbour well`,
      ),
      levels: 'gully,discharge,9,10.2\n',
    }),
    kind: 'reserve',
    byHand:
      'gravel K 3e-3 m/s, r 0.9 m, head 0.7 m: 4 × 3e-3 × 0.9 × 0.7 = 7.6e-3 m³/s, 650 m³/d; a garden pump lifts 240',
  },
  {
    name: 'a house close by',
    files: garden({
      pond: { depth: 1.4, side_slope: 0 },
      pits: CLAY.replaceAll('firm', 'stiff'),
      heads: DEEP_WATER,
      levels: 'wall,neighbour-house,0.4,10.1\n',
    }),
    kind: 'footing unasked',
    byHand: 'house at 0.4 m, dug upright to 1.4 m: 45° from a footing 0.3 m down meets the toe 1.1 m away',
  },
  {
    name: 'four metres',
    files: garden({
      pond: { length: 6, width: 4, depth: 4, side_slope: 0.2 },
      pits: CLAY.replace('2.6', '4.8').replaceAll('firm', 'stiff'),
      heads: WINTER.map((_, at) => `site,${at + 1},4.5,0.05,sealed pipe`),
    }),
    kind: 'depth',
    byHand: 'the best of clays is laid back 0.5 to 1 for a day, and no gardener digs 4 m',
  },
  {
    name: 'full pond without its pump',
    files: garden({
      pond: { water_above_rim_ground: -0.25, emptied_in: 9, bedding: 'none', usual_drawdown: 0.02 },
      pits: CLAY.replaceAll('firm', 'stiff'),
      heads: WINTER.map((depth, at) => `site,${at + 1},${(depth - 0.25).toFixed(2)},0.05,sealed pipe`),
      levels: 'gully,discharge,9,10.2\n',
    }),
    kind: 'power',
    byHand: 'full at −0.25 m, water without the pump at −0.05 m in January: 0.20 m lifts the full liner',
  },
  {
    name: 'a pond at its spill',
    files: garden({
      site: { uphill_area: '60 m2' },
      pond: {
        water_above_rim_ground: 0.05,
        usual_drawdown: 0.05,
        ring_width: 0.1,
        ring_fill: 'topsoil',
        emptied_in: 'never',
      },
      pits: CLAY.replace('6e-7', '3e-8'),
      heads: [],
      extra: { 'weather.csv': weatherCsv(MARITIME, 8, false, new Dice(6)) },
    }),
    kind: 'rounding',
    byHand:
      'pond drawn down to 0.05 − 0.05 = 0, ring spilling at 0: level with level, nothing lifts or all does',
  },
];
