import { expect, test } from 'vitest';
import { assess } from '../../lib/decision/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { answerLines, headlineOf, nextWords } from '../../lib/text/index.js';
import { surveyOf, withItem } from '../folder.js';
import { baseSurvey } from '../risk/base.js';

const RIM = ['A,rim,0,10', 'B,rim,0,10.01'];

function said(rim: string[]) {
  const { 'levels.csv': _, ...unlevelled } = baseSurvey();
  const levels = `point,role,distance_m,level_m\n${rim.join('\n')}\n`;
  const files = { ...unlevelled, ...(rim.length > 0 && { 'levels.csv': levels }) };
  const powered = ['mains_power', 'discharge_allowed'].reduce<Record<string, string>>(
    (all, item) => withItem(all, 'site.csv', item, 'yes'),
    files,
  );
  const report = reportOf(assess(siteModel(surveyOf(powered), { samples: 64 })));
  return {
    headline: headlineOf(report),
    lines: answerLines(report.result, 'metric').join('\n'),
    next: nextWords(report),
  };
}

test('where fewer than two places of the rim are levelled no answer is a plain yes, and levelling comes next', () => {
  for (const rim of [[], RIM.slice(0, 1)]) {
    const { headline, lines, next } = said(rim);
    expect(headline.answer).toMatch(/^If the ground there is level: yes, /);
    expect(headline.next).toMatch(/^First level the ground at the rim/);
    expect(lines).toMatch(/^[^\n]*if the ground there is level\n/);
    expect(lines).toMatch(/\nnext +level the ground at the rim/);
    expect(next[0]).toMatch(/^Measure next: level the ground at the rim/);
  }
  const { headline, lines, next } = said(RIM);
  expect(headline.answer).toMatch(/^Yes, /);
  for (const words of [headline.next, lines, ...next]) expect(words).not.toMatch(/level the ground/);
});
