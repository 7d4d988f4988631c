import { describe, expect, test } from 'vitest';
import { calendarOf, referenceEvaporation, stationEvaporation } from '../../lib/climate/index.js';
import { realDays } from '../weather.js';

const lowland = { latitude: 51, altitude: 50 };
const june = { tmin: 10, tmax: 21 };

describe('reference evaporation of a station', () => {
  test('names what it had to put in, and nothing where all was measured', () => {
    expect(stationEvaporation(june, 170, lowland).substituted).toEqual([
      'radiation',
      'vapour pressure',
      'wind',
    ]);
    const measured = { ...june, vapourPressure: 1.2, wind: 3, sunshine: 8 };
    expect(stationEvaporation(measured, 170, lowland).substituted).toEqual([]);
    expect(stationEvaporation({ ...june, solar: 20 }, 170, lowland).substituted).not.toContain('radiation');
  });

  test('measured radiation goes before sunshine, and sunshine is no longer than the day', () => {
    const both = stationEvaporation({ ...june, solar: 12, sunshine: 15 }, 170, lowland);
    expect(both.solar).toBe(12);
    const dayLong = stationEvaporation({ ...june, sunshine: 24 }, 170, lowland);
    expect(dayLong.solar).toBeCloseTo(0.75 * dayLong.extraterrestrial, 12);
  });

  test('dry air and wind draw more; a saturated cold day draws nothing below nought', () => {
    const et0 = (more: object) => stationEvaporation({ ...june, sunshine: 8, ...more }, 170, lowland).et0;
    expect(et0({ vapourPressure: 0.8, wind: 2 })).toBeGreaterThan(et0({ vapourPressure: 1.3, wind: 2 }));
    expect(et0({ vapourPressure: 0.8, wind: 5 })).toBeGreaterThan(et0({ vapourPressure: 0.8, wind: 2 }));
    const north = { latitude: 62, altitude: 50 };
    const night = stationEvaporation({ tmin: -12, tmax: -11, sunshine: 5, vapourPressure: 0.26 }, 355, north);
    expect(night.net).toBeLessThan(-2);
    expect(night.et0).toBe(0);
  });

  test('calm air counts as 0.5 m/s', () => {
    const et0 = (wind: number) => stationEvaporation({ ...june, vapourPressure: 1, wind }, 170, lowland).et0;
    expect(et0(0)).toBe(et0(0.5));
  });

  test('refuses a day upside down and places near the poles', () => {
    expect(() => stationEvaporation({ tmin: 9, tmax: 8 }, 170, lowland)).toThrow(
      'lowest 9 °C above highest 8 °C',
    );
    expect(() => stationEvaporation(june, 170, { latitude: 70, altitude: 0 })).toThrow('outside -65 to 65');
  });
});

test('over four real years both equations from temperatures alone agree within a sixth', () => {
  let [combined, range] = [0, 0];
  for (const { day, tmin, tmax } of realDays('New York')) {
    const { dayOfYear } = calendarOf(day);
    combined += stationEvaporation({ tmin: tmin!, tmax: tmax! }, dayOfYear, {
      latitude: 40.78,
      altitude: 40,
    }).et0;
    range += referenceEvaporation(40.78, dayOfYear, tmin!, tmax!);
  }
  expect(Math.abs(combined / range - 1)).toBeLessThan(1 / 6);
});
