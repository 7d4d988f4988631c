import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseSurvey, SURVEY_FILES } from '../../lib/survey/index.js';

const ROOT = new URL('../../datasets/', import.meta.url);
const FILES = ['site.csv', 'pond.csv', 'pits.csv', 'water.csv', 'levels.csv', 'weather.csv'];
const folders = readdirSync(ROOT, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

it('five demo surveys', () => {
  expect(folders.sort()).toEqual([
    'clay-hollow',
    'clay-slope',
    'loam-terrace',
    'meadow-scrape',
    'old-garden-pond',
  ]);
});

describe.each(folders)('%s', (folder) => {
  const texts = Object.fromEntries(
    readdirSync(new URL(`${folder}/`, ROOT)).map((file) => [
      file,
      readFileSync(new URL(`${folder}/${file}`, ROOT), 'utf8'),
    ]),
  );

  it('is read without a warning', () => {
    expect(Object.keys(texts).sort()).toEqual([...FILES].sort());
    expect(FILES.every((file) => (SURVEY_FILES as readonly string[]).includes(file))).toBe(true);
    expect(parseSurvey(texts, { name: folder }).warnings).toEqual([]);
  });

  it('says that it is invented, and puts its pipes inside their pits', () => {
    expect(texts['site.csv']).toMatch(/^name,[^,]+,,invented$/m);
    const survey = parseSurvey(texts, { name: folder });
    const pits = new Set(survey.layers.map(({ pit }) => pit));
    expect(pits.size).toBeGreaterThan(0);
    for (const pit of pits) {
      const bottom = Math.max(
        ...survey.layers.filter((layer) => layer.pit === pit).map((layer) => layer.bottom),
      );
      const looks = survey.looks.filter((look) => look.pit === pit);
      expect(looks.length).toBeGreaterThan(12);
      for (const look of looks) expect(look.holeDepth).toBeLessThanOrEqual(bottom);
      expect(survey.levels.some((level) => level.role === 'pit' && level.point === pit)).toBe(true);
    }
  });
});
