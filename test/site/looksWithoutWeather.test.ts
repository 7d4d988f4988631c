/** What looks say of the water where there is neither weather nor a level told. */
import { describe, expect, test } from 'vitest';
import { type Site, siteModel } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';

const HEADER = 'pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_m,pipe_bore_m,open_from_m';
const PITS = 'pit,top_m,bottom_m,texture,structure\nP1,0,0.25,clay loam,rooted\nP1,0.25,2.5,clay,blocky\n';

/** A pipe of long standing; a look is `date depth` or `date dry`. */
function site(looks: string[], latitude = 52, heads?: string, levels?: string): Site {
  const rows = looks.map((look) => {
    const [date, depth] = look.split(' ');
    return `P1,${date},,${depth === 'dry' ? 'dry,' : `level,${depth}`},2.0,0.1,0.03,1`;
  });
  return siteModel(
    read({
      'site.csv': `item,value,unit,note\nlatitude,${latitude},deg,\n`,
      'pond.csv': 'item,value,unit,note\nlength,4,m,\nwidth,3,m,\ndepth,1,m,\nring_width,0.2,m,\n',
      'pits.csv': PITS,
      'heads.csv': heads,
      'levels.csv': levels,
      'water.csv': looks.length > 0 ? `${HEADER}\n${rows.join('\n')}\n` : undefined,
    }),
    { samples: 64 },
  );
}
const reason = ({ assumptions }: Site, item: string) =>
  assumptions.find((a) => a.item === item)?.reason ?? '';
const WINTER = [
  '2023-11-12 0.30',
  '2023-12-10 0.20',
  '2024-01-14 0.08',
  '2024-02-11 0.10',
  '2024-03-10 0.12',
];
/** A date half a year later. */
const later = (look: string) => {
  const [date, depth] = look.split(' ');
  const [year, month, day] = date.split('-').map(Number);
  const m = month + 6;
  return `${m > 12 ? year + 1 : year}-${String(((m - 1) % 12) + 1).padStart(2, '0')}-${String(day).padStart(2, '0')} ${depth}`;
};
const highest = (levels: Float32Array) => levels.reduce((a, b) => Math.max(a, b));

describe('the surface is the end of it', () => {
  test.each([
    ['dips of a winter', WINTER],
    ['no look at all', []],
    ['one look in August', ['2023-08-13 1.4']],
  ])('%s: no draw stands above the ground', (_, looks) => {
    const { water } = site(looks);
    expect(highest(water.clayLow.month)).toBeLessThanOrEqual(0);
    expect(highest(water.clayLow.month)).toBeGreaterThan(-0.05);
  });

  test('nor above the ground on a slope, where a hole stands uphill of the pond and was never seen to run over', () => {
    const levels = 'point,role,distance_m,level_m\nA,rim,0,10\nB,rim,0,10.5\nP1,pit,2,10.6\n';
    const { water } = site(
      WINTER.map((look) => look.replace(' 0.08', ' 0.05')),
      52,
      undefined,
      levels,
    );
    expect(highest(water.clayLow.month)).toBeLessThanOrEqual(0);
    expect(highest(water.clayHigh.month)).toBeLessThanOrEqual(0.5);
  });

  test('unless it was seen there, or told', () => {
    const seen = site(WINTER.map((look) => look.replace(' 0.08', ' -0.05'))).water;
    expect(highest(seen.clayLow.month)).toBeGreaterThan(0.05);
    const told = (depth: number) => site([], 52, `place,month,depth_m,spread_m\nsite,high,${depth},0.1\n`);
    expect(highest(told(-0.02).water.clayLow.month)).toBeGreaterThan(0.1);
    expect(highest(told(0.02).water.clayLow.month)).toBe(0);
  });
});

describe('wet seasons', () => {
  const spread = (looks: string[], latitude: number) => {
    const { monthly, assumptions } = site(looks, latitude);
    return [monthly!.spread, assumptions.find(({ item }) => item === 'year-to-year spread')?.reason];
  };
  const summers = [...WINTER, '2023-06-11 1.1', '2023-09-10 1.5', '2024-06-09 1.0', '2024-08-11 1.4'];

  test('one winter is one, with looks in the summers before and after it', () => {
    expect(spread(WINTER, 52)).toEqual(spread(summers, 52));
    expect(spread(summers, 52)[1]).toMatch(/one wet season/);
  });

  test('south of the equator half a year later is the same', () => {
    expect(spread(summers.map(later), -37)).toEqual(spread(summers, 52));
    const two = [...summers, ...WINTER.map((look) => `${Number(look.slice(0, 4)) + 1}${look.slice(4)}`)];
    expect(spread(two, 52)[1]).toMatch(/2 wet seasons/);
    expect(spread(two.map(later), -37)).toEqual(spread(two, 52));
    expect(site(two.map(later), -37).monthly!.low).toEqual([
      ...site(two, 52).monthly!.low.slice(6),
      ...site(two, 52).monthly!.low.slice(0, 6),
    ]);
  });
});

describe('too few looks for the winter', () => {
  test('they are counted and told; none is told otherwise', () => {
    const few = ['2023-12-10 0.80', '2024-01-14 0.70', '2024-08-11 1.4'];
    expect(reason(site(few), 'winter water')).toMatch(/3 looks \(the highest 0\.7 m .*2024-01-14\) 2 of/);
    expect(reason(site([]), 'winter water')).not.toMatch(/look/);
    expect(reason(site(few), 'winter water')).not.toBe(reason(site([]), 'winter water'));
  });

  test('a summer dipped dry is no longer 0.3 m below ground, and what is usual is named', () => {
    const dry = site(['2023-08-13 dry']).monthly!;
    expect(dry.low[7]).toBeCloseTo(2 - 0.3, 9);
    expect(dry.low[0]).toBe(0);
    expect(dry.low[5]).toBeGreaterThan(dry.low[4]);
    expect(dry.usual).toEqual([]);
    expect(site([]).monthly!.usual).toEqual([5, 6, 7, 8, 9, 10]);
  });

  test('the nearer the water was seen in summer, the nearer it is taken', () => {
    const august = ['0.2', '0.5', '0.9', '1.4'].map((d) => site([`2023-08-13 ${d}`]).monthly!.low[7]);
    expect(august).toEqual([...august].sort((a, b) => a - b));
  });
});
