/** The demos with ten years of their weather, with the twelve means of them, and with neither. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { calendarOf, DAYS_OF_MONTH } from '../../lib/climate/index.js';
import { judge } from '../../lib/decision/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import type { Survey } from '../../lib/survey/index.js';
import { briefDemo, surveyOf } from '../folder.js';
import { PROJECT } from '../notebook/notebooks.js';

export const DEMOS = readdirSync(join(PROJECT, 'datasets'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

export type Given = 'neither' | 'months' | 'days';

/** The means of a record by month, as somebody reads them off a service's page. */
function twelveMonths({ weather }: Survey): Survey['climate'] {
  return DAYS_OF_MONTH.map((days, at) => {
    const own = weather.filter(({ day }) => calendarOf(day).month === at + 1);
    const mean = (value: (row: Survey['weather'][number]) => number) =>
      own.reduce((sum, row) => sum + value(row), 0) / own.length;
    return {
      month: at + 1,
      rain: mean(({ rain }) => rain!) * days,
      tmean: mean(({ tmin, tmax }) => (tmin! + tmax!) / 2),
      origin: { file: 'climate.csv', line: at + 2 },
    };
  });
}

/** A demo that knows so much of its weather, with its looks or its holes alone. */
export function gardenOf(name: string, given: Given, looks: boolean): Survey {
  const survey = surveyOf(briefDemo(name));
  const climate = given === 'months' ? twelveMonths(survey) : [];
  return {
    ...survey,
    weather: given === 'days' ? survey.weather : [],
    climate,
    looks: looks ? survey.looks : [],
  };
}

/** How surely the yearly high is known: width within which eight draws of ten have it, m. */
export function bandOf(survey: Survey, samples: number): number {
  const { p10, p90 } = reported(survey, samples).result.water.seasonal_high_depth_m;
  return p90 - p10;
}

/** What is recommended. */
export const adviceOf = (survey: Survey, samples: number) =>
  reported(survey, samples).result.recommendation.option;

export const reported = (survey: Survey, samples: number) =>
  reportOf(judge(siteModel(survey, { seed: 1, samples })));

/** The middle one. */
export const middle = (values: number[]) => values.toSorted((a, b) => a - b)[(values.length - 1) / 2]!;
