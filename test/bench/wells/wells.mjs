/** Measured wells as a survey sees them: weather, readings before a day to draw dips from, and those after to judge by. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { uniforms } from '../../../dist/sampling/index.js';

const rowsOf = (path) => readFileSync(path, 'utf8').trim().split('\n').slice(1);
export const dayOf = (date) => Math.floor(Date.parse(date) / 864e5);

/** Every well of a folder: `about.json`, `weather.csv`, `heads.csv` (date, depth below the ground in m) each. */
export function wellsIn(folder) {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => {
      const at = (file) => join(folder, name, file);
      const about = JSON.parse(readFileSync(at('about.json'), 'utf8'));
      const looks = rowsOf(at('heads.csv')).map((row) => {
        const [date, depth] = row.split(',');
        return { date, day: dayOf(date), depth: Number(depth) };
      });
      const split = dayOf(about.test_from);
      return {
        name,
        about,
        weather: readFileSync(at('weather.csv'), 'utf8'),
        before: looks.filter(({ day }) => day < split),
        after: looks.filter(({ day }) => day >= split),
      };
    });
}

/** Looks nearest to wanted days, each once. */
function nearest(looks, days) {
  const chosen = new Set();
  for (const day of days) {
    let best = 0;
    looks.forEach((look, i) => {
      if (Math.abs(look.day - day) < Math.abs(looks[best].day - day)) best = i;
    });
    chosen.add(best);
  }
  return [...chosen].sort((a, b) => a - b).map((i) => looks[i]);
}

const YEAR = 365.25;
/** How an owner would dip: in one winter, every month of a year, now and then over years, or a logger. */
export const DENSITIES = {
  4: { years: 0.33, fromMonth: 12 },
  12: { years: 1 },
  50: { years: 6 },
  all: {},
};

/** Dips of a density, drawn from the readings before the split. */
export function drawDips({ before }, density, draw) {
  if (density === 'all') return before;
  const count = Number(density);
  const next = uniforms(97 * draw + count);
  const { years, fromMonth } = DENSITIES[density];
  const [first, last] = [before[0].day, before[before.length - 1].day];
  for (let tries = 0; tries < 1000; tries++) {
    let start = first + next() * Math.max(last - first - years * YEAR, 0);
    if (fromMonth) start = dayOf(`${new Date(start * 864e5).getUTCFullYear()}-${fromMonth}-01`);
    const step = (Math.min(years * YEAR, last - first) / count) | 0;
    const days = Array.from({ length: count }, (_, i) => start + (i + next()) * step);
    const dips = nearest(before, days);
    const near = dips.every(({ day }) => days.some((d) => Math.abs(d - day) < step));
    if (near && dips.length >= 0.9 * count) return dips;
  }
  throw new Error(`no ${density} dips found`);
}

/** The survey of a well and its dips, as files. */
export function surveyFiles({ about, weather }, dips) {
  const layers = about.layers.map(
    ([top, bottom, texture, structure]) => `P1,${top},${bottom},${texture},${structure}`,
  );
  return {
    'site.csv': `item,value,unit,note\nlatitude,${about.latitude},deg,\n`,
    'pond.csv':
      'item,value,unit,note\ndepth,1,m,\nlength,4,m,\nwidth,3,m,\nring_width,0,m,\nbedding,none,,\n',
    'pits.csv': `pit,top_m,bottom_m,texture,structure\n${layers.join('\n')}\n`,
    'weather.csv': weather,
    'water.csv': `pit,date,reading,depth_m,hole_depth_m\n${dips
      .map(({ date, depth }) => `P1,${date},level,${depth},4.5`)
      .join('\n')}\n`,
  };
}
