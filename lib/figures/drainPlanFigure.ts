import { BESIDE, type Drain, wayOut } from '../drain/index.js';
import { drainPipesText, drainPlanAlt } from '../text/drawnDrain.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import type { Figure } from './figure.js';
import { baseLayout, DESIGN_WIDTH, type FigureSize, folded, LABEL_SIZE, label, short } from './layout.js';
import { outlineOf } from './outline.js';
import { FAINT_INK, INK, LINER, PAPER, STONE } from './palette.js';
import { plotText, visible } from './visible.js';

type Point = [x: number, y: number];

/** Characters on a line of the name of the outlet, so that it stays beside the pond. */
const NAME: Record<FigureSize, number> = { wide: 20, narrow: 14 };
/** A pipe round the foot of the sides is drawn so far inside the floor, m. */
const INSET = 0.1;
/** Length of the run that is drawn before its end, m; the rest is left out at the break. */
const SHOWN = 1.6;

/**
 * The drain seen from above, dimensioned: rim and floor of the pond, pipes in the bed, inspection pipe and the run to
 * outlet or sump, its length shortened.
 * @param drain - from {@link designDrain}
 * @param units - how numbers are written
 * @param size - wide, or narrow for a phone
 * @returns plain data that plotly.js and {@link figureSvg} draw
 */
export function drainPlanFigure(drain: Drain, units: UnitSystem, size: FigureSize = 'wide'): Figure {
  const { layout, input } = drain;
  const { floorLength, end, underSide = 0 } = input;
  const floorWidth = input.floorWidth ?? input.floorArea / floorLength;
  const plan = { length: floorLength + 2 * underSide, width: floorWidth + 2 * underSide };
  // The run goes to the right: a pond whose pipe leaves by the long side is turned.
  const turned = wayOut(layout.kind, plan, input.towards)[0] === 0;
  const rim = turned ? { length: plan.width, width: plan.length } : plan;
  const floor = turned
    ? { length: floorWidth, width: floorLength }
    : { length: floorLength, width: floorWidth };
  const across = turned && layout.kind === 'spine';
  const heads: Point[] = across
    ? [
        [0, floor.width / 2],
        [0, -floor.width / 2],
      ]
    : [[-floor.length / 2, 0]];
  const round = input.floorArea < 0.95 * floorLength * floorWidth;
  const edge = rim.length / 2;
  const mouth = edge + 0.5 + SHOWN;
  // The sump stands beside the pond; from there the water is pumped.
  const sump = edge + BESIDE;
  const branches = Array.from(
    { length: layout.branches },
    (_, i) => (i + 0.5) * layout.spacing - floorLength / 2,
  );
  const half = (x: number) =>
    (floorWidth / 2) * (round ? Math.sqrt(Math.max(1 - ((2 * x) / floorLength) ** 2, 0)) : 1);
  const place = end.kind === 'outlet' ? end.name : (end.to ?? 'pumped away');
  const length = (v: number) => formatQuantity(v, 'length', units);

  const data = [
    area('rim', outlineOf(rim.length, rim.width, round), PAPER),
    area('bed', outlineOf(floor.length, floor.width, round), STONE),
    ...branches.map((x) =>
      line(
        'branch',
        [
          [x, -half(x)],
          [x, half(x)],
        ],
        2.5,
      ),
    ),
    line(
      'pipe in the bed',
      layout.kind === 'ring'
        ? outlineOf(floor.length - 2 * INSET, floor.width - 2 * INSET, round)
        : across
          ? heads
          : [heads[0]!, [floor.length / 2, 0]],
      3.5,
    ),
    line(
      'run',
      [
        [across ? 0 : floor.length / 2 - (layout.kind === 'ring' ? INSET : 0), 0],
        [end.kind === 'outlet' ? mouth : sump, 0],
      ],
      3.5,
    ),
    ...(end.kind === 'outlet'
      ? []
      : [
          line(
            'pumped line',
            [
              [sump, 0],
              [mouth, 0],
            ],
            1.5,
          ),
          mark('sump', [sump, 0], 'square'),
        ]),
    line(
      'break',
      [
        [edge + 0.9, -0.16],
        [edge + 1.02, 0.16],
      ],
      1,
    ),
    line(
      'break',
      [
        [edge + 1.02, -0.16],
        [edge + 1.14, 0.16],
      ],
      1,
    ),
    ...heads.map((head) => mark('inspection pipe', head, 'circle-open')),
    mark('outlet', [mouth, 0], 'triangle-right'),
  ];
  const below = -rim.width / 2;
  const font = { size: LABEL_SIZE[size], color: INK };
  const sizes = [
    `rim ${length(plan.length)} × ${length(plan.width)}`,
    `floor ${length(floorLength)} × ${length(floorWidth)}`,
    drainPipesText(layout, floorLength, units),
  ];
  const annotations = [
    label(sizes.join(size === 'wide' ? '; ' : '<br>'), short(-edge), short(below), {
      font,
      yanchor: 'top',
      yshift: -4,
    }),
    label(
      heads.length > 1 ? 'inspection pipes' : 'inspection pipe',
      short(heads[0]![0]),
      short(heads[0]![1]),
      {
        font,
        yanchor: 'bottom',
        yshift: 8,
        // Branches run under it.
        bgcolor: STONE,
      },
    ),
    ...(end.kind === 'sump'
      ? [label('sump', short(sump), 0, { font, xanchor: 'center', yanchor: 'bottom', yshift: 8 })]
      : []),
    label(`${folded(plotText(place), NAME[size])}<br>${length(end.distance)}`, short(mouth), 0, {
      font,
      xanchor: 'right',
      align: 'right',
      yanchor: 'top',
      yshift: -16,
    }),
  ];
  const margin = { l: 8, r: 18, t: 10, b: size === 'wide' ? 26 : 58 };
  const span = mouth + edge + 0.4;
  const height = ((rim.width + 0.3) / span) * (DESIGN_WIDTH[size] - margin.l - margin.r);
  return {
    data,
    layout: {
      ...baseLayout(size, Math.round(height + margin.t + margin.b), margin),
      xaxis: { visible: false, range: [short(-edge - 0.2), short(mouth + 0.2)], fixedrange: true },
      yaxis: {
        visible: false,
        range: [short(below - 0.15), short(-below + 0.15)],
        scaleanchor: 'x',
        fixedrange: true,
      },
      annotations,
    },
    alt: visible(drainPlanAlt(drain, { length: floorLength, width: floorWidth }, place, units)),
  };
}

function columns(points: Point[]) {
  return { x: points.map(([x]) => short(x)), y: points.map(([, y]) => short(y)) };
}

function area(name: string, points: Point[], fillcolor: string): object {
  return {
    type: 'scatter',
    mode: 'lines',
    fill: 'toself',
    name,
    ...columns(points),
    fillcolor,
    line: { width: 1, color: FAINT_INK },
    hoverinfo: 'skip',
  };
}

function line(name: string, points: Point[], width: number): object {
  return {
    type: 'scatter',
    mode: 'lines',
    name,
    ...columns(points),
    line: { color: LINER, width },
    hoverinfo: 'skip',
  };
}

function mark(name: string, point: Point, symbol: string): object {
  return {
    type: 'scatter',
    mode: 'markers',
    name,
    ...columns([point]),
    marker: { symbol, size: 12, color: LINER, line: { color: LINER, width: 2 } },
    hoverinfo: 'skip',
  };
}
