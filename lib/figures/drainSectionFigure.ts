import { BED_THICKNESS, BEDS, type Drain, FILTER_THICKNESS } from '../drain/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import type { Figure } from './figure.js';
import { baseLayout, DESIGN_WIDTH, type FigureSize, LABEL_SIZE, label, short } from './layout.js';
import { FAINT_INK, HAIRLINE, INK, LINER, PAPER, STONE, soilColour } from './palette.js';
import { spread } from './spread.js';
import { visible } from './visible.js';

/** Half a metre of the bed is drawn; ground below it, and water above the liner, m. */
const VIEW = { width: 0.6, ground: 0.06, above: 0.04 };

/** The bed cut across the pipe, to scale and dimensioned, from the clay up to the liner. */
export function drainSectionFigure(drain: Drain, units: UnitSystem, size: FigureSize = 'wide'): Figure {
  const { filter, core } = BEDS[drain.bed];
  const length = (v: number) => formatQuantity(v, 'length', units);
  const sand = core === undefined ? BED_THICKNESS : filter === 'fabric' ? 0 : FILTER_THICKNESS;
  const radius = drain.pipeDiameter / 2;
  // On the sand, under the liner: the pipe lies in the coarsest layer.
  const centre = Math.min((core ? sand : 0) + radius, BED_THICKNESS - radius);
  const half = VIEW.width / 2;
  const band = (name: string, from: number, to: number, colour: string) => ({
    type: 'scatter',
    mode: 'lines',
    fill: 'toself',
    name,
    x: [-half, half, half, -half, -half],
    y: [from, from, to, to, from].map(short),
    fillcolor: colour,
    line: { width: 0.75, color: FAINT_INK },
    hoverinfo: 'skip',
  });
  const across = (name: string, y: number, width: number, dash: string) => ({
    type: 'scatter',
    mode: 'lines',
    name,
    x: [-half, half],
    y: [short(y), short(y)],
    line: { color: LINER, width, dash },
    hoverinfo: 'skip',
  });
  const circle = Array.from({ length: 49 }, (_, i) => (i * Math.PI) / 24);
  const layers: [string, number, number, string][] = [
    ['soil', -VIEW.ground, 0, soilColour('clay')],
    ...(sand > 0 ? ([[filter, 0, sand, soilColour('sand')]] as [string, number, number, string][]) : []),
    ...(core ? ([[core, sand, BED_THICKNESS, STONE]] as [string, number, number, string][]) : []),
  ];
  const font = { size: LABEL_SIZE[size], color: INK };
  const side = (text: string, y: number) =>
    label(text, short(half), short(y), { xanchor: 'left', yanchor: 'middle', xshift: 8, font });
  const margin = { l: 8, r: size === 'wide' ? 270 : 170, t: 10, b: 10 };
  const [bottom, top] = [-VIEW.ground, BED_THICKNESS + VIEW.above];
  const height = ((top - bottom) / VIEW.width) * (DESIGN_WIDTH[size] - margin.l - margin.r);
  const apart = ((LABEL_SIZE[size] * 1.5) / height) * (top - bottom);
  const texts: [string, number][] = [
    ['liner, fleece, filter fabric', BED_THICKNESS],
    [`pipe, ${length(drain.pipeDiameter)} inside`, centre],
    ...layers
      .slice(1)
      .map(([name, from, to]): [string, number] => [
        `${name}, ${length(to - from)}`,
        from + 0.2 * (to - from),
      ]),
    ...(filter === 'fabric' ? ([['drainage fabric on the clay', 0]] as [string, number][]) : []),
    ['undisturbed ground', -VIEW.ground / 2],
  ];
  const places = spread(
    texts.map(([, y]) => y),
    apart,
    bottom,
    top,
  );
  return {
    data: [
      ...layers.map(([name, from, to, colour]) => band(name, from, to, colour)),
      {
        type: 'scatter',
        mode: 'lines',
        fill: 'toself',
        name: 'pipe',
        x: circle.map((t) => short(radius * Math.cos(t))),
        y: circle.map((t) => short(centre + radius * Math.sin(t))),
        fillcolor: PAPER,
        line: { color: LINER, width: 2.5 },
        hoverinfo: 'skip',
      },
      ...(filter === 'fabric' ? [across('fabric', 0, 1.5, '3px,2px')] : []),
      across('filter fabric', BED_THICKNESS + 0.004, 1.5, '3px,2px'),
      across('liner', BED_THICKNESS + 0.01, 3, 'solid'),
    ],
    layout: {
      ...baseLayout(size, Math.round(height + margin.t + margin.b), margin),
      xaxis: { visible: false, range: [-half, half], fixedrange: true },
      yaxis: {
        visible: false,
        range: [bottom, top].map(short),
        scaleanchor: 'x',
        fixedrange: true,
        gridcolor: HAIRLINE,
      },
      annotations: texts.map(([text], i) => side(text, places[i])),
    },
    alt: visible(
      `Section across the bed, ${length(BED_THICKNESS)} thick, from below: the ground, ` +
        `${layers
          .slice(1)
          .map(([name, from, to]) => `${length(to - from)} of ${name}`)
          .join(', ')}, ` +
        `in it ${drain.pipe.pipe.name}; filter fabric and liner on top.`,
    ),
  };
}
