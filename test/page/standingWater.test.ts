/** What the page says of standing water and the digging window are the numbers of the report and of result.json. */
import { describe, expect, test } from 'vitest';
import { waterSection } from '../../lib/page/yearSection.js';
import { reportOf, resultOf } from '../../lib/report/index.js';
import { monthWords } from '../../lib/text/index.js';
import { formatQuantity } from '../../lib/units/index.js';
import { briefDemo, surveyOf } from '../folder.js';
import { assessmentOf } from './demoPage.js';

describe.each(['clay-slope', 'clay-hollow', 'loam-terrace'])('of %s', (name) => {
  const assessment = assessmentOf(surveyOf(briefDemo(name)));
  const report = reportOf(assessment);
  const written = JSON.parse(JSON.stringify(resultOf(assessment)));
  const { units } = report;
  const html = waterSection(report, units)
    .html.replace(/<[^>]+>/g, '\n')
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('\u00a0', ' ');
  const shown = (...quantity: Parameters<typeof formatQuantity>) =>
    formatQuantity(...quantity).replaceAll('\u00a0', ' ');

  test('the ring: hours to full, weeks to drain, days above each level', () => {
    if (!report.tub) {
      expect(html).not.toContain('Water in the ring');
      return;
    }
    const { hoursToFull, weeksToDrain, daysAbove } = report.tub;
    if (hoursToFull === undefined) expect(html).toContain('does not fill the ring');
    else expect(html).toContain(`within ${hoursToFull.toFixed(1)} hours`);
    const [, likely] = /empties into the clay in ([^(]*) \(/.exec(html)!;
    const expected = weeksToDrain.likely;
    if (expected === undefined) expect(likely).toBe('never');
    else if (expected < 1) expect(likely).toBe('less than a week');
    else expect(Number.parseInt(likely, 10)).toBe(Math.round(expected));
    const standing = daysAbove.filter(({ days }) => days >= 0.5);
    for (const { level, days } of standing)
      expect(html).toContain(`above ${shown(level, 'level', units)} on ${days.toFixed(0)} days`);
    if (standing.length === 0) expect(html).toContain('no water stands in it on any day');
  });

  test('what else tells of the highest water is that of result.json', () => {
    for (const { depth_m, says } of written.water.seasonal_high_evidence) {
      const [, word] = new RegExp(`at ${shown(-depth_m, 'level', units)}, (\\w+)`).exec(html)!;
      expect(word).toBe(says === 'agrees' ? 'agrees' : 'says');
      if (says !== 'agrees') expect(html).toContain(says);
    }
    const winters = written.assumptions.find(({ item }: { item: string }) => item === 'wet winters');
    if (winters) expect(html).toContain(`Wet winters: ${winters.value} %`);
    else expect(html).not.toContain('Wet winters');
  });

  test('the digging window: dry months at each chance, and the water to pump', () => {
    const digging = report.digging!;
    const off = digging.depths.map((depth) => Math.abs(depth - report.pond.depth_m));
    const row = off.indexOf(Math.min(...off));
    expect(digging.months.map(({ chance }) => chance)).toEqual([0.5, 0.8, 0.95]);
    const said = [...html.matchAll(/or better: (.*?)\.\n/g)].map(([, months]) => months);
    expect(said).toEqual(
      digging.months.map(({ at }) => (at[row].length > 0 ? monthWords(at[row]) : 'no month')),
    );
    for (const flow of [...digging.pumped.p50[row], ...digging.pumped.p90[row]])
      if (flow > 0) expect(html).toContain(shown(flow, 'flow', units));
  });
});
