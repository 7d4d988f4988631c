import type { Report } from '../contract/report.js';
import { groundPlane } from '../site/index.js';
import { planAlt } from '../text/drawnDrain.js';
import { listText } from '../text/sentence.js';
import { formatQuantity, InputError, type UnitSystem } from '../units/index.js';
import type { Figure } from './figure.js';
import { LANDMARKS } from './landmarks.js';
import { baseLayout, DESIGN_WIDTH, type FigureSize, LABEL_SIZE, label, short, textWidth } from './layout.js';
import { outlineOf } from './outline.js';
import { ALARM, FAINT_INK, INK, LINER, POND_WATER, WATER } from './palette.js';
import { spread } from './spread.js';
import { plotText, visible } from './visible.js';

type Spot = Report['points'][number] & { x_m: number; y_m: number };

const MARKS: Partial<Record<Spot['role'], string>> = {
  pit: 'circle-open',
  outlet: 'triangle-down',
  discharge: 'triangle-down',
};
/** A fall below this has no arrow. */
const LEAST_FALL = 0.002;

/** Surveyed points with a place on the plan. */
function placed({ points }: Report): Spot[] {
  return points.filter((p): p is Spot => p.x_m !== null && p.y_m !== null);
}

/**
 * Whether the survey gives the places of enough points for a plan to show more than the pond.
 * @param report - from {@link reportOf}
 * @returns true where it does
 */
export function hasPlan(report: Report): boolean {
  return placed(report).length >= 3;
}

/**
 * The garden from above: pond, holes, outlet, houses and boundary with their levels, and which way the ground falls.
 * @param report with at least three points that have a place
 * @param units - how numbers are written
 * @param size - wide, or narrow for a phone
 * @returns plain data that plotly.js and {@link figureSvg} draw
 * @throws InputError where they are fewer
 */
export function planFigure(report: Report, units: UnitSystem, size: FigureSize = 'wide'): Figure {
  const spots = placed(report);
  if (spots.length < 3)
    throw new InputError(
      'missing-input',
      `missing places - ${spots.length} points have x and y, a plan needs 3`,
    );
  const { pond } = report;
  const rims = spots.filter(({ role }) => role === 'rim');
  const [cx, cy] = [mean(rims.length > 0 ? rims : spots, 'x_m'), mean(rims.length > 0 ? rims : spots, 'y_m')];
  const outline = pondOutline(report, cx, cy);
  const shown = spots.filter(({ role }) => LANDMARKS.includes(role));
  const boundary = spots.filter(({ role }) => role === 'boundary');
  const fall = fallOf(rims);
  const all = [
    ...outline,
    ...shown.map((p): [number, number] => [p.x_m, p.y_m]),
    ...boundary.map((p): [number, number] => [p.x_m, p.y_m]),
  ];
  const [x0, x1] = [Math.min(...all.map(([x]) => x)) - 1, Math.max(...all.map(([x]) => x)) + 1];
  const [y0, y1] = [Math.min(...all.map(([, y]) => y)) - 1, Math.max(...all.map(([, y]) => y)) + 1];
  const font = LABEL_SIZE[size] - (size === 'wide' ? 0 : 1);
  const texts = shown.map((p) => `${plotText(p.name)} ${formatQuantity(p.level_m, 'level', units)}`);
  const room = Math.ceil(Math.max(60, ...texts.map((text) => textWidth(text, font)))) + 26;
  const margin = { l: 8, r: Math.min(room, DESIGN_WIDTH[size] * 0.45), t: 8, b: 22 };
  const scale = Math.min(
    (DESIGN_WIDTH[size] - margin.l - margin.r) / (x1 - x0),
    (size === 'wide' ? 420 : 320) / (y1 - y0),
  );
  const height = Math.max((y1 - y0) * scale, shown.length * font * 1.4);
  const places = spread(
    shown.map((p) => (y1 - p.y_m) * scale),
    font * 1.4,
    font / 2,
    height - font / 2,
  );
  // The range is given so that metres are as long both ways and the labels hang on the right edge.
  const span: [number, number] = [x0, x0 + (DESIGN_WIDTH[size] - margin.l - margin.r) / scale];
  const bar = [1, 2, 5, 10, 20, 50].find((m) => m * scale >= 40) ?? 50;
  return {
    data: [
      line('pond', outline, LINER, 2, POND_WATER),
      ...(boundary.length > 1
        ? [
            line(
              'boundary',
              boundary.map((p) => [p.x_m, p.y_m]),
              ALARM,
              1.5,
              undefined,
              '8px,4px',
            ),
          ]
        : []),
      ...(report.outlet ? pipeTo(report, spots, outline, cx, cy) : []),
      ...shown.map((p) => ({
        type: 'scatter',
        mode: 'markers',
        name: plotText(p.name),
        x: [short(p.x_m)],
        y: [short(p.y_m)],
        marker: { symbol: MARKS[p.role] ?? 'square', size: 8, color: INK, line: { color: INK, width: 1.5 } },
        hoverinfo: 'name',
      })),
      line(
        'scale',
        [
          [x0 + 0.2, y0 + 0.3],
          [x0 + 0.2 + bar, y0 + 0.3],
        ],
        INK,
        2,
      ),
    ],
    layout: {
      ...baseLayout(size, Math.round(height + margin.t + margin.b), margin),
      xaxis: { visible: false, range: span.map(short), fixedrange: true },
      yaxis: { visible: false, range: [short(y1 - height / scale), short(y1)], fixedrange: true },
      annotations: [
        ...shown.map((p, i) => ({
          text: texts[i]!,
          x: short(p.x_m),
          y: short(p.y_m),
          ax: (x1 - p.x_m) * scale + 4,
          ay: places[i]! - (y1 - p.y_m) * scale,
          showarrow: true,
          arrowhead: 0,
          arrowwidth: 0.5,
          arrowcolor: FAINT_INK,
          xanchor: 'left',
          align: 'left',
          font: { size: font, color: INK },
        })),
        label('pond', short(cx), short(cy), { xanchor: 'center', font: { size: font, color: INK } }),
        ...(fall ? [fallArrow(fall, cx, cy, report)] : []),
        label(
          `${formatQuantity(bar, 'length', units)}${fall ? '; blue arrow: the way the ground falls' : ''}${boundary.length > 1 ? '; dashed red: boundary' : ''}`,
          0,
          0,
          {
            xref: 'paper',
            yref: 'paper',
            yanchor: 'top',
            yshift: -4,
            font: { size: font - 1, color: FAINT_INK },
          },
        ),
      ],
    },
    alt: visible(planAlt(pond, shown, fall ? compass(fall) : undefined, units)),
  };
}

function mean(spots: Spot[], key: 'x_m' | 'y_m'): number {
  return spots.reduce((sum, p) => sum + p[key], 0) / spots.length;
}

/** The pond's rim about a centre, its length along the longer way between rim points. */
function pondOutline(report: Report, cx: number, cy: number): [number, number][] {
  const { shape, length_m, width_m } = report.pond;
  const rims = placed(report).filter(({ role }) => role === 'rim');
  const reach = (key: 'x_m' | 'y_m') =>
    rims.length > 0 ? Math.max(...rims.map((p) => p[key])) - Math.min(...rims.map((p) => p[key])) : 0;
  const [a, b] = reach('x_m') >= reach('y_m') ? [length_m / 2, width_m / 2] : [width_m / 2, length_m / 2];
  return outlineOf(2 * a, 2 * b, shape !== 'box').map(([x, y]) => [cx + x, cy + y]);
}

/** The run of the drain, straight from the pond's edge. */
function pipeTo(
  { outlet, pond }: Report,
  spots: Spot[],
  outline: [number, number][],
  cx: number,
  cy: number,
): object[] {
  const end = spots.find((p) => p.name === outlet!.name && p.role === 'outlet');
  if (!end) return [];
  const [dx, dy] = [end.x_m - cx, end.y_m - cy];
  const [a, b] = [Math.max(...outline.map(([x]) => x)) - cx, Math.max(...outline.map(([, y]) => y)) - cy];
  const edge =
    pond.shape === 'box' ? Math.max(Math.abs(dx) / a, Math.abs(dy) / b) : Math.hypot(dx / a, dy / b);
  return [
    line(
      'drain',
      [
        [cx + dx / Math.max(edge, 1), cy + dy / Math.max(edge, 1)],
        [end.x_m, end.y_m],
      ],
      LINER,
      2.5,
    ),
  ];
}

/** Slope of the plane through the rim points, downhill; absent where they do not span one. */
function fallOf(rims: Spot[]): { x: number; y: number } | undefined {
  const plane = groundPlane(rims.map(({ x_m, y_m, level_m }) => [x_m, y_m, level_m]));
  if (!plane) return undefined;
  const { x, y } = plane.slope;
  return Math.hypot(x, y) < LEAST_FALL ? undefined : { x: -x, y: -y };
}

function fallArrow(fall: { x: number; y: number }, cx: number, cy: number, { pond }: Report): object {
  const size = Math.hypot(fall.x, fall.y);
  const [ux, uy] = [fall.x / size, fall.y / size];
  const from = pond.width_m / 2 + 0.3;
  return {
    text: '',
    x: short(cx + ux * (from + 1.6)),
    y: short(cy + uy * (from + 1.6)),
    ax: short(cx + ux * from),
    ay: short(cy + uy * from),
    xref: 'x',
    yref: 'y',
    axref: 'x',
    ayref: 'y',
    showarrow: true,
    arrowhead: 2,
    arrowwidth: 2,
    arrowcolor: WATER,
  };
}

function compass({ x, y }: { x: number; y: number }): string {
  return listText([
    ...(Math.abs(y) > 0.3 * Math.abs(x) ? [y > 0 ? '+y' : '−y'] : []),
    ...(Math.abs(x) > 0.3 * Math.abs(y) ? [x > 0 ? '+x' : '−x'] : []),
  ]);
}

function line(
  name: string,
  points: [number, number][],
  color: string,
  width: number,
  fill?: string,
  dash = 'solid',
): object {
  return {
    type: 'scatter',
    mode: 'lines',
    name,
    x: points.map(([x]) => short(x)),
    y: points.map(([, y]) => short(y)),
    line: { color, width, dash },
    ...(fill ? { fill: 'toself', fillcolor: fill } : {}),
    hoverinfo: 'skip',
  };
}
