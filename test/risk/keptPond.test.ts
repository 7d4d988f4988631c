import { describe, expect, test } from 'vitest';
import { keptHeads } from '../../lib/basis/index.js';
import { calendarOf } from '../../lib/climate/index.js';
import { judge } from '../../lib/decision/index.js';
import { NOTHING } from '../../lib/heads/index.js';
import { chanceOf } from '../../lib/reliability/chance.js';
import { resultOf } from '../../lib/report/index.js';
import { type Site, siteModel } from '../../lib/site/index.js';
import { surveyOf, withItem } from '../folder.js';
import { flush } from './flush.js';

const siteOf = (files: Record<string, string>) => siteModel(surveyOf(files), { samples: 32 });
const chance = (site: Site) => chanceOf(judge(site).basis, NOTHING, 1).perYear;

describe('the pond as it is kept', () => {
  const never = siteOf(flush('kept_within', 'never', { ring: '0.3' }));

  test('is paired with the water outside day by day: the yearly highest sum is that of the days', () => {
    const { water, record } = never;
    const { basis } = judge(never);
    const daily = water.daily!;
    const sums = new Float64Array(water.samples * water.years).fill(Number.NEGATIVE_INFINITY);
    for (let s = 0; s < water.samples; s++)
      for (let d = 0; d < daily.days; d++) {
        const year = record!.year[d];
        if (year < 0) continue;
        const at = s * daily.days + d;
        const outside = Math.max(daily.clay[at], daily.tub!.asIs[at]);
        const i = s * water.years + year;
        sums[i] = Math.max(sums[i], outside + daily.drawdown![at]);
      }
    // The record as it was comes first; its twins of wetter and drier winters follow.
    keptHeads(basis, NOTHING).forEach((sum, i) => {
      if (sums[i] > -9) expect(sum).toBeCloseTo(sums[i], 4);
    });
    expect(sums.filter((sum) => sum > -9).length).toBe(water.samples * record!.years);
  });

  test('lacks most at the end of the dry season and little in the wet one', () => {
    const { drawdown } = never.water.pond!;
    const mean = (month: number) => {
      let sum = 0;
      for (let i = month - 1; i < drawdown.length; i += 12) sum += drawdown[i] / (drawdown.length / 12);
      return sum;
    };
    expect(mean(9)).toBeGreaterThan(0.2);
    expect(mean(1)).toBeLessThan(mean(9) / 3);
  });

  test('holds where it is topped up, lifts where nobody does, and never worse than a level held as low', () => {
    const [within, loose, none, held] = [
      flush('kept_within', '0.05'),
      flush('kept_within', '0.4'),
      flush('kept_within', 'never'),
      flush('usual_drawdown', '0.4'),
    ].map((files) => chance(siteOf(files)));
    expect(within).toBeLessThan(0.02);
    expect(loose).toBeLessThanOrEqual(held);
    expect(within).toBeLessThanOrEqual(loose);
    expect(loose).toBeLessThanOrEqual(none);
    expect(held).toBeGreaterThan(0.3);
  });

  test('gives what runs over its brim to the ring, unless it is led away', () => {
    const level = (overflow: string) => {
      const files = withItem(flush('kept_within', '0.05', { ring: '0.3' }), 'pond.csv', 'overflow', overflow);
      const tub = siteOf(files).water.daily!.tub!;
      const mean = (values: Float32Array) => values.reduce((a, b) => a + b, 0) / values.length;
      return { asIs: mean(tub.asIs), keptOut: mean(tub.keptOut) };
    };
    const [ring, away] = [level('ring'), level('away')];
    expect(ring.asIs).toBeGreaterThan(away.asIs);
    expect(ring.keptOut).toBe(away.keptOut);
  });

  test('is filled up by what it loses, less what rains on it', () => {
    const { water } = siteOf(flush('kept_within', '0.05'));
    const litres = (1000 * water.pond!.topUp.reduce((a, b) => a + b, 0)) / (water.samples * water.years);
    // A dry summer of 0.5 m of evaporation and 0.1 m of rain on 12 m² of sloping sides.
    expect(litres).toBeGreaterThan(500);
    expect(litres).toBeLessThan(8000);
    expect(calendarOf(water.daily!.firstDay).year).toBe(2012);
  });

  test('its result says the net head of the day', () => {
    const { options } = resultOf(judge(siteOf(flush('kept_within', '0.05'))));
    expect(options[0].full!.net_head_m.p10).toBeGreaterThan(-0.02);
    expect(options[0].full!.safe).toBe(true);
  });
});
