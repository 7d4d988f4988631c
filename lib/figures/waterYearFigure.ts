import { MONTHS } from '../climate/index.js';
import type { Report, WaterDay } from '../contract/report.js';
import { monthName, monthShort } from '../text/monthWords.js';
import { waterYearAlt } from '../text/waterYearAlt.js';
import { pondKeptText, waterDepthAxis, waterDepthText } from '../text/waterYearWords.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import type { Figure } from './figure.js';
import {
  baseLayout,
  type FigureSize,
  folded,
  LABEL_SIZE,
  label,
  lengthScale,
  roomFor,
  short,
  thinAxis,
  unbroken,
} from './layout.js';
import { ALARM, FAINT_INK, HAIRLINE, INK, RING_INK, WATER, WATER_BAND } from './palette.js';
import { spread } from './spread.js';
import { plotText, visible } from './visible.js';
import { waterRows } from './waterRows.js';

const SIGNS = { level: 'circle', below: 'triangle-down', above: 'triangle-up' } as const;
/** A ring no higher over its floor is dry, m. */
const DRY = 0.001;
const MARKS = { level: '\u25cf', below: '\u25bc', above: '\u25b2' } as const;
const SAYS = { level: 'level', below: 'dry, water lower', above: 'water here or higher' } as const;

/**
 * Depth to water through the year: middle and the band of eight years in ten, the pond's own level beside it as it is
 * kept, the water in the ring, the looks into the holes, the pond's full level and floor. Daily over the last years of
 * the weather, or by month where there is no weather.
 * @param report what was computed
 * @param units system of the axis and labels
 * @param size changes the layout only
 * @returns plain data that plotly.js and {@link figureSvg} draw
 * @throws InputError for a report without a water year, as a quick one
 */
export function waterYearFigure(report: Report, units: UnitSystem, size: FigureSize = 'wide'): Figure {
  const { per_m, unit } = lengthScale(units);
  const { monthly, x, rows, dips, every } = waterRows(report);
  const { pond, result } = report;
  const scaled = (depth: number) => short(depth * per_m);
  const bound = (key: 'p10' | 'p50' | 'p90') => rows.map((row) => scaled(row.table_depth_m[key]));
  const when = rows.map(({ date }, at) => (monthly ? monthName(at + 1) : String(date)));
  const hover = rows.map((row, at) => waterDepthText(when[at]!, row.table_depth_m, units));
  const dry = -pond.ring_depth_m - pond.bedding_m;
  const inRing = rows.map(({ tub_level_m: level }) => (level && level.p50 > dry + DRY ? -level.p50 : null));
  const ring = inRing.some((depth) => depth !== null);
  const quiet = { type: 'scatter', mode: 'lines', hoverinfo: 'skip' };
  const shape = monthly ? 'hvh' : 'linear';
  const data: object[] = [
    { ...quiet, name: 'nearest in ten', x, y: bound('p10'), line: { color: WATER, width: 0.75, shape } },
    {
      ...quiet,
      name: 'deepest in ten',
      x,
      y: bound('p90'),
      line: { color: WATER, width: 0.75, shape },
      fill: 'tonexty',
      fillcolor: WATER_BAND,
    },
    {
      type: 'scatter',
      mode: 'lines',
      name: 'middle',
      x,
      y: bound('p50'),
      line: { color: WATER, width: 2, shape },
      hoverinfo: 'text',
      text: hover,
    },
    ...(ring
      ? [
          {
            ...quiet,
            name: 'ring, middle',
            x,
            y: inRing.map((depth) => depth && scaled(depth)),
            line: { color: RING_INK, width: 1.75, dash: '2px,2px', shape },
          },
        ]
      : []),
    {
      type: 'scatter',
      mode: 'lines',
      name: 'pond as kept',
      x,
      y: rows.map((row) => scaled(-row.pond_level_m.p50)),
      line: { color: INK, width: 1.75, shape },
      hoverinfo: 'text',
      text: rows.map((row, at) => pondKeptText(when[at]!, row.pond_level_m, units)),
    },
    ...(Object.keys(SIGNS) as (keyof typeof SIGNS)[]).flatMap((says) => {
      const looks = dips.filter((dip) => dip.says === says);
      if (looks.length === 0) return [];
      return [
        {
          type: 'scatter',
          mode: 'markers',
          name: SAYS[says],
          x: looks.map((dip) => dip.x),
          y: looks.map((dip) => scaled(dip.depth_m)),
          marker: { symbol: SIGNS[says], size: 7, color: INK, line: { color: '#ffffff', width: 1 } },
          hoverinfo: 'text',
          text: looks.map(
            (dip) =>
              `${plotText(dip.pit)} ${dip.date}: ${formatQuantity(dip.depth_m, 'length', units)}, ${SAYS[says]}`,
          ),
        },
      ];
    }),
  ];

  const full = -pond.full_level_m;
  const drawn = (r: WaterDay) => [r.table_depth_m.p10, r.table_depth_m.p90, -r.pond_level_m.p50];
  const depths = [full, pond.depth_m, 0, ...rows.flatMap(drawn)];
  const seen = [...depths, ...dips.map((dip) => dip.depth_m)];
  const top = Math.min(...seen) - 0.12;
  const bottom = Math.max(...seen) + 0.12;
  const height = size === 'wide' ? 400 : 380;
  const { table_depth_m: last, pond_level_m: kept } = rows.at(-1)!;
  const ends = [
    { at: 0, text: 'ground', color: FAINT_INK },
    {
      at: full,
      text: `pond full ${unbroken(formatQuantity(pond.full_level_m, 'level', units))}`,
      color: INK,
    },
    { at: -kept.p50, text: 'pond as kept', color: INK },
    {
      at: pond.depth_m,
      text: `pond floor ${unbroken(formatQuantity(-pond.depth_m, 'level', units))}`,
      color: ALARM,
    },
    { at: last.p10, text: '1 in 10 nearer', color: WATER },
    { at: last.p50, text: 'middle', color: WATER },
    { at: last.p90, text: '1 in 10 deeper', color: WATER },
  ];
  const texts = ends.map(({ text }) => (size === 'wide' ? text : folded(text, 13)));
  const signs = key(dips, ring, size);
  const keyRows = signs.length;
  const leader = size === 'wide' ? 16 : 9;
  const margin = {
    l: size === 'wide' ? 52 : 40,
    r: roomFor(texts, size, leader),
    t: 34 + keyRows * 17,
    b: 40,
  };
  const pixels = (height - margin.t - margin.b) / (bottom - top);
  const lines = size === 'wide' ? 1 : 2;
  const gap = LABEL_SIZE[size] * (lines === 1 ? 1.35 : 2.7);
  const places = spread(
    ends.map((end) => (end.at - top) * pixels),
    gap,
    8,
    height - margin.t - margin.b - 8,
  );
  const annotations = ends.map((end, i) => ({
    text: texts[i]!,
    x: 1,
    xref: 'paper',
    y: scaled(end.at),
    ax: leader,
    ay: places[i]! - (end.at - top) * pixels,
    showarrow: true,
    arrowhead: 0,
    arrowwidth: 0.75,
    arrowcolor: HAIRLINE,
    xanchor: 'left',
    align: 'left',
    font: { color: end.color },
  }));
  const line = (depth: number, color: string, dash: string, width: number) => ({
    type: 'line',
    xref: 'paper',
    x0: 0,
    x1: 1,
    y0: scaled(depth),
    y1: scaled(depth),
    line: { color, dash, width },
  });
  const above = { xref: 'paper', yref: 'paper', yanchor: 'bottom', xshift: -margin.l + 6 };
  const layout = {
    ...baseLayout(size, height, margin),
    xaxis: {
      ...thinAxis(size),
      ...(monthly
        ? {
            range: [0.5, 12.5],
            tickvals: MONTHS,
            ticktext: Array.from({ length: 12 }, (_, at) =>
              size === 'wide' ? monthShort(at + 1) : monthShort(at + 1).charAt(0),
            ),
          }
        : {
            type: 'date',
            range: [dayBefore(String(x[0]), 20), x.at(-1)],
            nticks: size === 'wide' ? 12 : 5,
            tickformat: '%b\n%Y',
          }),
    },
    yaxis: { ...thinAxis(size), range: [scaled(bottom), scaled(top)] },
    shapes: [
      line(0, FAINT_INK, 'solid', 1),
      line(full, FAINT_INK, '8px,4px', 1),
      line(pond.depth_m, ALARM, '3px,3px', 1.5),
    ],
    annotations: [
      ...annotations,
      label(waterDepthAxis(unit), 0, 1, {
        ...above,
        yshift: 10 + keyRows * 17,
        font: { color: FAINT_INK },
      }),
      ...(keyRows > 0 ? [label(signs.join('<br>'), 0, 1, { ...above, yshift: 8 })] : []),
    ],
  };
  return {
    data,
    layout,
    alt: visible(
      waterYearAlt(report, units, monthly, every, dips.length, result.water.seasonal_high_depth_m),
    ),
  };
}

function dayBefore(date: string, days: number): string {
  return new Date(Date.parse(date) - days * 86_400_000).toISOString().slice(0, 10);
}

/** What the marks of the looks and the line of the ring mean, those that occur; a row each. */
function key(dips: Report['dips'], ring: boolean, size: FigureSize): string[] {
  const kinds = (Object.keys(MARKS) as (keyof typeof MARKS)[]).filter((says) =>
    dips.some((dip) => dip.says === says),
  );
  const signs = kinds.map((says) => `${MARKS[says]} ${SAYS[says]}`);
  const looks = signs.length === 0 ? [] : ['looks into holes:', ...signs];
  return [
    ...(ring ? ['\u2508\u2508 water in what was filled back, while there is any'] : []),
    ...(size === 'wide' ? looks.slice(0, 1).map(() => looks.join('  ')) : looks),
  ];
}
