import { describe, expect, test } from 'vitest';
import {
  climateGaps,
  monthlySurplus,
  type OrdinaryMonth,
  ordinaryYear,
  thornthwaiteYear,
} from '../../lib/climate/index.js';

const RAIN = [80, 60, 60, 55, 55, 55, 50, 60, 65, 85, 90, 85];
const TMEAN = [4, 4, 6, 9, 12, 15, 17, 17, 14, 11, 7, 5];
const months = (change: (m: number) => Partial<OrdinaryMonth> = () => ({})): OrdinaryMonth[] =>
  RAIN.map((mm, i) => ({ month: i + 1, rain: mm / 1000, tmean: TMEAN[i], ...change(i + 1) }));
const sum = (v: number[]) => v.reduce((a, b) => a + b, 0);

describe('surplus of an ordinary year', () => {
  test('a temperate year has water to spare from late autumn to spring, none in summer', () => {
    const { wetMonths, doubtfulMonths, estimated } = monthlySurplus(months(), 51, 0.1);
    expect(estimated.length).toBe(12);
    expect(wetMonths).toEqual(expect.arrayContaining([1, 2, 12]));
    for (const summer of [5, 6, 7, 8, 9]) expect([...wetMonths, ...doubtfulMonths]).not.toContain(summer);
    expect(wetMonths.filter((m) => doubtfulMonths.includes(m))).toEqual([]);
  });

  test('is rain less what was drawn, by both bookkeepers, and brackets the choice', () => {
    const { straight, exponential, liquid } = monthlySurplus(months(), 51, 0.1);
    for (const b of [straight, exponential])
      expect(sum(liquid) - sum(b.drawn)).toBeCloseTo(sum(b.surplus), 8);
    expect(sum(exponential.surplus)).toBeGreaterThan(sum(straight.surplus));
  });

  test('takes evaporation where it is given and Thornthwaite elsewhere', () => {
    const { demand, estimated } = monthlySurplus(
      months((m) => (m === 7 ? { et0: 0.123 } : {})),
      51,
      0.1,
    );
    const byTemperature = thornthwaiteYear(TMEAN, 51);
    expect(demand[6]).toBe(0.123);
    expect(estimated).not.toContain(7);
    demand.forEach((d, i) => {
      if (i !== 6) expect(d).toBe(byTemperature[i]);
    });
  });

  test('needs no temperatures where evaporation is given, in any order of rows', () => {
    const given = months((m) => ({ tmean: undefined, et0: thornthwaiteYear(TMEAN, 51)[m - 1] })).reverse();
    const { straight, liquid } = monthlySurplus(given, 51, 0.1);
    expect(liquid).toEqual(RAIN.map((mm) => mm / 1000));
    const expected = ordinaryYear(liquid, thornthwaiteYear(TMEAN, 51), 0.1, 'straight');
    expect(straight).toEqual(expected);
  });

  test('snow of cold months comes with the first warm one, and nothing is lost', () => {
    const cold = [-9, -7, -2, 5, 11, 15, 17, 16, 11, 5, -1.5, -6];
    const { liquid, wetMonths } = monthlySurplus(
      months((m) => ({ tmean: cold[m - 1] })),
      55,
      0.1,
    );
    expect(liquid.slice(0, 3)).toEqual([0, 0, 0]);
    // November to March, 90 + 85 + 80 + 60 + 60, and April's own 55.
    expect(liquid[3]).toBeCloseTo(0.43, 12);
    expect(sum(liquid)).toBeCloseTo(sum(RAIN) / 1000, 12);
    expect(wetMonths).toContain(4);
    expect(wetMonths).not.toContain(1);
  });
});

describe('what a year of means lacks', () => {
  test('is named by month, and refused', () => {
    const lacking = months((m) => (m === 4 ? { rain: undefined } : m === 9 ? { tmean: undefined } : {}));
    const gaps = climateGaps(lacking);
    expect(gaps[0]).toBe(
      'missing evaporation of month 1: Thornthwaite needs all twelve temperatures, month 9 has none',
    );
    expect(gaps).toContain('missing rain of month 4');
    expect(() => monthlySurplus(lacking, 51, 0.1)).toThrow('missing rain of month 4');
  });

  test('is a month, or any thaw', () => {
    expect(climateGaps(months().slice(0, 11))).toEqual(['missing month 12']);
    expect(climateGaps(months(() => ({ tmean: -5 })))).toEqual([
      'outside: every month is below -1 °C, nothing ever melts',
    ]);
    expect(climateGaps(months())).toEqual([]);
  });
});
