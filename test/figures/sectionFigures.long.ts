import { describe, expect, test, vi } from 'vitest';
import { assess, possibleDrain } from '../../lib/decision/index.js';
import { BARE_RADIUS, evenPlaces, type SectionWorks, withWorks, worksOf } from '../../lib/drain/index.js';
import { contourLines } from '../../lib/figures/contourLines.js';
import { FreeRoom } from '../../lib/figures/freeRoom.js';
import {
  type Figure,
  type FigureSize,
  figureSvg,
  liftWords,
  linerUpliftFigure,
  sectionHeadsFigure,
} from '../../lib/figures/index.js';
import { DESIGN_WIDTH } from '../../lib/figures/layout.js';
import { linerUplift, type PondGround, pondSection, solveFreeSurface } from '../../lib/seepage/index.js';
import { pondGroundOf, siteModel } from '../../lib/site/index.js';
import type { UnitSystem } from '../../lib/units/index.js';
import { itInChromium } from '../chromium.js';
import { briefDemo, surveyOf } from '../folder.js';
import { labelFaults } from '../page/labels.js';

vi.setConfig({ testTimeout: 60_000 });

const solved = (ground: PondGround) => {
  const pond = pondSection(ground, { across: 120, up: 70, hole: 2 });
  const state = solveFreeSurface(pond.section);
  return { pond, state, points: linerUplift(pond, state) };
};

/** A demo without works, with one pipe and with three in its ground, and with its bed. */
function casesOf(demo: string) {
  const site = siteModel(surveyOf(briefDemo(demo)), { samples: 64 });
  const drain = possibleDrain(assess(site))!;
  const { cut, ...bed } = worksOf(drain);
  const bare = pondGroundOf(site, { cut });
  const pipes = (count: number): SectionWorks => ({
    pipes: evenPlaces(drain.input.floorWidth!, count).map((across) => ({
      across,
      depth: 0.15,
      radius: BARE_RADIUS,
    })),
  });
  const works: [string, SectionWorks][] = [
    ['as it is', { pipes: [] }],
    ['one pipe in the ground', pipes(1)],
    ['three pipes in the ground', pipes(3)],
    ['the bed', bed],
  ];
  return {
    hold: { pond: bare.pond, ballast: 0 },
    units: (site.survey.site.show_units ?? 'metric') as UnitSystem,
    cases: works.map(([name, w]) => ({ name, ...solved(withWorks(bare, w)) })),
  };
}
const demos = Object.fromEntries(
  ['clay-slope', 'clay-hollow', 'loam-terrace'].map((demo) => [demo, casesOf(demo)]),
);

function figuresOf(demo: string, size: FigureSize): Figure[] {
  const { hold, units, cases } = demos[demo];
  return [
    ...cases.map(({ pond, state }) => sectionHeadsFigure(pond, state, units, size)),
    linerUpliftFigure(cases, hold, units, size),
  ];
}

describe.each(Object.keys(demos))('the section through %s', (demo) => {
  test('every figure is drawn, and its words tell what it shows', () => {
    const [bare, one, , bed, uplift] = figuresOf(demo, 'wide');
    for (const figure of [bare, one, bed, uplift]) {
      const svg = figureSvg(figure, DESIGN_WIDTH.wide, 'figure');
      expect(svg).not.toContain('NaN');
      expect(figure.alt).not.toMatch(/NaN|undefined|Infinity/);
    }
    expect(bare.alt).toContain('There is no pipe.');
    expect(one.alt).toMatch(/A metre of pipe takes .+/);
    expect(uplift.alt).toMatch(/The bed: nothing lifts/);
    expect(uplift.alt).toContain('pond empty, no ballast');
  });

  test('the axes of the heads are to one scale', () => {
    for (const size of ['wide', 'narrow'] as const) {
      const { layout } = figuresOf(demo, size)[0] as unknown as {
        layout: {
          height: number;
          margin: { l: number; r: number; t: number; b: number };
          xaxis: { range: [number, number] };
          yaxis: { range: [number, number] };
        };
      };
      const { height, margin, xaxis, yaxis } = layout;
      const across = (DESIGN_WIDTH[size] - margin.l - margin.r) / (xaxis.range[1] - xaxis.range[0]);
      const up = (height - margin.t - margin.b) / (yaxis.range[1] - yaxis.range[0]);
      expect(up / across).toBeCloseTo(1, 1);
    }
  });
});

itInChromium('no label of theirs is cut off or lies over another, wide and on a phone', async (page) => {
  for (const [size, width] of [
    ['wide', 1280],
    ['narrow', 360],
  ] as const) {
    const drawn = Object.keys(demos).flatMap((demo) =>
      figuresOf(demo, size).map((figure, i) => figureSvg(figure, DESIGN_WIDTH[size], `${demo}-${i}`)),
    );
    await page.setViewportSize({ width, height: 800 });
    await page.setContent(`<body>${drawn.map((svg) => `<div>${svg}</div>`).join('')}`);
    expect(await page.locator('svg').count()).toBe(15);
    expect(await labelFaults(page)).toEqual([]);
  }
});

test('where the liner lifts, in words', () => {
  const at = (along: number, z: number, uplift: number) => ({
    x: along,
    z,
    along,
    head: 0,
    pressure: 0,
    uplift,
  });
  const points = [
    at(0, 0, -0.5),
    at(1, -1, 0.1),
    at(2, -1, -0.1),
    at(3, -1, 0.2),
    at(4, -1, 0.05),
    at(5, 0, -0.5),
  ];
  expect(liftWords(points, { pond: -1, ballast: 0 }, 'metric')).toBe(
    'lifted most on the floor, by 0.20 m of head; 75 % of the floor lifts',
  );
  expect(liftWords(points, { pond: -1, ballast: 0.25 }, 'metric')).toBe(
    'nothing lifts; the least to spare is 5 cm of head, on the floor',
  );
});

describe('lines of equal value', () => {
  const x = Array.from({ length: 41 }, (_, i) => -2 + i / 10);
  const mesh = (f: (a: number, b: number) => number | null) => x.map((b) => x.map((a) => f(a, b)));

  test('of a plane are straight, one for each value', () => {
    const lines = contourLines(
      x,
      x,
      mesh((a, b) => a + 2 * b),
      0.3,
    );
    expect(lines).toHaveLength(1);
    for (const [a, b] of lines[0]) expect(a + 2 * b).toBeCloseTo(0.3, 12);
    expect(lines[0].length).toBeGreaterThan(40);
  });

  test('of a cone are closed circles; of two cones two', () => {
    const [circle, ...more] = contourLines(
      x,
      x,
      mesh((a, b) => Math.hypot(a, b)),
      1.23,
    );
    expect(more).toEqual([]);
    expect(circle[0]).toEqual(circle[circle.length - 1]);
    for (const [a, b] of circle) expect(Math.hypot(a, b)).toBeCloseTo(1.23, 2);
    const two = mesh((a, b) => Math.min(Math.hypot(a - 1, b), Math.hypot(a + 1, b)));
    expect(contourLines(x, x, two, 0.5)).toHaveLength(2);
  });

  test('stop at a hole', () => {
    const lines = contourLines(
      x,
      x,
      mesh((a, b) => (Math.abs(a) < 0.5 ? null : b)),
      0.25,
    );
    expect(lines).toHaveLength(2);
    for (const [a] of lines.flat()) expect(Math.abs(a)).toBeGreaterThan(0.49);
  });
});

test('a label takes the first place that is free and inside', () => {
  const room = new FreeRoom({ left: 0, right: 100, top: 0, bottom: 40 });
  expect(
    room.take('head', 10, [
      { x: 2, y: 20 },
      { x: 50, y: 20 },
    ]),
  ).toBe(1);
  expect(
    room.take('pipe', 10, [
      { x: 55, y: 22 },
      { x: 50, y: 33 },
    ]),
  ).toBe(1);
  expect(room.take('pipe', 10, [{ x: 55, y: 22 }])).toBeUndefined();
});
