import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseSurvey, type Survey } from '../lib/survey/index.js';

/** The CSV files of a demo survey as text. */
export function demoFiles(name: string): Record<string, string> {
  const folder = fileURLToPath(new URL(`../datasets/${name}/`, import.meta.url));
  return Object.fromEntries(
    readdirSync(folder)
      .filter((f) => f.endsWith('.csv'))
      .map((f) => [f, readFileSync(join(folder, f), 'utf8')]),
  );
}

/** Weather of a {@link briefDemo} begins on this day; ten water years are left. */
const BRIEF_FROM = '2014-10-01';

/** A demo survey with the last years of its weather only: for what does not hang on how long the record is. */
export function briefDemo(name: string): Record<string, string> {
  return edited(demoFiles(name), 'weather.csv', (text) => {
    const [header = '', ...rows] = text.split('\n');
    return [header, ...rows.filter((row) => row === '' || row >= BRIEF_FROM)].join('\n');
  });
}

/** A survey with some rows of one file replaced or removed. */
export function edited(
  files: Record<string, string>,
  file: string,
  edit: (text: string) => string,
): Record<string, string> {
  const text = edit(files[file]);
  if (text === files[file]) throw new Error(`the edit of ${file} changes nothing`);
  return { ...files, [file]: text };
}

/** A survey with an item of pond.csv or site.csv set. */
export function withItem(
  files: Record<string, string>,
  file: 'pond.csv' | 'site.csv',
  item: string,
  value: string,
  unit = '',
): Record<string, string> {
  const rows = files[file].split('\n').filter((row) => row.trim() !== '' && !row.startsWith(`${item},`));
  return { ...files, [file]: `${[...rows, `${item},${value},${unit},`].join('\n')}\n` };
}

const read = new Map<string, Survey>();

/** The survey of some files: read once, and every time another object, which a test may change. */
export function surveyOf(files: Record<string, string>): Survey {
  const key = JSON.stringify(files);
  const survey = read.get(key) ?? parseSurvey(files, { name: 'test' });
  read.set(key, survey);
  return structuredClone(survey);
}
