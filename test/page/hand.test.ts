/** What is held in the hand: the card, and the answer of the day. */
import { describe, expect, it } from 'vitest';
import { loweringYear } from '../../lib/contract/index.js';
import { pondCardHtml } from '../../lib/page/index.js';
import { lowerToday, reportOf } from '../../lib/report/index.js';
import { todayWords } from '../../lib/text/todayWords.js';
import { itInChromium } from '../chromium.js';
import { invented } from '../figures/report.js';
import { briefDemo, surveyOf } from '../folder.js';
import { WHOLE } from '../sweep.js';
import { assessmentOf, fileOf } from './demoPage.js';
import { labelFaults } from './labels.js';

describe('the pond card', () => {
  it('counts each month down from full, on the safe side', () => {
    const report = invented((r) => {
      r.pond.full_level_m = 0.3;
      const rows = r.result.situations.filter((s) => s.of === 'recommended' && s.situation === 'emptied');
      [0.25, 0.4, 0.123, null].forEach((level, i) => {
        Object.assign(rows[i]!, { lowest_level_m: level, why: level === null ? 'holds' : 'lifts' });
      });
    });
    expect(loweringYear(report).works.slice(0, 4)).toEqual([
      { month: 1, below: 0.05, says: 'down' },
      { month: 2, below: 0, says: 'keep-full' },
      { month: 3, below: 0.17, says: 'down' },
      { month: 4, below: null, says: 'empty' },
    ]);
  });

  it('has a row a month, for a drain that works and one that does not, and forbids in every line that must', () => {
    const html = pondCardHtml(invented()).replaceAll('\u00a0', ' ');
    expect(html.match(/<tr><td><abbr/g)).toHaveLength(12);
    expect(html).toContain('drain blocked or stopped');
    expect(html).toContain('may be emptied');
    // A margin of 10 cm, and 12 cm that it stands higher uphill once the drain has stopped.
    expect(html).toContain('22 cm above that water');
    const { works, blocked } = loweringYear(invented());
    const stops = [...works, ...blocked!].filter(
      ({ says }) => says === 'keep-full' || says === 'not-even-full',
    );
    expect(html.match(/<td class="no">(?:keep full|not safe even full)<\/td>/g) ?? []).toHaveLength(
      stops.length,
    );
  });
});

if (WHOLE)
  itInChromium('the pond card is one A6 sheet without a label cut off', async (page) => {
    await page.goto(fileOf(pondCardHtml(invented())));
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: 352, height: 480 });
    expect(await labelFaults(page)).toEqual([]);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(1);
    // A6 in points.
    expect(pdf).toMatch(/\/MediaBox \[0 0 29[78](?:\.\d+)? 4(?:19|20)(?:\.\d+)?\]/);
  });

describe('may I lower it today', () => {
  const withDip = (rows: string) => {
    const files = briefDemo('clay-slope');
    files['water.csv'] += rows;
    files['levels.csv'] += 'under-liner,dip-pipe,0.5,0,10.1,\n';
    return assessmentOf(surveyOf(files));
  };

  it('has no answer without a dip pipe, and says so', () => {
    expect(lowerToday(withDip(''))).toBeNull();
    expect(todayWords(invented(), 'metric')).toContain('no reading of a dip pipe');
  });

  it('where the drain would not let it stand so high, allows what the month does without one', () => {
    // Pipe at 10.10 on the mark, lowest rim ground at 10: water 0.30 below the pipe stands at -0.20.
    const dipped = withDip('dip-pipe,2024-09-14,09:00,level,0.30,1.4,10,3.2,0.90,\n');
    const today = lowerToday(dipped)!;
    expect(today).toMatchObject({ date: '2024-09-14', month: 9, dry: false });
    expect(today.water_m).toBeCloseTo(-0.2, 9);
    const blocked = reportOf(dipped).result.situations.find(
      ({ of, situation, month }) => of === 'recommended' && situation === 'drain-blocked' && month === 9,
    )!;
    // Uphill it stands by the rise of the ground higher, 0.12 m, in nine years of ten; the margin on that.
    expect(today.lowest_m).toBeCloseTo(-0.2 + 0.12 + 0.1, 6);
    expect(today.lowest_m).toBeGreaterThanOrEqual(blocked.lowest_level_m ?? Number.NEGATIVE_INFINITY);
    const words = todayWords({ ...invented(), lower_today: today }, 'metric');
    expect(words).toContain('On 2024-09-14 the dip pipe showed water at \u22120.20 m');
    expect(words).toContain('let down to +0.02 m, 0.28 m below full');
  });

  it('allows emptying over a pipe that is dry below the floor', () => {
    const today = lowerToday(withDip('dip-pipe,2024-09-14,09:00,dry,,1.4,10,3.2,0.90,\n'))!;
    expect(today).toMatchObject({ dry: true, lowest_m: null });
  });

  it('does not lower a pond that the water stands above', () => {
    const today = lowerToday(withDip('dip-pipe,2024-02-14,09:00,level,-0.25,1.4,10,3.2,0.90,\n'))!;
    expect(todayWords({ ...invented(), lower_today: today }, 'metric')).toContain('do not lower it');
  });
});
