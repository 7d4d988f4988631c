/** The country of a site: two letters, a few names, and a remedy for what is neither. */
import { describe, expect, test } from 'vitest';
import { siteModel } from '../../lib/site/index.js';
import { COUNTRY_CODES } from '../../lib/survey/country.js';
import { parseSurvey, SurveyError } from '../../lib/survey/index.js';

const files = (rows: string) => ({
  'pond.csv': 'item,value,unit,note\ndepth,1,m,\nlength,4,m,\nwidth,3,m,\n',
  'heads.csv': 'place,month,depth_m\nsite,high,0.3\n',
  'site.csv': `item,value,unit,note\nlatitude,52,deg,\n${rows}`,
});
const read = (rows: string) => parseSurvey(files(rows), { name: 'test' });

test('the codes are those of ISO 3166-1: 249, each a region that the world knows by name', () => {
  const name = new Intl.DisplayNames(['en'], { type: 'region', fallback: 'none' });
  expect(COUNTRY_CODES.size).toBe(249);
  for (const code of COUNTRY_CODES) expect(name.of(code), code).toBeTruthy();
  for (const no of ['UK', 'EU', 'XK', 'SU', 'YU', 'AN', 'ZZ']) expect(COUNTRY_CODES.has(no)).toBe(false);
});

describe.each([
  ['GB', 'GB', 'gb'],
  ['gb', 'GB', 'gb'],
  ['uk', 'GB', 'gb'],
  ['U.K.', 'GB', 'gb'],
  ['Northern Ireland', 'GB', 'gb'],
  ['ireland', 'IE', 'ie'],
  ['U.S.A.', 'US', 'us'],
  ['us', 'US', 'us'],
  ['NZ', 'NZ', 'en'],
])('%s', (written, code, rules) => {
  const survey = read(`country,${written},,\n`);

  test('is read, and what it is taken for is told where it is a name', () => {
    expect(survey.site.country).toBe(code);
    const told = survey.warnings.filter(({ code: each }) => each === 'read-as');
    expect(told).toHaveLength(written.replaceAll('.', '').toUpperCase() === code ? 0 : 1);
  });

  test('chooses the rules; where they are not its own that is told', () => {
    const site = siteModel(survey, { samples: 8 });
    expect(site.country).toEqual({ code, rules });
    const told = site.assumptions.filter(({ item }) => /country/.test(item));
    expect(told.map(({ item }) => item)).toEqual(rules === 'en' ? ['rules of the country'] : []);
    if (rules === 'en') expect(told[0]!.reason).toMatch(/NZ.*national annex.*looked up/);
  });
});

test.each([
  ['', 'en'],
  ['show_units,metric,,\n', 'en'],
  ['show_units,us,,\n', 'us'],
])('absent, with %j, the units choose, and that is told', (rows, rules) => {
  const site = siteModel(read(rows), { samples: 8 });
  expect(site.country).toEqual({ rules });
  const [told] = site.assumptions.filter(({ item }) => item === 'country');
  expect(told!.reason).toMatch(/units of the answer.*no depth or chance hangs on it/);
});

test.each(['XX', 'EU', 'G', 'Atlantis', '__proto__', 'constructor', '44'])(
  '%s is refused with a remedy',
  (written) => {
    let thrown: unknown;
    try {
      read(`country,${written},,\n`);
    } catch (error) {
      thrown = error;
    }
    const [problem, ...more] = (thrown as SurveyError).problems;
    expect(thrown).toBeInstanceOf(SurveyError);
    expect(more).toEqual([]);
    expect(problem).toMatchObject({ code: 'unknown-word', file: 'site.csv', line: 3 });
    expect(problem!.remedy).toMatch(/two letters/);
    expect(problem!.expected).toMatch(/ISO 3166-1, such as GB/);
  },
);
