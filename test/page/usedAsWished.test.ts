/** The first words are of the emptying that the picture shows, and of none where nobody empties it. */
import { describe, expect, test } from 'vitest';
import { monthsPlanned, type Report, type Situation } from '../../lib/contract/index.js';
import { waterPanels } from '../../lib/figures/waterPanels.js';
import { headlineOf } from '../../lib/text/headline.js';
import { drawnGardens } from '../figures/drawnGardens.js';
import { invented } from '../figures/report.js';

const gardens = drawnGardens();
const MONTH = /[Ee]mptied in (\w+)/;

/** Rows of the pond emptied as recommended. */
const emptied = ({ result }: Report) =>
  result.situations.filter(({ of, situation }) => of === 'recommended' && situation === 'emptied');

describe.each(gardens)('%s', (_, report) => {
  const { chance, inHand } = headlineOf(report, report.units);
  const never = monthsPlanned(report).length === 0;

  test('the safety margin is of the month that the picture shows last', () => {
    const month = /^With the pond emptied in (\w+)/.exec(inHand)?.[1];
    const shown = waterPanels(report, report.units).flatMap(({ title }) => MONTH.exec(title)?.[1] ?? []);
    if (month) expect(month).toBe(shown.at(-1));
    expect(never && month !== undefined).toBe(false);
  });

  test('how often it fails is of the months planned', () => {
    const [first] = chance.split(/(?<=\.) /);
    expect(first).not.toMatch(/emptied/);
  });
});

test('some of them are emptied, and some never', () => {
  const planned = gardens.map(([, report]) => monthsPlanned(report).length > 0);
  expect(new Set(planned)).toEqual(new Set([true, false]));
  expect(
    gardens.filter(([, report]) => /^With the pond emptied in/.test(headlineOf(report).inHand)).length,
  ).toBeGreaterThanOrEqual(3);
});

describe('a month in which it may be emptied, and is not to be', () => {
  const changed = (month: number, change: Partial<Situation>, planned?: number[]) =>
    invented((report) => {
      if (planned) report.pond.emptied_in = planned;
      Object.assign(emptied(report).find((row) => row.month === month)!, change);
    });
  const chance = { low: 0.01, middle: 0.0145, high: 0.02, from: 'water' as const };

  test('that fails more often is told as what would be, once', () => {
    const plain = headlineOf(changed(7, {}), 'metric');
    expect(plain.chance).not.toContain('which is allowed');
    const told = headlineOf(changed(7, { chance }), 'metric');
    expect(told.chance).toContain(' Emptied in July, which is allowed, it would fail about 1 year in 70.');
    expect(told.chance.replace(/ Emptied in \w+, which is allowed.*?\./, '')).toBe(plain.chance);
    expect(told.chance.match(/July/g)).toHaveLength(1);
  });

  test('that leaves less is told beside what the picture shows', () => {
    const told = headlineOf(changed(7, { margin_m: 0.034 }), 'metric');
    expect(told.inHand).toMatch(
      /^With the pond emptied in March, .* stays 12 cm below what would lift the liner\. Emptied in July, which is allowed, it would stay 3 cm below\.$/,
    );
  });

  test('of a pond that nobody empties no month is told, but where it would leave less', () => {
    const told = headlineOf(changed(7, { margin_m: 0.034, chance }, []), 'metric');
    expect(told.inHand).toMatch(
      /^With the pond (full|as low as it gets in use), .* Emptied in July, which is allowed, it would stay 3 cm below\.$/,
    );
    expect(told.chance).toMatch(
      /^It fails [^.]*\..* Emptied in July, which is allowed, it would fail about 1 year in 70\.$/,
    );
  });
});
