/** The files of rows: holes, looks, levels, weather. */
import { CONSISTENCIES, MOTTLES, OTHER_GROUND, STRUCTURES, USDA_CLASSES } from '../../lib/soil/index.js';
import { LEVEL_ROLES } from '../../lib/survey/index.js';
import type { Ground, Rows } from './grammar.js';

const DAY_MS = 86_400_000;
const isoDate = (day: number) => new Date(day * DAY_MS).toISOString().slice(0, 10);
const TODAY = 20_700;

export function pitsFile({ dice, pits, length, unit, text }: Ground): Rows {
  const header = [
    'pit',
    `top_${unit}`,
    `bottom_${unit}`,
    'texture',
    'sand_pct',
    'silt_pct',
    'clay_pct',
    'stones_pct',
    'organic_pct',
    'structure',
    'mottles',
    'consistency',
    'ksat_m_s',
    'strength_kpa',
    'photo',
    'note',
  ];
  const odd = dice.chance(0.3);
  const maybe = (share: number, value: () => string) => (dice.chance(share) ? value() : '');
  const rows = pits.flatMap((pit) => {
    let top = odd && dice.chance(0.1) ? dice.between(-3, 0.4) : 0;
    return Array.from({ length: dice.one([1, 2, 2, 3, 4, 9]) }, (_, at) => {
      const bottom = Math.min(
        30,
        top + (odd ? dice.one([1e-4, 0.01, 0.3, 1, 9, 25]) : dice.between(0.2, 1.2)),
      );
      const [a, b] = [dice.uniform(), dice.uniform()].sort() as [number, number];
      const grains = dice.chance(0.2);
      const part = (value: number) => (grains ? String(Math.round(1000 * value) / 10) : '');
      const row = [
        pit,
        length(top),
        length(bottom),
        grains && dice.chance(0.5)
          ? ''
          : at === 0
            ? dice.one(['clay loam', 'loam'])
            : dice.one([...USDA_CLASSES, 'clay', 'clay', 'clay', 'clay', ...(odd ? OTHER_GROUND : [])]),
        part(a),
        part(b - a),
        part(1 - b),
        maybe(0.2, () => String(odd ? dice.one([0, 50, 90]) : dice.whole(0, 20))),
        maybe(0.2, () => String(odd ? dice.one([0, 8, 60, 100]) : dice.whole(0, 5))),
        maybe(0.6, () => dice.one(STRUCTURES)),
        maybe(0.6, () => dice.one(MOTTLES)),
        maybe(0.6, () => dice.one(CONSISTENCIES)),
        maybe(0.2, () =>
          (odd ? dice.one([1e-13, 1e-11, 1e-3, 0.1]) : 10 ** dice.between(-9, -5)).toExponential(2),
        ),
        maybe(0.2, () => String(odd ? dice.one([0.1, 2, 1000]) : dice.whole(20, 150))),
        maybe(0.1, () => dice.one(['photo.jpg', 'pond.csv', '..', '/etc/passwd', text()])),
        text(),
      ];
      top = bottom;
      return row;
    }).filter(([, from, to]) => from !== to);
  });
  return [header, ...rows];
}

export function levelsFile({ dice, pits, length, unit, text }: Ground): Rows {
  const header = ['point', 'role', `x_${unit}`, `y_${unit}`, `distance_${unit}`, `level_${unit}`, 'note'];
  const odd = dice.chance(0.3);
  const at = () =>
    length(odd && dice.chance(0.2) ? dice.one([-1e7, 1e7, 0, 1e-9, 3000]) : dice.between(-20, 20));
  const level = (down: number) =>
    length(odd && dice.chance(0.2) ? dice.one([-2, 22, 0, 10]) : 10 - down + dice.between(-0.2, 0.2));
  const place = () =>
    dice.chance(0.6)
      ? [at(), at(), '']
      : ['', '', length(odd ? dice.one([0, 0.001, 5000]) : dice.between(1, 40))];
  const rim = Array.from({ length: dice.whole(1, 5) }, (_, n) => [
    `r${n} ${text()}`.trim(),
    'rim',
    ...(dice.chance(0.8) ? [at(), at(), ''] : ['', '', '']),
    level(0),
    text(),
  ]);
  const others = Array.from({ length: dice.one([0, 2, 5, 15]) }, (_, n) => {
    const role = dice.one(LEVEL_ROLES);
    return [
      `${role}${n} ${text()}`.trim(),
      role,
      ...place(),
      level(/outlet|ditch|discharge|flood/.test(role) ? 1 : 0.1),
      text(),
    ];
  });
  return [
    header,
    ...rim,
    ...pits.filter(() => dice.chance(0.6)).map((pit) => [pit, 'pit', ...place(), level(0), '']),
    ...['pond', 'dip-pipe'].map((role) => [role, role, '', '', '', level(-0.3), '']),
    ...others,
  ];
}

export function headsFile({ dice, pits, length, unit, text }: Ground): Rows {
  const header = ['place', 'month', `depth_${unit}`, `spread_${unit}`, 'source'];
  const places = ['site', 'uphill', ...pits, ...pits.map((pit) => `below:${pit}`)].filter(() =>
    dice.chance(0.4),
  );
  const depth = () => length(dice.chance(0.15) ? dice.one([-10, 30, 0, -0.001]) : dice.between(-0.1, 2.5));
  const rows = places.flatMap((place) => {
    const months = dice.chance(0.5)
      ? ['high']
      : Array.from({ length: 12 }, (_, at) => String(at + 1)).filter(() => dice.chance(0.9));
    return months.map((month) => [
      place,
      month,
      depth(),
      dice.chance(0.5) ? length(dice.one([0, 0.05, 0.3, 5])) : '',
      text(),
    ]);
  });
  return [header, ...rows];
}

export function waterFile({ dice, pits, length, unit, text, levelled }: Ground): Rows {
  const header = [
    'pit',
    'date',
    'time',
    'reading',
    `depth_${unit}`,
    `hole_depth_${unit}`,
    `hole_diameter_${unit}`,
    `pipe_bore_${unit}`,
    `open_from_${unit}`,
    `pipe_top_${unit}`,
    'covered',
    'note',
  ];
  const odd = dice.chance(0.25);
  const rows = pits.flatMap((pit) => {
    const floor = odd ? dice.one([0.05, 1, 5, 30]) : dice.between(0.8, 3);
    const pipe = dice.chance(0.4);
    let day = odd ? dice.one([-60_000, 0, 19_000, TODAY - 1, 80_000]) : dice.whole(18_000, TODAY - 900);
    let minutes = dice.whole(400, 900);
    const row = (reading: string, depth: number | undefined, full: boolean) => [
      pit,
      isoDate(day),
      `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`,
      reading,
      depth === undefined ? '' : length(depth),
      full || reading === 'dry' ? length(floor) : '',
      full ? length(odd ? dice.one([0.01, 0.1, 5]) : 0.1) : '',
      full && pipe ? length(odd ? dice.one([0.005, 1]) : 0.03) : '',
      full && pipe ? length(floor * dice.between(0.3, 0.9)) : '',
      '',
      dice.one(['', 'yes', 'no']),
      text(),
    ];
    const made = [row('opened', floor, true)];
    for (let n = dice.one([0, 1, 4, 12, 40]); n > 0; n--) {
      const later = dice.chance(0.3) ? 0 : dice.one([1, 7, 30, 200]);
      day += later;
      minutes = later > 0 ? dice.whole(400, 900) : Math.min(1439, minutes + dice.one([1, 5, 30, 120]));
      const reading = dice.one(['level', 'level', 'level', 'level', 'dry', 'bailed', 'strike']);
      made.push(
        row(
          reading,
          reading === 'dry' ? undefined : odd ? dice.one([-5, -0.01, 0, floor]) : dice.between(0, floor),
          pipe,
        ),
      );
    }
    return made;
  });
  const places = ['dig', ...(levelled ? ['pond', 'dip-pipe'] : [])].filter(() => dice.chance(0.2));
  return [
    header,
    ...rows,
    ...places.map((place) => [
      place,
      isoDate(dice.whole(18_000, TODAY - 5)),
      '',
      'level',
      length(dice.between(-0.5, 1)),
      ...Array<string>(7).fill(''),
    ]),
  ];
}

export function soakageFile({ dice, pits, length, unit }: Ground): Rows {
  const header = [
    'pit',
    'test',
    'minutes',
    `depth_to_water_${unit}`,
    `hole_depth_${unit}`,
    `hole_diameter_${unit}`,
    'soaked_before',
  ];
  const rows = pits.flatMap((pit, test) => {
    const floor = dice.one([0.05, 0.5, 0.6, 1, 10]);
    let depth = floor * dice.between(0, 0.6);
    let minutes = 0;
    return Array.from({ length: dice.whole(1, 8) }, (_, at) => {
      const row = [
        pit,
        String(test + 1),
        String(minutes),
        length(depth),
        at === 0 ? length(floor) : '',
        at === 0 ? length(dice.one([0.01, 0.15, 0.3, 5])) : '',
        dice.one(['', 'yes', 'no']),
      ];
      minutes += dice.one([0.001, 1, 30, 600, 9000]);
      depth = Math.min(floor, depth + (floor - depth) * dice.one([0, 1e-6, 0.1, 0.5, 1]));
      return row;
    });
  });
  return [header, ...rows];
}

const EXTREMES: ((dice: Ground['dice']) => [rain: number, low: number, high: number])[] = [
  (dice) => [dice.chance(0.4) ? dice.between(0, 12) : 0, 4, 13],
  () => [0, 4, 13],
  () => [399, 9, 9],
  (dice) => [dice.chance(0.01) ? 2000 : 0, -40, 50],
  (dice) => [dice.between(0, 400), -60, -59],
  () => [3, 45, 60],
];

export function weatherFile({ dice }: Ground): Rows {
  const [kind, first] = [dice.one(EXTREMES), dice.one([14_000, 16_000, 19_700, -50_000])];
  const temperatures = !dice.chance(0.15);
  const days = dice.one([30, 400, 800, 1100]);
  const rows = Array.from({ length: days }, (_, at) => {
    const [rain, low, high] = kind(dice);
    const season = 8 * Math.sin((2 * Math.PI * at) / 365.25);
    return [
      isoDate(first + at),
      rain.toFixed(1),
      ...(temperatures ? [(low + season).toFixed(1), (high + season).toFixed(1)] : []),
    ];
  });
  const gap = dice.chance(0.2) ? dice.whole(0, days - 1) : days;
  return [
    ['date', 'rain_mm', ...(temperatures ? ['tmin_c', 'tmax_c'] : [])],
    ...rows.filter((_, at) => at < gap || at > gap + 20),
  ];
}

export function climateFile({ dice }: Ground): Rows {
  const [rain, mean, et0] = [
    dice.one([0, 60, 60, 5000]),
    dice.one([-50, 10, 10, 55]),
    dice.one([0, 50, 50, 600]),
  ];
  return [
    ['month', 'rain_mm', 'tmean_c', 'et0_mm'],
    ...Array.from({ length: 12 }, (_, at) => [
      String(at + 1),
      String(rain),
      String(mean),
      dice.chance(0.9) ? String(et0) : '',
    ]),
  ];
}

export function pricesFile({ dice, text }: Ground): Rows {
  const items = ['perforated pipe', 'liner', 'pea gravel', 'hours by hand', text() || 'flap valve'];
  return [
    ['item', 'unit', 'price'],
    ...items.map((item) => [
      item,
      dice.one(['m', 'm2', 'm³', 'piece', 'h', text() || 'm']),
      String(dice.one([0, 0.01, 12.5, 1e7])),
    ]),
  ];
}
