import { describe, expect, it } from 'vitest';
import { type Figure, figureSvg, hasPlan, planFigure } from '../../lib/figures/index.js';
import { invented } from './report.js';

const FRAME = {
  height: 200,
  margin: { l: 50, r: 50, t: 20, b: 30 },
  font: { family: 'sans-serif', size: 10, color: '#000000' },
};
const axis = (range: [number | string, number | string], more: object = {}) => ({
  range,
  ticks: 'outside',
  ...more,
});
const drawn = (data: object[], layout: object) =>
  figureSvg({ data, layout: { ...FRAME, ...layout }, alt: 'a "line" <b>' } as Figure, 300, 'f');
const line = (x: (number | string)[], y: (number | null)[], more: object = {}) => ({
  type: 'scatter',
  mode: 'lines',
  name: 'line',
  x,
  y,
  line: { color: '#123456', width: 2, dash: '6px,3px' },
  ...more,
});
/** Labels by their rows, with the place of the first. */
const texts = (svg: string) =>
  [...svg.matchAll(/<tspan x="([\d.]+)" y="([\d.]+)">(.*?)<\/tspan>/g)].map(([, x, y, t]) => ({
    x: Number(x),
    y: Number(y),
    t: t!,
  }));

describe('a figure as SVG', () => {
  // Plot from 50 to 250 across and from 20 to 170 down.
  it('puts values where the axes put them, also where they run backwards', () => {
    const svg = drawn([line([0, 5, 10], [0, 1, 2])], { xaxis: axis([0, 10]), yaxis: axis([2, 0]) });
    expect(svg).toContain(
      'd="M50 20L150 95L250 170" fill="none" stroke-linejoin="round" stroke="#123456" stroke-width="2" stroke-dasharray="6,3"',
    );
    expect(svg).toContain('aria-label="a &quot;line&quot; &lt;b&gt;"');
  });

  it('leaves gaps open, closes areas and fills between two lines', () => {
    const gap = drawn([line([0, 1, 2, 3, 4], [0, 0, null, 1, 1])], {
      xaxis: axis([0, 4]),
      yaxis: axis([0, 1]),
    });
    expect(gap).toContain('d="M50 170L100 170M200 20L250 20"');
    const area = drawn([line([0, 4, 4], [0, 0, 1], { fill: 'toself', fillcolor: '#eeeeee' })], {
      xaxis: axis([0, 4]),
      yaxis: axis([0, 1]),
    });
    expect(area).toContain('d="M50 170L250 170L250 20Z" fill="#eeeeee"');
    const band = drawn(
      [line([0, 4], [1, 1]), line([0, 4], [0, 0], { fill: 'tonexty', fillcolor: '#dddddd' })],
      { xaxis: axis([0, 4]), yaxis: axis([0, 1]) },
    );
    expect(band).toContain('d="M250 20L50 20L50 170L250 170Z" fill="#dddddd"');
  });

  it('keeps one scale both ways by widening the range that has room', () => {
    const svg = drawn([line([0, 10], [0, 0])], {
      xaxis: axis([0, 10]),
      yaxis: { ...axis([-1, 1]), scaleanchor: 'x', scaleratio: 2 },
    });
    // 20 px a unit across, 40 down: 150 px hold 3.75 units, so zero stays in the middle.
    expect(svg).toContain('d="M50 95L250 95"');
  });

  it('labels round numbers, months with their year, and what is given', () => {
    const even = texts(
      drawn([], { xaxis: axis([0, 1], { nticks: 6 }), yaxis: axis([-0.4, 0.4], { nticks: 5 }) }),
    );
    expect(even.map(({ t }) => t)).toEqual([
      '0.0',
      '0.2',
      '0.4',
      '0.6',
      '0.8',
      '1.0',
      '\u22120.4',
      '\u22120.2',
      '0.0',
      '0.2',
      '0.4',
    ]);
    expect(even[5]!.x).toBe(250);
    const dates = texts(
      drawn([], {
        xaxis: axis(['2022-11-20', '2023-12-31'], { type: 'date', nticks: 5 }),
        yaxis: { ...axis([0, 1]), visible: false },
      }),
    );
    expect(dates.map(({ t }) => t)).toEqual([
      'Jan',
      '2023',
      'Apr',
      '\u00a0',
      'Jul',
      '\u00a0',
      'Oct',
      '\u00a0',
    ]);
    const given = texts(
      drawn([], {
        xaxis: { ...axis([0, 1]), visible: false },
        yaxis: axis([-3, 0], { tickvals: [-3, -2, 5], ticktext: ['0.1 %', '1 %', 'out'] }),
      }),
    );
    expect(given.map(({ t }) => t)).toEqual(['0.1 %', '1 %']);
  });

  it('sets labels by anchor and shift, on rows, and knows letters from tags', () => {
    const note = {
      text: 'a &lt; b<br><i>c</i>',
      x: 5,
      y: 1,
      showarrow: false,
      xanchor: 'right',
      yanchor: 'bottom',
      xshift: -4,
      yshift: 6,
    };
    const svg = drawn([], { xaxis: axis([0, 10]), yaxis: axis([0, 2]), annotations: [note] });
    expect(svg).toContain('text-anchor="end"');
    const [first, second] = texts(svg).slice(-2);
    expect(first).toMatchObject({ x: 146, t: 'a &lt; b' });
    expect(second).toMatchObject({ x: 146, t: '&lt;i&gt;c&lt;/i&gt;' });
    expect(second!.y - first!.y).toBeCloseTo(13, 9);
    // The letters end above the place: 95 − 6 px.
    expect(second!.y).toBeLessThan(89);
  });

  it('letters a grid in black or white, whichever is read better', () => {
    const grid = {
      type: 'heatmap',
      x: [1, 2],
      y: [1],
      z: [[0, 1]],
      zmin: -0.5,
      zmax: 1.5,
      colorscale: [
        [0, '#102030'],
        [0.5, '#102030'],
        [0.5, '#f0f0e0'],
        [1, '#f0f0e0'],
      ],
      text: [['0', '99']],
    };
    const svg = drawn([grid], { xaxis: axis([0.5, 2.5]), yaxis: axis([0.5, 1.5]) });
    expect(svg).toMatch(/fill="#102030".*?fill="#ffffff".*?>0<.*?fill="#f0f0e0".*?fill="#000000".*?>99</);
  });

  it('refuses what it does not draw rather than leave it out', () => {
    expect(() =>
      drawn([{ type: 'bar', x: [], y: [] }], { xaxis: axis([0, 1]), yaxis: axis([0, 1]) }),
    ).toThrow("unknown trace 'bar'");
    expect(() =>
      drawn([line([0, Number.NaN], [0, 1])], { xaxis: axis([0, 1]), yaxis: axis([0, 1]) }),
    ).toThrow('invalid place NaN');
    expect(() =>
      drawn([line([0], [0], { mode: 'markers', marker: { symbol: 'star' } })], {
        xaxis: axis([0, 1]),
        yaxis: axis([0, 1]),
      }),
    ).toThrow("unknown mark 'star'");
  });
});

describe('the plan', () => {
  it('shows pond, pipe, boundary and which way the ground falls', () => {
    const { data, layout, alt } = planFigure(invented(), 'metric');
    const names = (data as { name: string }[]).map(({ name }) => name);
    expect(names).toEqual(['pond', 'boundary', 'drain', 'P1', 'P2', 'pipe-end', 'ditch', 'gully', 'scale']);
    expect(alt).toContain('falls towards \u2212y');
    const drain = (data as { name: string; x: number[]; y: number[] }[])[2]!;
    // From the edge of the pond, half its width south of the middle, to the outlet.
    expect(drain.y[1]).toBe(-18);
    expect(
      (layout as { annotations: { text: string }[] }).annotations.some(({ text }) =>
        text.includes('dashed red: boundary'),
      ),
    ).toBe(true);
  });

  it('needs three places', () => {
    const bare = invented((report) => {
      report.points = report.points.slice(0, 2);
    });
    expect(hasPlan(bare)).toBe(false);
    expect(() => planFigure(bare, 'metric')).toThrow('missing places');
  });
});
