import { describe, expect, test } from 'vitest';
import { isoDate } from '../../lib/climate/index.js';
import { tubVolume } from '../../lib/groundwater/index.js';
import { type Site, siteModel, tubYear } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';
import { realDays } from '../weather.js';

const POND = `item,value,unit,note
shape,box,,
length,4,m,
width,3,m,
depth,1,m,
ring_width,0.2,m,
ring_fill,gravel,,
bedding,none,,
`;
const SITE =
  'item,value,unit,note\nlatitude,47.45,deg,\nuphill_area,20,m2,\nuphill_cover,lawn,,\nroof_area,0,m2,\n';
const LEVELS = 'point,role,level_m\nr1,rim,10\n';
const WEATHER = `date,rain_mm,tmin_c,tmax_c\n${realDays('Seattle')
  .map((d) => `${isoDate(d.day)},${(d.rain! * 1000).toFixed(1)},${d.tmin},${d.tmax}`)
  .join('\n')}\n`;
const site = (files: Record<string, string | undefined> = {}) =>
  siteModel(read({ 'pond.csv': POND, 'site.csv': SITE, 'levels.csv': LEVELS, ...files }), { samples: 32 });
const STORM = { rain: 0.03, seconds: 7200 };

test('without a permeable layer there is none', () => {
  expect(tubYear(site({ 'pond.csv': POND.replace('0.2,m', '0,m') }), STORM)).toBeUndefined();
});

describe('hours to full', () => {
  const dry = site();
  test('when the area that sheds has brought what the ring holds', () => {
    const storm = { rain: 0.2, seconds: 7200 };
    // Ring 2.8 m² of gravel a metre deep: 0.98 m³; half of 20 m² of lawn and the ring itself: 12.8 m²: 76.6 mm of 200.
    const needed = tubVolume(dry.tub!, dry.tub!.spill) / (dry.tub!.ringArea + 0.5 * 20);
    // In the first half of a triangular storm 2 P x² has fallen.
    expect(tubYear(dry, storm)!.hoursToFull).toBeCloseTo(2 * Math.sqrt(needed / (2 * storm.rain)), 6);
  });

  test('never by a storm too small, nor through a cap', () => {
    expect(tubYear(dry, STORM)!.hoursToFull).toBeUndefined();
    const capped: Site = { ...dry, catchment: { ...dry.catchment, capped: true } };
    expect(tubYear(capped, { rain: 0.2, seconds: 7200 })!.hoursToFull).toBeUndefined();
  });
});

test('tight ground drains it in years or never, open ground in days', () => {
  const at = (median: number) => {
    const s = site({ 'heads.csv': 'place,month,depth_m,spread_m\nsite,high,2,0.1\n' });
    const permeability = { median, spread: 0.2, evidence: [] };
    const layers = s.ground.layers.map((layer) => ({ ...layer, permeability }));
    return tubYear({ ...s, ground: { ...s.ground, layers } }, STORM)!.weeksToDrain;
  };
  expect(at(1e-5).likely).toBeLessThan(1);
  const { quick, likely, slow } = at(1e-8);
  expect(quick!).toBeLessThan(likely!);
  expect(likely!).toBeLessThan(slow!);
  expect(at(1e-11).slow).toBeUndefined();
});

test('days above a level: fewer the higher, out of a year', () => {
  const { daysAbove } = tubYear(site({ 'heads.csv': undefined, 'weather.csv': WEATHER }), STORM)!;
  expect(daysAbove.length).toBe(5);
  daysAbove.reduce((a, b) => {
    expect(b.level).toBeGreaterThan(a.level);
    expect(b.days).toBeLessThanOrEqual(a.days);
    return b;
  });
  expect(daysAbove[0].days).toBeLessThanOrEqual(366);
  expect(daysAbove[0].days).toBeGreaterThan(30);
  expect(tubYear(site(), STORM)!.daysAbove).toEqual([]);
});
