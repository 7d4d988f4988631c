import { netPressureWords, PRESSURE_KEY, pressureAlt } from '../text/pressureWords.js';
import type { UnitSystem } from '../units/index.js';
import {
  type LinerProfile,
  type LinerWater,
  liftedBands,
  type PressurePoint,
  pressureAlong,
  profileFloor,
  profileRim,
} from '../uplift/index.js';
import type { Figure } from './figure.js';
import { baseLayout, DESIGN_WIDTH, type FigureSize, LABEL_SIZE, label, short } from './layout.js';
import { ALARM, FAINT_INK, LINER, POND_WATER, WATER } from './palette.js';

/** Share of the depth that the largest pressure is drawn as. */
const DRAWN = 0.4;
const INSIDE = 'rgba(31, 95, 139, 0.35)';
const OUTSIDE = 'rgba(163, 50, 28, 0.35)';

/**
 * The pond across its length, to scale, with the pressure of the pond's water drawn inwards from the liner and that of
 * the water outside drawn outwards, square to it, and what is left at the floor.
 * @param profile the liner, from {@link linerProfile}
 * @param water levels on both sides, m above the datum of the profile
 * @param state how the pond stands, in a few words
 * @param units - how numbers are written
 * @param size - wide, or narrow for a phone
 * @returns plain data that plotly.js and {@link figureSvg} draw
 * @throws PondGeometryError when the pond level is below the floor or above the rim, or the head is no number
 */
export function pressureFigure(
  profile: LinerProfile,
  water: LinerWater,
  state: string,
  units: UnitSystem,
  size: FigureSize = 'wide',
): Figure {
  const { length } = profile;
  const [floor, rim] = [profileFloor(profile), profileRim(profile)];
  const points = pressureAlong(profile, water);
  const edge = points.at(-1)!;
  const largest = Math.max(...points.flatMap(({ inside, outside }) => [inside, outside]), 1);
  const scale = (DRAWN * (rim - floor)) / largest;
  const head = water.above ? Math.max(water.outside, water.above.head) : water.outside;
  const apron = DRAWN * (rim - floor) + 0.3;
  const bottom = floor - apron;
  const top = Math.max(rim, head) + 0.12;

  const side = profile.points.map(({ inset, level }): [number, number] => [inset, level]);
  const liner = [...side, ...mirrored(side, length).reverse()];
  const wet = points
    .filter(({ level }) => level <= water.pond)
    .map(({ inset, level }): [number, number] => [inset, level]);
  const floorBand = (way: -1 | 1, pressure: number): [number, number][] => [
    [edge.inset, floor],
    [edge.inset, floor + way * scale * pressure],
    [length - edge.inset, floor + way * scale * pressure],
    [length - edge.inset, floor],
  ];
  const data = [
    area('pond', [...wet, ...mirrored(wet, length).reverse()], POND_WATER),
    ...bands(points, 'outside', scale).flatMap((band) => both('pressure outside', band, length, OUTSIDE)),
    area('pressure outside', floorBand(-1, edge.outside), OUTSIDE),
    ...bands(points, 'inside', scale).flatMap((band) => both('pressure inside', band, length, INSIDE)),
    area('pressure inside', floorBand(1, edge.inside), INSIDE),
    ...[
      [-apron, edgeAt(points, head)],
      [length - edgeAt(points, head), length + apron],
    ].map((x) => line('water outside', x, [head, head], ALARM, '7px,4px')),
    line(
      'liner',
      liner.map(([x]) => x),
      liner.map(([, z]) => z),
      LINER,
    ),
  ];
  const net = edge.net;
  const height = ((top - bottom) / (length + 2 * apron)) * (DESIGN_WIDTH[size] - 16);
  const foot = size === 'wide' ? 22 : 36;
  const middle = length / 2;
  return {
    data,
    layout: {
      ...baseLayout(size, Math.round(height + 30 + foot), { l: 8, r: 8, t: 30, b: foot }),
      xaxis: { visible: false, range: [short(-apron), short(length + apron)], fixedrange: true },
      yaxis: { visible: false, range: [short(bottom), short(top)], scaleanchor: 'x', fixedrange: true },
      annotations: [
        label(state, 0, 1, { xref: 'paper', yref: 'paper', yanchor: 'bottom', yshift: 6 }),
        label(
          netPressureWords(net, units),
          middle,
          net < 0 ? floor + 0.3 * (rim - floor) : floor - DRAWN * (rim - floor) - 0.12,
          {
            xanchor: 'center',
            bgcolor: 'rgba(255,255,255,0.75)',
            font: { color: net < 0 ? ALARM : WATER, size: LABEL_SIZE[size] },
          },
        ),
        label('water outside', short(-apron) + 0.01, head, {
          yanchor: 'bottom',
          font: { color: ALARM, size: LABEL_SIZE[size] - 1 },
        }),
        ...(water.pond > floor
          ? [
              label('pond', middle, water.pond, {
                xanchor: 'center',
                yanchor: 'bottom',
                font: { color: WATER, size: LABEL_SIZE[size] - 1 },
              }),
            ]
          : []),
        label(PRESSURE_KEY.join(size === 'wide' ? ' ' : '<br>'), 1, 0, {
          xref: 'paper',
          yref: 'paper',
          xanchor: 'right',
          align: 'right',
          yanchor: 'top',
          yshift: -4,
          font: { color: FAINT_INK, size: LABEL_SIZE[size] - 1 },
        }),
      ],
    },
    alt: pressureAlt(
      state,
      {
        rim,
        floor,
        pond: water.pond,
        outside: water.outside,
        onFloor: edge,
        lifted: liftedBands(profile, water),
      },
      units,
    ),
  };
}

function mirrored(points: [number, number][], length: number): [number, number][] {
  return points.map(([x, z]) => [length - x, z]);
}

/** How far in the liner is at a level; at the rim above it. */
function edgeAt(points: PressurePoint[], level: number): number {
  const at = points.findIndex((point) => point.level <= level);
  if (at < 0) return 0;
  const [a, b] = [points[Math.max(at - 1, 0)]!, points[at]!];
  return a.level === b.level
    ? b.inset
    : a.inset + ((a.level - level) / (a.level - b.level)) * (b.inset - a.inset);
}

/** The pressure on each piece as a band square to it, left side. */
function bands(points: PressurePoint[], which: 'inside' | 'outside', scale: number): [number, number][][] {
  const way = which === 'outside' ? 1 : -1;
  const found: [number, number][][] = [];
  for (let i = 0; i < points.length; i += 2) {
    const [a, b] = [points[i]!, points[i + 1]!];
    const [run, fall] = [b.inset - a.inset, a.level - b.level];
    const long = Math.hypot(run, fall);
    if (long === 0 || a[which] + b[which] === 0) continue;
    const out = ({ inset, level, ...p }: PressurePoint): [number, number] => [
      inset - (way * scale * p[which] * fall) / long,
      level - (way * scale * p[which] * run) / long,
    ];
    found.push([[a.inset, a.level], out(a), out(b), [b.inset, b.level]]);
  }
  return found;
}

function both(name: string, band: [number, number][], length: number, fill: string): object[] {
  return [area(name, band, fill), area(name, mirrored(band, length), fill)];
}

function area(name: string, points: [number, number][], fillcolor: string): object {
  const shown = points.length > 0 ? [...points, points[0]!] : [];
  const line = { width: 0.75, color: fillcolor };
  return {
    type: 'scatter',
    mode: 'lines',
    fill: 'toself',
    name,
    x: shown.map(([x]) => short(x)),
    y: shown.map(([, z]) => short(z)),
    fillcolor,
    line,
    hoverinfo: 'skip',
  };
}

function line(name: string, x: number[], y: number[], color: string, dash = 'solid'): object {
  return {
    type: 'scatter',
    mode: 'lines',
    name,
    x: x.map(short),
    y: y.map(short),
    line: { color, width: dash === 'solid' ? 2.5 : 1.5, dash },
    hoverinfo: 'skip',
  };
}
