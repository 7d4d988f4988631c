import { describe, expect, it, test } from 'vitest';
import type { Result } from '../../lib/contract/index.js';
import { assess } from '../../lib/decision/index.js';
import { fitted } from '../../lib/notebook/fitted.js';
import { resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { surveyFrom } from '../../lib/survey/index.js';
import { answerLines } from '../../lib/text/answerLines.js';
import { demoFiles, surveyOf } from '../folder.js';

const answerOf = (survey: ReturnType<typeof surveyFrom>) =>
  resultOf(assess(siteModel(survey, { samples: 32 })));
const PITS_ONLY = surveyFrom({
  site: { latitude: 52 },
  pond: { depth: '1 m', length: '4 m', width: '3 m' },
  pits: [{ pit: 'P1', top: 0, bottom: '2 m', texture: 'clay' }],
});

describe('the answer in five lines', () => {
  it.each(['clay-hollow', 'clay-slope', 'loam-terrace', 'pits only'])(
    '%s, each on a terminal of 80',
    (name) => {
      const result = answerOf(name === 'pits only' ? PITS_ONLY : surveyOf(demoFiles(name)));
      const lines = answerLines(result, 'us');
      expect(lines).toHaveLength(5);
      for (const line of fitted(lines, 80)) expect(line.length).toBeLessThanOrEqual(80);
      // The verdict on the full pond is that of the option advised, or says whose it is.
      const { option, also } = result.recommendation;
      const advised = result.options.find((one) => one.possible && [option, ...also].includes(one.option));
      const shown = advised ?? result.options.find((one) => one.option === 'no-drain');
      if (shown?.possible) {
        expect(lines[2]?.includes('stays down')).toBe(shown.full.safe);
        expect(lines[2]?.endsWith('with nothing done')).toBe(!advised);
        const free = shown.lowest_safe_level_m.filter((level) => level === null).length;
        expect(lines[3]).toContain(free === 12 ? 'in any month' : free === 0 ? 'in no month' : 'only');
      }
    },
  );

  test('where nothing may be dug nothing is promised', () => {
    const recommendation: Result['recommendation'] = {
      option: 'do-not-dig',
      also: [],
      depth_m: 0,
      raise_m: 0,
      safe_depth_m: null,
      governs: 'protected',
      reason: '',
      rules: [],
      close_call: false,
      change: null,
      as_built: false,
      measure_next: [],
    };
    expect(answerLines({ recommendation, options: [], situations: [], assumptions: [] }, 'metric')).toEqual([
      'Do not dig',
      'against    protected ground',
      'in use     not known',
      'emptied    not known',
      'next       nothing tried would change this',
    ]);
  });
});

test('long lines break at spaces, set in, with no word lost', () => {
  const line = `next       ${'a sealed pipe read through the wet half-year '.repeat(4).trim()}`;
  const parts = fitted([line], 60);
  expect(parts.every((part) => part.length <= 60)).toBe(true);
  expect(
    parts
      .map((part) => part.trim())
      .join(' ')
      .replace(/\s+/g, ' '),
  ).toBe(line.replace(/\s+/g, ' '));
  expect(fitted([line], 3).every((part) => part.length <= 24)).toBe(true);
  expect(
    fitted(['x'.repeat(100)], 60)
      .join('')
      .replace(/ /g, ''),
  ).toBe('x'.repeat(100));
});
