import {
  fluxOf,
  headAt,
  type PondSection,
  phreaticLine,
  type SectionPoint,
  type SectionState,
} from '../seepage/index.js';
import { sectionHeadsAlt, sectionHeadsKey } from '../text/sectionHeadsWords.js';
import { InputError, type UnitSystem } from '../units/index.js';
import { contourLines } from './contourLines.js';
import type { Figure } from './figure.js';
import { FreeRoom } from './freeRoom.js';
import {
  baseLayout,
  DESIGN_WIDTH,
  type FigureSize,
  LABEL_SIZE,
  label,
  lengthScale,
  short,
  thinAxis,
} from './layout.js';
import { ALARM, FAINT_INK, HAIRLINE, INK, LINER, PAPER, RING, WATER } from './palette.js';
import { flowArrows, gapped, laidLines, layerLines, spaced, underLiner } from './sectionHeadsParts.js';

/** Ground shown beside and below the pond, and under the water table where that lies deeper, m. */
const BESIDE = 1.5;
const BELOW = 1.2;
const UNDER_TABLE = 0.5;
/** Points at which the heads are read, across and upwards; arrows across. */
const MESH = { x: 151, z: 91 };
const ARROWS: Record<FigureSize, number> = { wide: 15, narrow: 9 };
/** Lines of equal head, about. */
const LINES = 10;
const MARGIN = { l: 46, r: 10, b: 40 };

/**
 * Lines of equal head in the ground around the pond, arrows the way the water moves, the water table, the liner and the
 * pipes; to scale.
 * @param pond - its section
 * @param state - heads, with a free surface or full
 * @param units - how numbers are written
 * @param size - wide, or narrow for a phone
 * @returns plain data that plotly.js and {@link figureSvg} draw
 * @throws InputError for a section without water
 */
export function sectionHeadsFigure(
  pond: PondSection,
  state: SectionState,
  units: UnitSystem,
  size: FigureSize = 'wide',
): Figure {
  const { section, ground } = pond;
  const { per_m, unit } = lengthScale(units);
  const { outline, pipes, surface } = ground;
  const floor = Math.min(...outline.map((p) => p.z));
  const x: [number, number] = [
    Math.max(outline[0].x - BESIDE, surface[0].x),
    Math.min(outline[outline.length - 1].x + BESIDE, surface[surface.length - 1].x),
  ];
  const shown = (p: SectionPoint) => p.x >= x[0] && p.x <= x[1];
  const top = Math.max(...outline.map((p) => p.z), ...surface.filter(shown).map((p) => p.z)) + 0.2;
  const water = phreaticLine(section, state.head).filter(shown);
  const deepest = Math.min(floor - BELOW, ...water.map((p) => p.z - UNDER_TABLE));
  const z: [number, number] = [Math.max(deepest, ground.base), top];
  const margin = { ...MARGIN, t: size === 'wide' ? 30 : 44 };
  const perMetre = (DESIGN_WIDTH[size] - margin.l - margin.r) / (x[1] - x[0]);
  const height = Math.round((z[1] - z[0]) * perMetre + margin.t + margin.b);
  const pixel = (p: SectionPoint) => ({ x: (p.x - x[0]) * perMetre, y: (z[1] - p.z) * perMetre });
  const room = new FreeRoom({
    left: 0,
    right: (x[1] - x[0]) * perMetre,
    top: 0,
    bottom: (z[1] - z[0]) * perMetre,
  });
  const text = { size: LABEL_SIZE[size] };
  /** A label centred on the first of the points at which it has room. */
  const placed = (words: string, points: SectionPoint[], color: string, up = 0) => {
    const at = room.take(
      words,
      text.size,
      points.map((p) => ({ x: pixel(p).x, y: pixel(p).y - up })),
    );
    if (at === undefined) return [];
    return [
      label(words, short(points[at].x * per_m), short(points[at].z * per_m), {
        xanchor: 'center',
        yshift: up,
        bgcolor: 'rgba(255,255,255,0.75)',
        font: { color, ...text },
      }),
    ];
  };

  const across = spaced(x, MESH.x);
  const up = spaced(z, MESH.z);
  const heads = up.map((b) => across.map((a) => readHead(pond, state, { x: a, z: b })));
  const known = heads.flat().filter((h): h is number => h !== null);
  if (known.length === 0)
    throw new InputError(
      'invalid-input',
      'no water in the section: it is dry to its base, so there is no head to draw',
    );
  const [low, high] = [Math.min(...known), Math.max(...known)];
  const step = roundStep(((high - low) * per_m) / LINES) / per_m;
  const levels = Array.from(
    { length: Math.floor(high / step) - Math.ceil(low / step) + 1 },
    (_, n) => (Math.ceil(low / step) + n) * step,
  );
  const contours = levels.map((level) => ({ level, lines: contourLines(across, up, heads, level) }));
  const table = water.filter((p) => !underLiner(ground, p));
  const arrows = flowArrows({ x, z }, ARROWS[size], fluxOf(section, state.head), 13 / perMetre);
  const line = (
    name: string,
    points: (SectionPoint | null)[],
    color: string,
    width: number,
    dash = 'solid',
  ) => ({
    type: 'scatter',
    mode: 'lines',
    name,
    x: points.map((p) => short((p?.x ?? 0) * per_m)),
    y: points.map((p) => (p === null ? null : short(p.z * per_m))),
    line: { color, width, dash },
    hoverinfo: 'name',
  });
  const wettest = table.reduce((a, b) => (b.z > a.z ? b : a), table[0]);
  const decimals = Math.max(0, -Math.floor(Math.log10(step * per_m) + 1e-9));
  const written = (level: number) => (level * per_m).toFixed(decimals).replace('-', '−');
  return {
    data: [
      ...layerLines(ground, x).map((points) => line('layer', points, HAIRLINE, 1)),
      ...laidLines(ground).map((points) => line('bed and ring', points, RING, 1.5)),
      ...contours.flatMap(({ level, lines }) =>
        lines.map((spots) =>
          line(
            `head ${written(level)} ${unit}`,
            spots.map(([a, b]) => ({ x: a, z: b })),
            WATER,
            0.75,
          ),
        ),
      ),
      line('ground', surface, FAINT_INK, 1.5),
      ...(table.length > 1 ? [line('water table', gapped(table), WATER, 2.5, '7px,4px')] : []),
      line('liner', outline, LINER, 3),
      {
        type: 'scatter',
        mode: 'markers',
        name: 'pipe',
        x: pipes.map((p) => short(p.x * per_m)),
        y: pipes.map((p) => short(p.z * per_m)),
        marker: { symbol: 'circle', size: 9, color: PAPER, line: { color: INK, width: 2 } },
        hoverinfo: 'name',
      },
    ],
    layout: {
      ...baseLayout(size, height, margin),
      xaxis: { ...thinAxis(size, unit), range: x.map((v) => short(v * per_m)) },
      yaxis: { ...thinAxis(size), range: z.map((v) => short(v * per_m)), scaleanchor: 'x' },
      annotations: [
        label(sectionHeadsKey(unit).join(size === 'wide' ? ' ' : '<br>'), 0, 1, {
          xref: 'paper',
          yref: 'paper',
          yanchor: 'bottom',
          yshift: 6,
          font: { color: FAINT_INK, ...text },
        }),
        ...arrows.map(({ from, to }) => ({
          x: short(to.x * per_m),
          y: short(to.z * per_m),
          ax: short(from.x * per_m),
          ay: short(from.z * per_m),
          xref: 'x',
          yref: 'y',
          axref: 'x',
          ayref: 'y',
          text: '',
          showarrow: true,
          arrowhead: 2,
          arrowsize: 0.9,
          arrowwidth: 1,
          arrowcolor: FAINT_INK,
        })),
        ...(pipes.length > 0
          ? placed(
              pipes.length === 1 ? 'pipe' : 'pipes',
              pipes.map((p) => ({ x: p.x, z: p.z })),
              ALARM,
              -16,
            )
          : []),
        ...placed('water table', [...table].reverse(), WATER, 10),
        ...placed(
          'liner',
          outline.filter((p) => p.z === floor).map((p) => ({ x: 0.6 * p.x, z: floor })),
          INK,
          10,
        ),
        ...contours.flatMap(({ level, lines: [longest = []] }) =>
          placed(written(level), along(longest), WATER),
        ),
      ],
    },
    alt: sectionHeadsAlt(
      { low, high, table: wettest?.z, pipes: pipes.map((_, p) => state.flows.out[`pipe ${p + 1}`] ?? 0) },
      units,
    ),
  };
}

function readHead({ section }: PondSection, { head }: SectionState, { x, z }: SectionPoint): number | null {
  try {
    const value = headAt(section, head, x, z);
    // Above the table the lines of equal head say nothing to a reader.
    return value < z ? null : value;
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

/** The next of 1, 2, 5, 10, 20, … */
function roundStep(rough: number): number {
  const decade = 10 ** Math.floor(Math.log10(Math.max(rough, 1e-6)));
  return [1, 2, 5].map((factor) => factor * decade).find((round) => round >= rough) ?? 10 * decade;
}

/** Points of a line from its middle outwards, at which a label may stand. */
function along(line: [number, number][]): SectionPoint[] {
  return [0.5, 0.35, 0.65, 0.2, 0.8].flatMap((share) => {
    const spot = line[Math.floor(share * line.length)];
    return spot ? [{ x: spot[0], z: spot[1] }] : [];
  });
}
