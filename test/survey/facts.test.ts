/** site.csv and pond.csv: items, values, units. */

import { describe, expect, test } from 'vitest';
import { problem, problems, read, warnings } from './folder.js';

const HEADER = 'item,value,unit,note\n';
const SIZE = 'length,4,m,\nwidth,3,m,\ndepth,1,m,\n';
const pond = (rows: string) => ({ 'pond.csv': HEADER + SIZE + rows });
const site = (rows: string) => ({ 'site.csv': `${HEADER}latitude,52,deg,\n${rows}` });

test('site.csv in SI, whatever it was written in', () => {
  const {
    name,
    site: facts,
    origins,
  } = read(
    site(
      'name,Old Orchard,,invented\nshow_units,US,,\nuphill_area,1000,ft2,\nuphill_cover,lawn,,\nroof_area,0,,\nstorm_rain,2,in,\nstorm_hours,6,,\nmains_power,Yes,,\ndischarge_allowed,unknown,,\noutlet_setback,10 ft,,\nabstraction_limit,20,,\nhighest_water_mark,99 ft 10 in,,\nlife,25,years,\n',
    ),
  );
  expect(name).toBe('Old Orchard');
  expect(facts).toEqual({
    name: 'Old Orchard',
    latitude: 52,
    show_units: 'us',
    uphill_area: expect.closeTo(92.90304, 9),
    uphill_cover: 'lawn',
    roof_area: 0,
    storm_rain: expect.closeTo(0.0508, 12),
    storm_hours: 21_600,
    mains_power: 'yes',
    discharge_allowed: 'unknown',
    outlet_setback: expect.closeTo(3.048, 12),
    abstraction_limit: expect.closeTo(20 / 86_400, 15),
    highest_water_mark: expect.closeTo(30.4292, 10),
    life: 25,
  });
  expect(origins.site.storm_rain).toEqual({ file: 'site.csv', line: 8, column: 'value' });
});

test('pond.csv in SI, whatever it was written in', () => {
  const rows =
    'shape,oval,,\narea,100,ft2,\nside_slope,1.5,,horizontal to 1 vertical\nshelf_depth,1 ft,,\nshelf_width,12,in,\nwater_above_rim_ground,-5 cm,,\nhighest_raise,0,,\nring_width,8,in,\nring_depth,0.6,m,\nring_fill,gravel,,\nring_cap,yes,,\nring_ksat,1e-4,m/s,\nbedding,sand,,\nbedding_thickness,5,cm,\nliner,EPDM,,\nballast,slab,,\nballast_thickness,4,in,\nwall,block,,\nfloor_fall,1.5,%,\nedging_load,20,psf,\nusual_drawdown,0.1,m,\nemptied_in,9;3;9,,\ndays_empty,36,h,\nbuilt_in,7;8,,\nfilled_in,10,,\nmargin,0.1,m,\naccepted_risk,1 %,,\nstate,existing,,\nbulge,no,,\nold_drain,yes,,\n';
  expect(read(pond(rows)).pond).toEqual({
    length: 4,
    width: 3,
    depth: 1,
    shape: 'oval',
    area: expect.closeTo(9.290304, 9),
    side_slope: 1.5,
    shelf_depth: expect.closeTo(0.3048, 12),
    shelf_width: expect.closeTo(0.3048, 12),
    water_above_rim_ground: -0.05,
    highest_raise: 0,
    ring_width: expect.closeTo(0.2032, 12),
    ring_depth: 0.6,
    ring_fill: 'gravel',
    ring_cap: 'yes',
    ring_ksat: 1e-4,
    bedding: 'sand',
    bedding_thickness: 0.05,
    liner: 'epdm',
    ballast: 'slab',
    ballast_thickness: expect.closeTo(0.1016, 12),
    wall: 'block',
    floor_fall: 0.015,
    edging_load: expect.closeTo(957.605, 3),
    usual_drawdown: 0.1,
    emptied_in: [3, 9],
    days_empty: 1.5,
    built_in: [7, 8],
    filled_in: [10],
    margin: 0.1,
    accepted_risk: 0.01,
    state: 'existing',
    bulge: 'no',
    old_drain: 'yes',
  });
});

test('plain items: the chance as a number, the fall in percent, never emptied', () => {
  expect(
    read(pond('accepted_risk,0.02,,\nfloor_fall,2,,\nemptied_in,Never,,\ndays_empty,5,days,\n')).pond,
  ).toMatchObject({
    accepted_risk: 0.02,
    floor_fall: 0.02,
    emptied_in: 'never',
    days_empty: 5,
  });
});

describe('a row at fault', () => {
  test.each<[string, string, string, string, RegExp]>([
    ['lenght,4,m,', 'unknown-item', 'item', 'lenght', /Did you mean 'length'\?/],
    ['colour,blue,,', 'unknown-item', 'item', 'colour', /Use one of: shape, length/],
    ['margin,0.1,,', 'missing-unit', 'value', '0.1', /Write m, cm, mm, ft or in/],
    ['margin,0.1,furlong,', 'unknown-unit', 'unit', 'furlong', /Use m, cm/],
    ['margin,0.1,m2,', 'wrong-unit', 'unit', 'm2', /Use m, cm/],
    ['margin,0.1 m2,,', 'wrong-unit', 'value', '0.1 m2', /Use m, cm/],
    ['margin,4 m head,,', 'invalid-number', 'value', '4 m head', /nothing else/],
    ['full_level,"1,200",mm,', 'ambiguous-comma', 'value', '1,200', /Write 1200 or 1\.200/],
    ['highest_raise,12,ft,', 'outside-range', 'value', '12', /Check the number and its unit/],
    ['shape,kidney,,', 'unknown-word', 'value', 'kidney', /box, round, oval/],
    ['shape,box,m,', 'unknown-unit', 'unit', 'm', /Empty the unit cell/],
    ['emptied_in,13,,', 'invalid-month', 'value', '13', /1 to 12/],
    ['emptied_in,Marsh,,', 'invalid-month', 'value', 'Marsh', /1 to 12/],
    ['emptied_in,3-5,,', 'invalid-month', 'value', '3-5', /'3;5' or '3 to 5'/],
    ['depth,1.2,m,', 'contradiction', 'value', '1.2', /Keep the row that is right/],
    ['area,20,m2,', 'contradiction', 'value', '20', /area, length and width/],
    ['shelf_depth,1.5,m,', 'contradiction', 'value', '1.5', /shelf_depth and depth/],
    ['usual_drawdown,1.5,m,', 'contradiction', 'value', '1.5', /usual_drawdown and depth/],
  ])('%s', (row, code, column, found, remedy) => {
    expect(problem(pond(`${row}\n`))).toMatchObject({
      code,
      file: 'pond.csv',
      line: 5,
      column,
      found,
      remedy: expect.stringMatching(remedy),
    });
  });

  test.each([
    ['round', 'shape,round,,\n', 'width'],
    ['bedding none', 'bedding,none,,\nbedding_thickness,5,cm,\n', 'bedding_thickness'],
    ['ballast none', 'ballast,none,,\nballast_thickness,5,cm,\n', 'ballast_thickness'],
    ['planned with a bulge', 'state,planned,,\nbulge,yes,,\n', 'bulge'],
    ['planned with an old drain', 'state,planned,,\nold_drain,yes,,\n', 'old_drain'],
    ['two water levels', 'full_level,9.9,m,\nwater_above_rim_ground,0,m,\n', 'water_above_rim_ground'],
  ])('two items against each other: %s', (_name, rows, item) => {
    const levels = 'point,role,level_m\nA,rim,10\n';
    const changes = { ...pond(rows), 'levels.csv': levels };
    const lines = changes['pond.csv'].split('\n');
    expect(problem(changes)).toMatchObject({
      code: 'contradiction',
      file: 'pond.csv',
      line: lines.findIndex((line) => line.startsWith(`${item},`)) + 1,
      column: 'value',
      remedy: expect.stringMatching(/\.$/),
    });
  });

  test('the range is told in the unit written', () => {
    expect(problem(pond('highest_raise,12,ft,\n')).expected).toBe('0 to 9.84 ft');
  });

  test('a design storm without rain is refused: its share of run-off would be nought over nought', () => {
    expect(problem({ 'site.csv': 'item,value,unit\nstorm_rain,0,mm\n' })).toMatchObject({
      code: 'outside-range',
      expected: '1 to 2000 mm',
    });
  });
});

describe('what a pond needs', () => {
  const items = (rows: string) => ({ 'pond.csv': HEADER + rows });

  test.each([
    ['length,4,m,\nwidth,3,m,\n', 'depth'],
    ['depth,1,m,\n', 'length'],
    ['depth,1,m,\nlength,4,m,\n', 'width'],
    ['depth,1,m,\nwidth,4,m,\n', 'length'],
  ])('%j lacks %s', (rows, item) => {
    expect(problem(items(rows))).toMatchObject({
      code: 'missing-item',
      file: 'pond.csv',
      expected: item,
      remedy: expect.stringMatching(/\.$/),
    });
  });

  test.each(['area,12,m2,\n', 'shape,round,,\nlength,4,m,\n', 'length,4,m,\nwidth,3,m,\n'])(
    '%j is enough',
    (rows) => {
      expect(read(items(`depth,1,m,\n${rows}`)).pond.depth).toBe(1);
    },
  );

  test('a depth refused is not missing as well', () => {
    expect(problems(items('depth,12,m,\nlength,4,m,\nwidth,3,m,\n')).map((one) => one.code)).toEqual([
      'outside-range',
    ]);
  });

  test('a full level needs a levelled rim', () => {
    expect(problem(pond('full_level,9.9,m,\n'))).toMatchObject({
      code: 'missing-level',
      file: 'pond.csv',
      line: 5,
      expected: 'rim',
      remedy: 'Level the rim, or give water_above_rim_ground instead.',
    });
  });
});

test('a unit in the cell goes before the unit cell, which is told', () => {
  const survey = read(pond('margin,5 cm,in,\nwater_above_rim_ground,-4 in,m,\nhighest_raise,1 ft,feet,\n'));
  expect(survey.pond).toMatchObject({
    margin: 0.05,
    water_above_rim_ground: expect.closeTo(-0.1016, 12),
    highest_raise: expect.closeTo(0.3048, 12),
  });
  expect(survey.warnings.map(({ code, line, message }) => [code, line, message])).toEqual([
    ['read-as', 5, "margin '5 cm' is read as written, not in the unit cell's 'in'"],
    ['read-as', 6, "water_above_rim_ground '-4 in' is read as written, not in the unit cell's 'm'"],
  ]);
});

test.each([
  ['3;9', [3, 9]],
  ['March', [3]],
  ['Mar, Sept.', [3, 9]],
  ['march and september', [3, 9]],
  ['November to February', [1, 2, 11, 12]],
])('months %s', (text, months) => {
  expect(read(pond(`emptied_in,"${text}",,\n`)).pond.emptied_in).toEqual(months);
});

test('an item in capitals and with spaces is the same item', () => {
  expect(read(pond('Side Slope,1,,\nring-width,20,cm,\n')).pond).toMatchObject({
    side_slope: 1,
    ring_width: 0.2,
  });
});

describe('warnings', () => {
  test.each([
    ['the same said twice', pond('depth,100,cm,\n'), { code: 'duplicate-row', file: 'pond.csv', line: 5 }],
    [
      'an item left empty',
      pond('margin,,m,\n'),
      { code: 'empty-item', file: 'pond.csv', line: 5, column: 'value' },
    ],
    [
      'odd, but possible',
      pond('highest_raise,2,m,\n'),
      { code: 'odd-value', file: 'pond.csv', line: 5, column: 'value' },
    ],
    [
      'a fall that is a fraction',
      pond('floor_fall,0.01,,\n'),
      { code: 'odd-value', file: 'pond.csv', line: 5 },
    ],
    ['no latitude', { 'site.csv': `${HEADER}name,Lawn,,\n` }, { code: 'missing-latitude', file: 'site.csv' }],
  ])('%s', (_name, changes, warning) => {
    expect(warnings(changes)).toEqual([expect.objectContaining(warning)]);
  });
});

test.each(['m', 'cm', 'mm', 'ft', 'in'])('a range told in %s can be written, to its ends', (unit) => {
  const withLength = (value: string) => ({
    'pond.csv': `item,value,unit,note\nlength,${value},${unit},\nwidth,3,m,\ndepth,1,m,\n`,
  });
  const { expected } = problem(withLength('999999999'));
  const [, low, high] = /^([\d.]+) to ([\d.]+) /.exec(expected!)!;
  for (const end of [low!, high!]) expect(read(withLength(end)).pond.length).toBeGreaterThan(0.29);
  // The ends themselves, whatever the last digit of the unit.
  const per = { m: 1, cm: 0.01, mm: 0.001, ft: 0.3048, in: 0.0254 }[unit]!;
  for (const metres of [0.3, 200])
    expect(read(withLength(String(Number((metres / per).toPrecision(12))))).pond.length).toBeCloseTo(
      metres,
      8,
    );
});

test('a comma for decimals that cut a value in two is asked about', () => {
  const { message, remedy } = problem({ 'pond.csv': `${HEADER}length,5,25,m,\nwidth,3,m,\ndepth,1,m,\n` });
  expect(message).toMatch(/'25'.*'5,25'/);
  expect(remedy).toContain('5.25');
});
