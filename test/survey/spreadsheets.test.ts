/** What spreadsheets save, and people type: read in the one way it can be meant, or refused with both. */
import { describe, expect, test } from 'vitest';
import { formatProblem, parseSurvey, type Survey, SurveyError } from '../../lib/survey/index.js';
import { sweep } from '../sweep.js';
import { problem, read, warnings } from './folder.js';
import { correctSurvey, filesOf } from './generated.js';
import { SAVED, save } from './spreadsheets.js';

/** What a survey says, without where it stood. */
function said(survey: Survey): unknown {
  const {
    digest: _digest,
    digests: _digests,
    origins: _origins,
    warnings: _warnings,
    files: _files,
    ...rest
  } = survey;
  return JSON.parse(JSON.stringify(rest, (key, value) => (key === 'origin' ? undefined : value)));
}

describe.each(sweep(SAVED, 6))('saved by a spreadsheet: $name', (how) => {
  test('says the same as what was typed, or is refused for a day that can be two', () => {
    let same = 0;
    for (let seed = 1; seed <= 30; seed++) {
      const typed = correctSurvey(seed);
      const files = Object.fromEntries(
        Object.entries(typed).map(([name, sheet]) => [name, save(sheet, how)]),
      );
      const expected = said(parseSurvey(filesOf(typed)));
      try {
        const survey = parseSurvey(files);
        expect(said(survey), `seed ${seed}`).toEqual(expected);
        same++;
        for (const { code, message } of survey.warnings)
          if (code === 'commented-row') expect.unreachable(`seed ${seed}: ${message}`);
      } catch (error) {
        if (!(error instanceof SurveyError)) throw error;
        for (const one of error.problems) {
          expect(one.code, formatProblem(one)).toBe('ambiguous-date');
          expect(one.remedy).toMatch(/^Write \d{4}-\d\d-\d\d or \d{4}-\d\d-\d\d/);
        }
      }
    }
    // Hardly any column of dates has none behind the twelfth.
    expect(same).toBeGreaterThan(25);
  });
});

describe('decimals in a sheet with semicolons', () => {
  const heads = (...depths: string[]) => ({
    'heads.csv': `place;month;depth_cm\n${depths.map((depth, at) => `site;${at + 1};${depth}`).join('\n')}\n`,
  });
  const depths = (...of: string[]) => read(heads(...of)).heads.map(({ depth }) => depth);

  test('a comma is decimal, where a sheet with commas leaves it open', () => {
    expect(depths('1,200')).toEqual([0.012]);
    expect(depths('1,200', '0,5')).toEqual([0.012, 0.005]);
    expect(problem({ 'heads.csv': 'place,month,depth_cm\nsite,1,"1,200"\n' })).toMatchObject({
      code: 'ambiguous-comma',
      remedy: 'Write 1200 or 1.200.',
    });
  });

  test('a point is one too where the numbers show it, and else is open', () => {
    expect(depths('0.5', '1.200')).toEqual([0.005, 0.012]);
    expect(problem(heads('0,5', '1.200'))).toMatchObject({
      code: 'ambiguous-comma',
      line: 3,
      remedy: 'Write 1200 or 1,200.',
    });
    expect(problem(heads('0,5', '0.5', '1,200'))).toMatchObject({
      code: 'ambiguous-comma',
      remedy: 'Write 1200 or 1.2000.',
    });
  });

  test.each(['1200', '1,200', '1.2000'])('what a remedy asks for is read: %s', (text) => {
    const file = text === '1,200' ? heads('0,5', text) : heads('0,5', '0.5', text);
    expect(read(file).heads.at(-1)?.depth).toBe(text === '1200' ? 12 : 0.012);
  });
});

describe('days', () => {
  const water = (...dates: string[]) => ({
    'water.csv': `pit,date,time,reading,depth_m,hole_depth_m\n${dates.map((day) => `P1,"${day}",,level,1,2`).join('\n')}\n`,
  });
  const days = (...dates: string[]) =>
    read(water(...dates)).looks.map(({ day }) => new Date(day * 86_400_000).toISOString().slice(0, 10));

  const problemOr = (text: string) => {
    try {
      return days(text)[0];
    } catch (error) {
      return (error as Error).message;
    }
  };

  test.each([
    '2024-11-27',
    '2024/11/27',
    '2024.11.27',
    '20241127',
    '27.11.2024',
    '27. 11. 2024',
    '27.11.24',
    '27/11/2024',
    '11/27/2024',
    '11/27/24',
    '27-11-2024',
    '27 Nov 2024',
    '27-Nov-24',
    'Nov 27, 2024',
    '27th November 2024',
    '2024-11-27 00:00:00',
    '2024-11-27T00:00',
  ])('%s', (text) => {
    expect(days(text)).toEqual(['2024-11-27']);
  });

  test('one row says how the others of its column are meant, and it is told', () => {
    expect(days('03/11/2024', '27/11/2024')).toEqual(['2024-11-03', '2024-11-27']);
    expect(days('03/11/2024', '04/27/2024')).toEqual(['2024-03-11', '2024-04-27']);
    expect(warnings(water('03/11/2024', '27/11/2024'))).toEqual([
      {
        file: 'water.csv',
        line: 1,
        column: 'date',
        code: 'read-as',
        message: "dates such as '03/11/2024' are read day first: 2024-11-03",
      },
    ]);
  });

  test.each([
    ['03/11/2024', '2024-03-11 or 2024-11-03'],
    ['03-11-24', '2003-11-24 or 2024-03-11 or 2024-11-03'],
    ['45600', '2024-11-04 or 2028-11-05'],
    ['31/02/2024', 'no such day'],
    ['2024-11-27 14:30', 'write 14:30 in the column time'],
  ])('%s alone is refused: %s', (text, readings) => {
    expect(formatProblem(problem(water(text)))).toContain(readings);
  });

  test('where two rows are sure in different orders, what is open stays open', () => {
    expect(problem(water('27/11/2024', '11/28/2024', '03/12/2024'))).toMatchObject({
      code: 'ambiguous-date',
      line: 4,
    });
  });

  test('orders are those of the locales of the world', () => {
    const day = new Date(Date.UTC(2024, 10, 27));
    const locales =
      'af ar bg ca cs da de de-CH el en-AU en-CA en-GB en-IN en-US en-ZA es et fi fr fr-CA he hi hr hu id it ja ko lt lv mk nb nl nl-BE pl pt pt-BR ro ru sk sl sr sv th tr uk vi zh zh-TW'.split(
        ' ',
      );
    let asked = 0;
    for (const locale of locales)
      for (const dateStyle of ['short', 'medium'] as const) {
        const form = new Intl.DateTimeFormat(locale, {
          dateStyle,
          timeZone: 'UTC',
          numberingSystem: 'latn',
          calendar: 'gregory',
        });
        const text = form.format(day).replace(/[\u200e\u200f]/g, '');
        // Words of other languages are refused; the years of the Thai calendar are not asked for.
        if (/[^\d./ -]/.test(text) || (/^\d{2}\. /.test(text) && text.length < 13)) continue;
        asked++;
        // One date with a year of two figures between strokes may begin with it; the order of the locale is among both.
        const read = /^\d\d[/-]\d\d[/-]\d\d$/.test(text) ? problemOr(text) : days(text)[0];
        expect(read, `${locale}: ${text}`).toContain('2024-11-27');
      }
    expect(asked).toBeGreaterThan(40);
  });
});

describe('times of day', () => {
  const look = (time: string) => ({
    'water.csv': `pit,date,time,reading,depth_m,hole_depth_m\nP1,2024-11-27,"${time}",level,1,2\n`,
  });
  test.each([
    ['09:00', 9],
    ['9:00', 9],
    ['9am', 9],
    ['9 a.m.', 9],
    ['9:30 PM', 21.5],
    ['12:00:00 AM', 0],
    ['12 pm', 12],
    ['noon', 12],
    ['9h30', 9.5],
    ['17h', 17],
  ])('%s', (text, hours) => {
    expect(((read(look(text)).looks[0]?.day ?? 0) % 1) * 24).toBeCloseTo(hours, 6);
  });
  test.each([
    ['9', '09:00 or 21:00'],
    ['9.50', '09:50 or 09:30'],
    ['13:00 pm', '09:00'],
    ['0 am', '09:00'],
    ['25:00', '09:00'],
  ])('%s is refused: %s', (text, readings) => {
    expect(problem(look(text))).toMatchObject({
      code: 'invalid-time',
      remedy: expect.stringContaining(readings),
    });
  });
});

describe('words of the garden', () => {
  const layers = (cells: string) => ({
    'pits.csv': `Hole,From (cm),To (cm),Soil,Structure,Mottles,Thumb,Notes\nP1,0,${cells},\n`,
  });
  test('are read and listed', () => {
    const survey = read(layers('250,heavy clay,cracks,rusty,firm'));
    expect(survey.layers[0]).toMatchObject({
      texture: 'clay',
      structure: 'cracked',
      mottles: 'common',
      bottom: 2.5,
    });
    expect(survey.warnings.map(({ message }) => message)).toEqual([
      "'heavy clay' is read as clay",
      "'cracks' is read as cracked",
      "'rusty' is read as common",
    ]);
  });
  test('a colour that shows water is asked for where it counts', () => {
    expect(warnings(layers('250,blue clay,,,firm'))[0]?.message).toBe(
      "'blue clay' is read as clay; where all of it is blue or grey, say 'grey' under mottles",
    );
  });
  test('topsoil says no texture', () => {
    const survey = read(layers('250,topsoil,,,'));
    expect(survey.layers[0]?.texture).toBeUndefined();
    expect(survey.warnings[0]?.message).toContain('texture is not said');
  });
  test('yes, no and covers', () => {
    const site =
      'item,value\nlatitude,52\nuphill_cover,Grass\nmains_power,Y\nprotected_ground,?\nwet_plants,n\n';
    expect(read({ 'site.csv': site }).site).toMatchObject({
      uphill_cover: 'lawn',
      mains_power: 'yes',
      protected_ground: 'unknown',
      wet_plants: 'no',
    });
  });
});

describe('remarks that a spreadsheet has filled up', () => {
  test.each(['# typed by hand,,', '"# typed, by hand",,', '"# typed; by ""hand""",,'])('%s', (remark) => {
    expect(warnings({ 'heads.csv': `${remark}\nplace,month,depth_m\nsite,3,0.2\n` })).toEqual([]);
  });
  test('a separator named in the first line', () => {
    expect(read({ 'heads.csv': 'sep=;\nplace;month;depth_m\nsite;3;0,2\n' }).heads[0]).toMatchObject({
      depth: 0.2,
      origin: { line: 3 },
    });
  });
});

test('a list of what there is stands once in a report', () => {
  const pond = 'item,value\nlength,4 m\nwidth,3 m\ndepth,1 m\ncolour,blue\nfish,yes\nlenght,4 m\n';
  try {
    read({ 'pond.csv': pond });
    expect.unreachable();
  } catch (error) {
    const { message } = error as SurveyError;
    expect(message.match(/shape, length, width/g)).toHaveLength(1);
    expect(message).toContain("Did you mean 'length'?");
    expect(message).toContain('those named above');
  }
});
