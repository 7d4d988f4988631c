import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { recommend, resultOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { demoFiles, edited, surveyOf, withItem } from '../folder.js';

const decide = (files: Record<string, string>) =>
  recommend(judge(siteModel(surveyOf(files), { samples: 64 })));

describe('the clay hollow', () => {
  const files = demoFiles('clay-hollow');

  test('needs a sump: full, it lifts, and no lower ground takes the water', () => {
    const r = decide(files);
    expect(r.option).toBe('drain-to-sump');
    expect(r.governs).toBe('lift-full');
    expect(r.rules.map((x) => x.code)).toEqual(
      expect.arrayContaining(['pump-alarm', 'full-if-power-fails', 'dip-pipe']),
    );
  });

  test('needs no drain once run-off is turned away and the rim is raised', () => {
    const dry = withItem(
      withItem(files, 'site.csv', 'uphill_area', '0', 'm2'),
      'pond.csv',
      'ring_cap',
      'yes',
    );
    expect(decide(withItem(dry, 'pond.csv', 'water_above_rim_ground', '0.30', 'm')).option).toBe('no-drain');
  });
});

describe('the clay slope', () => {
  const files = demoFiles('clay-slope');
  const noDitch = edited(files, 'levels.csv', (t) =>
    t
      .split('\n')
      .filter((row) => !/,(outlet|ditch|flood),/.test(row))
      .join('\n'),
  );

  test('drains to the ditch: full it holds, emptied in March it lifts', () => {
    const a = judge(siteModel(surveyOf(files), { samples: 128 }));
    const r = recommend(a);
    expect(r.option).toBe('drain-to-outlet');
    expect(r.governs).toBe('lift-emptied');
    expect(resultOf(a).options.find((o) => o.option === 'no-drain')!.full!.safe).toBe(true);
    expect(r.rules.map((x) => x.code)).toEqual(
      expect.arrayContaining(['flap', 'animal-guard', 'inspection-pipe']),
    );
  });

  test('is cleaned in August instead of March where no ditch takes the water: no pump for that', () => {
    expect(decide(noDitch)).toMatchObject({ option: 'no-drain', change: { emptied_in: [8] } });
  });

  test('needs no drain when it is never emptied', () => {
    expect(decide(withItem(files, 'pond.csv', 'emptied_in', 'never')).option).toBe('no-drain');
  });
});

describe('the loam terrace', () => {
  const files = demoFiles('loam-terrace');

  test('needs no drain: the water is deep', () => {
    const r = decide(files);
    expect(r.option).toBe('no-drain');
    expect(r.governs).toBe('none');
  });

  test('needs one with the March water 0.2 m down', () => {
    const wet = {
      ...files,
      'heads.csv': 'place,month,depth_m,spread_m,source\nsite,3,0.2,0.05,sealed pipe\n',
    };
    expect(decide(wet).option).not.toBe('no-drain');
  });
});

describe('the meadow scrape', () => {
  const files = demoFiles('meadow-scrape');

  test('needs a hose and nothing else', () => {
    const r = decide(files);
    expect(r).toMatchObject({ option: 'no-drain', depth_m: 0.4, raise_m: 0, also: [], change: null });
  });

  test('stands too low for the first wet weeks where it is never topped up', () => {
    const r = decide(withItem(files, 'pond.csv', 'kept_within', 'never'));
    expect(r).toMatchObject({ option: 'raise-pond', governs: 'lift-drawn-down' });
    expect(r.raise_m).toBeGreaterThan(0);
  });
});

describe('the old garden pond', () => {
  const files = demoFiles('old-garden-pond');

  test('keeps its old drain, which a winter in the dip pipe proves', () => {
    expect(decide(files)).toMatchObject({ as_built: true, also: [] });
  });

  test('looks first where nobody read the dip pipe', () => {
    const unread = edited(files, 'water.csv', (t) => t.replaceAll(/^dip-pipe.*\n/gm, ''));
    expect(decide(unread)).toMatchObject({ option: 'measure-first', as_built: false });
  });
});
