import { balanceAlt, balanceVerdict, pressureAxis, STATE_WORDS } from '../text/balanceWords.js';
import type { UnitSystem } from '../units/index.js';
import type { LiftBalance } from '../uplift/index.js';
import type { Figure } from './figure.js';
import { baseLayout, type FigureSize, LABEL_SIZE, label, thinAxis } from './layout.js';
import { ALARM, INK, PAPER, WATER } from './palette.js';

const PASCAL_PER: Record<UnitSystem, { unit: string; pascal: number }> = {
  metric: { unit: 'kPa', pascal: 1000 },
  us: { unit: 'lb/ft²', pascal: 47.88025898 },
};

/**
 * What lifts the floor and what holds it in each state of the pond, as two bars, with the factor or what lacks.
 * @param balances one a state, in the order drawn from the top; from {@link liftBalances}
 * @param units - how numbers are written
 * @param size - wide, or narrow for a phone
 * @returns plain data that plotly.js draws; {@link figureSvg} knows no bars
 */
export function balanceFigure(balances: LiftBalance[], units: UnitSystem, size: FigureSize = 'wide'): Figure {
  const { unit, pascal } = PASCAL_PER[units];
  const rows = [...balances].reverse();
  const y = rows.map(({ state }) => STATE_WORDS[state]);
  const bar = (name: string, values: number[], color: string, pattern: string) => ({
    type: 'bar',
    orientation: 'h',
    name,
    y,
    x: values.map((value) => Number((value / pascal).toPrecision(6))),
    marker: {
      color,
      line: { color, width: 1 },
      pattern: { shape: pattern, fillmode: 'replace', bgcolor: PAPER, solidity: 0.5 },
    },
    hoverinfo: 'x+name',
  });
  const most = Math.max(...balances.flatMap(({ lifts, holds }) => [lifts, holds]), 1);
  return {
    data: [
      bar(
        'lifts',
        rows.map(({ lifts }) => lifts),
        ALARM,
        '/',
      ),
      bar(
        'holds',
        rows.map(({ holds }) => holds),
        WATER,
        '',
      ),
    ],
    layout: {
      ...baseLayout(size, 90 + 62 * rows.length, { l: size === 'wide' ? 96 : 82, r: 8, t: 26, b: 44 }),
      barmode: 'group',
      bargap: 0.35,
      showlegend: true,
      legend: { orientation: 'h', x: 0, y: 1, xanchor: 'left', yanchor: 'bottom', traceorder: 'reversed' },
      xaxis: {
        ...thinAxis(size, pressureAxis(unit)),
        range: [0, ((size === 'wide' ? 1.5 : 2.1) * most) / pascal],
      },
      yaxis: { ...thinAxis(size), ticks: '' },
      annotations: rows.map((row, at) =>
        label(balanceVerdict(row, units), Math.max(row.lifts, row.holds) / pascal, at, {
          xshift: 6,
          font: { color: row.lacking > 0 ? ALARM : INK, size: LABEL_SIZE[size] - 1 },
        }),
      ),
    },
    alt: balanceAlt(balances, units),
  };
}
