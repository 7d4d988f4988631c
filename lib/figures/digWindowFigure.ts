import { MONTHS } from '../climate/index.js';
import type { DigWindow } from '../site/index.js';
import { digMonthText, digWindowAlt } from '../text/digWindowAlt.js';
import { monthShort } from '../text/monthWords.js';
import { wholePercent } from '../text/say.js';
import { InputError, type UnitSystem } from '../units/index.js';
import type { Figure } from './figure.js';
import { baseLayout, type FigureSize, LABEL_SIZE, lengthScale, short, thinAxis } from './layout.js';
import { ALARM, INK } from './palette.js';

/** Steps of chance with their colour, from dark to light so that grey print keeps the order. */
const STEPS = [
  { from: 0, colour: '#1f5f8b', words: 'below 50' },
  { from: 0.5, colour: '#8dbbd8', words: '50 to 80' },
  { from: 0.8, colour: '#c6e0ec', words: '80 to 95' },
  { from: 0.95, colour: '#f5e6b8', words: '95 and more' },
];

/**
 * When may I dig: month × depth, coloured and lettered by the chance that the floor stays dry, with the water to pump
 * in the hover text; the row nearest to the depth wished is outlined.
 * @param window the digging window, from {@link digWindow}
 * @param wish depth wished, m below the lowest natural ground at the rim
 * @param units system of the axis and labels
 * @param size changes the layout only
 * @returns plain data that plotly.js and {@link figureSvg} draw
 * @throws InputError for a window without depths
 */
export function digWindowFigure(
  window: DigWindow,
  wish: number,
  units: UnitSystem,
  size: FigureSize = 'wide',
): Figure {
  const { depths, dry, pumped } = window;
  if (depths.length === 0) throw new InputError('missing-input', 'missing depths - at least one is needed');
  const { per_m, unit } = lengthScale(units);
  const months = MONTHS;
  const y = depths.map((depth) => short(depth * per_m));
  const half = depths.length > 1 ? Math.abs(y[1]! - y[0]!) / 2 : 0.1 * per_m;
  const nearest = rowOf(window, wish);
  const cell = (d: number, m: number) =>
    digMonthText(
      m + 1,
      { depth: depths[d]!, dry: dry[d]![m]!, pumped: { p50: pumped.p50[d]![m]!, p90: pumped.p90[d]![m]! } },
      units,
    );
  const data = [
    {
      type: 'heatmap',
      x: months,
      y,
      z: dry.map((row) => row.map((chance) => STEPS.findLastIndex((step) => chance >= step.from))),
      zmin: -0.5,
      zmax: STEPS.length - 0.5,
      colorscale: STEPS.flatMap(({ colour }, at) => [
        [at / STEPS.length, colour],
        [(at + 1) / STEPS.length, colour],
      ]),
      showscale: false,
      xgap: 1,
      ygap: 1,
      text: dry.map((row) => row.map((chance) => String(wholePercent(chance)))),
      texttemplate: '%{text}',
      textfont: { size: size === 'wide' ? 11 : 9 },
      customdata: dry.map((row, d) => row.map((_, m) => cell(d, m))),
      hovertemplate: '%{customdata}<extra></extra>',
    },
  ];
  const signs = STEPS.map(({ colour, words }) => `<span style="color:${colour}">■</span> ${words}`).reverse();
  const rows = size === 'wide' ? 1 : 2;
  const title = 'Chance in % that the floor stays dry all month:';
  const key =
    size === 'wide'
      ? `${title}<br>${signs.join('   ')}`
      : `${title}<br>${signs.slice(0, 2).join('   ')}<br>${signs.slice(2).join('   ')}`;
  const margin = {
    l: size === 'wide' ? 52 : 40,
    r: size === 'wide' ? 12 : 6,
    t: 24 + (rows + 1) * 17,
    b: 34,
  };
  const above = (text: string, yshift: number) => ({
    text,
    x: 0,
    y: 1,
    xref: 'paper',
    yref: 'paper',
    xanchor: 'left',
    yanchor: 'bottom',
    xshift: -margin.l + 6,
    yshift,
    align: 'left',
    showarrow: false,
    font: { size: LABEL_SIZE[size], color: INK },
  });
  const layout = {
    ...baseLayout(
      size,
      margin.t + margin.b + Math.max(depths.length * (size === 'wide' ? 26 : 22), 120),
      margin,
    ),
    xaxis: {
      ...thinAxis(size),
      ticks: '',
      range: [0.5, 12.5],
      tickvals: months,
      ticktext: months.map((m) => (size === 'wide' ? monthShort(m) : monthShort(m).charAt(0))),
    },
    yaxis: {
      ...thinAxis(size),
      range: [Math.max(...y) + half, Math.min(...y) - half],
      tickvals: y,
      ticktext: y.map((depth) => depth.toFixed(1)),
    },
    annotations: [above(key, 18), above(`depth of dig (${unit}), as wished outlined`, 2)],
    shapes: [
      {
        type: 'rect',
        x0: 0.5,
        x1: 12.5,
        y0: y[nearest]! - half,
        y1: y[nearest]! + half,
        line: { color: ALARM, width: 2 },
      },
    ],
  };
  return { data, layout, alt: digWindowAlt(window, nearest, units) };
}

/** The depth nearest to the one wished. */
function rowOf({ depths }: DigWindow, wish: number): number {
  return depths.reduce((a, b, at) => (Math.abs(b - wish) < Math.abs(depths[a]! - wish) ? at : a), 0);
}
