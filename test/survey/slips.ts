/** Slips and absurdities that a careful reader notices: each one change to a right survey. Written before the checks. */
import { withItem } from '../folder.js';

export type Files = Record<string, string>;
export interface Slip {
  name: string;
  make(files: Files): Files;
}

const pond = (item: string, value: string, unit = ''): Slip => ({
  name: `${item} ${value} ${unit}`,
  make: (files) => withItem(files, 'pond.csv', item, value, unit),
});
const site = (item: string, value: string, unit = ''): Slip => ({
  name: `${item} ${value} ${unit}`,
  make: (files) => withItem(files, 'site.csv', item, value, unit),
});

/** Every cell of a column changed, by the start of its header. */
function column(
  file: string,
  start: string,
  change: (cell: string, row: number) => string,
  name: string,
): Slip {
  return {
    name: `${file} ${start}: ${name}`,
    make: (files) => {
      const lines = (files[file] ?? '').trim().split('\n');
      const at = lines[0]!.split(',').findIndex((header) => header.startsWith(start));
      if (at < 0) return files;
      const rows = lines.slice(1).map((line, row) => {
        const cells = line.split(',');
        if (cells[at]) cells[at] = change(cells[at], row);
        return cells.join(',');
      });
      return { ...files, [file]: `${[lines[0], ...rows].join('\n')}\n` };
    },
  };
}
const times = (file: string, start: string, factor: number, name: string) =>
  column(
    file,
    start,
    (cell) => (Number.isNaN(Number(cell)) ? cell : String(Number((Number(cell) * factor).toPrecision(6)))),
    name,
  );
const all = (file: string, start: string, value: string) =>
  column(file, start, () => value, `always ${value}`);

/** A point of levels.csv by role: its level moved. */
const moved = (role: string, by: number): Slip => ({
  name: `${role} moved by ${by} m`,
  make: (files) => {
    const lines = (files['levels.csv'] ?? '').trim().split('\n');
    const at = lines[0]!.split(',').indexOf('level_m');
    let done = false;
    const rows = lines.map((line) => {
      const cells = line.split(',');
      if (done || cells[1] !== role) return line;
      done = true;
      cells[at] = String(Number(cells[at]) + by);
      return cells.join(',');
    });
    return { ...files, 'levels.csv': `${rows.join('\n')}\n` };
  },
});
const added = (file: string, row: string): Slip => ({
  name: `${file}: ${row}`,
  make: (files) => ({ ...files, [file]: `${(files[file] ?? '').trim()}\n${row}\n` }),
});
const replaced = (file: string, text: string, name: string): Slip => ({
  name,
  make: (files) => ({ ...files, [file]: text }),
});
const years = (file: string, by: number) =>
  column(file, 'date', (cell) => `${Number(cell.slice(0, 4)) + by}${cell.slice(4)}`, `${by} years off`);
const halfYear = (file: string) =>
  column(
    file,
    'date',
    (cell) => new Date(Date.parse(cell) + 182 * 86_400_000).toISOString().slice(0, 10),
    'half a year off',
  );

const FOOT = 3.28084;

/** One unit for another. */
export const UNIT_SLIPS: Slip[] = [
  pond('depth', '3.28', 'm'),
  pond('depth', '0.9', 'ft'),
  pond('depth', '1', 'in'),
  pond('depth', '100', 'm'),
  pond('length', '15.1', 'm'),
  pond('length', '4.6', 'ft'),
  pond('length', '460', 'm'),
  pond('width', '11.2', 'm'),
  pond('width', '3.4', 'ft'),
  pond('width', '340', 'm'),
  pond('highest_raise', '1', 'm'),
  pond('highest_raise', '100', 'm'),
  pond('ring_width', '20', 'm'),
  pond('ring_width', '1.2', 'm'),
  pond('bedding_thickness', '5', 'm'),
  pond('bedding_thickness', '0.5', 'm'),
  pond('usual_drawdown', '10', 'm'),
  pond('usual_drawdown', '0.8', 'm'),
  pond('water_above_rim_ground', '30', 'm'),
  pond('water_above_rim_ground', '1', 'm'),
  pond('accepted_risk', '2'),
  pond('accepted_risk', '0.5'),
  pond('accepted_risk', '0.0002'),
  pond('days_empty', '1', 'h'),
  pond('days_empty', '300'),
  pond('margin', '10', 'm'),
  pond('margin', '0.4', 'm'),
  pond('edging_load', '30', 'psi'),
  pond('edging_load', '30', 'kPa'),
  site('latitude', '0.916', 'deg'),
  site('latitude', '5230', 'deg'),
  site('uphill_area', '30000', 'm2'),
  site('roof_area', '1200', 'm2'),
  site('roof_area', '0.4', 'm2'),
  site('storm_rain', '50', 'm'),
  site('storm_rain', '2', 'mm'),
  times('pits.csv', 'top', FOOT, 'feet as metres'),
  times('pits.csv', 'bottom', FOOT, 'feet as metres'),
  times('pits.csv', 'bottom', 1 / FOOT, 'metres as feet'),
  times('pits.csv', 'bottom', 100, 'centimetres as metres'),
  times('pits.csv', 'ksat', 1e4, 'cm/s as m/s, twice'),
  times('pits.csv', 'strength', 47.88, 'psf for kPa'),
  times('water.csv', 'depth', FOOT, 'feet as metres'),
  times('water.csv', 'depth', 100, 'centimetres as metres'),
  times('water.csv', 'hole_depth', FOOT, 'feet as metres'),
  times('water.csv', 'hole_depth', 0.01, 'metres as centimetres'),
  times('water.csv', 'hole_diameter', 10, 'millimetres as centimetres'),
  times('water.csv', 'hole_diameter', 0.394, 'inches as centimetres'),
  times('water.csv', 'pipe_bore', 10, 'millimetres as centimetres'),
  times('water.csv', 'open_from', FOOT, 'feet as metres'),
  times('levels.csv', 'level', 100, 'centimetres as metres'),
  times('levels.csv', 'level', FOOT, 'feet as metres'),
  times('levels.csv', 'distance', 100, 'centimetres as metres'),
  times('levels.csv', 'x', 100, 'centimetres as metres'),
  times('weather.csv', 'rain', 25.4, 'inches as millimetres, the wrong way'),
  times('weather.csv', 'rain', 1 / 25.4, 'inches in a column of millimetres'),
  column('weather.csv', 'tm', (cell) => String(Number(cell) * 1.8 + 32), 'lowest in °F under °C'),
  column('weather.csv', 'tmax', (cell) => String(Number(cell) * 1.8 + 32), 'highest in °F under °C'),
  {
    name: '°C under °F headers',
    make: (files) => ({
      ...files,
      'weather.csv': (files['weather.csv'] ?? '').replace('tmin_c,tmax_c', 'tmin_f,tmax_f'),
    }),
  },
  times('soakage.csv', 'hole_diameter', 10, 'millimetres as centimetres'),
];

/** What cannot be, or hardly. */
export const ABSURD: Slip[] = [
  moved('rim', 22),
  moved('rim', -22),
  moved('rim', 3),
  moved('outlet', 17),
  moved('outlet', 3),
  moved('outlet', -25),
  moved('discharge', 90),
  moved('ditch', 16),
  moved('ditch', -16),
  moved('flood', 30),
  moved('flood', -3),
  moved('pit', 8),
  moved('pit', -8),
  moved('house', 30),
  added('levels.csv', 'foot,footing,,,30,'),
  site('latitude', '-52.5', 'deg'),
  site('latitude', '2', 'deg'),
  site('latitude', '89', 'deg'),
  site('life', '0.5'),
  site('life', '1500'),
  site('storm_hours', '1000'),
  site('abstraction_limit', '1e9', 'm3/d'),
  site('roof_area', '-10', 'm2'),
  site('uphill_area', '1e9', 'm2'),
  pond('depth', '5', 'm'),
  pond('depth', '0.15', 'm'),
  pond('depth', '0', 'm'),
  pond('depth', '-1', 'm'),
  pond('length', '0.3', 'm'),
  pond('length', '150', 'm'),
  pond('width', '0.3', 'm'),
  pond('side_slope', '5'),
  pond('side_slope', '45'),
  pond('side_slope', '2.5'),
  pond('area', '0.5', 'm2'),
  pond('area', '4', 'm2'),
  pond('area', '100', 'm2'),
  pond('shelf_width', '20', 'm'),
  pond('shelf_width', '2', 'm'),
  pond('shelf_depth', '2', 'm'),
  pond('water_above_rim_ground', '-0.95', 'm'),
  pond('water_above_rim_ground', '-2', 'm'),
  pond('usual_drawdown', '0.9', 'm'),
  pond('usual_drawdown', '1', 'm'),
  pond('usual_drawdown', '-0.2', 'm'),
  pond('ring_depth', '5', 'm'),
  pond('ring_width', '3', 'm'),
  pond('days_empty', '0'),
  pond('days_empty', '1000'),
  pond('emptied_in', '13'),
  pond('emptied_in', '0'),
  pond('built_in', '3;14'),
  pond('ballast_thickness', '1', 'm'),
  pond('floor_fall', '60', '%'),
  pond('edging_load', '500', 'kPa'),
  pond('accepted_risk', '1'),
  pond('accepted_risk', '0'),
  pond('accepted_risk', '1e-5'),
  pond('margin', '0.9', 'm'),
  added('water.csv', 'P1,2023-11-11,09:00,dry,,1.70,10,3.2,0.90,'),
  added('water.csv', 'H9,2023-11-11,09:00,level,-0.35,1.20,10,,,'),
  years('water.csv', -100),
  years('water.csv', 100),
  years('water.csv', 10),
  years('weather.csv', 100),
  years('weather.csv', -100),
  halfYear('weather.csv'),
  halfYear('water.csv'),
  all('weather.csv', 'rain', '399'),
  all('weather.csv', 'rain', '2.1'),
  all('weather.csv', 'rain', '0'),
  all('weather.csv', 'tmax', '60'),
  all('weather.csv', 'tm', '60'),
  column('weather.csv', 'tmin', () => '-40', 'always −40'),
  column('weather.csv', 'rain', (cell) => `-${cell}`, 'negative'),
  column('weather.csv', 'rain', (cell, row) => (row > 300 && row < 340 ? '7.5' : cell), 'filled down'),
  column('weather.csv', 'tmax', (cell) => String(Number(cell) - 40), '40 lower'),
  times('water.csv', 'depth', -3, 'upside down'),
  all('water.csv', 'depth', '-5'),
  all('water.csv', 'hole_diameter', '200'),
  all('water.csv', 'hole_diameter', '1'),
  all('water.csv', 'pipe_bore', '30'),
  all('water.csv', 'pipe_bore', '0.5'),
  all('water.csv', 'open_from', '9'),
  all('water.csv', 'hole_depth', '20'),
  all('water.csv', 'date', '2023-02-30'),
  all('pits.csv', 'stones', '100'),
  all('pits.csv', 'organic', '130'),
  all('pits.csv', 'sand', '120'),
  all('pits.csv', 'ksat', '5'),
  all('pits.csv', 'ksat', '1e-3'),
  all('pits.csv', 'strength', '3000'),
  all('pits.csv', 'strength', '0.01'),
  all('pits.csv', 'bottom', '30'),
  all('pits.csv', 'bottom', '0.05'),
  all('pits.csv', 'texture', 'granite'),
  all('levels.csv', 'level', '1e6'),
  all('levels.csv', 'role', 'rim'),
  added('heads.csv', 'place,month,depth_m\nsite,high,25'),
  added('heads.csv', 'place,month,depth_m\nsite,13,0.3'),
  replaced(
    'soakage.csv',
    'pit,test,minutes,depth_to_water_m,hole_depth_m,hole_diameter_cm\nP1,A,0,0.3,0.6,15\nP1,A,1,0.59,0.6,15\n',
    'a test faster than gravel',
  ),
  replaced(
    'soakage.csv',
    'pit,test,minutes,depth_to_water_m,hole_depth_m,hole_diameter_cm\nP1,A,0,0.3,0.6,150\nP1,A,60,0.31,0.6,150\n',
    'a test hole a metre and a half wide',
  ),
];
