/** The same site surveyed otherwise: none of it may change an answer. */
import { Dice } from '../survey/generated.js';
import {
  changed,
  eachCell,
  eachItem,
  type Files,
  metresOf,
  movedBy,
  sheetOf,
  shuffled,
  unitOf,
  withRows,
} from './sheets.js';

/** Rows of every file in another order; the first spot is the planned one, and boundary points are joined in order. */
export function inAnotherOrder(files: Files, seed: number): Files {
  const dice = new Dice(seed);
  return Object.keys(files).reduce(
    (all, name) =>
      changed(all, name, ({ header, rows }) => {
        const role = header.indexOf('role');
        const mixed = shuffled(rows, dice);
        for (const ordered of ['spot', 'boundary']) {
          const own = rows.filter((row) => row[role] === ordered);
          mixed.forEach((row, at) => {
            if (row[role] === ordered) mixed[at] = own.shift()!;
          });
        }
        return { header, rows: mixed };
      }),
    files,
  );
}

/** The plan's axes elsewhere, and turned by an angle; east and north in metres. */
export function onOtherAxes(files: Files, { east = 0, north = 0, degrees = 0 }): Files {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return changed(files, 'levels.csv', ({ header, rows }) => {
    const [ix, iy] = [/^x_/, /^y_/].map((name) => header.findIndex((column) => name.test(column)));
    if (ix! < 0 || iy! < 0) return { header, rows };
    const [ux, uy] = [unitOf(header[ix!]!), unitOf(header[iy!]!)];
    return {
      header,
      rows: rows.map((row) => {
        if (row[ix!] === '' || row[iy!] === '') return row;
        const [x, y] = [metresOf(row[ix!]!, ux), metresOf(row[iy!]!, uy)];
        const out = [...row];
        out[ix!] = movedBy('0', ux, x * cos - y * sin + east);
        out[iy!] = movedBy('0', uy, x * sin + y * cos + north);
        return out;
      }),
    };
  });
}

/** All levels above another mark. */
export function onAnotherMark(files: Files, metres: number): Files {
  const levels = eachCell(files, 'levels.csv', /^level_/, (cell, _, column) =>
    movedBy(cell, unitOf(column), metres),
  );
  const pond = eachItem(levels, 'pond.csv', /^full_level$/, (value, unit) => [
    movedBy(value, unit, metres),
    unit,
  ]);
  return eachItem(pond, 'site.csv', /^highest_water_mark$/, (value, unit) => [
    movedBy(value, unit, metres),
    unit,
  ]);
}

/** Every look so many minutes later on the same day. */
export function atOtherHours(files: Files, minutes: number): Files {
  return eachCell(files, 'water.csv', /^time$/, (cell) => {
    const [h = 0, m = 0] = cell.split(':').map(Number);
    const later = h * 60 + m + minutes;
    if (later < 0 || later >= 1440) throw new Error(`${cell} and ${minutes} min is another day`);
    return `${String(Math.floor(later / 60)).padStart(2, '0')}:${String(later % 60).padStart(2, '0')}`;
  });
}

const SQUARE_FOOT = 0.3048 ** 2;
const POUND = 0.45359237 * 9.80665;
/** Value in other units of the same thing: header suffix or unit, to suffix, and the number. */
const OTHER: Record<string, [to: string, (value: number) => number]> = {
  m: ['ft', (v) => v / 0.3048],
  ft: ['cm', (v) => v * 30.48],
  cm: ['in', (v) => v / 2.54],
  mm: ['in', (v) => v / 25.4],
  in: ['cm', (v) => v * 2.54],
  c: ['f', (v) => v * 1.8 + 32],
  f: ['c', (v) => (v - 32) / 1.8],
  m_s: ['in_h', (v) => (v / 0.0254) * 3600],
  in_h: ['m_s', (v) => (v * 0.0254) / 3600],
  kpa: ['psf', (v) => (v * 1000) / (POUND / SQUARE_FOOT)],
  m2: ['ft2', (v) => v / SQUARE_FOOT],
  ft2: ['m2', (v) => v * SQUARE_FOOT],
  kPa: ['psf', (v) => (v * 1000) / (POUND / SQUARE_FOOT)],
  d: ['h', (v) => v * 24],
  h: ['min', (v) => v * 60],
};

/** Every amount of every file in another unit, to all its figures; cells that carry their own unit stay. */
export function inOtherUnits(files: Files): Files {
  return Object.keys(files).reduce(
    (all, name) =>
      changed(all, name, ({ header, rows }) => {
        if (header[0] === 'item' && header[1] === 'value')
          return {
            header,
            rows: rows.map(([item = '', value = '', unit = '', ...rest]) => {
              const other = OTHER[unit];
              return other && isNumber(value) && item !== 'show_units'
                ? [item, String(other[1](Number(value))), other[0], ...rest]
                : [item, value, unit, ...rest];
            }),
          };
        const others = header.map((column) => {
          const suffix = /_(m_s|in_h|m|ft|cm|mm|in|c|f|kpa)$/.exec(column)?.[1];
          return suffix ? { suffix, to: OTHER[suffix]! } : undefined;
        });
        return {
          header: header.map((column, at) => {
            const other = others[at];
            return other ? column.slice(0, -other.suffix.length) + other.to[0] : column;
          }),
          rows: rows.map((row) =>
            row.map((cell, at) =>
              others[at] && isNumber(cell) ? String(others[at].to[1](Number(cell))) : cell,
            ),
          ),
        };
      }),
    files,
  );
}

const isNumber = (cell: string) => /^-?[\d.]+(?:e-?\d+)?$/.test(cell);

/** A remark, empty rows, rows said twice, another line end, and files that are none. */
export function withNothingSaid(files: Files): Files {
  const again = (text: string) => {
    const [header = '', first, ...rows] = text.trimEnd().split('\n');
    const empty = ','.repeat(header.split(',').length - 1);
    return `\ufeff# in the rain\r\n${[header, first, '', first, '# wet', ...rows].join('\r\n')}\r\n${empty}\r\n`;
  };
  return {
    ...Object.fromEntries(Object.entries(files).map(([name, text]) => [name, again(text)])),
    'P1.jpg': 'a photo',
    'notes.md': 'a note',
  };
}

/** A hole in clay called dry a minute after it was dug; undefined where other ground was logged. */
export function withHoleDryTooSoon(files: Files): Files | undefined {
  const { header, rows } = sheetOf(files['pits.csv'] ?? 'texture\n');
  const textures = rows.map((row) => row[header.indexOf('texture')] ?? '');
  if (textures.length === 0 || !textures.every((texture) => texture.includes('clay'))) return undefined;
  const hole = { pit: 'Z9', date: '2024-04-02', hole_depth: '0.5 m', hole_diameter: '10 cm' };
  return withRows(files, 'water.csv', [
    { ...hole, time: '09:00', reading: 'opened', depth: '0.5 m' },
    { ...hole, time: '09:01', reading: 'dry' },
  ]);
}

/** Places worse than any that is there, before the others or after them. */
export const WORSE_PLACES: Record<string, { point: string; role: string; level: number; away: number }> = {
  // Above the pond and far away.
  outlet: { point: 'worse-outlet', role: 'outlet', level: 0.5, away: 300 },
  discharge: { point: 'worse-gully', role: 'discharge', level: 3, away: 300 },
  footing: { point: 'far-footing', role: 'footing', level: 0, away: 300 },
  house: { point: 'far-house', role: 'house', level: 0.5, away: 300 },
  well: { point: 'far-well', role: 'well', level: 0.5, away: 900 },
  other: { point: 'a-stone', role: 'other', level: 0.2, away: 300 },
};

/** A levelled point as far from the pond as said, on the side away from all others, so much above the lowest rim. */
export function withWorse(files: Files, kind: string, first: boolean): Files {
  const { point, role, level, away } = WORSE_PLACES[kind]!;
  const { header, rows } = sheetOf(files['levels.csv']!);
  const at = (name: RegExp) => header.findIndex((column) => name.test(column));
  const [il, ir, ix] = [at(/^level_/), at(/^role$/), at(/^x_/)];
  const unit = unitOf(header[il]!);
  const rims = rows.filter((row) => row[ir] === 'rim' || row[ir] === 'spot');
  const datum = Math.min(...rims.map((row) => metresOf(row[il]!, unit)));
  const drawn = ix >= 0 && rims.some((row) => row[ix] !== '');
  const where: Record<string, string> = drawn ? { x: `${-away} m`, y: '0 m' } : { distance: `${away} m` };
  return withRows(files, 'levels.csv', [{ point, role, level: `${datum + level} m`, ...where }], first);
}

/** Every fact that the answer says it assumed, said as it was assumed. */
export function withDefaultsSaid(
  files: Files,
  assumed: readonly { item: string; value: string | number; unit: string }[],
): Files {
  const add = (name: 'site.csv' | 'pond.csv', items: readonly string[]) => (all: Files) =>
    changed(all, name, ({ header, rows }) => ({
      header,
      rows: [
        ...rows,
        ...assumed
          .filter(({ item }) => items.includes(item) && !rows.some(([has]) => has === item))
          .map(({ item, value, unit }) => [item, String(value), said(unit), '']),
      ],
    }));
  return add('pond.csv', POND_DEFAULTS)(add('site.csv', SITE_DEFAULTS)(files));
}

const said = (unit: string) => ({ 'm²': 'm2', 'horizontal to 1 vertical': '', 'a year': '' })[unit] ?? unit;

export const SITE_DEFAULTS = [
  'latitude',
  'uphill_area',
  'roof_area',
  'storm_rain',
  'storm_hours',
  'life',
  'outlet_setback',
];
export const POND_DEFAULTS = [
  'shape',
  'side_slope',
  'shelf_width',
  'water_above_rim_ground',
  'usual_drawdown',
  'highest_raise',
  'ring_width',
  'ring_fill',
  'ring_cap',
  'bedding',
  'bedding_thickness',
  'edging_load',
  'days_empty',
  'margin',
  'accepted_risk',
];
