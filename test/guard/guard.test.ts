/** The guard must be able to fail: on what version 0.1.0 told of ten gardens, and on dangers planted in a sound answer. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Kind } from './danger.js';
import { guard } from './guard.js';
import { decidedByRounding } from './rounding.js';
import { asTold } from './run.js';
import { TEN } from './ten.js';
import type { Told } from './told.js';

/** What 0.1.0 answered with 64 samples and seed 1; the garden at its spill also with every length off by a billionth. */
const AS_IT_WAS: Record<string, { told: Told; moved?: Told }> = JSON.parse(
  readFileSync(new URL('../fixtures/guard/version-0.1.0.json', import.meta.url), 'utf8'),
);

describe('what version 0.1.0 called safe', () => {
  test.each(TEN)('$name', ({ name, files, kind }) => {
    const { told, moved } = AS_IT_WAS[name] as { told: Told; moved?: Told };
    const kinds = guard(files, told).dangers.map((danger) => danger.kind);
    if (moved && decidedByRounding(told, moved).length > 0) kinds.push('rounding');
    expect(kinds).toContain(kind);
  });
});

const rows = (depth: (month: number) => number) =>
  Array.from({ length: 12 }, (_, at) => `site,${at + 1},${depth(at + 1)},0.05,sealed pipe`).join('\n');

/** Sound: stiff clay, water 1.9 m down all year, laid back, nothing near. */
const SOUND: Record<string, string> = {
  'site.csv': 'item,value,unit,note\nlatitude,52,deg,\nuphill_area,0,m2,\nroof_area,0,m2,\n',
  'pond.csv':
    'item,value,unit,note\nlength,5,m,\nwidth,4,m,\ndepth,0.9,m,\nside_slope,1,,\nring_width,0,m,\nbedding,none,,\nwater_above_rim_ground,0,m,\nhighest_raise,0,m,\nemptied_in,9,,\ndays_empty,3,d,\n',
  'pits.csv':
    'pit,top_m,bottom_m,texture,structure,mottles,consistency\nP1,0,0.25,clay loam,rooted,none,firm\nP1,0.25,3,clay,massive,,stiff\n',
  'levels.csv': 'point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10\nP1,pit,3,10\n',
  'heads.csv': `place,month,depth_m,spread_m,source\n${rows(() => 1.9)}\n`,
};
const with_ = (name: string, more: string) => ({ ...SOUND, [name]: `${SOUND[name]}${more}` });

interface Planted {
  kind: Kind;
  files?: Record<string, string>;
  plant(told: Told): void;
}

const leave = () => {};
const drainedTo = (told: Told) => {
  Object.assign(told.recommendation, { option: 'drain-to-outlet' });
  told.drain = { pipe_capacity_m3_s: 0.005, outlet: 'out', reserve: { pipe: 9 } };
};

/** The same answer told of a garden in which it is wrong, or a wrong answer told of the same garden. */
const PLANTED: Planted[] = [
  {
    kind: 'full',
    plant: ({ water }) => {
      water.seasonal_high_depth_m = { p10: -0.1, p50: 0.1, p90: 0.4 };
    },
  },
  {
    kind: 'level',
    plant: ({ water }) => {
      water.by_month[1]!.table_depth_m = { p10: 0.3, p50: 0.5, p90: 0.8 };
    },
  },
  {
    kind: 'emptied',
    files: {
      ...SOUND,
      'heads.csv': `place,month,depth_m,spread_m,source\n${rows((month) => (month === 9 ? 0.1 : 1.9))}\n`,
      'pits.csv': SOUND['pits.csv']!.replaceAll('clay,massive', 'loam,massive'),
    },
    plant: ({ ground }) => {
      for (const { ksat_m_s } of ground.layers) ksat_m_s.p50 = 1e-6;
    },
  },
  {
    kind: 'hours',
    plant: ({ water, ground }) => {
      water.by_month[1]!.table_depth_m = { p10: 0.3, p50: 0.5, p90: 0.8 };
      for (const { ksat_m_s } of ground.layers) ksat_m_s.p50 = 1e-6;
    },
  },
  {
    kind: 'water',
    files: { ...SOUND, 'heads.csv': `place,month,depth_m,spread_m,source\n${rows(() => 0.5)}\n` },
    plant: leave,
  },
  {
    kind: 'season',
    files: {
      ...Object.fromEntries(Object.entries(SOUND).filter(([name]) => name !== 'heads.csv')),
      'climate.csv': `month,rain_mm,tmean_c,et0_mm\n${[5, 5, 10, 30, 90, 260, 330, 310, 230, 90, 20, 5]
        .map((mm, at) => `${at + 1},${mm},25,110`)
        .join('\n')}\n`,
    },
    plant: ({ water }) => {
      for (const { month, table_depth_m } of water.by_month) table_depth_m.p50 = month < 5 ? 1.2 : 1.9;
    },
  },
  {
    kind: 'seam unasked',
    files: with_('pits.csv', 'P2,0,0.9,clay,massive,,stiff\nP2,0.9,2,sand,,,\n'),
    plant: ({ water, recommendation }) => {
      recommendation.depth_m = 0.8;
      water.seasonal_high_depth_m.p50 = 0.2;
    },
  },
  {
    kind: 'footing',
    files: {
      ...with_('levels.csv', 'wall,footing,0.2,9.8\n'),
      'pond.csv': SOUND['pond.csv']!.replace('side_slope,1', 'side_slope,0'),
    },
    plant: leave,
  },
  {
    kind: 'outlet',
    // Long enough for what tight clay brings.
    files: {
      ...with_('levels.csv', 'out,outlet,10,9.6\n'),
      'pond.csv': `${SOUND['pond.csv']?.replace('days_empty,3', 'days_empty,90')}`,
    },
    plant: (told) => {
      drainedTo(told);
      told.water.by_month[8]!.table_depth_m = { p10: 0.1, p50: 0.2, p90: 0.3 };
    },
  },
  {
    kind: 'flood',
    files: with_('levels.csv', 'out,outlet,10,8.5\nditch,ditch,10.5,8.4\nflood,flood,10.5,10.3\n'),
    plant: (told) => {
      drainedTo(told);
      told.water.seasonal_high_depth_m = { p10: -0.3, p50: -0.1, p90: 0.4 };
    },
  },
];

describe('a danger planted in a sound answer', () => {
  const sound = asTold(SOUND);

  test('the answer is sound as told', () => {
    expect(guard(SOUND, sound)).toMatchObject({ dangers: [], unjudged: [] });
    expect(sound.recommendation).toMatchObject({ option: 'no-drain', depth_m: 0.9 });
  });

  test.each(PLANTED)('$kind', ({ kind, files = SOUND, plant }) => {
    const told = structuredClone(sound);
    plant(told);
    expect(guard(files, told).dangers.map((danger) => danger.kind)).toContain(kind);
  });
});
