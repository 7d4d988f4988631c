import type { GroundLayer } from '../site/index.js';
import { TYPICAL_COMPOSITION, textureClass, USDA_CLASSES, type UsdaClass } from '../soil/index.js';
import { listText } from '../text/sentence.js';
import { soilWords, textureTriangleAlt } from '../text/textureWords.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import type { Figure } from './figure.js';
import { baseLayout, DESIGN_WIDTH, type FigureSize, folded, LABEL_SIZE, label, short } from './layout.js';
import { ALARM, FAINT_INK, HAIRLINE, INK, PAPER, soilColour, WATER } from './palette.js';
import { CLASS_LABELS, TEXTURE_LIMITS } from './textureLimits.js';
import { plotText, visible } from './visible.js';

/** A soil on the triangle: percentages that were measured, or the typical ones of a class named by feel. */
interface Sample {
  names: string[];
  sand: number;
  clay: number;
  texture: UsdaClass;
  /** class named, percentages not measured */
  byClass: boolean;
}

const HEIGHT = Math.sqrt(3) / 2;
/** Position of a composition (fractions): sand at the left corner, silt at the right, clay at the top. */
const at = (sand: number, clay: number): [x: number, y: number] => [
  short(1 - sand - clay / 2),
  short(clay * HEIGHT),
];

/**
 * The USDA texture triangle with the layers of the pit log: a dot where percentages were measured, a ring with its
 * spread where only the class is known.
 * @param layers of the ground; peat, gravel, rock and made ground have no place on it
 * @param units of the depths in the names
 * @param size changes the layout only
 * @returns plain data that plotly.js and {@link figureSvg} draw
 */
export function textureTriangleFigure(
  layers: GroundLayer[],
  units: UnitSystem,
  size: FigureSize = 'wide',
): Figure {
  const samples = samplesOf(layers, units);
  const key = samples.map((sample, i) =>
    folded(plotText(`${i + 1} ${soilWords(sample)}`), size === 'wide' ? 90 : 44),
  );
  const rows = key.reduce((n, text) => n + text.split('<br>').length, 0);
  const rowHeight = LABEL_SIZE[size] * 1.3;
  const side = size === 'wide' ? 110 : 34;
  const margin = { l: side, r: side, t: 14, b: 44 + rows * rowHeight };
  const width = DESIGN_WIDTH[size] - 2 * side;
  const height = Math.round(width * HEIGHT + margin.t + margin.b);
  const font = LABEL_SIZE[size] - (size === 'wide' ? 1 : 2.5);
  const data = [outline(), ...samples.filter((s) => s.byClass).map(spreadOf), ...samples.map((s) => mark(s))];
  const annotations = [
    ...USDA_CLASSES.map((name) => {
      const [x, y] = at(CLASS_LABELS[name][0] / 100, CLASS_LABELS[name][1] / 100);
      const text = folded(name, size === 'wide' && name !== 'loamy sand' ? 11 : 7);
      return label(text, x, y, {
        xanchor: 'center',
        align: 'center',
        font: { color: FAINT_INK, size: font },
      });
    }),
    ...ticks(font),
    ...numbersOf(samples, width, font),
    label(key.join('<br>'), 0, 0, {
      xref: 'paper',
      yref: 'paper',
      xshift: 12 - side,
      yshift: -40,
      yanchor: 'top',
      font: { color: INK },
    }),
  ];
  const axis = { visible: false, fixedrange: true };
  const layout = {
    ...baseLayout(size, height, margin),
    xaxis: { ...axis, range: [0, 1] },
    yaxis: { ...axis, range: [0, HEIGHT] },
    annotations,
  };
  return { data, layout, alt: visible(textureTriangleAlt(samples)) };
}

/** A number beside each mark, where neither another mark nor another number stands. */
function numbersOf(samples: Sample[], width: number, size: number): object[] {
  const marks = samples.map(({ sand, clay }) => at(sand, clay).map((v) => v * width));
  const taken = [...marks];
  return samples.map((_, i) => {
    const [x, y] = marks[i];
    const places = [
      [11, 0],
      [-11, 0],
      [0, 13],
      [0, -13],
      [11, 13],
      [-11, -13],
    ].map(([dx, dy]) => [x + dx, y + dy]);
    const free =
      places.find(([u, v]) => taken.every(([p, q]) => Math.hypot(u - p, v - q) > 9.5)) ?? places[0];
    taken.push(free);
    return label(`${i + 1}`, free[0] / width, free[1] / width, {
      xanchor: 'center',
      font: { color: INK, size: size + 1 },
    });
  });
}

function samplesOf(layers: GroundLayer[], units: UnitSystem): Sample[] {
  const found = new Map<string, Sample>();
  for (const { row, texture } of layers) {
    const measured = row.sand !== undefined && row.clay !== undefined;
    const typical = TYPICAL_COMPOSITION[texture as UsdaClass];
    if (!measured && typical === undefined) continue;
    const [sand, clay] = measured ? [row.sand!, row.clay!] : [typical.sand, typical.clay];
    const key = `${measured}/${sand}/${clay}`;
    const name = `${row.pit} from ${formatQuantity(row.top, 'length', units)}`;
    const sample = found.get(key);
    if (sample) sample.names.push(name);
    else found.set(key, { names: [name], sand, clay, texture: textureClass(sand, clay), byClass: !measured });
  }
  return [...found.values()];
}

/** The triangle and all limits in one line with gaps. */
function outline(): object {
  const edges = [
    [1, 0, 0, 0],
    [0, 0, 0, 1],
    [0, 1, 1, 0],
    ...TEXTURE_LIMITS.map((l) => l.map((v) => v / 100)),
  ];
  const ends = edges.flatMap(([s, c, u, v]) => [at(s, c), at(u, v), null]);
  return {
    type: 'scatter',
    mode: 'lines',
    name: 'limits of the classes',
    x: ends.map((p) => p?.[0] ?? null),
    y: ends.map((p) => p?.[1] ?? null),
    line: { color: HAIRLINE, width: 1.25 },
    hoverinfo: 'skip',
  };
}

/** One standard deviation within the class to each side. */
function spreadOf({ sand, clay, texture }: Sample): object {
  const { sandSpread, claySpread } = TYPICAL_COMPOSITION[texture];
  const within = (s: number, c: number) => at(Math.max(s, 0), Math.min(Math.max(c, 0), 1 - Math.max(s, 0)));
  const corners = [
    within(sand - sandSpread, clay),
    within(sand, clay + claySpread),
    within(sand + sandSpread, clay),
    within(sand, clay - claySpread),
  ];
  return {
    type: 'scatter',
    mode: 'lines',
    name: `spread of ${texture}`,
    x: corners.map(([x]) => x),
    y: corners.map(([, y]) => y),
    fill: 'toself',
    fillcolor: `${soilColour(texture)}99`,
    line: { width: 0 },
    hoverinfo: 'skip',
  };
}

function mark(sample: Sample): object {
  const [x, y] = at(sample.sand, sample.clay);
  return {
    type: 'scatter',
    mode: 'markers',
    name: plotText(listText(sample.names)),
    x: [x],
    y: [y],
    marker: sample.byClass
      ? { symbol: 'circle', size: 9, color: PAPER, line: { color: WATER, width: 2 } }
      : { symbol: 'circle', size: 9, color: ALARM, line: { color: PAPER, width: 1 } },
    hoverinfo: 'text',
    text: [plotText(soilWords(sample))],
  };
}

/** Numbers along the three edges, each beside the edge it is read from, and what they are of. */
function ticks(size: number): object[] {
  const font = { color: FAINT_INK, size };
  const numbers = [20, 40, 60, 80].flatMap((p) => {
    const v = p / 100;
    const [cx, cy] = at(1 - v, v);
    const [sx, sy] = at(0, 1 - v);
    const [bx, by] = at(v, 0);
    return [
      label(`${p}`, cx, cy, { xanchor: 'right', xshift: -5, font }),
      label(`${p}`, sx, sy, { xshift: 5, font }),
      label(`${p}`, bx, by, { xanchor: 'center', yanchor: 'top', yshift: -4, font }),
    ];
  });
  const title = { xanchor: 'center', font: { color: INK, size: size + 1 } };
  return [
    ...numbers,
    label('clay %', ...at(0.5, 0.5), { ...title, textangle: -60, xshift: -26, yshift: 14 }),
    label('silt %', ...at(0, 0.5), { ...title, textangle: 60, xshift: 26, yshift: 14 }),
    label('sand %', ...at(0.5, 0), { ...title, yanchor: 'top', yshift: -20 }),
  ];
}
