/** Facts that can be read, at and between the ends of what is possible. */
type Value = readonly [value: string, unit: string];
const lengths = (...metres: number[]) => metres.map((m): Value => [String(m), 'm']);
const words = (...of: string[]) => of.map((word): Value => [word, '']);
const YES_NO = words('yes', 'no', 'unknown');
const MONTHS = words('1', '3;9', '1;2;3;4;5;6;7;8;9;10;11;12', '7');

/** Values with their units, by file and item. */
export const ITEMS: Record<'pond.csv' | 'site.csv', Record<string, Value[]>> = {
  'pond.csv': {
    shape: words('box', 'round', 'oval'),
    length: lengths(0.3, 1, 4, 50, 200),
    width: lengths(0.3, 1, 3, 50, 200),
    area: [
      ['0.1', 'm2'],
      ['12', 'm2'],
      ['20000', 'm2'],
    ],
    depth: lengths(0.1, 0.3, 1, 2.5, 6),
    side_slope: words('0', '0.5', '3', '10'),
    shelf_depth: lengths(0, 0.3, 3),
    shelf_width: lengths(0, 0.3, 20),
    full_level: lengths(-500, 9.9, 10, 9000),
    water_above_rim_ground: lengths(-3, -0.5, 0, 0.5, 3),
    highest_raise: lengths(0, 0.3, 3),
    ring_width: lengths(0, 0.3, 5),
    ring_depth: lengths(0, 0.4, 6),
    ring_fill: words('clay', 'topsoil', 'sand', 'gravel'),
    ring_cap: words('yes', 'no'),
    bedding: words('none', 'sand', 'gravel', 'mat'),
    bedding_thickness: lengths(0, 0.05, 1),
    liner: words('epdm', 'pvc', 'hdpe', 'other'),
    ballast: words('none', 'gravel', 'slab'),
    ballast_thickness: lengths(0, 0.1, 1.5),
    floor_fall: [
      ['0', '%'],
      ['50', '%'],
    ],
    edging_load: [
      ['0', 'kPa'],
      ['200', 'kPa'],
    ],
    usual_drawdown: lengths(0, 0.1, 1, 6),
    emptied_in: [...MONTHS, ['never', '']],
    days_empty: [
      ['1', 'h'],
      ['3', 'd'],
      ['366', 'd'],
    ],
    built_in: MONTHS,
    filled_in: MONTHS,
    margin: lengths(0, 0.1, 1),
    accepted_risk: [
      ['0.001', '%'],
      ['2', '%'],
      ['90', '%'],
    ],
    state: words('planned', 'existing'),
    bulge: words('yes', 'no'),
  },
  'site.csv': {
    name: words('Nowhere', '<b>Lawn</b>', '__proto__'),
    latitude: [
      ['-90', ''],
      ['-35', ''],
      ['0', ''],
      ['66.6', ''],
      ['90', ''],
    ],
    show_units: words('metric', 'us'),
    uphill_area: [
      ['0', 'm2'],
      ['100', 'm2'],
      ['1000000', 'm2'],
    ],
    uphill_cover: words('lawn', 'bare', 'paved', 'woodland'),
    roof_area: [
      ['0', 'm2'],
      ['80', 'm2'],
      ['10000', 'm2'],
    ],
    storm_rain: [
      ['1', 'mm'],
      ['60', 'mm'],
      ['2', 'm'],
    ],
    storm_hours: [
      ['0.1', 'h'],
      ['24', 'h'],
      ['14', 'd'],
    ],
    mains_power: YES_NO,
    pump_acceptable: YES_NO,
    discharge_allowed: YES_NO,
    protected_ground: YES_NO,
    wet_plants: YES_NO,
    shrinkable_clay: YES_NO,
    organic_smell: YES_NO,
    outlet_setback: lengths(0, 5, 1000),
    abstraction_limit: [
      ['0', 'm3/d'],
      ['20', 'm3/d'],
      ['1', 'm3/s'],
    ],
    highest_water_mark: lengths(-100, 9.9, 9000),
    life: words('1', '20', '200'),
  },
};

/** Rows that can be read, by file and header without units; an empty cell is left out. Lengths in metres. */
export const ROWS: Record<string, Record<string, string>[]> = {
  'levels.csv': [
    ...[
      'spot',
      'rim',
      'outlet',
      'discharge',
      'ditch',
      'flood',
      'spill',
      'pond',
      'dip-pipe',
      'footing',
      'house',
      'neighbour-house',
      'well',
      'boundary',
    ].flatMap((role): Record<string, string>[] => [
      { point: `${role}-a`, role, distance: '0', level: '9.5' },
      { point: `${role}-b`, role, distance: '12', level: '8' },
      { point: `${role}-c`, role, x: '-3', y: '1e6', level: '10.1' },
      { point: `${role}-d`, role, x: '0', y: '0', distance: '5000', level: '9000' },
      { point: `${role}-e`, role, level: '-500' },
    ]),
    { point: 'P1', role: 'pit', x: '1', y: '1', level: '10' },
    { point: 'P2', role: 'pit', x: '1', y: '1', level: '10.5' },
  ],
  'pits.csv': [
    { pit: 'P1', top: '4', bottom: '30', texture: 'gravel' },
    { pit: 'P8', top: '-3', bottom: '30', texture: 'rock', stones: '100' },
    { pit: 'P8', top: '0', bottom: '0.0001', texture: 'peat', organic: '100' },
    { pit: 'P9', top: '0', bottom: '1', sand: '100', silt: '0', clay: '0' },
    { pit: 'P9', top: '1', bottom: '2', texture: 'sand', sand: '0', silt: '0', clay: '100', ksat: '1e-13' },
    { pit: 'P9', top: '2', bottom: '3', texture: 'made ground', ksat: '0.1', strength: '0.1' },
    { pit: 'P9', top: '3', bottom: '4', sand: '60', clay: '41', strength: '1000' },
  ],
  'heads.csv': [
    { place: 'site', month: 'high', depth: '-10', spread: '5' },
    { place: 'site', month: '7', depth: '30', spread: '0' },
    { place: 'uphill', month: '1', depth: '0' },
    { place: 'below:P1', month: 'high', depth: '-10', spread: '5' },
    { place: 'below:P77', month: '3', depth: '1' },
  ],
  'water.csv': [
    { pit: 'P1', date: '2024-02-01', reading: 'level', depth: '-5' },
    { pit: 'P1', date: '1800-01-01', reading: 'strike', depth: '0.4' },
    { pit: 'P7', date: '2199-06-01', reading: 'dry', hole_depth: '30', hole_diameter: '1' },
    { pit: 'P7', date: '2023-06-01', reading: 'bailed', depth: '1' },
    { pit: 'dig', date: '2024-05-01', reading: 'level', depth: '0.2', covered: 'no' },
    { pit: 'pond', date: '2024-05-01', reading: 'level', depth: '0' },
    { pit: 'dip-pipe', date: '2024-05-01', reading: 'level', depth: '-5' },
  ],
  'soakage.csv': [
    { pit: 'P1', test: '9', minutes: '0', depth_to_water: '-1', hole_depth: '10', hole_diameter: '1' },
    { pit: 'P1', test: '9', minutes: '0.001', depth_to_water: '10' },
    { pit: 'P1', test: '8', minutes: '86400', depth_to_water: '0.3', hole_depth: '0.3' },
  ],
};
