/** What must not change an answer: the units, the order of rows, rows that say nothing. */
import { describe, expect, test } from 'vitest';
import { assess, type Result, resultOf } from '../../lib/risk/index.js';
import { siteModel } from '../../lib/site/index.js';
import { demoFiles, surveyOf } from '../folder.js';
import { correctSurvey, Dice, filesOf } from '../survey/generated.js';
import { baseSurvey } from './base.js';

type Files = Record<string, string>;
const SAMPLES = 40;

/** Everything but the digest, the assumptions and what is told with places and texts found. */
function answer(files: Files): { result: Partial<Result>; codes: string[] } {
  const {
    survey: _survey,
    assumptions: _assumptions,
    warnings,
    ...result
  } = resultOf(assess(siteModel(surveyOf(files), { seed: 1, samples: SAMPLES })));
  return { result, codes: warnings.map(({ code }) => code).sort() };
}

/** Below this a number is the rounding of the computer. */
const NOTHING = 1e-9;
const CHANCE = /per_year|standard_error|risk_in_life|per_dig|chance/;

/** Numbers to a millionth, or a unit in their sixth and last figure; chances to one sample. */
function differences(one: unknown, other: unknown, path = ''): string[] {
  if (typeof one === 'number' && typeof other === 'number') {
    const last = 10 ** (Math.floor(Math.log10(Math.max(Math.abs(one), 1e-300))) - 5);
    const slack = CHANCE.test(path) ? 1 / SAMPLES : Math.max(1e-6 * Math.abs(one), last * 1.001, NOTHING);
    return Math.abs(one - other) <= slack ? [] : [`${path}: ${one}, ${other}`];
  }
  if (one === null || other === null || typeof one !== 'object' || typeof other !== 'object')
    return one === other ? [] : [`${path}: ${one}, ${other}`];
  const [a, b] = [one as Record<string, unknown>, other as Record<string, unknown>];
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].flatMap((key) =>
    differences(a[key], b[key], `${path}.${key}`),
  );
}

const METRES = { m: 1, cm: 0.01, mm: 0.001, ft: 0.3048, in: 0.0254 } as const;
type Length = keyof typeof METRES;

/** Every plain length in another unit, to all its figures. */
function inUnit(files: Files, unit: Length): Files {
  const moved = (cell: string, from: Length) =>
    /^-?[\d.]+$/.test(cell) ? String((Number(cell) * METRES[from]) / METRES[unit]) : cell;
  const entries = Object.entries(files).map(([name, text]) => {
    const [header = '', ...rows] = text.trimEnd().split('\n');
    const names = header.split(',');
    const units = names.map((one) => /_(m|cm|mm|ft|in)$/.exec(one)?.[1] as Length | undefined);
    const said = names.map((one, at) => (units[at] ? one.replace(/_[a-z]+$/, `_${unit}`) : one));
    const facts = names[0] === 'item' && names[1] === 'value';
    const lines = rows.map((row) => {
      const cells = row.split(',');
      if (facts && (cells[2] ?? '') in METRES)
        return [cells[0], moved(cells[1] ?? '', cells[2] as Length), unit, ...cells.slice(3)].join(',');
      return cells
        .map((cell, at) => (units[at] && cells.length === names.length ? moved(cell, units[at]) : cell))
        .join(',');
    });
    return [name, `${[said.join(','), ...lines].join('\n')}\n`];
  });
  return Object.fromEntries(entries);
}

const EXTRA = {
  'soakage.csv':
    'pit,test,minutes,depth_to_water_cm,hole_depth_cm,hole_diameter_cm,soaked_before\nP1,1,0,30,60,15,yes\nP1,1,30,33,,,\nP1,1,90,38,,,\n',
  'water.csv':
    'pit,date,time,reading,depth_m,hole_depth_m,hole_diameter_cm\nP1,2024-01-03,09:00,opened,2,2,10\nP1,2024-02-03,09:00,level,0.4,2,10\nP1,2024-03-03,09:00,level,0.5,2,10\n',
};
const SURVEYS: [string, Files][] = [
  ['clay-slope', demoFiles('clay-slope')],
  ['months known', { ...baseSurvey(), ...EXTRA }],
  ...[3, 13].map((seed): [string, Files] => [`generated ${seed}`, filesOf(correctSurvey(seed))]),
];

describe.each(SURVEYS)('%s', (_name, files) => {
  const before = answer(files);

  test.each(['ft', 'in', 'cm'] as const)('in %s', (unit) => {
    const after = answer(inUnit(files, unit));
    expect(differences(before.result, after.result)).toEqual([]);
    expect(after.codes).toEqual(before.codes);
  });

  test('rows in another order change nothing but a warning', () => {
    const dice = new Dice(7);
    const shuffled = Object.entries(files).map(([name, text]) => {
      const [header, ...rows] = text.trimEnd().split('\n');
      // The first spot is the planned one, and boundary points are joined in order: levels.csv stays.
      const keyed = rows.map((row) => ({ row, key: name === 'levels.csv' ? 0 : dice.uniform() }));
      const order = keyed.sort((a, b) => a.key - b.key).map(({ row }) => row);
      return [name, `${[header, ...order].join('\n')}\n`] as const;
    });
    const after = answer(Object.fromEntries(shuffled));
    expect(differences(before.result, after.result)).toEqual([]);
    expect(after.codes.filter((code) => code !== 'out-of-order')).toEqual(before.codes);
  });

  test('rows that say nothing change nothing', () => {
    const again = (text: string) => {
      const [header, first, ...rows] = text.trimEnd().split('\n');
      return `\ufeff# in the rain\r\n${[header, first, '', first, '# wet', ...rows].join('\r\n')}\r\n${','.repeat((header?.split(',').length ?? 1) - 1)}\r\n`;
    };
    const after = answer({
      ...Object.fromEntries(Object.entries(files).map(([name, text]) => [name, again(text)])),
      'P1.jpg': 'a photo',
      'notes.md': 'a note',
    });
    expect(differences(before.result, after.result)).toEqual([]);
    expect(after.codes.filter((code) => code !== 'duplicate-row')).toEqual(before.codes);
  });

  test('a hole in clay that was dry before it could fill changes nothing', () => {
    const water = files['water.csv'] as string;
    const [header = ''] = water.split('\n');
    const said: Record<string, string> = { pit: 'Z9', date: '2024-04-02', depth: '2 m', hole_depth: '2 m' };
    const row = (time: string, reading: string) =>
      header.split(',').map((name) => {
        const bare = name.replace(/_(m|cm|ft|in)$/, '');
        if (bare === 'depth' && reading === 'dry') return '';
        return { ...said, time, reading, hole_diameter: '10 cm' }[bare] ?? '';
      });
    const rows = [row('09:00', 'opened'), row('09:05', 'dry')].map((cells) => cells.join(','));
    const after = answer({ ...files, 'water.csv': `${water.trimEnd()}\n${rows.join('\n')}\n` });
    expect(differences(before.result, after.result)).toEqual([]);
  });
});
