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

export function surveyOf(files: Record<string, string>): Survey {
  return parseSurvey(files, { name: 'test' });
}
