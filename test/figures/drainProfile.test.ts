/** What the profile of a drain shows is what its links are. */
import { describe, expect, it } from 'vitest';
import { drainProfileFigure } from '../../lib/figures/index.js';
import { formatQuantity } from '../../lib/units/index.js';
import { invented } from './report.js';

const lengthOf = (metres: number) => formatQuantity(metres, 'length', 'metric');

/** The words of a drawing, each with one space. */
const read = (svg: string) =>
  svg
    .replace(/aria-label="[^"]*"/, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');

describe('the profile of the drain', () => {
  const report = invented();
  const way = report.drain!.links.filter(({ link }) => link !== 'flood');

  it('tells every link with its fall', () => {
    const { wide, narrow, alt } = drainProfileFigure(report, 'metric')!;
    for (const text of [read(wide), read(narrow), alt])
      for (const { has, needs } of way)
        for (const told of [`falls ${lengthOf(has)}`, `needs ${lengthOf(needs)}`])
          expect(text).toContain(told);
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
    expect(alt).toMatch(/needs [\d.]+ c?m: short/);
    expect(alt).toContain('every depth here counts it so');
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
