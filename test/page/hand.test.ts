/** What is held in the hand: the card, and the answer of the day. */
import { describe, expect, it } from 'vitest';
import { pondCardHtml, todayWords } from '../../lib/page/index.js';
import { marksOf } from '../../lib/page/pondCard.js';
import { lowerToday } from '../../lib/report/index.js';
import { itInChromium } from '../chromium.js';
import { invented } from '../figures/report.js';
import { briefDemo, surveyOf } from '../folder.js';
import { assessmentOf, fileOf } from './demoPage.js';
import { labelFaults } from './labels.js';

describe('the pond card', () => {
  it('marks each month on the safe side, counted down from full', () => {
    const levels = [0.25, 0.4, 0.123, null, null, 0.123, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25];
    expect(marksOf(levels, 0.3)).toEqual([
      { below: 0, months: [2] },
      { below: 0.05, months: [1, 7, 8, 9, 10, 11, 12] },
      { below: 0.17, months: [3, 6] },
      { below: null, months: [4, 5] },
    ]);
  });

  it('says in words what the stick shows, for a drain that runs and one that does not', () => {
    const html = pondCardHtml(invented());
    expect(html).toMatch(
      /aria-label="Stick with its top at the full level\. drain runs: .*drain does not run: /,
    );
    expect(html).toMatch(/Jul, Aug, Sep may be emptied/);
    expect(html.replaceAll('\u00a0', ' ')).toContain('plus 0.10 m');
  });
});

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

  it('allows down to the water found and the margin', () => {
    // Pipe at 10.10 on the mark, lowest rim ground at 10: water 0.30 below the pipe stands at -0.20.
    const today = lowerToday(withDip('dip-pipe,2024-09-14,09:00,level,0.30,1.4,10,3.2,0.90,\n'))!;
    expect(today).toMatchObject({ date: '2024-09-14', month: 9, dry: false });
    expect(today.water_m).toBeCloseTo(-0.2, 9);
    expect(today.lowest_m).toBeCloseTo(-0.1, 9);
    const words = todayWords({ ...invented(), lower_today: today }, 'metric');
    expect(words).toContain('On 2024-09-14 the dip pipe showed water at \u22120.20 m');
    expect(words).toContain('let down to \u22120.10 m, 0.40 m below full');
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
