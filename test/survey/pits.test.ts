import { describe, expect, test } from 'vitest';
import { problem, read } from './folder.js';

describe('headers', () => {
  test.each<[string, string, string, RegExp]>([
    [
      'pit,top_m,bottom_m,colour',
      'unknown-column',
      'colour',
      /Use one of: pit, top_m\/cm\/mm\/ft\/in, bottom_m/,
    ],
    ['pit,top_m,bottom_m,textur', 'unknown-column', 'textur', /Did you mean 'texture'\?/],
    ['pit,top_m,bottom,texture', 'missing-unit', 'bottom', /bottom_m, bottom_cm/],
    ['pit,top_m,bottom_furlong,texture', 'unknown-unit', 'bottom_furlong', /bottom_m, bottom_cm/],
    ['pit,top_m,bottom_mm2,texture', 'unknown-unit', 'bottom_mm2', /Did you mean 'bottom_m/],
    ['pit,top_m,bottom_m,bottom_cm', 'duplicate-column', 'bottom_cm', /one of the two/],
    ['pit,top_m,photo,note', 'missing-column', 'bottom_m', /Add it/],
  ])('%s', (header, code, column, remedy) => {
    expect(problem({ 'pits.csv': `# holes\n${header}\nP1,0,1,\n` })).toMatchObject({
      code,
      file: 'pits.csv',
      line: 2,
      column,
      remedy: expect.stringMatching(remedy),
    });
  });

  test('columns in any order and case; an empty one at the end is nothing', () => {
    const [layer] = read({ 'pits.csv': 'Bottom_CM,texture,PIT,top_in,\n30,Sandy-Clay,P1,0,\n' }).layers;
    expect(layer).toMatchObject({ pit: 'P1', top: 0, bottom: 0.3, texture: 'sandy clay' });
    expect(problem({ 'pits.csv': 'pit,top_m,bottom_m,\nP1,0,1,wet\n' })).toMatchObject({
      code: 'missing-column',
      line: 1,
    });
  });
});

describe('pits.csv', () => {
  const pits = (rows: string, header = 'pit,top_m,bottom_m,texture') => ({
    'pits.csv': `${header}\n${rows}\n`,
  });

  test('everything in SI', () => {
    const header =
      'pit,top_ft,bottom_ft,texture,sand_pct,silt_pct,clay_pct,stones_pct,organic_pct,structure,mottles,consistency,ksat_in_h,strength_kpa,photo,note';
    expect(
      read(pits('P1,0,3 ft 3 in,silty clay,10,45,45,5,2,blocky,few,very stiff,0.1,60,p1.jpg,moist', header))
        .layers,
    ).toEqual([
      {
        pit: 'P1',
        top: 0,
        bottom: expect.closeTo(0.9906, 12),
        texture: 'silty clay',
        sand: 0.1,
        silt: 0.45,
        clay: 0.45,
        stones: 0.05,
        organic: 0.02,
        structure: 'blocky',
        mottles: 'few',
        consistency: 'very stiff',
        ksat: expect.closeTo(0.00254 / 3600, 15),
        strength: 60_000,
        photo: 'p1.jpg',
        note: 'moist',
        origin: { file: 'pits.csv', line: 2 },
      },
    ]);
  });

  test('conductivity in each of its units', () => {
    for (const [suffix, value] of [
      ['m_s', '1e-6'],
      ['m_d', '0.0864'],
      ['mm_h', '3.6'],
      ['in_h', String(3.6 / 25.4)],
    ]) {
      expect(read(pits(`P1,0,1,${value}`, `pit,top_m,bottom_m,ksat_${suffix}`)).layers[0]?.ksat).toBeCloseTo(
        1e-6,
        15,
      );
    }
  });

  test('two of sand, silt and clay leave the third', () => {
    const header = 'pit,top_m,bottom_m,sand_pct,silt_pct,clay_pct';
    expect(read(pits('P1,0,1,20,,50', header)).layers[0]).toMatchObject({ silt: expect.closeTo(0.3, 12) });
    expect(read(pits('P1,0,1,20,30,50.9', header)).layers[0]).toMatchObject({
      clay: expect.closeTo(0.509, 12),
    });
    expect(read(pits('P1,0,1,,,50', header)).layers[0]).not.toHaveProperty('sand');
  });

  test.each<[string, string, string, number, string, RegExp]>([
    ['upside down', 'P1,0,0.3,clay\nP1,0.3,0.2,clay', 'layer-upside-down', 3, 'bottom_m', /swap/],
    ['without thickness', 'P1,0.3,0.3,clay', 'layer-upside-down', 2, 'bottom_m', /swap/],
    ['overlap', 'P1,0,0.5,clay\nP1,0.4,1,clay', 'layers-overlap', 3, 'top_m', /where the one above it ends/],
    ['one layer said twice', 'P1,0,0.5,clay\nP1,0,0.5,sand', 'contradiction', 3, 'top_m', /Keep the row/],
    ['no texture of that name', 'P1,0,0.5,clayy', 'unknown-word', 2, 'texture', /Did you mean 'clay'\?/],
    ['no number', 'P1,0,deep,clay', 'invalid-number', 2, 'bottom_m', /Write one number/],
    ['letters that are no unit', 'P1,0,3 qm,clay', 'unknown-unit', 2, 'bottom_m', /Use m, cm/],
    ['a cell that must be filled', ',0,1,clay', 'missing-value', 2, 'pit', /Fill it in/],
    ['too deep', 'P1,0,300,clay', 'outside-range', 2, 'bottom_m', /Check the number/],
    ['a reserved name', 'Dip pipe,0,1,clay', 'reserved-name', 2, 'pit', /another name/],
  ])('%s', (_name, rows, code, line, column, remedy) => {
    expect(problem(pits(rows))).toMatchObject({
      code,
      file: 'pits.csv',
      line,
      column,
      remedy: expect.stringMatching(remedy),
    });
  });

  test.each([
    ['40,45,45', 'clay_pct', '130 %'],
    ['60,60,', 'silt_pct', '120 %'],
    ['0.3,0.3,0.4', 'clay_pct', '1 %'],
  ])('percentages %s', (percentages, column, sum) => {
    expect(
      problem(pits(`P1,0,1,${percentages}`, 'pit,top_m,bottom_m,sand_pct,silt_pct,clay_pct')),
    ).toMatchObject({
      code: 'texture-sum',
      file: 'pits.csv',
      line: 2,
      column,
      message: expect.stringContaining(`sum to ${sum}`),
      remedy: expect.stringContaining('percent of the fine earth'),
    });
  });

  test('by pit and depth; what is out of order, double or left out is told', () => {
    const survey = read(pits('P10,0,1,clay\nP2,0.5,1,clay\nP2,0,0.5,loam\nP2,0,0.5,loam\nP2,1.2,2,clay'));
    expect(survey.layers.map(({ pit, top }) => `${pit} ${top}`)).toEqual([
      'P2 0',
      'P2 0.5',
      'P2 1.2',
      'P10 0',
    ]);
    expect(survey.warnings).toMatchObject([
      { code: 'duplicate-row', line: 5 },
      { code: 'out-of-order', line: 4 },
      { code: 'layer-gap', line: 6, column: 'top_m' },
    ]);
  });
});
