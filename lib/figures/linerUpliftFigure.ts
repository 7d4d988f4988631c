import type { LinerPoint } from '../seepage/index.js';
import { linerAxes, linerHoldWords, linerLiftWords, linerUpliftAlt } from '../text/linerUpliftWords.js';
import type { UnitSystem } from '../units/index.js';
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
import { ALARM, FAINT_INK, HAIRLINE, INK, WATER } from './palette.js';

/** Colour and dash of the cases, in their order. */
const STYLES = [
  [INK, 'solid'],
  [WATER, '7px,4px'],
  [ALARM, '2px,3px'],
  [FAINT_INK, '9px,3px,2px,3px'],
] as const;
const LIFTS = 'rgba(163, 50, 28, 0.14)';
const HEIGHT = 320;

/** A way of building it, and what the liner feels there. */
export interface LinerCase {
  name: string;
  points: LinerPoint[];
}

/** What holds a liner down. */
export interface LinerHold {
  /** level of the pond's water, m above the datum; at or below the floor: empty */
  pond: number;
  /** head that ballast on the floor holds, m */
  ballast: number;
}

/**
 * Head that lifts the liner over what pond and ballast hold, along it from the left rim to the right; in the shaded part it
 * lifts, below it is held.
 * @param cases - at most four, named along their lines; of one liner
 * @param hold - as in the sections of the cases
 * @param units - how numbers are written
 * @param size - wide, or narrow for a phone
 * @returns plain data that plotly.js and {@link figureSvg} draw
 */
export function linerUpliftFigure(
  cases: LinerCase[],
  hold: LinerHold,
  units: UnitSystem,
  size: FigureSize = 'wide',
): Figure {
  const { per_m, unit } = lengthScale(units);
  const first = cases[0].points;
  const end = Math.max(...first.map((p) => p.along));
  const floor = Math.min(...first.map((p) => p.z));
  const onFloor = first.filter((p) => isFloor(p, floor));
  const toes = [onFloor[0].along, onFloor[onFloor.length - 1].along];
  const lines = cases.map(({ name, points }) => ({
    name,
    points: points.map((p) => ({ at: p.along, net: netLift(p, floor, hold) })),
  }));
  const all = lines.flatMap((c) => c.points.map((p) => p.net));
  const [low, high] = [Math.min(...all, -0.05), Math.max(...all, 0.05)];
  const room = 0.14 * (high - low);
  const [bottom, top] = [low - room, high + 1.5 * room];
  const margin = { l: size === 'wide' ? 52 : 44, r: 12, t: size === 'wide' ? 46 : 60, b: 44 };
  const width = DESIGN_WIDTH[size] - margin.l - margin.r;
  const tall = HEIGHT - margin.t - margin.b;
  const free = new FreeRoom({ left: 0, right: width, top: 0, bottom: tall });
  const pixel = (at: number, net: number) => ({
    x: (at / end) * width,
    y: ((top - net) / (top - bottom)) * tall,
  });
  const text = { size: LABEL_SIZE[size] };
  const placed = (words: string, at: { at: number; net: number; up: number }[], color: string) => {
    const index = free.take(
      words,
      text.size,
      at.map((p) => ({ ...pixel(p.at, p.net), y: pixel(p.at, p.net).y - p.up })),
    );
    if (index === undefined) return [];
    const { at: x, net, up } = at[index];
    return [
      label(words, short(x * per_m), short(net * per_m), {
        xanchor: 'center',
        yshift: up,
        bgcolor: 'rgba(255,255,255,0.75)',
        font: { color, ...text },
      }),
    ];
  };
  const middle = (toes[0] + toes[1]) / 2;
  const upright = (at: number) =>
    line(
      { x0: short(at * per_m), x1: short(at * per_m), y0: short(bottom * per_m), y1: short(top * per_m) },
      HAIRLINE,
      '2px,3px',
    );
  const axes = linerAxes(unit);
  const held = linerHoldWords(hold.pond > floor + 1e-6 ? hold.pond : null, hold.ballast, units);
  return {
    data: lines.map(({ name, points }, i) => ({
      type: 'scatter',
      mode: 'lines',
      name,
      x: points.map((p) => short(p.at * per_m)),
      y: points.map((p) => short(p.net * per_m)),
      line: { color: STYLES[i][0], width: 2, dash: STYLES[i][1] },
      hoverinfo: 'name+x+y',
    })),
    layout: {
      ...baseLayout(size, HEIGHT, margin),
      xaxis: {
        ...thinAxis(size, axes.along),
        range: [0, short(end * per_m)],
      },
      yaxis: { ...thinAxis(size), range: [short(bottom * per_m), short(top * per_m)] },
      shapes: [
        {
          type: 'rect',
          x0: 0,
          x1: short(end * per_m),
          y0: 0,
          y1: short(top * per_m),
          fillcolor: LIFTS,
          line: { width: 0 },
          layer: 'below',
        },
        line({ x0: 0, x1: short(end * per_m), y0: 0, y1: 0 }, FAINT_INK, 'solid'),
        ...toes.map(upright),
      ],
      annotations: [
        label(`${axes.over}${size === 'wide' ? '; ' : '<br>'}${held}`, 0, 1, {
          xref: 'paper',
          yref: 'paper',
          yanchor: 'bottom',
          yshift: 6,
          font: { color: FAINT_INK, ...text },
        }),
        ...placed('floor', [{ at: middle, net: bottom, up: 9 }], FAINT_INK),
        ...placed('side', [{ at: toes[0] / 2, net: bottom, up: 9 }], FAINT_INK),
        ...placed('lifts', [{ at: middle, net: top, up: -9 }], ALARM),
        ...lines.flatMap(({ name, points }, i) =>
          placed(
            name,
            clearOf(
              points,
              lines.filter((_, o) => o !== i).map((o) => o.points),
            ),
            STYLES[i][0],
          ),
        ),
      ],
    },
    alt: linerUpliftAlt(
      held,
      cases.map(({ name, points }) => ({ name, told: liftWords(points, hold, units) })),
    ),
  };
}

/** Net head that lifts at a point of the liner, what ballast on the floor holds taken off, m. */
function netLift(point: LinerPoint, floor: number, { ballast }: LinerHold): number {
  return point.uplift - (isFloor(point, floor) ? ballast : 0);
}

/**
 * Where a liner is lifted, and by how much, in words.
 * @param points - along the liner, from {@link linerUplift}
 * @param hold - what holds it
 * @param units - how numbers are written
 * @returns a sentence
 */
export function liftWords(points: LinerPoint[], hold: LinerHold, units: UnitSystem): string {
  const floor = Math.min(...points.map((p) => p.z));
  const nets = points.map((p) => netLift(p, floor, hold));
  const worst = nets.indexOf(Math.max(...nets));
  const onFloor = points.flatMap((p, i) => (isFloor(p, floor) ? [nets[i]] : []));
  const share = onFloor.filter((net) => net > 0).length / onFloor.length;
  return linerLiftWords({ net: nets[worst], onFloor: isFloor(points[worst], floor), share }, units);
}

function isFloor({ z }: LinerPoint, floor: number): boolean {
  return z < floor + 1e-6;
}

interface NetPoint {
  at: number;
  net: number;
}

/** Shares of the liner at which a name may stand, the middle first. */
const STANDS = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9];

/** Places for a line's name, those where the other lines are farthest first, on the side away from the nearest. */
function clearOf(points: NetPoint[], others: NetPoint[][]): { at: number; net: number; up: number }[] {
  const gapAt = (share: number) => {
    const p = points[Math.round(share * (points.length - 1))];
    const gaps = others.map((line) => {
      const near = line.reduce((a, b) => (Math.abs(b.at - p.at) < Math.abs(a.at - p.at) ? b : a));
      return near.net - p.net;
    });
    const nearest = gaps.reduce((a, b) => (Math.abs(b) < Math.abs(a) ? b : a), Number.NEGATIVE_INFINITY);
    return { p, gap: Math.abs(nearest), up: nearest > 0 ? -10 : 10 };
  };
  return STANDS.map(gapAt)
    .sort((a, b) => b.gap - a.gap)
    .flatMap(({ p, up }) => [
      { ...p, up },
      { ...p, up: -up },
    ]);
}

function line(at: object, color: string, dash: string) {
  return { type: 'line', ...at, line: { color, width: 1, dash } };
}
