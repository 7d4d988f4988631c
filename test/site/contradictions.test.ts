import { describe, expect, test } from 'vitest';
import { siteModel } from '../../lib/site/index.js';
import { surveyOf } from '../folder.js';
import { baseSurvey } from '../risk/base.js';

const HEADER =
  'pit,top_m,bottom_m,texture,sand_pct,silt_pct,clay_pct,structure,consistency,ksat_m_s,strength_kpa';
const told = (layer: string, soakage?: string) => {
  const files: Record<string, string> = {
    ...baseSurvey(),
    'pits.csv': `${HEADER}\nP1,0,0.25,clay loam,,,,rooted,firm,,\nP1,0.25,2.6,${layer}\n`,
    ...(soakage && {
      'soakage.csv': `pit,test,minutes,depth_to_water_cm,hole_depth_cm,hole_diameter_cm\n${soakage}\n`,
    }),
  };
  return siteModel(surveyOf(files), { samples: 8 }).warnings.filter(({ code }) =>
    /against|gravel/.test(code),
  );
};

describe('evidence against evidence', () => {
  test('clay by name, sand by test: told with its consequence', () => {
    expect(told('clay,,,,massive,stiff,5e-5,')).toMatchObject([
      {
        code: 'texture-against-test',
        file: 'pits.csv',
        line: 3,
        message: expect.stringMatching(
          /called clay, about .* gives 5.0×10⁻⁵ m\/s .*as .*sand.* does; both count.*drain runs/,
        ),
      },
    ]);
  });

  test('a soakage test in clay faster than gravel', () => {
    const found = told('clay,,,,blocky,stiff,,', 'P1,1,0,30,60,15\nP1,1,0.03,45,60,15\nP1,1,0.06,55,60,15');
    expect(found).toMatchObject([
      {
        code: 'faster-than-gravel',
        file: 'soakage.csv',
        line: 2,
        message: expect.stringContaining('burrow'),
      },
    ]);
  });

  test('sand by name, clay by test: what it means for a drain', () => {
    expect(told('sand,,,,,,1e-9,')[0]).toMatchObject({
      code: 'texture-against-test',
      message: expect.stringContaining('a drain is hardly reached'),
    });
  });

  test('grain sizes of another soil', () => {
    expect(told('clay,88,7,5,massive,stiff,,')).toMatchObject([
      { code: 'texture-against-grains', line: 3, message: expect.stringContaining('those of sand') },
    ]);
  });

  test('a stiff clay of 12 kPa', () => {
    expect(told('clay,,,,massive,stiff,,12')).toMatchObject([
      { code: 'strength-against-thumb', line: 3, message: expect.stringContaining('12 kPa') },
    ]);
  });

  test.each(['clay,20,25,55,blocky,stiff,1e-7,60', 'silty clay,,,,massive,firm,2e-9,30', 'clay,60,0,41,,,,'])(
    'nothing to tell of %s',
    (layer) => expect(told(layer)).toEqual([]),
  );
});
