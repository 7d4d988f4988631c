import { SECONDS_PER_DAY } from '../formula/index.js';
import {
  liftTimeAlt,
  liftTimeKey,
  liftTimeText,
  overFloorText,
  sidesAllowText,
} from '../text/liftTimeWords.js';
import type { UnitSystem } from '../units/index.js';
import type { Figure } from './figure.js';
import { baseLayout, type FigureSize, folded, LABEL_SIZE, label, thinAxis } from './layout.js';
import { ALARM, FAINT_INK, WATER } from './palette.js';

/** A way in which water comes under an emptied liner, or a month: times for a few depths, and what the sides allow; s. */
export interface LiftTimeRow {
  name: string;
  /** in order of depth, the one that counts in the middle */
  times: { depth: number; seconds: number }[];
  /** absent: sides not looked at */
  sides?: number;
}

/** Ends of the time axis, s: a minute, and a hundred days beyond which nobody leaves a pond empty. */
const SHORTEST = 60;
const LONGEST = 8.64e6;
const TICKS: [seconds: number, text: string][] = [
  [60, '1 min'],
  [3600, '1 h'],
  [SECONDS_PER_DAY, '1 day'],
  [LONGEST, '100 days'],
];

const shown = (seconds: number) => Math.min(Math.max(seconds, SHORTEST), LONGEST);

/**
 * How long an emptied pond has: a row for each way of the water, a bar from the least to the most depth that may count
 * as lifted, a dot at the one that does, and a cross where the sides end it.
 * @param rows - at least one, one for each way of the water; times in s, all for the same depths
 * @param units - how numbers are written
 * @param size - wide, or narrow for a phone
 * @returns plain data that plotly.js draws; {@link figureSvg} knows no axis of names
 */
export function liftTimeFigure(rows: LiftTimeRow[], units: UnitSystem, size: FigureSize = 'wide'): Figure {
  const names = rows.map(({ name }) => (size === 'wide' ? name : folded(name, 16)));
  const y = [...names].reverse();
  const order = [...rows].reverse();
  const middle = (row: LiftTimeRow) => row.times[Math.floor(row.times.length / 2)]!;
  const widest = Math.max(...names.flatMap((name) => name.split('<br>').map((row) => row.length)));
  const [first] = rows as [LiftTimeRow, ...LiftTimeRow[]];
  const counts = middle(first).depth;
  const key = liftTimeKey([first.times[0]!.depth, counts, first.times.at(-1)!.depth], units).join(
    size === 'wide' ? '; ' : '<br>',
  );
  return {
    data: [
      ...order.map((row, at) => ({
        type: 'scatter',
        mode: 'lines',
        name: row.name,
        x: [shown(row.times[0]!.seconds), shown(row.times.at(-1)!.seconds)],
        y: [y[at], y[at]],
        line: { color: WATER, width: 7 },
        opacity: 0.45,
        hoverinfo: 'skip',
      })),
      {
        type: 'scatter',
        mode: 'markers',
        name: overFloorText(counts, units),
        x: order.map((row) => (middle(row).seconds > LONGEST ? null : shown(middle(row).seconds))),
        y,
        marker: { symbol: 'circle', size: 9, color: WATER },
        hoverinfo: 'text',
        text: order.map((row) => `${row.name}: ${liftTimeText(middle(row).seconds, units)}`),
      },
      {
        type: 'scatter',
        mode: 'markers',
        name: 'sides',
        x: order.map(({ sides }) => (sides === undefined || sides > LONGEST ? null : shown(sides))),
        y,
        marker: { symbol: 'x', size: 9, color: ALARM },
        hoverinfo: 'text',
        text: order.map(({ name, sides }) => sidesAllowText(name, sides ?? Number.POSITIVE_INFINITY, units)),
      },
    ],
    layout: {
      ...baseLayout(size, (size === 'wide' ? 76 : 88) + (size === 'wide' ? 30 : 44) * rows.length, {
        l: Math.ceil(widest * LABEL_SIZE[size] * 0.6) + 14,
        r: 22,
        t: 26,
        b: 40,
      }),
      xaxis: {
        ...thinAxis(size),
        type: 'log',
        range: [Math.log10(SHORTEST) - 0.1, Math.log10(LONGEST) + 0.1],
        tickvals: TICKS.map(([seconds]) => seconds),
        ticktext: TICKS.map(([, text]) => text),
        tickangle: 0,
        showgrid: true,
        gridcolor: '#eceae4',
      },
      yaxis: { ...thinAxis(size), ticks: '', range: [-0.6, rows.length - 0.4] },
      annotations: [
        label(key, 1, 1, {
          xref: 'paper',
          yref: 'paper',
          xanchor: 'right',
          align: 'right',
          yanchor: 'bottom',
          yshift: 5,
          font: { color: FAINT_INK, size: LABEL_SIZE[size] - 1 },
        }),
      ],
    },
    alt: liftTimeAlt(
      rows.map((row) => ({ name: row.name, at: middle(row), sides: row.sides })),
      units,
    ),
  };
}
