import { describe, expect, test } from 'vitest';
import { judge } from '../../lib/decision/index.js';
import { whichWaterFigure } from '../../lib/figures/index.js';
import { reportOf } from '../../lib/report/index.js';
import { siteModel } from '../../lib/site/index.js';
import { briefDemo, surveyOf } from '../folder.js';
import { sweep } from '../sweep.js';

/** Points of the liners and boxes of the margins written beside them, as a reader sees them. */
function read(svg: string) {
  const liners = [...svg.matchAll(/<path d="M([^"Z]*)" class="fig-edge"[^>]*stroke-linejoin="round"\/>/g)]
    .map(([, d]) => d!.split('L').map((point) => point.split(' ').map(Number)))
    .filter((points) => points.length === 6);
  const margins = [
    ...svg.matchAll(
      /<text class="fig-haloed[^>]*font-size="([\d.]+)"[^>]*><tspan x="([\d.]+)" y="([\d.]+)">(.*?)</g,
    ),
  ].map(([, size, x, y, text]) => {
    // Bold letters are a little wider than half their height, a capital three quarters high.
    const half = 0.27 * Number(size) * text!.length;
    return {
      text,
      left: Number(x) - half,
      right: Number(x) + half,
      top: Number(y) - 0.7 * Number(size),
      bottom: Number(y),
    };
  });
  return { liners, margins };
}

describe.each(sweep(['clay-slope', 'meadow-scrape', 'loam-terrace'], 1))('the margins of %s', (demo) => {
  const report = reportOf(judge(siteModel(surveyOf(briefDemo(demo)), { samples: 48 })));

  test.each(['wide', 'narrow'] as const)('run over no line of the liner, %s', (form) => {
    for (const units of ['metric', 'us'] as const) {
      const { liners, margins } = read(whichWaterFigure(report, units)[form]);
      expect(liners.length).toBe(margins.length);
      expect(margins.length).toBeGreaterThan(1);
      for (const points of liners)
        for (const { left, right, top, bottom, text } of margins)
          for (let i = 1; i < points.length; i++)
            for (let t = 0; t <= 1; t += 0.002) {
              const [x, y] = [0, 1].map((k) => points[i - 1]![k]! * (1 - t) + points[i]![k]! * t);
              const hit = x! > left && x! < right && y! > top && y! < bottom;
              if (hit) expect.unreachable(`${units}: '${text}' runs over the liner`);
            }
    }
  });
});
