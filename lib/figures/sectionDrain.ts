import type { Report } from '../contract/report.js';
import { toOutletWords, toSumpWords } from '../text/drawnDrain.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { type FigureSize, LABEL_SIZE, label, short } from './layout.js';
import { ALARM, FAINT_INK, INK, LINER, WATER } from './palette.js';
import type { Point, Section } from './sectionGeometry.js';
import { plotText } from './visible.js';

/** The way of the drain's water out of the section. */
export interface DrainWay {
  /** sketched ground and the air over it, drawn first */
  areas: { name: string; points: Point[]; colour: string }[];
  lines: object[];
  labels: (size: FigureSize) => object[];
  /** where the drawing ends to the right, and below, m */
  end: number;
  bottom: number;
  words: string;
}

/** Ground drawn between the pond and the break, m. */
export const BANK = 0.7;
const SHOWN = 2.2;

/** Pipe to the outlet, or sump beside the pond; undefined where no drain is recommended. */
export function drainWay(section: Section, report: Report, units: UnitSystem): DrainWay | undefined {
  const { drain, recommendation } = report.result;
  if (!drain) return undefined;
  const pipeStart: Point = [section.right(section.floor), section.floor - section.bedThickness * 0.6];
  const edge = section.right(section.crest) + BANK;
  const sump =
    drain.fall_available_m === null || report.outlet === null || recommendation.option === 'drain-to-sump';
  return sump ? toSump(section, report, pipeStart, edge) : toOutlet(section, report, units, pipeStart, edge);
}

function line(name: string, points: Point[], color: string, width: number, dash = 'solid'): object {
  return {
    type: 'scatter',
    mode: 'lines',
    name,
    x: points.map(([x]) => short(x)),
    y: points.map(([, z]) => short(z)),
    line: { color, width, dash },
    hoverinfo: 'skip',
  };
}

function toOutlet(section: Section, report: Report, units: UnitSystem, start: Point, edge: number): DrainWay {
  const { name, level_m, distance_m, flood_m } = report.outlet!;
  const end = edge + SHOWN;
  const mouth = end - 0.75;
  const ditchFoot = Math.min(level_m, flood_m ?? level_m) - 0.25;
  const lip = Math.max(level_m, flood_m ?? level_m) + 0.2;
  const rim = section.ground(edge);
  const drop = (part: number) => rim + (lip - rim) * part;
  const foot = Math.min(ditchFoot, start[1]) - 0.25;
  const surface: Point[] = [
    [edge, rim],
    [mouth - 0.12, drop(1)],
    [mouth + 0.08, ditchFoot],
    [end + 60, ditchFoot],
  ];
  const fall = formatQuantity(report.result.drain!.fall_available_m ?? 0, 'length', units);
  const distance = formatQuantity(distance_m, 'length', units);
  return {
    areas: [
      { name: 'air', points: [...surface, [end + 60, rim + 20], [edge, rim + 20]], colour: '#ffffff' },
      {
        name: 'ground towards the outlet, sketched',
        points: [...surface, [end + 60, foot - 60], [edge, foot - 60]],
        colour: '#eeebe4',
      },
    ],
    lines: [
      line('ground towards the outlet', surface, FAINT_INK, 1.25),
      line('break', breakMark(edge, Math.max(rim, lip) + 0.1, foot), FAINT_INK, 1),
      line('pipe', [start, [mouth + 0.02, level_m]], LINER, 3.5),
      line('pipe bore', [start, [mouth + 0.02, level_m]], '#ffffff', 1.25),
      ...(flood_m === null
        ? []
        : [
            line(
              'flood',
              [
                [mouth + (lip > flood_m ? 0 : 0.1), flood_m],
                [end + 60, flood_m],
              ],
              ALARM,
              1.25,
              '5px,3px',
            ),
          ]),
      line(
        'water in the ditch',
        [
          [mouth + 0.08, ditchFoot + 0.06],
          [end + 60, ditchFoot + 0.06],
        ],
        WATER,
        2,
      ),
    ],
    labels: (size) => {
      const font = { size: LABEL_SIZE[size] - 1, color: INK };
      const outlet = plotText(name);
      return [
        label(
          `${outlet}<br>${distance}${size === 'wide' ? ' away' : '<br>away'}`,
          short(end - 0.04),
          short(Math.max(lip, rim)),
          {
            xanchor: 'right',
            align: 'right',
            yanchor: 'bottom',
            yshift: 4,
            font,
          },
        ),
        label(
          size === 'wide' ? `pipe falls<br>${fall}` : `falls<br>${fall}`,
          short(edge + 0.12),
          short((2 * start[1] + 3 * level_m) / 5),
          { yanchor: 'top', yshift: size === 'wide' ? -8 : -16, font },
        ),
      ];
    },
    end,
    bottom: foot,
    words: toOutletWords({ name, distance, fall, flood_m }, units),
  };
}

function toSump(section: Section, report: Report, start: Point, edge: number): DrainWay {
  const foot = section.floor - section.bedThickness - 0.6;
  const place = edge - 0.2;
  const top = section.ground(place);
  const shaft: Point[] = [
    [place, top + 0.05],
    [place, foot],
    [place + 0.45, foot],
    [place + 0.45, top + 0.05],
  ];
  const end = place + 1;
  return {
    areas: [],
    lines: [
      line('pipe', [start, [place, start[1] - 0.03]], LINER, 3),
      line('sump', shaft, LINER, 2),
      line(
        'water in the sump',
        [
          [place, foot + 0.2],
          [place + 0.45, foot + 0.2],
        ],
        WATER,
        2,
      ),
    ],
    labels: (size) => [
      label(size === 'wide' ? 'sump and pump' : 'sump', short(place + 0.22), short(top + 0.05), {
        xanchor: 'center',
        yanchor: 'bottom',
        yshift: 3,
        font: { size: LABEL_SIZE[size] - 1, color: INK },
      }),
    ],
    end,
    bottom: foot - 0.15,
    words: toSumpWords(report.result.drain!.outlet),
  };
}

/** The zigzag that says: here a piece of the distance is left out. */
function breakMark(x: number, top: number, foot: number): Point[] {
  const step = (top - foot) / 8;
  return Array.from({ length: 9 }, (_, at): Point => [x + (at % 2 === 0 ? -0.04 : 0.04), top - at * step]);
}
