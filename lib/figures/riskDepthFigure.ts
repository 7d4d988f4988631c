import type { OptionName } from '../contract/optionNames.js';
import type { Report } from '../contract/report.js';
import {
  acceptedText,
  depthDugAxis,
  riskAtDepthText,
  riskDepthAlt,
  safeDepthText,
  safeToWords,
} from '../text/riskDepthWords.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { failureLabels } from './failureLabels.js';
import type { Figure } from './figure.js';
import {
  baseLayout,
  DESIGN_WIDTH,
  type FigureSize,
  folded,
  LABEL_SIZE,
  label,
  lengthScale,
  roomFor,
  short,
  thinAxis,
} from './layout.js';
import { ALARM, FAINT_INK, INK } from './palette.js';
import { BOTTOM, type DrawnLine, drawnLines, LEAST } from './riskLines.js';
import { spread } from './spread.js';
import { visible } from './visible.js';

/** An option that is tried, with its chance a year. */
interface TriedPoint {
  option: OptionName;
  per_year: number;
}

/**
 * Chance a year that liner or sides fail, against the depth dug; a line an option that is possible, heavy where the depth
 * is safe, with the failure that governs named along it, the accepted risk, the wish and each safe depth.
 * @param report what was computed
 * @param units system of the axis and labels
 * @param size changes the layout only
 * @param tried an option that is tried at the depth of the report, and its chance a year there: marked
 * @returns plain data that plotly.js and {@link figureSvg} draw
 */
export function riskDepthFigure(
  report: Report,
  units: UnitSystem,
  size: FigureSize = 'wide',
  tried?: TriedPoint,
): Figure {
  const { per_m, unit } = lengthScale(units);
  const { accepted_risk, pond } = report;
  const lines = drawnLines(report);
  const deepest = Math.max(pond.depth_m, ...lines.flatMap((line) => line.depth_m));
  const data = [
    ...lines.flatMap((line) => tracesOf(line, report, units, per_m)),
    ...(tried ? triedMark(tried, lines, pond.depth_m, per_m) : []),
  ];

  const height = size === 'wide' ? 450 : 460;
  const ends = lines.map((line) => endWords(line, report, units, size));
  const leader = size === 'wide' ? 16 : 9;
  const margin = { l: size === 'wide' ? 62 : 46, r: roomFor(ends, size, leader), t: 44, b: 46 };
  const plot = { width: DESIGN_WIDTH[size] - margin.l - margin.r, height: height - margin.t - margin.b };
  const top = 0.06;
  const pixels = {
    x: (depth: number) => (depth / deepest) * plot.width,
    y: (log: number) => ((top - log) / (top - BOTTOM)) * plot.height,
  };
  const rowHeight = LABEL_SIZE[size] * 1.3;
  const tallest = Math.max(1, ...ends.map((text) => text.split('<br>').length));
  const wanted = lines.map((line) => pixels.y(line.log.at(-1)!));
  // The topmost stays below the title.
  const highest = Math.max(6, (tallest * rowHeight) / 2 - 14);
  const places = spread(wanted, tallest * rowHeight + 3, highest, plot.height - 4);
  const accepted = Math.log10(Math.max(accepted_risk, LEAST));
  const annotations = [
    ...lines.map((line, i) => ({
      text: ends[i]!,
      x: short(line.depth_m.at(-1)! * per_m),
      y: line.log.at(-1)!,
      ax: leader,
      ay: places[i]! - wanted[i]!,
      showarrow: true,
      arrowhead: 0,
      arrowwidth: 0.75,
      arrowcolor: line.colour,
      xanchor: 'left',
      align: 'left',
      font: { color: line.colour },
    })),
    ...failureLabels(lines, pixels, plot, size, [
      { x: 0, y: pixels.y(accepted) - 15, width: 150, height: 15 },
      { x: pixels.x(pond.depth_m) - 3, y: 0, width: 90, height: 16 },
    ]).map((at) =>
      label(at.text, short(at.depth_m * per_m), at.log, {
        xanchor: 'center',
        xshift: at.right,
        yshift: at.up,
        font: { color: at.colour, size: LABEL_SIZE[size] - 1 },
        bgcolor: 'rgba(255,255,255,0.75)',
        borderpad: 0,
      }),
    ),
    label(acceptedText(accepted_risk), 0, accepted, {
      xshift: 4,
      yanchor: 'bottom',
      font: { color: ALARM },
    }),
    label(
      `${tried ? 'tried' : 'wish'} ${formatQuantity(pond.depth_m, 'length', units)}`,
      short(pond.depth_m * per_m),
      1,
      {
        yref: 'paper',
        yanchor: 'bottom',
        xanchor: pond.depth_m > 0.7 * deepest ? 'right' : 'center',
        font: { color: INK },
      },
    ),
    label('Chance in a year that liner or sides fail', 0, 1, {
      xref: 'paper',
      yref: 'paper',
      yanchor: 'bottom',
      xshift: -margin.l + 6,
      yshift: 18,
      font: { color: FAINT_INK },
    }),
  ];
  const across = { type: 'line', xref: 'paper', x0: 0, x1: 1 };
  const layout = {
    ...baseLayout(size, height, margin),
    xaxis: {
      ...thinAxis(size, depthDugAxis(unit)),
      range: [0, short(deepest * per_m)],
      nticks: size === 'wide' ? 9 : 5,
    },
    yaxis: {
      ...thinAxis(size),
      range: [BOTTOM, top],
      tickvals: [BOTTOM, -3, -2, -1, 0],
      ticktext: ['', '0.1 %', '1 %', '10 %', '100 %'],
    },
    shapes: [
      {
        type: 'rect',
        xref: 'paper',
        x0: 0,
        x1: 1,
        y0: BOTTOM,
        y1: -3,
        line: { width: 0 },
        fillcolor: '#f1efe9',
        layer: 'below',
      },
      { ...across, y0: accepted, y1: accepted, line: { color: ALARM, width: 1.25, dash: '6px,3px' } },
      {
        type: 'line',
        x0: short(pond.depth_m * per_m),
        x1: short(pond.depth_m * per_m),
        yref: 'paper',
        y0: 0,
        y1: 1,
        line: { color: INK, width: 1, dash: '2px,2px' },
        layer: 'below',
      },
    ],
    annotations,
  };
  const drawn = lines.flatMap(({ options }) => options);
  return { data, layout, alt: visible(riskDepthAlt(report, drawn, units)) };
}

/** What is tried, on the line of its option or where its own chance has it. */
function triedMark(
  { option, per_year }: TriedPoint,
  lines: DrawnLine[],
  depth: number,
  per_m: number,
): object[] {
  const line = lines.find(({ options }) => options.includes(option));
  if (!line) return [];
  const at = per_year < LEAST ? Math.min(logAt(line, depth), Math.log10(LEAST)) : Math.log10(per_year);
  return [
    {
      type: 'scatter',
      mode: 'markers',
      name: 'tried',
      x: [short(depth * per_m)],
      y: [short(at)],
      marker: { symbol: 'square', size: 13, color: line.colour, line: { color: INK, width: 2 } },
      hoverinfo: 'skip',
    },
  ];
}

/** The line twice, light over its whole length and heavy where safe, and a ring at the safe depth. */
function tracesOf(line: DrawnLine, report: Report, units: UnitSystem, per_m: number): object[] {
  const x = line.depth_m.map((depth) => short(depth * per_m));
  const name = line.names.join(' / ');
  const hover = line.depth_m.map((depth, at) =>
    riskAtDepthText(
      name,
      {
        depth,
        risk: { per_year: line.per_year[at]!, upkeep: line.upkeep[at]! },
        governs: line.governs[at]!,
        safe: line.safe[at]!,
      },
      units,
    ),
  );
  const drawn = { type: 'scatter', mode: 'lines', x };
  const option = report.result.options.find(({ option }) => option === line.options[0]);
  const safe = option?.safe_depth_m;
  const ring =
    safe === null || safe === undefined || safe === 0
      ? []
      : [
          {
            type: 'scatter',
            mode: 'markers',
            name: `${name}: safe depth`,
            x: [short(safe * per_m)],
            y: [short(logAt(line, safe))],
            marker: { symbol: 'circle', size: 9, color: '#ffffff', line: { color: line.colour, width: 2.5 } },
            hoverinfo: 'text',
            text: [safeDepthText(name, safe, units)],
          },
        ];
  return [
    {
      ...drawn,
      name,
      y: line.log.map(short),
      line: { color: line.colour, width: 1.5, dash: line.dash },
      hoverinfo: 'text',
      text: hover,
    },
    {
      ...drawn,
      name: `${name}: safe`,
      y: line.log.map((log, at) => (line.safe[at] ? short(log) : null)),
      line: { color: line.colour, width: 3.5, dash: line.dash },
      hoverinfo: 'skip',
    },
    ...ring,
  ];
}

/** Height of the line at a depth between its points. */
function logAt({ depth_m, log }: DrawnLine, depth: number): number {
  const after = depth_m.findIndex((d) => d >= depth);
  if (after <= 0) return after === 0 ? log[0]! : log.at(-1)!;
  const part = (depth - depth_m[after - 1]!) / (depth_m[after]! - depth_m[after - 1]!);
  return log[after - 1]! + part * (log[after]! - log[after - 1]!);
}

function endWords(line: DrawnLine, report: Report, units: UnitSystem, size: FigureSize): string {
  const option = report.result.options.find((each) => each.option === line.options[0])!;
  const rows = [...line.names, safeToWords(option, units)];
  return (size === 'wide' ? rows : rows.map((row) => folded(row, 15))).join('<br>');
}
