/** Every step of a page worked out again from its print alone, and every origin looked up. */
import { describe, expect, it, vi } from 'vitest';
import { resultOf } from '../../lib/report/index.js';
import { briefDemo, withItem } from '../folder.js';
import { sweep, WHOLE } from '../sweep.js';
import { problemsOf, stepsOf } from './parse.js';
import { placed } from './place.js';
import { printed } from './printed.js';

vi.setConfig({ testTimeout: 120_000 });

const DEMOS = ['clay-slope', 'clay-hollow', 'loam-terrace', 'meadow-scrape', 'old-garden-pond'];

describe.each(sweep(DEMOS, 2))('the steps of %s', (demo) => {
  const { assessment, worked, text, beside } = printed(briefDemo(demo), 64);

  it.each(['metric', 'us'] as const)('make one another as they are printed, in %s units', (units) => {
    expect(problemsOf(text(units), beside)).toEqual([]);
  });

  it('equal the answer', () => {
    const answer = { ...resultOf(assessment), report: { drain: assessment.drain } };
    const steps = worked.flatMap((part) => part.steps);
    const compared = worked.flatMap(({ equals }) => equals);
    expect(compared.length).toBeGreaterThan(8);
    for (const { path, step, per } of compared) {
      const said = placed(answer, path) as number;
      const { shown, result } = steps[step - 1]!;
      expect(Math.abs(result / per - said), path).toBeLessThanOrEqual(1e-5 * Math.abs(said) + 1e-9);
      // What rounding of the numbers put in leaves; levels to a tenth of a millimetre.
      expect(Math.abs(shown / per - said), path).toBeLessThanOrEqual(3e-4 * Math.abs(said) + 1e-4);
    }
  });
});

/** Never emptied and as full as its bank allows: what stands uphill decides alone. */
const uphill = withItem(
  withItem(briefDemo('clay-slope'), 'pond.csv', 'emptied_in', 'never'),
  'pond.csv',
  'water_above_rim_ground',
  '0.1',
  'm',
);

it('a cut-off drain has its level in steps, and the steps make one another', () => {
  const { assessment, worked, text, beside } = printed(uphill, 64);
  expect(assessment.decision.option).toBe('cutoff-drain');
  const kept = worked.flatMap(({ steps }) => steps).find(({ symbol }) => symbol === 'c');
  expect(kept!.shown).toBeCloseTo(assessment.decision.measures.cutoff!, 4);
  expect(problemsOf(text('metric'), beside)).toEqual([]);
});

describe('an error in print', () => {
  const { text, beside } = printed(briefDemo('clay-slope'), 64);
  const page = text();
  const steps = stepsOf(page);
  const lineOf = (number: number) => page.split('\n').find((line) => line.trim().startsWith(`${number}. `))!;

  it('is found in a digit of any result', () => {
    for (const { number, symbol, result } of WHOLE ? steps : steps.filter((_, at) => at % 4 === 0)) {
      const line = lineOf(number);
      const wrong = line.replace(
        new RegExp(`; ${symbol} = ${result}(?=[^;]*$)`),
        `; ${symbol} = ${result === 0 ? 0.01 : result * 1.001}`,
      );
      if (wrong === line) continue;
      expect(problemsOf(page.replace(line, wrong), beside), line).not.toEqual([]);
    }
  });

  it('is found in a digit put in, a wrong step, a wrong line and a missing one', () => {
    const planted = (from: RegExp, to: string) => {
      expect(page).toMatch(from);
      expect(problemsOf(page.replace(from, to), beside)).not.toEqual([]);
    };
    planted(/L = 4\.6 m \[pond/, 'L = 4.7 m [pond');
    planted(/\[step 2\]/, '[step 3]');
    planted(/\[step 2\]/, '[step 99999]');
    planted(/\[pond\.csv line 3, length\]/, '[pond.csv line 4, length]');
    planted(/\[pond\.csv line 3, length\]/, '[pond.csv line 300, length]');
    planted(/\[pond\.csv line 3, length\]/, '[pound.csv line 3, length]');
    planted(/\[pond\.csv line 3, length\]/, '[somewhere]');
    planted(/\n\s*7\. /, '\n8. ');
    planted(/A = f\*max/, 'A = g*max');
    planted(/quantile\(outside_m, 0\.98\)/, 'quantile(outside_m, 0.97)');
  });

  it('is found in the files beside it', () => {
    const pond = beside.files['pond.csv']!.replace(/^width,3\.4/m, 'width,3.5');
    expect(problemsOf(page, { ...beside, files: { ...beside.files, 'pond.csv': pond } })).not.toEqual([]);
    const heads = beside.heads.replace(/^(1,\d+,)[^,]+/gm, '$13');
    expect(problemsOf(page, { ...beside, heads })).not.toEqual([]);
  });
});
