import { describe, expect, test } from 'vitest';
import type { SiteDrain } from '../../lib/contract/index.js';
import { judge } from '../../lib/decision/index.js';
import { recommend, reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { drainWords } from '../../lib/text/index.js';
import { briefDemo, edited, surveyOf } from '../folder.js';

const assessed = (files: Record<string, string>) => judge(siteModel(surveyOf(files), { samples: 64 }));
const slope = assessed(briefDemo('clay-slope'));
const hollow = assessed(briefDemo('clay-hollow'));
const every = (drain: SiteDrain, units: 'metric' | 'us') =>
  Object.values(drainWords(drain, units)).flat().join('\n');

describe.each(['metric', 'us'] as const)('a drain in words, %s', (units) => {
  test('has no number that does not exist, no term of the trade and only its own units', () => {
    for (const { drain } of [slope, hollow]) {
      const text = every(drain!, units);
      expect(text).not.toMatch(/NaN|undefined|Infinity|D15|permittivity|Manning/);
      expect(text).not.toMatch(units === 'us' ? / m³?[ /,;]|L\/day/ : / ft | gal/);
    }
  });

  test('where the water comes from, with what keeps it away and what is left', () => {
    expect(drainWords(hollow.drain!, units).inflow).toMatch(
      /run-off from uphill: .* a minute.*What keeps it away: a swale .*; .* a minute is left then/,
    );
    expect(drainWords(slope.drain!, units).inflow).toMatch(
      /Its water is seepage through the ground.*nothing above ground/,
    );
  });
});

test('the weakest link is named, and so is one that does not serve', () => {
  const drain = slope.drain!;
  expect(drainWords(drain, 'metric').weakest).toMatch(/weakest link is the filter .*2\.2 times/);
  const short = { ...drain, weakestLink: 'bed', reserve: { ...drain.reserve, bed: 0.3 } };
  expect(drainWords(short, 'metric').weakest).toMatch(
    /^The .*bed.* does not serve: it has 30 % of what it must\.$/,
  );
});

test('a bed of bare stone says that it silts up; sand and fabric that they serve', () => {
  const { bed, otherBeds } = drainWords(slope.drain!, 'metric');
  expect(bed).toBe('Pea gravel on concrete sand: keeps this clay out.');
  expect(otherBeds[0]).toContain('concrete sand');
  expect(otherBeds.filter((words) => words.includes('straight on this clay will silt up'))).toHaveLength(2);
  // The finer clay of the hollow clogs a fabric.
  expect(drainWords(hollow.drain!, 'metric').otherBeds.join()).toContain('may clog');
});

test('an outlet says cover, frost, erosion and backwater; a sump its power cut', () => {
  const out = drainWords(slope.drain!, 'metric');
  expect(out.outlet.join(' ')).toMatch(
    /at the pond: 1\.05 m.*mouth.*frost.*stone.*with a flap that shuts or without one/,
  );
  expect(out.power).toBeUndefined();
  const sump = drainWords(hollow.drain!, 'metric');
  expect(sump.outlet).toEqual([]);
  expect(sump.power).toMatch(/10 times an hour.*kWh a year.*wettest month.*design storm/);
});

test('a fall that is short is told as the water that it leaves in the bed, which is counted', () => {
  const { drain } = slope;
  const short = drainWords(
    { ...drain!, weakestLink: 'fall', reserve: { ...drain!.reserve, fall: 0.49 } },
    'metric',
  );
  expect(short.shortFall).toMatch(/short: 49 %.*counted so in every depth and chance/);
  expect(short.weakest).toBe(short.shortFall);
  expect(drainWords(drain!, 'metric').shortFall).toBeUndefined();
});

test('reason and report carry them', () => {
  const words = drainWords(slope.drain!, 'metric');
  expect(recommend(slope).reason).toContain(words.inflow);
  expect(recommend(slope).reason).toContain(words.weakest);
  expect(reportOf(slope).drain).toBe(slope.drain);
});

test('water lowered in shrinking clay under a house asks for an engineer; not under a house far away', () => {
  const house = (distance: number) =>
    recommend(
      assessed(
        edited(
          edited(briefDemo('clay-slope'), 'pits.csv', (t) => t.replace(/\de-\d/g, '9e-6')),
          'levels.csv',
          (t) => `${t.trimEnd()}\nkitchen,house,${distance},0,10.3,\n`,
        ),
      ),
    );
  // Rain on the ground round the pond feeds it from all sides: a house 14 m away is lowered by less than can shrink it.
  const near = house(8);
  expect(near.rules.find((r) => r.code === 'ask-engineer')?.text).toContain('kitchen');
  expect(house(400).rules.some((r) => r.code === 'ask-engineer')).toBe(false);
});
