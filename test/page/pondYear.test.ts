/** What the page says of the pond's own year is what result.json says. */
import { describe, expect, test } from 'vitest';
import type { Report } from '../../lib/contract/index.js';
import { pondYear } from '../../lib/page/pondYear.js';
import { pondYearWords } from '../../lib/text/pondYearWords.js';
import { invented } from '../figures/report.js';

const band = (p10: number, p50: number, p90: number) => ({ p10, p50, p90 });
/** A pond whose months but the wettest keep 0.5 m over the water outside. */
const kept = (habit: 'topped-up' | 'never' | 'held', wettest: Record<number, number>) =>
  invented((each: Report) => {
    const { pond } = each.result.water;
    each.pond.kept = { habit, within_m: habit === 'topped-up' ? 0.1 : null };
    pond.by_month.forEach((month) => {
      month.net_head_m = band(wettest[month.month] ?? 0.5, 0.6, 0.9);
      month.top_up_m3 = habit === 'held' ? null : band(0, 0.2, 0.4);
    });
    pond.danger_months = Object.keys(wettest).map(Number);
    pond.top_up_year_m3 = habit === 'held' ? null : band(1, 2.4, 3.9);
  });

describe("the pond's own year in words", () => {
  test('what topping up takes, in litres of a middle and of a dry year', () => {
    const [water, danger] = pondYearWords(kept('topped-up', { 12: 0.21 }), 'metric');
    expect(water).toContain('takes 2.4 m³ in a middle year and 3.9 m³ in a dry one');
    expect(danger).toContain('in December: in 1 year of 10 the pond stands 0.21 m or less above');
    expect(pondYearWords(kept('topped-up', { 12: 0.21 }), 'us')[0]).toContain('takes 634 gal');
  });

  test('months of like danger are named together, and water above the pond as that', () => {
    const [danger] = pondYearWords(kept('never', { 11: -0.098, 12: -0.1 }), 'metric');
    expect(danger).toContain(
      'November to December: in 1 year of 10 the water outside stands 0.10 m or more above',
    );
  });

  test('a level that is held has no table of its own', () => {
    expect(pondYear(kept('held', { 12: 0.21 }), 'metric').html).not.toContain('<table');
    const table = pondYear(kept('never', { 12: 0.21 }), 'metric').html;
    expect(table.match(/<tr/g)).toHaveLength(13);
    expect(table).not.toContain('to top up');
  });
});
