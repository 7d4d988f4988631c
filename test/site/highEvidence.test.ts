import { describe, expect, test } from 'vitest';
import { siteModel } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';

/** A site whose water is known to stand at 0.5 m below its ground at level 10, with or without a remembered mark. */
function high(mark?: number, mottles = '') {
  const said = mark === undefined ? '' : `highest_water_mark,${mark},m,\n`;
  const { highEvidence, warnings } = siteModel(
    read({
      'site.csv': `item,value,unit,note\nlatitude,52,deg,\n${said}`,
      'levels.csv': 'point,role,level_m\nr1,rim,10\n',
      'heads.csv': 'place,month,depth_m,spread_m\nsite,high,0.5,0.1\n',
      'pits.csv': `pit,top_m,bottom_m,texture,mottles\nP1,0,0.25,clay loam,\nP1,0.25,2.5,clay,${mottles}\n`,
    }),
    { samples: 200 },
  );
  return { highEvidence, told: warnings.filter((w) => w.code === 'seasonal-high-disagrees') };
}

describe('the highest mark remembered', () => {
  test.each([
    [9.7, 'agrees'],
    [9.95, 'higher'],
    [9.3, 'lower'],
  ])('%d on the mark of the levels %s', (mark, says) => {
    const { highEvidence, told } = high(mark);
    expect(highEvidence).toEqual([
      { source: 'highest mark remembered', depth: expect.closeTo(10 - mark, 9), spread: 0, says },
    ]);
    expect(told.length).toBe(says === 'agrees' ? 0 : 1);
    if (says !== 'agrees') expect(told[0]).toMatchObject({ file: 'site.csv', line: 3 });
  });
});

test('mottles from near the ground speak against water at half a metre, from deeper they do not', () => {
  expect(high(undefined, 'few').highEvidence).toEqual([]);
  const shallow = high(undefined, 'common');
  expect(shallow.highEvidence[0]).toMatchObject({ source: 'mottles and grey', says: 'higher' });
  expect(shallow.told[0]).toMatchObject({
    file: 'pits.csv',
    message: expect.stringMatching(/0\.07 m.*0\.50 m/),
  });
  const deep = high(undefined, '\nP2,0,0.7,clay,\nP2,0.7,2,clay,common');
  expect(deep.highEvidence[0].says).toBe('agrees');
  expect(deep.told).toEqual([]);
});

describe('the highest level read', () => {
  const told = (depth: number, reading = 'level') =>
    siteModel(
      read({
        'heads.csv': 'place,month,depth_m,spread_m\nsite,high,0.5,0.1\n',
        'water.csv': `pit,date,reading,depth_m,hole_depth_m\nP1,2023-02-11,level,0.9,2\nP1,2024-02-11,${reading},${depth},2\n`,
      }),
      { samples: 200 },
    ).warnings.filter(({ code }) => code === 'read-above-high');

  test('above all but one simulated year in twenty is told, with where and when', () => {
    expect(told(0.1)).toMatchObject([
      { file: 'water.csv', message: expect.stringMatching(/^P1 on 2024-02-11: water at 0\.10 m.*0\.3\d m/) },
    ]);
  });

  test('within the years simulated it is not, nor one of a hole that still fills', () => {
    expect(told(0.35)).toEqual([]);
    expect(told(0.1, 'strike')).toEqual([]);
  });
});
