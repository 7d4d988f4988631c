import { describe, expect, it } from 'vitest';
import { digWindowFigure } from '../../lib/figures/index.js';
import type { DigWindow } from '../../lib/site/index.js';

const winter = (m: number) => m < 3 || m > 9;
const rows = (f: (d: number, m: number) => number) =>
  [0, 1, 2].map((d) => Array.from({ length: 12 }, (_, m) => f(d, m)));
const dry = rows((d, m) => (winter(m) ? 0.9 - 0.42 * d : 1 - 0.03 * d));
const WINDOW: DigWindow = {
  depths: [0.4, 0.8, 1.2],
  dry,
  pumped: {
    p50: rows((d, m) => (winter(m) ? 1e-7 * d : 0)),
    p90: rows((d, m) => (winter(m) ? 1e-6 * (d + m / 12) : 0)),
  },
  months: [0.5, 0.8, 0.95].map((chance) => ({
    chance,
    at: dry.map((row) => row.flatMap((share, m) => (share >= chance ? [m + 1] : []))),
  })),
};

interface Drawn {
  data: {
    z: number[][];
    text: string[][];
    x: number[];
    y: number[];
    customdata: string[][];
    colorscale: [number, string][];
  }[];
  layout: {
    annotations: { text: string }[];
    shapes: { y0: number; y1: number }[];
    yaxis: { range: number[] };
  };
}
const draw = (...args: Parameters<typeof digWindowFigure>) =>
  digWindowFigure(...args) as unknown as Drawn & { alt: string };

describe('digging window', () => {
  const figure = draw(WINDOW, 0.8, 'metric');
  it('is a cell a month and depth, in four steps with the chance written in', () => {
    const [map] = figure.data;
    expect(map.x.length).toBe(12);
    expect(map.y).toEqual([0.4, 0.8, 1.2]);
    expect(map.z[0].slice(0, 4)).toEqual([2, 2, 2, 3]);
    expect(map.z[2][0]).toBe(0);
    expect(map.text[1][0]).toBe('48');
    expect(map.colorscale.length).toBe(8);
    expect(map.customdata[1][0]).toContain('January, 0.80 m deep: floor dry all month with a chance of 48 %');
  });

  it('deepest below, the row wished outlined, feet for who asks for them', () => {
    expect(figure.layout.yaxis.range[0]).toBeGreaterThan(figure.layout.yaxis.range[1]);
    expect(figure.layout.shapes[0]).toMatchObject({ y0: expect.closeTo(0.6, 9), y1: expect.closeTo(1, 9) });
    const feet = draw(WINDOW, 0.8, 'us');
    expect(feet.data[0].y[0]).toBeCloseTo(0.4 / 0.3048, 3);
    expect(feet.layout.annotations[1].text).toContain('(ft)');
    expect(feet.data[0].customdata[1][0]).toContain('gal/day');
  });

  it('the size changes the layout only', () => {
    for (const units of ['metric', 'us'] as const) {
      const [wide, narrow] = [draw(WINDOW, 0.8, units, 'wide'), draw(WINDOW, 0.8, units, 'narrow')];
      expect(narrow.data[0].z).toEqual(wide.data[0].z);
      expect(narrow.alt).toBe(wide.alt);
    }
  });

  it('says in words when it is dry at the depth wished, and what is to be pumped', () => {
    expect(figure.alt).toContain('dry with a chance of 50 % or more from April to October');
    expect(figure.alt).toContain('95 % or more from April to October');
    expect(figure.alt).toContain('Most is to be pumped in January: 8.64 L/day');
    expect(draw(WINDOW, 0.3, 'metric').alt).toContain('50 % or more in every month');
  });

  it('needs depths', () => {
    expect(() => digWindowFigure({ ...WINDOW, depths: [] }, 1, 'metric')).toThrow('missing depths');
  });
});
