/** What is drawn in the section. */
import type { Report } from '../contract/index.js';
import { short } from './layout.js';
import { CONCRETE, FAINT_INK, LINER, POND_WATER, RING, STONE, soilColour, WATER } from './palette.js';
import { BANK, type DrainWay } from './sectionDrain.js';
import { banksOf, bedOf, type Point, ringOf, type Section } from './sectionGeometry.js';
import { slabShape } from './slabShape.js';
import { plotText } from './visible.js';

/** How far ground is drawn beyond both rims, m, and beyond the view, so that a wide window shows no edge. */
export const APRON = 1.1;
const FAR = 60;

/** Traces from the back to the front; `wet` and `dry` are levels of the water table. */
export function sectionTraces(
  section: Section,
  report: Report,
  {
    log,
    drain,
    wet,
    dry,
  }: { log: Report['result']['ground']['layers']; drain: DrainWay | undefined; wet: number; dry: number },
): object[] {
  const bed = bedOf(section, report);
  const { raise, floor, length, left } = section;
  const slab = report.slab && slabShape(report.slab, { rim: raise, floor, wide: length, inset: left });
  return [
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
    ...(slab ? [area('concrete slab', slab, CONCRETE, FAINT_INK)] : []),
    ...ringOf(section, report).map((ring) => area('filled back', ring, RING)),
    ...(bed ? [area(section.drained ? 'drain bed' : 'bedding', bed, STONE, FAINT_INK)] : []),
    path('ground', groundLine(section), FAINT_INK, 1.25),
    ...tableLines(section, report, wet, 'wettest', 'solid', 2),
    ...tableLines(section, report, dry, 'driest', '7px,4px', 1.5),
    path('full', across(section, section.full), WATER, 1.5),
    path('usual lowest', across(section, section.lowest), WATER, 1, '3px,3px'),
    path('liner', section.outline(section.crest), LINER, 2.5),
    ...(Math.abs(section.depth - report.pond.depth_m) > 0.005 || section.raise > 0
      ? [path('as wished', wished(report, section), FAINT_INK, 1.25, '4px,3px')]
      : []),
    ...(drain?.lines ?? []),
  ];
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
