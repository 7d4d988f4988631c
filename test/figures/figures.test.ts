import { describe, expect, it } from 'vitest';
import { type Figure, riskDepthFigure, sectionFigure, waterYearFigure } from '../../lib/figures/index.js';
import { OPTION_STYLE } from '../../lib/figures/palette.js';
import { formatBound } from '../../lib/units/index.js';
import { invented, inventedByMonth } from './report.js';

interface Drawn {
  traces: { name: string; x: unknown[]; y: (number | null)[]; line?: { dash?: string } }[];
  labels: string[];
}

function drawn({ data, layout }: Figure): Drawn {
  const { annotations } = layout as { annotations: { text: string }[] };
  return { traces: data as Drawn['traces'], labels: annotations.map(({ text }) => text) };
}

/** Every number anywhere in a figure. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

const FIGURES = { section: sectionFigure, risk: riskDepthFigure, water: waterYearFigure };
const REPORTS = {
  'a slope with a drain': invented(),
  'a hollow without one': invented((report) => {
    report.result.drain = null;
    report.outlet = null;
    report.result.recommendation.option = 'shallower';
    report.result.recommendation.depth_m = 0.4;
    report.pond = {
      ...report.pond,
      full_level_m: -0.06,
      ring_width_m: 0.2,
      ring_depth_m: 1,
      bedding_m: 0.05,
      bedding_laid_m: 0.05,
    };
  }),
  'a pumped one': invented((report) => {
    report.outlet = null;
    report.result.recommendation.option = 'drain-to-sump';
    report.result.drain!.fall_available_m = null;
  }),
  'nothing to dig': invented((report) => {
    report.result.drain = null;
    report.result.recommendation.option = 'do-not-dig';
    report.result.recommendation.depth_m = 0;
    report.result.ground.layers = [];
    report.dips = [];
    report.pond.side_slope = 8;
  }),
  'months only': inventedByMonth(),
};

for (const [name, report] of Object.entries(REPORTS))
  describe(`figures of ${name}`, () => {
    for (const [kind, make] of Object.entries(FIGURES))
      it(`${kind}: numbers are finite, points come in pairs, the size changes the layout only`, () => {
        for (const units of ['metric', 'us'] as const) {
          const wide = make(report, units, 'wide');
          const narrow = make(report, units, 'narrow');
          expect(narrow.data).toEqual(wide.data);
          expect(narrow.layout).not.toEqual(wide.layout);
          for (const figure of [wide, narrow]) {
            expect(numbersIn(figure).every(Number.isFinite)).toBe(true);
            for (const { x, y } of drawn(figure).traces) expect(x.length).toBe(y.length);
            expect(figure.alt.length).toBeGreaterThan(100);
          }
        }
      });
  });

describe('risk against depth', () => {
  const report = invented((each) => {
    // A twin of no drain, as where next to nothing reaches the ring.
    const [nothing, dry] = each.curves;
    Object.assign(dry!, { ...structuredClone(nothing!), option: 'surface-water-only' });
    Object.assign(each.result.options[1]!, { possible: true, why_not: null });
  });
  const figure = riskDepthFigure(report, 'metric');
  const { traces, labels } = drawn(figure);

  it('has a line an option that is possible, twins on one, at the chances computed', () => {
    expect(traces.map(({ name }) => name)).toContain('No drain / Surface water kept out');
    expect(traces.some(({ name }) => name.includes('Pond raised'))).toBe(false);
    const line = traces.find(({ name }) => name === 'Drain to a pumped sump')!;
    const curve = report.curves.find(({ option }) => option === 'drain-to-sump')!;
    line.y.forEach((log, at) => {
      expect(10 ** log!).toBeCloseTo(curve.per_year[at]!, 4);
    });
  });

  it('draws what is below 0.1 % under the axis, and heavy only what is safe', () => {
    const curve = report.curves.find(({ option }) => option === 'drain-to-outlet')!;
    const line = traces.find(({ name }) => name === 'Drain to an outlet')!;
    const heavy = traces.find(({ name }) => name === 'Drain to an outlet: safe')!;
    curve.per_year.forEach((chance, at) => {
      if (chance < 0.001) expect(line.y[at]).toBeLessThan(-3);
      expect(heavy.y[at] !== null).toBe(curve.safe[at]);
    });
  });

  it('names option, safe depth, wish, accepted chance and what fails', () => {
    const all = labels.join('\n').replaceAll('\u00a0', ' ');
    const { safe_depth_m } = report.result.options.find(({ option }) => option === 'drain-to-outlet')!;
    for (const words of [
      `safe to ${safe_depth_m!.toFixed(2)} m`,
      'not safe at any depth',
      'wish 1.00 m',
      'accepted: 2 % a year',
      'liner lifts when emptied',
    ])
      expect(all).toContain(words);
    expect(figure.alt).toContain('Not possible here: pond raised and slab on the liner.');
  });

  it('rings each safe depth on its line', () => {
    const ring = traces.find(({ name }) => name === 'Drain to an outlet: safe depth')!;
    expect(ring.x).toEqual([
      report.result.options.find(({ option }) => option === 'drain-to-outlet')!.safe_depth_m,
    ]);
    expect(10 ** ring.y[0]!).toBeLessThanOrEqual(report.accepted_risk + 1e-6);
  });
});

describe('section', () => {
  it('puts full level, floor and water where the report has them', () => {
    const report = invented();
    const { labels, traces } = drawn(sectionFigure(report, 'metric'));
    const spare = formatBound(report.result.options[0]!.full!.net_head_m.p10, 'length', 'metric', 'down');
    expect(labels).toEqual(
      expect.arrayContaining([
        'pond full +0.30 m',
        'floor \u22121.00 m',
        'ditch in flood \u22121.28 m',
        `full: ${spare} to spare`,
      ]),
    );
    const liner = traces.find(({ name }) => name === 'liner')!;
    expect(Math.min(...(liner.y as number[]))).toBe(-1);
    // The pipe ends where it was levelled: 8.36 on a mark on which the lowest rim lies at 10.
    expect(traces.find(({ name }) => name === 'pipe')!.y.at(-1)).toBeCloseTo(8.36 - 10, 9);
  });

  it('says when heights are stretched', () => {
    const { labels } = drawn(sectionFigure(invented(), 'metric', 'narrow'));
    expect(labels.join()).toMatch(/Heights drawn [\d.]+ times the lengths/);
  });

  it('shows markup and hidden characters of the survey as letters', () => {
    const hostile = invented((report) => {
      report.outlet!.name = '<a href="https://example.org">x</a>\u202e&lt;';
    });
    const { labels } = drawn(sectionFigure(hostile, 'metric'));
    expect(labels.join()).toContain('&lt;a href="https://example.org"&gt;x&lt;/a&gt;\ufffd&amp;lt;');
  });
});

describe('water year', () => {
  it('shows the last three years and every look in the record', () => {
    const report = invented();
    const { traces } = drawn(waterYearFigure(report, 'us'));
    const middle = traces.find(({ name }) => name === 'middle')!;
    expect(middle.x.at(-1)).toBe(report.water_year.at(-1)!.date);
    expect(middle.x[0]).toBe('2021-09-30');
    expect(middle.y.at(-1)).toBeCloseTo(report.water_year.at(-1)!.table_depth_m.p50 / 0.3048, 3);
    expect(traces.filter(({ name }) => /level|lower|higher/.test(name)).flatMap(({ x }) => x)).toHaveLength(
      report.dips.length,
    );
    // Sixteen looks into each of two holes, and a strike.
    expect(report.dips).toHaveLength(33);
  });

  it('draws the pond as it is kept, and the water in the ring while there is any', () => {
    const report = invented((each) => {
      each.pond.ring_depth_m = 0.9;
      each.pond.bedding_laid_m = 0.05;
      each.water_year.forEach((day, at) => {
        const level = at % 2 === 0 ? -0.95 : -0.4;
        day.tub_level_m = { p10: level, p50: level, p90: level };
        day.pond_level_m = { p10: 0.1, p50: 0.2, p90: 0.3 };
      });
    });
    const { traces, labels } = drawn(waterYearFigure(report, 'metric'));
    const of = (wanted: string) => traces.find(({ name }) => name === wanted)!;
    expect(new Set(of('pond as kept').y)).toEqual(new Set([-0.2]));
    expect(new Set(of('ring, middle').y)).toEqual(new Set([null, 0.4]));
    expect(labels).toContain('pond as kept');
    expect(labels.join()).toContain('what was filled back');
    const none = drawn(waterYearFigure(invented(), 'metric'));
    expect(none.traces.map(({ name }) => name)).not.toContain('ring, middle');
    expect(none.labels.join()).not.toContain('what was filled back');
  });

  it('has twelve months where there is no weather', () => {
    const { traces } = drawn(waterYearFigure(inventedByMonth(), 'metric'));
    expect(traces.find(({ name }) => name === 'middle')!.x).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  });

  it('refuses a report without water', () => {
    const empty = invented((report) => {
      report.water_year = [];
    });
    expect(() => waterYearFigure(empty, 'metric')).toThrow('missing water_year');
  });
});

describe('palette', () => {
  const channel = (hex: string, at: number) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  const luminance = (hex: string) =>
    0.2126 * channel(hex, 1) + 0.7152 * channel(hex, 3) + 0.0722 * channel(hex, 5);

  it('keeps every line apart by its dash, and 3 to 1 against paper (WCAG 2.1, 1.4.11)', () => {
    const styles = Object.values(OPTION_STYLE);
    expect(new Set(styles.map(({ dash }) => dash)).size).toBe(styles.length);
    for (const { colour } of styles) expect(1.05 / (luminance(colour) + 0.05)).toBeGreaterThan(3);
  });
});
