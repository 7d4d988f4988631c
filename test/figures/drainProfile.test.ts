/** What the profile of a drain shows is what its links are. */
import { describe, expect, it } from 'vitest';
import { drainProfileFigure } from '../../lib/figures/index.js';
import { invented } from './report.js';

const numbers = (svg: string, what: string) =>
  [
    ...svg
      .replace(/aria-label="[^"]*"/, '')
      .replace(/<\/?tspan[^>]*>/g, ' ')
      .matchAll(new RegExp(`${what}\\s+(\\d+)\\s+cm`, 'g')),
  ].map(([, cm]) => Number(cm));

describe('the profile of the drain', () => {
  const report = invented();
  const way = report.drain!.links.filter(({ link }) => link !== 'flood');

  it('tells every link with its fall, rounded to the safe side', () => {
    const { wide, narrow, alt } = drainProfileFigure(report, 'metric')!;
    for (const svg of [wide, narrow, alt]) {
      expect(numbers(svg, 'falls')).toEqual(way.map(({ has }) => Math.floor(has * 100 + 1e-6)));
      expect(numbers(svg, 'needs')).toEqual(way.map(({ needs }) => Math.ceil(needs * 100 - 1e-6)));
    }
    expect(wide).not.toContain('too little');
    expect(drainProfileFigure(report, 'us')!.alt).not.toMatch(/\d c?m\b/);
  });

  it('marks what lacks fall, and the outlet in flood above the floor', () => {
    const short = invented((each) => {
      const run = each.drain!.links.find(({ link }) => link === 'run')!;
      Object.assign(run, { has: run.needs - 0.02 });
      Object.assign(each.drain!.links.find(({ link }) => link === 'flood')!, { has: -0.1 });
    });
    const { alt } = drainProfileFigure(short, 'metric')!;
    expect(alt).toMatch(/needs \d+ cm: too little/);
    expect(alt).toContain('above the floor: too high');
  });

  it('is not drawn without a drain to an outlet', () => {
    expect(
      drainProfileFigure(
        invented((each) => {
          each.drain = null;
        }),
      ),
    ).toBeUndefined();
  });
});
