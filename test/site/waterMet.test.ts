/** Water taken over from a site before, and what a weekend meets, against sites simulated by themselves. */
import { describe, expect, test } from 'vitest';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, surveyOf, withItem } from '../folder.js';
import { sweep } from '../sweep.js';

const OPTIONS = { samples: 16 };
const demo = (name: string, item: string, value: string, unit: string) =>
  surveyOf(withItem(briefDemo(name), 'pond.csv', item, value, unit));

describe.each(sweep(['clay-slope', 'clay-hollow'], 1))('%s', (name) => {
  const files = briefDemo(name);
  const site = siteModel(surveyOf(files), OPTIONS);

  test('a weekend meets what a survey has it meet that says so', () => {
    const { closure, weekend, ...said } = siteModel(demo(name, 'days_empty', '2', 'd'), OPTIONS).water;
    expect(site.water.daysEmpty).toBeGreaterThan(2);
    expect(weekend).toBeUndefined();
    expect(said).toMatchObject(site.water.weekend!);
  });

  test.each([
    ['length', '6', 'm'],
    ['side_slope', '1', ''],
    ['days_empty', '3', 'd'],
  ])('with another %s its water is that of a site by itself', (item, value, unit) => {
    const survey = demo(name, item, value, unit);
    expect(siteModel(survey, { ...OPTIONS, before: site }).water).toEqual(siteModel(survey, OPTIONS).water);
  });

  test('kept otherwise its water is that of a site by itself, and its clay is not run again', () => {
    const { usual_drawdown: _, ...pond } = surveyOf(files).pond;
    const survey = { ...surveyOf(files), pond: { ...pond, kept_within: 0.03 } };
    const after = siteModel(survey, { ...OPTIONS, before: site });
    expect(after.water).toEqual(siteModel(survey, OPTIONS).water);
    expect(after.water.clayLow).toBe(site.water.clayLow);
  });
});
