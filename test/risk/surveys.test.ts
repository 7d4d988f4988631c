import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { parseSurvey } from '../../lib/survey/index.js';
import { at } from './path.js';

/** What a site of `test/surveys` must come to: worked out by hand, the reason beside it. All invented. */
interface Expected {
  /** any of these may be recommended */
  option: string[];
  /** each is done together with it */
  also: string[];
  rules: string[];
  governs: string[];
  checks: { path: string; min?: number; max?: number; equals?: unknown }[];
  why: string;
  trap: string;
}

const ROOT = fileURLToPath(new URL('../surveys/', import.meta.url));

describe.each(readdirSync(ROOT))('%s', (name) => {
  const folder = join(ROOT, name);
  const files = readdirSync(folder).filter((f) => f.endsWith('.csv'));
  const survey = parseSurvey(Object.fromEntries(files.map((f) => [f, readFileSync(join(folder, f))])), {
    name,
  });
  const expected: Expected = JSON.parse(readFileSync(join(folder, 'expected.json'), 'utf8'));
  const result = resultOf(judge(siteModel(survey, { samples: 256 })));
  const { option, also, rules, governs } = result.recommendation;

  test(expected.why, () => {
    expect(expected.option).toContain(option);
    expect([option, ...also]).toEqual(expect.arrayContaining(expected.also));
    expect(rules.map((r) => r.code)).toEqual(expect.arrayContaining(expected.rules));
    if (expected.governs.length > 0) expect(expected.governs).toContain(governs);
  });

  test.each(expected.checks.map((check) => [check.path, check] as const))('%s', (path, check) => {
    const value = at(result, path);
    if ('equals' in check) expect(value).toBe(check.equals);
    else {
      expect(value).toBeGreaterThanOrEqual(check.min ?? Number.NEGATIVE_INFINITY);
      expect(value).toBeLessThanOrEqual(check.max ?? Number.POSITIVE_INFINITY);
    }
  });
});
