import type { Report } from '../contract/report.js';
import { sectionAlt } from '../text/sectionAlt.js';
import { layersAsIn, PUSH_KEY, RUN_SHORTENED, sectionScaleText } from '../text/sectionWords.js';
import type { UnitSystem } from '../units/index.js';
import type { Figure } from './figure.js';
import { baseLayout, DESIGN_WIDTH, type FigureSize, LABEL_SIZE, label, roomFor, short } from './layout.js';
import { FAINT_INK } from './palette.js';
import { drainWay } from './sectionDrain.js';
import { logShown, sectionOf } from './sectionGeometry.js';
import { LEADER, levelLabels, levelNames, liftArrows, namesInside } from './sectionLabels.js';
import { APRON, sectionTraces } from './sectionTraces.js';
import { plotText, visible } from './visible.js';

/**
 * The pond cut along its length, uphill on the left: layers, high and low water table, ring, pond levels, what the
 * water would do to an emptied liner, and the drain with its outlet where one is recommended (distances shortened).
 * @param report what was computed
 * @param units system of the labels
 * @param size changes the layout only; a narrow one draws heights larger than lengths and says so
 * @returns plain data that plotly.js and {@link figureSvg} draw
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
  const texts = names.map(({ text }) => text);
  const sides = { l: roomFor(texts, size, LEADER), r: 8 };
  const width = DESIGN_WIDTH[size] - sides.l - sides.r;
  const least = size === 'wide' ? 215 : 190;
  const flat = ((shapeTop - bottom) / (x[1] - x[0])) * width;
  const stretch = [1, 1.5, 2, 3, 4, 5, 6, 8, 10].find((factor) => flat * factor >= least) ?? 10;
  const height = flat * stretch;
  const pixels = height / (shapeTop - bottom);

  const notes = [
    sectionScaleText(stretch),
    ...(size === 'narrow' ? PUSH_KEY : []),
    ...(drain?.areas.length ? [RUN_SHORTENED] : []),
    ...(log[0] ? [layersAsIn(plotText(log[0].pit))] : []),
  ];
  const margin = { ...sides, t: 30, b: size === 'wide' ? 26 : 14 + 13 * notes.length };
  const data = sectionTraces(section, report, { log, drain, wet, dry });
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
      ...namesInside(section, log, report, { left: x[0], bottom, pixels, size, units }),
      ...(drain?.labels(size) ?? []),
      label(notes.join(size === 'wide' ? '; ' : '<br>'), 1, 0, {
        xref: 'paper',
        yref: 'paper',
        xanchor: 'right',
        yanchor: 'top',
        align: 'right',
        yshift: -6,
        font: { color: FAINT_INK, size: LABEL_SIZE[size] - 1 },
      }),
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
    alt: visible(
      sectionAlt(
        section,
        report,
        units,
        { wet, dry, wetMonth: wettest.month, dryMonth: driest.month },
        drain?.words,
      ),
    ),
  };
}
