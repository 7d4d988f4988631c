import { sideAlt, standingDepthAxis, wishStandsText } from '../text/sideWords.js';
import type { UnitSystem } from '../units/index.js';
import { type ClaySide, SIDE_FACTOR_WANTED, sidePlan, softened, standingHeight } from '../uplift/index.js';
import type { Figure } from './figure.js';
import { baseLayout, type FigureSize, LABEL_SIZE, label, lengthScale, short, thinAxis } from './layout.js';
import { ALARM, FAINT_INK, INK, WATER } from './palette.js';

/** Flattest side drawn, horizontal to 1 vertical. */
const FLATTEST = 1.5;

/**
 * How deep a clay side may go against how far it lies back, fresh and softened, both wet and cracked and with the
 * factor for people beside it, with the wished depth and the slope to dig.
 * @param clay strength, Pa, weight, N/m³, and edging, Pa
 * @param depth wished, m, above 0
 * @param units - how numbers are written
 * @param size - wide, or narrow for a phone
 * @returns plain data that plotly.js and {@link figureSvg} draw
 */
export function sideFigure(
  clay: ClaySide,
  depth: number,
  units: UnitSystem,
  size: FigureSize = 'wide',
): Figure {
  const { per_m, unit } = lengthScale(units);
  const slopes = Array.from({ length: 61 }, (_, i) => (FLATTEST * i) / 60);
  const stands = (side: ClaySide) =>
    slopes.map(
      (slope) =>
        Math.max(standingHeight(side.strength, side.unitWeight, slope, side.edgingLoad), 0) /
        SIDE_FACTOR_WANTED,
    );
  const fresh = stands(clay);
  const soft = stands(softened(clay));
  const plan = sidePlan(clay, depth);
  const deepest = 1.1 * Math.max(depth, fresh.at(-1)!);
  const curve = (name: string, values: number[], color: string, dash: string) => ({
    type: 'scatter',
    mode: 'lines',
    name,
    x: slopes.map(short),
    y: values.map((value) => short(value * per_m)),
    line: { color, width: 2, dash },
    hoverinfo: 'name+x+y',
  });
  const at = (values: number[], share: number) => values[Math.round(share * 60)]! * per_m;
  return {
    data: [
      curve('fresh cut', fresh, INK, 'solid'),
      curve('softened behind a liner', soft, WATER, '7px,4px'),
      ...(plan.slope === null
        ? []
        : [
            {
              type: 'scatter',
              mode: 'markers',
              name: 'steepest that stands',
              x: [plan.slope],
              y: [short(depth * per_m)],
              marker: { symbol: 'circle', size: 10, color: '#ffffff', line: { color: WATER, width: 2.5 } },
              hoverinfo: 'skip',
            },
          ]),
    ],
    layout: {
      ...baseLayout(size, 320, { l: size === 'wide' ? 62 : 46, r: 12, t: 26, b: 46 }),
      xaxis: {
        ...thinAxis(size, 'how far the side lies back (horizontal to 1 vertical)'),
        range: [0, FLATTEST],
      },
      yaxis: { ...thinAxis(size), range: [short(deepest * per_m), 0] },
      shapes: [
        {
          type: 'line',
          xref: 'paper',
          x0: 0,
          x1: 1,
          y0: short(depth * per_m),
          y1: short(depth * per_m),
          line: { color: ALARM, width: 1.25, dash: '2px,2px' },
        },
      ],
      annotations: [
        label(standingDepthAxis(unit), 0, 1, {
          xref: 'paper',
          yref: 'paper',
          yanchor: 'bottom',
          yshift: 6,
          font: { color: FAINT_INK },
        }),
        label(wishStandsText(depth, plan.slope, units), 1, short(depth * per_m), {
          xref: 'paper',
          xanchor: 'right',
          yanchor: 'bottom',
          font: { color: ALARM, size: LABEL_SIZE[size] },
        }),
        ...(
          [
            ['fresh cut', fresh, INK],
            ['softened behind a liner', soft, WATER],
          ] as const
        )
          .filter(([, values]) => at(values, 0.5) < deepest * per_m)
          .map(([text, values, color]) =>
            label(text, FLATTEST / 2, short(at(values, 0.5)), {
              yanchor: 'top',
              xanchor: 'center',
              yshift: -2,
              font: { color },
            }),
          ),
      ],
    },
    alt: sideAlt(
      {
        fresh: { upright: fresh[0]!, flattest: fresh.at(-1)! },
        soft: { upright: soft[0]!, flattest: soft.at(-1)! },
        flattest: FLATTEST,
        depth,
        slope: plan.slope,
      },
      units,
    ),
  };
}
