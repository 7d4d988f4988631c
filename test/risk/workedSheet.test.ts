import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { resultOf, workedSheet } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, surveyOf, withItem } from '../folder.js';
import { placed } from '../steps/place.js';
import { sweep } from '../sweep.js';
import { baseSurvey } from './base.js';

const seamed = (() => {
  const files = baseSurvey({ depth: 0.5, spread: 0.05, level: 0.05 });
  files['pits.csv'] += 'P1,2.6,3.2,sand,,none,,,\n';
  files['heads.csv'] += 'below:P1,high,0.2,0.05,pipe in the sand\n';
  return withItem(files, 'pond.csv', 'emptied_in', '3');
})();

const SURVEYS: [string, Record<string, string>][] = [
  ['a seam under the clay', seamed],
  ['clay hollow', briefDemo('clay-hollow')],
  ['clay slope', briefDemo('clay-slope')],
  ['loam terrace', briefDemo('loam-terrace')],
];

describe.each(sweep(SURVEYS, 2))('the worked sheet of %s', (_, files) => {
  const assessment = judge(siteModel(surveyOf(files), { samples: 200 }));
  const result = resultOf(assessment);
  const sheet = workedSheet(assessment);

  test('holds every figure that result.json has of it', () => {
    const compared = sheet.flatMap(({ equals }) => equals).filter(({ path }) => !path.startsWith('report.'));
    const steps = sheet.flatMap((part) => part.steps);
    expect(compared.length).toBeGreaterThan(1);
    for (const { path, step, per } of compared) {
      const shown = steps[step - 1].result / per;
      const said = placed(result, path) as number;
      expect(Math.abs(shown - said), path).toBeLessThanOrEqual(1e-5 * Math.abs(said) + 1e-9);
    }
  });

  test('can be redone by hand: each equation with the numbers put in gives its result', () => {
    for (const { steps } of sheet)
      for (const { expression, inputs, result: shown, drawn } of steps) {
        if (drawn) continue;
        const scope = Object.fromEntries(inputs.map((i) => [i.symbol, i.value]));
        expect(Math.abs(evaluate(expression, scope) - shown)).toBeLessThanOrEqual(
          1e-9 * Math.abs(shown) + 1e-12,
        );
      }
  });

  test('names the survey rows its inputs came from', () => {
    for (const part of sheet)
      for (const origin of part.from) {
        const row = files[origin.file].split('\n')[origin.line! - 1];
        expect(row, `${origin.file}:${origin.line}`).toMatch(/\S/);
      }
    expect(sheet.some((p) => p.from.length > 0)).toBe(true);
    const told = sheet
      .flatMap(({ steps }) => steps.flatMap(({ inputs }) => inputs.map(({ from }) => from)))
      .join();
    for (const [, file, line] of told.matchAll(/\b([a-z]+\.csv) lines? (\d+)/g))
      expect(files[file].split('\n')[Number(line) - 1], `${file}:${line}`).toMatch(/\S/);
  });
});
