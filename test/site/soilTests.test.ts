import { describe, expect, test } from 'vitest';
import { Assumptions, groundOf, soilTestsOf } from '../../lib/site/index.js';
import { read } from '../survey/folder.js';

const PITS = [
  'pit,top_m,bottom_m,texture,structure',
  'P1,0,0.3,clay loam,rooted',
  'P1,0.3,1.2,clay,massive',
  'P1,1.2,2,sandy loam,',
].join('\n');
const SOAKAGE = 'pit,test,minutes,depth_to_water_m,hole_depth_m,hole_diameter_cm,soaked_before';
const WATER = 'pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_cm,pipe_bore_cm,open_from_m';

function tests(files: Record<string, string | undefined>) {
  const survey = read({ 'pits.csv': PITS, ...files });
  const found = soilTestsOf(survey);
  const ground = groundOf(survey, found.tests, new Assumptions());
  return { ...found, ground };
}
const soakage = (...rows: string[]) => tests({ 'soakage.csv': [SOAKAGE, ...rows].join('\n') });

describe('soakage.csv', () => {
  const FALL = ['P1,a,0,0.5,0.9,10,yes', 'P1,a,600,0.52,0.9,10,yes', 'P1,a,1440,0.55,0.9,10,yes'];

  test('a falling level measures the layer it stands in, and no other', () => {
    const { tests: found, ground, warnings } = soakage(...FALL);
    expect(warnings).toEqual([]);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({
      pit: 'P1',
      name: 'test a in P1',
      origin: { file: 'soakage.csv', line: 2 },
    });
    expect(found[0].depth).toBeCloseTo(0.7, 12);
    // Massive clay sucks more than gravity pulls: well below what gravity alone would say.
    // Gravity alone: K = (r/2) ln((h₁ + r/2)/(h₂ + r/2))/t.
    const gravity = (0.025 * Math.log(0.425 / 0.375)) / 86400;
    expect(found[0].test.permeability).toBeLessThan(gravity / 2);
    const [topsoil, clay, sand] = ground.layers.map((l) => l.permeability);
    expect(topsoil.evidence.join()).not.toContain('test a');
    expect(sand.evidence.join()).not.toContain('test a');
    expect(clay.evidence[0]).toBe('measured here once');
    expect(clay.evidence[1]).toMatch(/^test a in P1: \S+e-\d+ m\/s by falling level in a hole/);
  });

  test('a level that stands still is a bound in the evidence, and pulls the layer down', () => {
    const { ground, tests: found } = soakage('P1,a,0,0.5,0.9,10,yes', 'P1,a,1440,0.501,0.9,10,yes');
    expect(found[0].test.says).toBe('slower than');
    const clay = ground.layers[1].permeability;
    expect(clay.evidence[0]).toMatch(/^test a in P1: slower than \S+ m\/s: the test cannot resolve it/);
    expect(clay.median).toBeLessThan(tests({}).ground.layers[1].permeability.median / 3);
  });

  test('in cracked clay the smear is named and the spread widened', () => {
    const cracked = PITS.replace('massive', 'cracked');
    const { tests: found } = tests({ 'pits.csv': cracked, 'soakage.csv': [SOAKAGE, ...FALL].join('\n') });
    expect(found[0].test.spread).toBe(1.2);
    expect(found[0].test.bias.join()).toMatch(/smear may hide 10 to 100 times/);
  });

  test.each([
    [
      ['P1,a,0,0.5,,10,', 'P1,a,60,0.6,,10,'],
      'test-geometry',
      /missing hole_depth.*Write the depth and the diameter/,
    ],
    [['P1,a,0,0.5,0.9,,', 'P1,a,60,0.6,0.9,,'], 'test-geometry', /missing hole_diameter/],
    [
      ['P1,a,0,0.6,0.9,10,', 'P1,a,60,0.5,0.9,10,'],
      'test-wrong-way',
      /test a in P1 is not used: .*rose during.*Cover the hole/,
    ],
    [['P1,a,0,0.5,0.9,10,'], 'test-too-few', /missing a second look/],
    [
      ['P9,a,0,0.5,0.9,10,', 'P9,a,60,0.6,0.9,10,'],
      'test-geometry',
      /pits.csv says nothing of P9 at 0.7 m.*Log that hole/,
    ],
  ])('what cannot be read is a warning with its row and a remedy: %#', (rows, code, words) => {
    const { tests: found, warnings } = soakage(...rows);
    expect(found).toEqual([]);
    expect(warnings).toHaveLength(1);
    expect(warnings[0]).toMatchObject({ code, file: 'soakage.csv', line: 2 });
    expect(warnings[0].message).toMatch(words);
  });
});

test('a falling test in a hole that always stands in water is refused', () => {
  const levels = (reading: string) =>
    [WATER, 'P1,2024-02-01,09:00,level,0.3,,,,', `P1,2024-08-01,09:00,${reading},,,`].join('\n');
  const rows = [SOAKAGE, 'P1,a,0,0.1,0.9,10,yes', 'P1,a,600,0.3,0.9,10,yes'].join('\n');
  const wet = tests({ 'soakage.csv': rows, 'water.csv': levels('level,0.6,') });
  expect(wet.tests).toEqual([]);
  expect(wet.warnings[0]).toMatchObject({ code: 'test-below-table', file: 'soakage.csv', line: 2 });
  expect(wet.warnings[0].message).toMatch(/water table stands at 0.6 m.*Bail the hole/);
  expect(tests({ 'soakage.csv': rows, 'water.csv': levels('dry,,1.2') }).tests).toHaveLength(1);
});

describe('recoveries in water.csv', () => {
  const open = (...rows: string[]) =>
    tests({ 'water.csv': [WATER, 'P1,2024-02-01,09:00,opened,1.1,1.1,8,,', ...rows].join('\n') });

  test('an open hole by the auger-hole method, a pipe by its time lag', () => {
    const auger = open(
      'P1,2024-02-20,09:00,level,0.4,,,,',
      'P1,2024-02-20,10:00,bailed,0.8,,,,',
      'P1,2024-02-20,10:30,level,0.76,,,,',
      'P1,2024-02-20,11:00,level,0.73,,,,',
    );
    expect(auger.warnings).toEqual([]);
    expect(auger.tests.map((t) => t.test.method)).toEqual(['recovery of an auger hole (Ernst)']);
    expect(auger.tests[0].depth).toBeCloseTo(0.75, 12);
    expect(auger.ground.layers[1].permeability.evidence[1]).toMatch(/^recovery in P1: /);
    const pipe = tests({
      'water.csv': [
        WATER,
        'P1,2024-02-01,09:00,opened,1.1,1.1,10,3.2,0.6',
        'P1,2024-02-20,09:00,level,0.4,,,3.2,0.6',
        'P1,2024-02-20,10:00,bailed,1,,,3.2,0.6',
        'P1,2024-02-20,18:00,level,0.9,,,3.2,0.6',
        'P1,2024-02-21,10:00,level,0.7,,,3.2,0.6',
      ].join('\n'),
    });
    expect(pipe.tests.map((t) => t.test.method)).toEqual(['recovery after bailing (time lag)']);
  });

  test('no level before the bailing, or one long before, is no recovery', () => {
    const after = ['P1,2024-02-20,10:00,bailed,0.8,,,,', 'P1,2024-02-20,11:00,level,0.7,,,,'];
    expect(open(...after)).toMatchObject({ tests: [], warnings: [] });
    expect(open('P1,2024-01-02,09:00,level,0.4,,,,', ...after).tests).toEqual([]);
  });

  test('water that sinks after bailing is refused', () => {
    const { warnings } = open(
      'P1,2024-02-20,09:00,level,0.4,,,,',
      'P1,2024-02-20,10:00,bailed,0.8,,,,',
      'P1,2024-02-20,11:00,level,0.9,,,,',
    );
    expect(warnings[0]).toMatchObject({ code: 'test-wrong-way', file: 'water.csv' });
  });
});

test('without a pit log the assumed profile takes the tests', () => {
  const rows = [SOAKAGE, 'A,1,0,0.5,0.9,10,yes', 'A,1,600,0.52,0.9,10,yes', 'A,1,1440,0.55,0.9,10,yes'];
  const { ground, warnings } = tests({ 'pits.csv': undefined, 'soakage.csv': rows.join('\n') });
  expect(warnings).toEqual([]);
  expect(ground.layers[1].permeability.evidence[0]).toBe('measured here once');
});
