import { describe, expect, test } from 'vitest';
import {
  climateRecord,
  dayNumber,
  firstOfSeason,
  isoDate,
  isWetHalf,
  type ObservedDay,
} from '../../lib/climate/index.js';

/** Every day between two dates, with rain and evaporation by a rule. */
function days(
  from: number,
  to: number,
  at: (day: number) => Partial<ObservedDay> = () => ({}),
): ObservedDay[] {
  return Array.from({ length: to - from + 1 }, (_, i) => ({
    day: from + i,
    rain: 0.002,
    et0: 0.001,
    ...at(from + i),
  }));
}

describe('gaps', () => {
  test('are filled with the mean of that month, and counted', () => {
    const from = dayNumber(2021, 1, 1);
    // January rains 1 mm a day in 2021 and 3 mm in 2022; five days of January 2022 and a week of July are missing.
    const gaps = new Set([3, 4, 5, 6, 7].map((d) => dayNumber(2022, 1, d)));
    const record = climateRecord(
      days(from, dayNumber(2022, 12, 31), (day) => {
        const wet = day >= dayNumber(2022, 1, 1) ? 0.003 : 0.001;
        return { rain: gaps.has(day) ? undefined : wet };
      }),
      50,
    );
    expect(record.filled).toEqual({ rain: 5, demand: 0 });
    const expected = (31 * 0.001 + 26 * 0.003) / 57;
    for (const day of gaps) expect(record.rain[day - from]).toBeCloseTo(expected, 15);
    expect(record.rain[dayNumber(2022, 1, 8) - from]).toBe(0.003);
  });

  test('a day without a row counts as missing in both', () => {
    const from = dayNumber(2021, 1, 1);
    const rows = days(from, dayNumber(2021, 12, 31)).filter((_, i) => i < 100 || i >= 103);
    const record = climateRecord(rows, 50);
    expect(record.rain.length).toBe(365);
    expect(record.filled).toEqual({ rain: 3, demand: 3 });
    expect(record.demand[101]).toBeCloseTo(0.001, 15);
  });

  test('a month that is missing in every year is refused by name', () => {
    const from = dayNumber(2021, 1, 1);
    const noJune = (day: number) => isoDate(day).slice(5, 7) === '06';
    const rainless = days(from, dayNumber(2022, 12, 31), (day) => (noJune(day) ? { rain: undefined } : {}));
    expect(() => climateRecord(rainless, 50)).toThrow(/missing rain: no day of month 6/);
    const dry = days(from, dayNumber(2022, 12, 31), (day) => (noJune(day) ? { et0: undefined } : {}));
    expect(() => climateRecord(dry, 50)).toThrow(/missing evaporation: no day of month 6/);
  });

  test('evaporation given goes before the one reckoned from temperatures; rain on a day of frost is snow', () => {
    const from = dayNumber(2021, 1, 1);
    const record = climateRecord(
      [
        { day: from, rain: 0.004, tmin: -6, tmax: -2, et0: 0.0003 },
        { day: from + 1, rain: 0, tmin: 4, tmax: 8, et0: 0.0005 },
        { day: from + 2, rain: 0.001, tmin: 2, tmax: 6 },
      ],
      50,
    );
    expect([...record.demand.slice(0, 2)]).toEqual([0.0003, 0.0005]);
    expect(record.demand[2]).toBeGreaterThan(0);
    expect([...record.tmean]).toEqual([-4, 6, 4]);
    expect(record.snows).toBe(true);
  });
});

describe('hydrological years', () => {
  const spans = (record: ReturnType<typeof climateRecord>) =>
    Array.from({ length: record.years }, (_, y) => {
      const inside = [...record.year.keys()].filter((d) => record.year[d] === y);
      return [
        isoDate(record.firstDay + inside[0]),
        isoDate(record.firstDay + inside[inside.length - 1]),
        inside.length,
      ];
    });

  test('run from October in the north, whole ones only, leap days kept', () => {
    const record = climateRecord(days(dayNumber(2018, 7, 15), dayNumber(2021, 3, 3)), 50);
    expect(spans(record)).toEqual([
      ['2018-10-01', '2019-09-30', 365],
      ['2019-10-01', '2020-09-30', 366],
    ]);
    expect(record.year[0]).toBe(-1);
    expect(record.year[record.year.length - 1]).toBe(-1);
    expect(record.month[dayNumber(2020, 2, 29) - record.firstDay]).toBe(2);
  });

  test('and from April in the south', () => {
    const record = climateRecord(days(dayNumber(2018, 7, 15), dayNumber(2021, 3, 31)), -37);
    expect(spans(record)).toEqual([
      ['2019-04-01', '2020-03-31', 366],
      ['2020-04-01', '2021-03-31', 365],
    ]);
  });

  test('a record that ends on the last day of the year closes it; a day less does not', () => {
    const first = dayNumber(2019, 10, 1);
    expect(climateRecord(days(first, dayNumber(2020, 9, 30)), 50).years).toBe(1);
    expect(climateRecord(days(first, dayNumber(2020, 9, 29)), 50).years).toBe(0);
    expect(climateRecord(days(first + 1, dayNumber(2020, 9, 30)), 50).years).toBe(0);
  });
});

test('the wet half is November to April in the north and the rest in the south', () => {
  const months = Array.from({ length: 12 }, (_, m) => m + 1);
  expect(months.filter((m) => isWetHalf(m, 50))).toEqual([1, 2, 3, 4, 11, 12]);
  expect(months.filter((m) => isWetHalf(m, -37))).toEqual([5, 6, 7, 8, 9, 10]);
});

test.each([
  [[1, 2, 3, 4, 11, 12], 11],
  [[5, 6, 7, 8, 9, 10], 5],
  // A second, shorter rainy season does not begin the year.
  [[3, 6, 7, 8, 9], 3],
  [[1, 2, 12], 12],
  [[4], 4],
])('the season of months %j begins in %i', (months, first) => {
  expect(firstOfSeason(months)).toBe(first);
  // And half a year later in the other hemisphere.
  const opposite = (month: number) => ((month + 5) % 12) + 1;
  expect(firstOfSeason(months.map(opposite))).toBe(opposite(first));
});
