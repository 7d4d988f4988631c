import { describe, expect, test } from 'vitest';
import { textureTriangleFigure } from '../../lib/figures/index.js';
import { CLASS_LABELS, TEXTURE_LIMITS } from '../../lib/figures/textureLimits.js';
import { Assumptions, groundOf } from '../../lib/site/index.js';
import { textureClass, USDA_CLASSES } from '../../lib/soil/index.js';
import { read } from '../survey/folder.js';

function layers(...rows: string[]) {
  const survey = read({ 'pits.csv': ['pit,top_m,bottom_m,texture,sand_pct,clay_pct', ...rows].join('\n') });
  return groundOf(survey, [], new Assumptions()).layers;
}
const LOG = layers(
  'P1,0,0.3,loam,,',
  'P1,0.3,1,clay,20,48',
  'P1,1,2,peat,,',
  'P2,0,0.4,loam,,',
  'P2,0.4,2,silty clay loam,,',
);
interface Trace {
  mode: string;
  name: string;
  x: number[];
  y: number[];
}
const inside = (x: number, y: number) => y >= -1e-4 && y <= Math.sqrt(3) * Math.min(x, 1 - x) + 1e-3;

describe('the limits drawn', () => {
  test.each(TEXTURE_LIMITS)(
    'from sand %d clay %d to sand %d clay %d lie between two classes',
    (s, c, u, v) => {
      // Square to the line, half a percent to each side, at every tenth of it.
      const length = Math.hypot(u - s, v - c);
      const [nx, ny] = [(-(v - c) / length) * 0.5, ((u - s) / length) * 0.5];
      for (let i = 1; i < 10; i++) {
        const [x, y] = [s + ((u - s) * i) / 10, c + ((v - c) * i) / 10];
        const side = (way: number) => textureClass((x + way * nx) / 100, (y + way * ny) / 100);
        expect(side(1)).not.toBe(side(-1));
      }
    },
  );

  test('no class changes where no line is', () => {
    const away = (x: number, y: number) =>
      Math.min(
        ...TEXTURE_LIMITS.map(([s, c, u, v]) => {
          const t = ((x - s) * (u - s) + (y - c) * (v - c)) / ((u - s) ** 2 + (v - c) ** 2);
          const at = Math.min(Math.max(t, 0), 1);
          return Math.hypot(x - s - at * (u - s), y - c - at * (v - c));
        }),
      );
    for (let x = 0.5; x < 99; x++)
      for (let y = 0.5; x + y < 98; y++) {
        const here = textureClass(x / 100, y / 100);
        if (textureClass((x + 1) / 100, y / 100) !== here) expect(away(x + 0.5, y)).toBeLessThan(1);
        if (textureClass(x / 100, (y + 1) / 100) !== here) expect(away(x, y + 0.5)).toBeLessThan(1);
      }
  });

  test('every name stands in its class', () => {
    for (const name of USDA_CLASSES)
      expect(textureClass(CLASS_LABELS[name][0] / 100, CLASS_LABELS[name][1] / 100)).toBe(name);
  });
});

describe.each(['wide', 'narrow'] as const)('%s', (size) => {
  const figure = textureTriangleFigure(LOG, 'us', size);
  const traces = figure.data as Trace[];

  test('a mark for each soil, one for layers alike, none for peat', () => {
    const marks = traces.filter((t) => t.mode === 'markers');
    expect(marks.map((t) => t.name)).toEqual([
      'P1 from 0 in and P2 from 0 in',
      'P1 from 11 3/4 in',
      'P2 from 1 ft 3 1/2 in',
    ]);
    // Clay of 48 % with 20 % sand: at 0.56 across and 0.48 of the height.
    expect(marks[1].x[0]).toBeCloseTo(1 - 0.2 - 0.24, 4);
    expect(marks[1].y[0]).toBeCloseTo(0.48 * Math.sqrt(0.75), 4);
  });

  test('everything lies in the triangle, and a measured soil has no spread', () => {
    const points = traces.flatMap(({ x, y }) => x.map((v, i) => [v, y[i]])).filter(([v]) => v !== null);
    expect(points.every(([x, y]) => inside(x, y))).toBe(true);
    expect(traces.filter((t) => t.name.startsWith('spread'))).toHaveLength(2);
  });

  test('the words say what the marks say', () => {
    expect(figure.alt.replaceAll('\u00a0', ' ')).toContain(
      'P1 from 11 3/4 in: clay, sand 20 %, silt 32 %, clay 48 %',
    );
    expect(figure.alt).toContain('loam, by its class; typically');
  });
});

test('a log without soils says so', () => {
  expect(textureTriangleFigure(layers('P1,0,2,peat,,'), 'metric').alt).toMatch(/names no soil/);
});

test('a name is drawn letter by letter', () => {
  const { data } = textureTriangleFigure(layers('<b>P</b>,0,2,clay,,'), 'metric');
  expect(JSON.stringify(data)).toContain('&lt;b&gt;P&lt;/b&gt;');
});
