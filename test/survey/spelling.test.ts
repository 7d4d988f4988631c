/** A slip in any name of the contract gets the right name back. */
import { describe, expect, test } from 'vitest';
import { CONSISTENCIES, MOTTLES, OTHER_GROUND, STRUCTURES, USDA_CLASSES } from '../../lib/soil/index.js';
import { LEVEL_ROLES, SURVEY_FILES } from '../../lib/survey/index.js';
import { GOOD, problems, read } from './folder.js';
import { ITEMS } from './items.js';

/** Two neighbouring letters exchanged, near the middle. */
function slip(word: string): string {
  const middle = Math.floor(word.length / 2);
  const at = [middle, middle - 1, ...word.split('').keys()].find(
    (n) => n > 0 && word[n - 1] !== word[n] && /[a-z]{2}/.test(word.slice(n - 1, n + 1)),
  );
  if (at === undefined) throw new Error(`no slip in ${word}`);
  return word.slice(0, at - 1) + word[at] + word[at - 1] + word.slice(at + 1);
}
const remedies = (files: Record<string, string>) => problems(files).map(({ remedy }) => remedy);

describe('items', () => {
  const items = Object.entries(ITEMS).flatMap(([file, all]) =>
    Object.keys(all).map((item) => [file, item] as const),
  );
  test.each(items)('%s %s', (file, item) => {
    const files = { [file]: `${GOOD[file as 'pond.csv']}${slip(item)},1,,\n` };
    expect(remedies(files)).toContain(`Did you mean '${item}'?`);
  });
});

const HEADERS: Record<string, string> = {
  'pits.csv':
    'pit,top_m,bottom_m,texture,sand_pct,silt_pct,clay_pct,stones_pct,organic_pct,structure,mottles,consistency,ksat_m_s,strength_kpa,photo,note',
  'water.csv':
    'pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_cm,pipe_bore_cm,open_from_m,pipe_top_m,covered,note',
  'soakage.csv': 'pit,test,minutes,depth_to_water_cm,hole_depth_cm,hole_diameter_cm,soaked_before',
  'heads.csv': 'place,month,depth_m,spread_m,source',
  'levels.csv': 'point,role,x_m,y_m,distance_m,level_m,note',
  'weather.csv': 'date,rain_mm,tmin_c,tmax_c,et0_mm',
  'climate.csv': 'month,rain_mm,tmean_c,et0_mm',
  'prices.csv': 'item,unit,price',
};

describe('columns', () => {
  const columns = Object.entries(HEADERS).flatMap(([file, header]) =>
    header
      .split(',')
      .filter((name) => /[a-z]{2}/.test(name))
      .map((name) => [file, name] as const),
  );
  test.each(columns)('%s %s', (file, name) => {
    const header = (HEADERS[file] as string).split(',').map((one) => (one === name ? slip(one) : one));
    const text = `${header.join(',')}\n${','.repeat(header.length - 1)}\nx${','.repeat(header.length - 1)}\n`;
    const found = problems({ [file]: text }).filter(({ column }) => column === slip(name));
    expect(found.map(({ remedy }) => remedy).join()).toContain(`'${name}'`);
  });
});

describe('words', () => {
  const pits = (column: string, word: string) => ({
    'pits.csv': `pit,top_m,bottom_m,${column}\nP1,0,2,${word}\n`,
  });
  const water = (column: string, word: string) => ({
    'water.csv': `pit,date,depth_m,${column === 'reading' ? '' : 'reading,'}${column}\nP1,2024-02-03,1,${column === 'reading' ? '' : 'level,'}${word}\n`,
  });
  const words: [string, string, (column: string, word: string) => Record<string, string>][] = [
    ...[...USDA_CLASSES, ...OTHER_GROUND].map((word) => ['texture', word, pits] as never),
    ...STRUCTURES.map((word) => ['structure', word, pits] as never),
    ...MOTTLES.map((word) => ['mottles', word, pits] as never),
    ...CONSISTENCIES.map((word) => ['consistency', word, pits] as never),
    ...['opened', 'bailed', 'level', 'dry', 'strike'].map((word) => ['reading', word, water] as never),
    ...LEVEL_ROLES.map(
      (word) =>
        [
          'role',
          word,
          (_: string, said: string) => ({ 'levels.csv': `point,role,level_m\nA,rim,10\nB,${said},10\n` }),
        ] as never,
    ),
    ...['epdm', 'gravel', 'slab', 'existing', 'topsoil', 'round'].map(
      (word) =>
        [
          {
            epdm: 'liner',
            gravel: 'bedding',
            slab: 'ballast',
            existing: 'state',
            topsoil: 'ring_fill',
            round: 'shape',
          }[word],
          word,
          (item: string, said: string) => ({
            'pond.csv': `${GOOD['pond.csv'].replace('shape,box,,\n', '')}${item},${said},,\n`,
          }),
        ] as never,
    ),
  ];
  test.each(words)('%s %s', (column, word, files) => {
    expect(remedies(files(column, slip(word)))).toContain(`Did you mean '${word}'?`);
  });
});

test.each(SURVEY_FILES)('file %s', (file) => {
  const stray = `${slip(file.replace('.csv', ''))}.csv`;
  const [told] = read({ [stray]: 'x' }).warnings;
  expect(told?.message).toContain(`did you mean '${file}'?`);
});
