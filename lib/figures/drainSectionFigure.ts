import {
  BED_THICKNESS,
  BEDS,
  type BedLayers,
  type Drain,
  FILTER_THICKNESS,
  GROOVE_WIDTH,
  MAT_THICKNESS,
} from '../drain/index.js';
import { drainSectionAlt } from '../text/drawnDrain.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import type { Figure } from './figure.js';
import { baseLayout, DESIGN_WIDTH, type FigureSize, LABEL_SIZE, label, short } from './layout.js';
import { FAINT_INK, HAIRLINE, INK, LINER, PAPER, STONE, soilColour } from './palette.js';
import { spread } from './spread.js';
import { visible } from './visible.js';

/** Half a metre of the bed is drawn; ground below it, and water above the liner, m. */
const VIEW = { width: 0.6, ground: 0.1, above: 0.04 };

/** A layer as it is drawn, heights above the underside of the bed, m. */
interface Layer {
  name: string;
  from: number;
  to: number;
  colour: string;
  /** how far its lower and its upper face dip under the pipe */
  dip?: [number, number];
  /** half its width, where it does not fill the view */
  reach?: number;
}

/**
 * The bed cut across the pipe, to scale and dimensioned, from the clay up to the liner.
 * @param drain - from {@link designDrain}
 * @param units - how numbers are written
 * @param size - wide, or narrow for a phone
 * @returns plain data that plotly.js and {@link figureSvg} draw
 */
export function drainSectionFigure(drain: Drain, units: UnitSystem, size: FigureSize = 'wide'): Figure {
  const { filter, core, mat }: BedLayers = BEDS[drain.bed];
  const length = (v: number) => formatQuantity(v, 'length', units);
  const sand = core === undefined ? BED_THICKNESS : filter === 'fabric' ? 0 : FILTER_THICKNESS;
  const radius = drain.pipeDiameter / 2;
  // Its lowest point lies at the underside of the bed, on filter sand in a groove.
  const centre = radius;
  const groove = filter === 'fabric' ? 0 : FILTER_THICKNESS;
  const half = VIEW.width / 2;
  // A layer, and how deep it dips into the groove under the pipe.
  const band = ({ name, from, to, colour, dip = [0, 0], reach = half }: Layer) => {
    const g = GROOVE_WIDTH / 2;
    const [under, over] = [from - dip[0], to - dip[1]];
    return {
      type: 'scatter',
      mode: 'lines',
      fill: 'toself',
      name,
      x: [-reach, -g, -g, g, g, reach, reach, g, g, -g, -g, -reach, -reach],
      y: [from, from, under, under, from, from, to, to, over, over, to, to, from].map(short),
      fillcolor: colour,
      line: { width: 0.75, color: FAINT_INK },
      hoverinfo: 'skip',
    };
  };
  const across = (name: string, y: number, width: number, dash: string, reach = half) => ({
    type: 'scatter',
    mode: 'lines',
    name,
    x: [-reach, reach],
    y: [short(y), short(y)],
    line: { color: LINER, width, dash },
    hoverinfo: 'skip',
  });
  const circle = Array.from({ length: 49 }, (_, i) => (i * Math.PI) / 24);
  const top = BED_THICKNESS - (mat ? MAT_THICKNESS : 0);
  // Under a mat the stone fills only the trench of the pipe.
  const laid = core ? sand : 0;
  const layers: Layer[] = [
    { name: 'soil', from: -VIEW.ground, to: mat ? top : 0, colour: soilColour('clay'), dip: [0, groove] },
  ];
  if (sand > 0)
    layers.push({
      name: filter,
      from: 0,
      to: sand,
      colour: soilColour('sand'),
      dip: [groove, core ? groove : 0],
    });
  if (core)
    layers.push({
      name: core,
      from: laid,
      to: top,
      colour: STONE,
      dip: [groove, 0],
      ...(mat ? { reach: GROOVE_WIDTH / 2 } : {}),
    });
  if (mat) layers.push({ name: 'drainage mat', from: top, to: BED_THICKNESS, colour: FAINT_INK });
  const font = { size: LABEL_SIZE[size], color: INK };
  const side = (text: string, y: number) =>
    label(text, short(half), short(y), { xanchor: 'left', yanchor: 'middle', xshift: 8, font });
  const margin = { l: 8, r: size === 'wide' ? 270 : 170, t: 10, b: 10 };
  const [bottom, upper] = [-VIEW.ground, BED_THICKNESS + VIEW.above];
  const height = ((upper - bottom) / VIEW.width) * (DESIGN_WIDTH[size] - margin.l - margin.r);
  const apart = ((LABEL_SIZE[size] * 1.5) / height) * (upper - bottom);
  const texts: [string, number][] = [
    ['liner, fleece, filter fabric', BED_THICKNESS],
    [`pipe, ${length(drain.pipeDiameter)} inside`, centre],
    ...layers
      .slice(1)
      .map(({ name, from, to }): [string, number] => [
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
    upper,
  );
  return {
    data: [
      ...layers.map(band),
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
      ...(filter === 'fabric' ? [across('fabric', 0, 1.5, '3px,2px', mat ? GROOVE_WIDTH / 2 : half)] : []),
      across('filter fabric', BED_THICKNESS + 0.004, 1.5, '3px,2px'),
      across('liner', BED_THICKNESS + 0.01, 3, 'solid'),
    ],
    layout: {
      ...baseLayout(size, Math.round(height + margin.t + margin.b), margin),
      xaxis: { visible: false, range: [-half, half], fixedrange: true },
      yaxis: {
        visible: false,
        range: [bottom, upper].map(short),
        scaleanchor: 'x',
        fixedrange: true,
        gridcolor: HAIRLINE,
      },
      annotations: texts.map(([text], i) => side(text, places[i])),
    },
    alt: visible(drainSectionAlt(layers.slice(1), drain.pipe.pipe.name, units)),
  };
}
