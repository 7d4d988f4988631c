import type { Report } from '../risk/result.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import type { Figure } from './figure.js';
import { baseLayout, DESIGN_WIDTH, type FigureSize, LABEL_SIZE, label, roomFor, short } from './layout.js';
import { FAINT_INK, LINER, POND_WATER, RING, STONE, soilColour, WATER } from './palette.js';
import { BANK, drainWay } from './sectionDrain.js';
import { banksOf, bedOf, logShown, type Point, ringOf, type Section, sectionOf } from './sectionGeometry.js';
import { LEADER, levelLabels, levelNames, liftArrows, namesInside } from './sectionLabels.js';
import { plotText, visible } from './visible.js';
import { GOVERNS_WORDS, monthName } from './words.js';

/** How far ground is drawn beyond both rims, m, and beyond the view, so that a wide window shows no edge. */
const APRON = 1.1;
const FAR = 60;

/**
 * The pond cut along its length, uphill on the left: layers, high and low water table, ring, pond levels, what the
 * water would do to an emptied liner, and the drain with its outlet where one is recommended (distances shortened).
 * @param report what was computed
 * @param units system of the labels
 * @param size changes the layout only; a narrow one draws heights larger than lengths and says so
 */
export function sectionFigure(report: Report, units: UnitSystem, size: FigureSize = 'wide'): Figure {
  const section = sectionOf(report);
  const log = logShown(report);
  const drain = drainWay(section, report, units);
  const by = report.result.water.by_month;
  const wettest = by.reduce((a, b) => (b.table_depth_m.p10 < a.table_depth_m.p10 ? b : a));
  const driest = by.reduce((a, b) => (b.table_depth_m.p90 > a.table_depth_m.p90 ? b : a));
  const wet = -wettest.table_depth_m.p10;
  const dry = -driest.table_depth_m.p90;

  const shapeTop = Math.max(section.crest, section.ground(-APRON), section.high, section.full) + 0.12;
  const logFoot = log.length > 0 ? Math.min(-log.at(-1)!.bottom_m, section.floor - 0.2) : section.floor - 0.5;
  const bottom = Math.min(
    section.floor - section.bedThickness - 0.3,
    Math.max(dry - 0.15, logFoot),
    drain?.bottom ?? 0,
  );
  const x: [number, number] = [
    Math.min(section.left(section.crest), 0) - APRON,
    drain?.end ?? section.right(section.crest) + APRON + (report.pond.ring_width_m > 0 ? 0.5 : 0),
  ];
  const names = levelNames(section, report, units, size, {
    wet,
    dry,
    wetMonth: wettest.month,
    dryMonth: driest.month,
    bottom,
  });
  const margin = {
    l: roomFor(
      names.map(({ text }) => text),
      size,
      LEADER,
    ),
    r: 8,
    t: 30,
    b: size === 'wide' ? 26 : 66,
  };
  const width = DESIGN_WIDTH[size] - margin.l - margin.r;
  const least = size === 'wide' ? 215 : 190;
  const flat = ((shapeTop - bottom) / (x[1] - x[0])) * width;
  const stretch = [1, 1.5, 2, 3, 4, 5, 6, 8, 10].find((factor) => flat * factor >= least) ?? 10;
  const height = flat * stretch;
  const pixels = height / (shapeTop - bottom);

  const data: object[] = [
    area('not dug into', edgeBand(section, 0, FAR), '#eeebe4'),
    ...log.map((layer) =>
      area(
        `${plotText(layer.texture)}, ${plotText(layer.pit)}`,
        edgeBand(section, layer.top_m, layer.bottom_m),
        soilColour(layer.texture),
      ),
    ),
    ...(drain?.areas ?? []).map(({ name, points, colour }) => area(name, points, colour)),
    ...banksOf(section).map((bank) => area('bank', bank, '#b9a07c', FAINT_INK)),
    area(
      'pond',
      section.outline(Math.max(section.crest, section.ground(0), section.ground(section.length))),
      '#ffffff',
    ),
    area('water', section.outline(section.full), POND_WATER),
    ...ringOf(section, report).map((ring) => area('filled back', ring, RING)),
    ...(bedOf(section, report)
      ? [area(section.drained ? 'drain bed' : 'bedding', bedOf(section, report)!, STONE, FAINT_INK)]
      : []),
    path('ground', groundLine(section), FAINT_INK, 1.25),
    ...tableLines(section, report, wet, 'wettest', 'solid', 2),
    ...tableLines(section, report, dry, 'driest', '7px,4px', 1.5),
    path('full', across(section, section.full), WATER, 1.5),
    path('usual lowest', across(section, section.lowest), WATER, 1, '3px,3px'),
    path('liner', section.outline(section.crest), LINER, 2.5),
    ...(section.depth !== report.pond.depth_m || section.raise > 0
      ? [path('as wished', wished(report, section), FAINT_INK, 1.25, '4px,3px')]
      : []),
    ...(drain?.lines ?? []),
  ];
  const layout = {
    ...baseLayout(size, Math.round(height + margin.t + margin.b), margin),
    xaxis: { visible: false, range: x.map(short), fixedrange: true },
    yaxis: {
      visible: false,
      range: [short(bottom), short(shapeTop)],
      scaleanchor: 'x',
      scaleratio: stretch,
      fixedrange: true,
    },
    annotations: [
      ...levelLabels(names, size, { top: shapeTop, bottom, pixels }),
      ...liftArrows(section, report, units, size, width / (x[1] - x[0])),
      ...namesInside(section, log, report, { left: x[0], bottom, pixels, size }),
      ...(drain?.labels(size) ?? []),
      label(
        [
          stretch === 1 ? 'To scale' : `Heights drawn ${stretch} times the lengths`,
          size === 'narrow'
            ? 'red: push of the water outside on an<br>emptied liner, no drain, 1 year in 10'
            : '',
          drain?.areas.length ? 'distance beyond the break shortened' : '',
          log[0] ? `layers as in ${plotText(log[0].pit)}` : '',
        ]
          .filter(Boolean)
          .join(size === 'wide' ? '; ' : '<br>'),
        1,
        0,
        {
          xref: 'paper',
          yref: 'paper',
          xanchor: 'right',
          yanchor: 'top',
          align: 'right',
          yshift: -6,
          font: { color: FAINT_INK, size: LABEL_SIZE[size] - 1 },
        },
      ),
      ...(report.pond.high_rim_m > 0.02
        ? [
            label('uphill', 0, 1, {
              xref: 'paper',
              yref: 'paper',
              yanchor: 'bottom',
              yshift: 6,
              font: { color: FAINT_INK },
            }),
          ]
        : []),
    ],
  };
  return {
    data,
    layout,
    alt: altOf(
      section,
      report,
      units,
      { wet, dry, wetMonth: wettest.month, dryMonth: driest.month },
      drain?.words,
    ),
  };
}

function area(name: string, points: Point[], fillcolor: string, edge?: string): object {
  return {
    type: 'scatter',
    mode: 'lines',
    fill: 'toself',
    name,
    ...columns([...points, points[0]!]),
    fillcolor,
    line: { width: edge ? 0.75 : 0, color: edge ?? fillcolor },
    hoverinfo: 'skip',
  };
}

function path(name: string, points: Point[], color: string, width: number, dash = 'solid'): object {
  return {
    type: 'scatter',
    mode: 'lines',
    name,
    ...columns(points),
    line: { color, width, dash },
    hoverinfo: 'skip',
  };
}

function columns(points: Point[]) {
  return { x: points.map(([x]) => short(x)), y: points.map(([, z]) => short(z)) };
}

function groundLine({ ground, length }: Section): Point[] {
  return [-FAR, -APRON, 0, length, length + APRON, FAR].map((x) => [x, ground(x)]);
}

/** A layer between two depths, following the ground. */
function edgeBand(section: Section, top: number, bottom: number): Point[] {
  const line = groundLine(section);
  return [
    ...line.map(([x, z]): Point => [x, z - top]),
    ...line.reverse().map(([x, z]): Point => [x, z - bottom]),
  ];
}

function across({ left, right }: Section, z: number): Point[] {
  return [
    [left(z), z],
    [right(z), z],
  ];
}

/** The water table in the ground on both sides; it does not pass through the pond. */
function tableLines(
  section: Section,
  { pond }: Report,
  z: number,
  name: string,
  dash: string,
  width: number,
): object[] {
  const { floor, bedThickness, left, right } = section;
  const out = pond.ring_width_m;
  const end = section.drained ? right(section.crest) + BANK : FAR;
  if (z <= floor - bedThickness)
    return [
      path(
        name,
        [
          [-FAR, z],
          [end, z],
        ],
        WATER,
        width,
        dash,
      ),
    ];
  return [
    path(
      name,
      [
        [-FAR, z],
        [left(z) - out, z],
      ],
      WATER,
      width,
      dash,
    ),
    path(
      name,
      [
        [right(z) + out, z],
        [end, z],
      ],
      WATER,
      width,
      dash,
    ),
  ];
}

/** Outline of the pond as it was wished, where another is drawn. */
function wished({ pond }: Report, { length }: Section): Point[] {
  const slope = Math.min(pond.side_slope, (0.47 * length) / pond.depth_m);
  const inset = slope * pond.depth_m;
  return [
    [0, 0],
    [inset, -pond.depth_m],
    [length - inset, -pond.depth_m],
    [length, 0],
  ];
}

function altOf(
  section: Section,
  report: Report,
  units: UnitSystem,
  water: { wet: number; dry: number; wetMonth: number; dryMonth: number },
  drainWords: string | undefined,
): string {
  const level = (z: number) => formatQuantity(z, 'level', units);
  const { recommendation } = report.result;
  return visible(
    `Section through the pond, ${formatQuantity(section.length, 'length', units)} long, ` +
      `${section.advised ? 'as recommended' : 'as wished'}, ${formatQuantity(section.depth, 'length', units)} deep; levels from the lowest ground at the rim. ` +
      `Pond full ${level(section.full)}, usual lowest ${level(section.lowest)}, floor ${level(section.floor)}. ` +
      `The water table stands at ${level(water.wet)} in a wet ${monthName(water.wetMonth)} and at ${level(water.dry)} in a dry ${monthName(water.dryMonth)}; ` +
      `without a drain the highest water outside comes to ${level(section.high)} in one year of ten. ` +
      `What governs: ${GOVERNS_WORDS[recommendation.governs]}.${drainWords ? ` ${drainWords}` : ''}`,
  );
}
