import type { Report } from '../contract/index.js';
import { beforeDiggingWords } from '../text/beforeDigging.js';
import { bandWords, whichWaterAlt, whichWaterKey } from '../text/whichWaterAlt.js';
import type { UnitSystem } from '../units/index.js';
import { FOOT } from '../units/index.js';
import {
  box,
  type Drawing,
  FORM,
  type Form,
  foldedTo,
  framed,
  leading,
  line,
  sign,
  words,
} from './drawing.js';
import { isSteepened, type PanelScale, panelHeight, panelScale } from './panelScale.js';
import { pondPanel } from './pondPanel.js';
import { type WaterPanel, waterPanels } from './waterPanels.js';

/** Room for the axis, and the tallest panel. */
const AXIS = { wide: 66, narrow: 58 };
const TALLEST = { wide: 330, narrow: 230 };

/**
 * Which water wins: the pond full, emptied with nothing done, emptied with what is recommended, each against the water
 * that decides there, on one scale.
 * @param report what was computed
 * @param units system of the numbers; the survey's own unless said
 * @returns drawings with their alternative text; empty ones where no situation was computed
 */
export function whichWaterFigure(report: Report, units: UnitSystem = report.units): Drawing {
  const panels = waterPanels(report, units);
  const alt = whichWaterAlt(panels, report, units);
  if (panels.length === 0) return { wide: '', narrow: '', alt };
  return {
    wide: drawn('wide', panels, report, units, alt),
    narrow: drawn('narrow', panels, report, units, alt),
    alt,
  };
}

function drawn(form: Form, panels: WaterPanel[], report: Report, units: UnitSystem, alt: string): string {
  const { width, type, gap } = FORM[form];
  const axis = AXIS[form];
  const beside = form === 'wide';
  const across = beside ? (width - axis - gap * (panels.length - 1)) / panels.length : width - axis;
  const scale = panelScale(panels, report, Math.min(across, 500), TALLEST[form]);
  const tall = panelHeight(scale);
  const titles = panels.map(({ title }) => foldedTo(title, across - 8, type + 1, true));
  const feet = panels.map((panel) => footRows(panel, across - 8, type));
  const most = (rows: unknown[][]) => Math.max(...rows.map(({ length }) => length));
  const before = beforeDiggingWords(report);
  const warned = before ? foldedTo(before, width, type, true) : [];
  const parts: string[] =
    warned.length > 0
      ? [words({ rows: warned, x: 0, y: type + 2, size: type, bold: true, paint: 'fail' })]
      : [];
  const from = warned.length * leading(type) + (warned.length > 0 ? 8 : 0);
  let y = from;
  panels.forEach((panel, at) => {
    const head = beside ? most(titles) : titles[at]!.length;
    const x = axis + (beside ? at * (across + gap) : 0);
    const top = (beside ? from : y) + head * leading(type + 1) + 10;
    const foot = top + tall;
    parts.push(
      words({
        rows: titles[at]!,
        x,
        y: top - 12 - (titles[at]!.length - 1) * leading(type + 1),
        size: type + 1,
        bold: true,
      }),
    );
    if (!beside || at === 0)
      parts.push(axisParts(scale, { x: axis, right: beside ? width : axis + across, top, type }, units));
    parts.push(pondPanel(panel, report, scale, { x, y: top, width: across, type }));
    const size = type + 9;
    parts.push(
      sign(panel.verdict, x, foot + 10, size),
      words({
        rows: panel.word,
        x: x + size + 8,
        y: foot + 10 + size * 0.78,
        size: type + 4,
        bold: true,
        paint: panel.verdict === 'fails' ? 'fail' : 'ink',
      }),
      ...footParts(feet[at]!, x, foot + size + 32, type),
    );
    const under = beside ? most(feet) : feet[at]!.length;
    y = Math.max(beside ? y : from, foot + size + 32 + (under - 1) * leading(type) + (beside ? 14 : 30));
  });
  const notes = foldedTo(keyWords(panels, report, scale), width, type);
  parts.push(words({ rows: notes, x: 0, y: y + type + 4, size: type }));
  return framed(form, y + type + 12 + (notes.length - 1) * leading(type), alt, parts.join(''));
}

/** A row under a panel, and what stands before it. */
interface FootRow {
  text: string;
  mark: 'line' | 'bar' | 'dashed' | null;
}

/** The water by name, its bar by name, and a note, each row no wider than the room. */
function footRows({ water, band, note }: WaterPanel, room: number, type: number): FootRow[] {
  const rows = (text: string, mark: FootRow['mark']) =>
    foldedTo(text, room - 30, type).map((row, at) => ({ text: row, mark: at === 0 ? mark : null }));
  return [
    ...rows(water, 'line'),
    ...(band ? rows(bandWords(band), band.kept ? 'dashed' : 'bar') : []),
    ...(note ? rows(note, null) : []),
  ];
}

function footParts(rows: FootRow[], x: number, y: number, type: number): string[] {
  return rows.flatMap(({ text, mark }, at) => {
    const base = y + at * leading(type);
    return [
      words({ rows: text, x: x + 30, y: base, size: type }),
      mark === 'line' ? line('blue', [x, base - 5], [x + 22, base - 5], 3.5) : '',
      mark === 'bar' || mark === 'dashed'
        ? box(mark === 'bar' ? 'band' : 'paper', x + 5, base - 11, 12, 12) +
          box(
            'blue',
            x + 5,
            base - 11,
            12,
            12,
            `stroke-width="1.5"${mark === 'bar' ? '' : ' stroke-dasharray="3 2"'}`,
          )
        : '',
    ];
  });
}

/** Levels from the ground, on hairlines through all panels. */
function axisParts(
  { per_m, top_m, bottom_m }: PanelScale,
  at: { x: number; right: number; top: number; type: number },
  units: UnitSystem,
): string {
  const unit = units === 'us' ? FOOT : 1;
  const step = [0.5, 1, 2].map((each) => each * unit).find((each) => each * per_m > 30) ?? 5 * unit;
  const from = Math.ceil(bottom_m / step);
  const to = Math.floor(top_m / step);
  return Array.from({ length: to - from + 1 }, (_, i) => {
    const level = (from + i) * step;
    const y = at.top + (top_m - level) * per_m;
    const size = Number((Math.abs(level) / unit).toFixed(1));
    const text =
      from + i === 0 ? 'ground' : `${level > 0 ? '+' : '\u2212'}${size} ${units === 'us' ? 'ft' : 'm'}`;
    return (
      line('rule', [at.x - 6, y], [at.right, y], from + i === 0 ? 1 : 0.5, from + i === 0 ? '' : '2 4') +
      words({ rows: text, x: at.x - 10, y: y + at.type * 0.35, size: at.type, anchor: 'end' })
    );
  }).join('');
}

function keyWords(panels: WaterPanel[], report: Report, scale: PanelScale): string {
  const deep = panels.some(({ row, band }) =>
    [row.water?.level_m, band?.high_m].some((at) => at !== undefined && at <= scale.bottom_m),
  );
  return [
    whichWaterKey(report.accepted_risk),
    scale.cut_m > 0 ? 'Drawn to scale; some of the flat floor is left out.' : 'Drawn to scale.',
    ...(isSteepened(scale, report)
      ? ['The sides are drawn steeper than wished, where they would meet.']
      : []),
    ...(deep ? ['An arrow down: the water lies deeper than is drawn.'] : []),
  ].join(' ');
}
