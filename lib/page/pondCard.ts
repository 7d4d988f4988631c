/** The pond card: one printed A6 to keep in the shed. */

import { advisedOption, possibleOption, type Report } from '../contract/index.js';
import { escapeHtml } from '../figures/escape.js';
import { spread } from '../figures/spread.js';
import { px } from '../figures/svgParts.js';
import { svgText } from '../figures/svgText.js';
import { monthShort } from '../figures/words.js';
import { formatBound, type UnitSystem } from '../units/index.js';
import { text } from './markup.js';
import { sourceHash } from './policy.js';

const STYLE = `
@page { size: 105mm 148mm; margin: 6mm; }
* { box-sizing: border-box; } body { margin: 0 auto; max-width: 93mm; color: #22262b; background: #fff; font: 8.5pt/1.3 system-ui, "Segoe UI", Roboto, Arial, sans-serif; }
h1 { font-size: 11pt; margin: 0 0 1mm; } h2 { font-size: 9pt; margin: 2mm 0 .5mm; } p { margin: 0 0 1mm; } ol { margin: 0; padding-left: 4.5mm; }
.two { display: grid; grid-template-columns: 56mm 1fr; gap: 2mm; align-items: start; } svg { width: 100%; height: auto; display: block; }
.line { border-bottom: .3mm solid #22262b; height: 5mm; font-size: 7pt; color: #555b62; } footer { font-size: 6.5pt; color: #555b62; margin-top: 1.5mm; overflow-wrap: anywhere; }
`;

/** Months that share a mark on the stick. */
export interface Mark {
  /** m below the full level; 0: full, null: to the floor */
  below: number | null;
  months: number[];
  /** even the full pond may lift */
  lifts?: true;
}

/**
 * Marks of twelve levels from the top down; a month whose level is at or above full has its mark at full.
 * @param holds - whether the full pond holds by the chance of the year; where it does not, months above full are told apart
 */
export function marksOf(levels: (number | null)[], full: number, holds = true): Mark[] {
  const marks: Mark[] = [];
  levels.forEach((level, index) => {
    // Down to the centimetre on the safe side.
    const below = level === null ? null : Math.max(0, Math.floor((full - level) * 100 + 1e-9) / 100);
    const lifts = !holds && level !== null && level > full + 1e-9;
    const mark = marks.find((each) => each.below === below && (each.lifts ?? false) === lifts);
    if (mark) mark.months.push(index + 1);
    else marks.push({ below, months: [index + 1], ...(lifts ? { lifts } : {}) });
  });
  return marks.sort((a, b) => (a.below ?? Number.POSITIVE_INFINITY) - (b.below ?? Number.POSITIVE_INFINITY));
}

/**
 * The card as one HTML file: lowest safe level of each month as marks on a stick, what to do before lowering, whom to ask.
 * @param report limits of what is recommended
 * @returns HTML, A6 in print
 */
export function pondCardHtml(report: Report): string {
  const { units, result } = report;
  const name = text(result.survey.name);
  const dug = result.recommendation.option !== 'do-not-dig' && result.recommendation.option !== 'move';
  const body = dug
    ? `<div class="two"><div>${stickSvg(report, units)}</div><div>
<h2>Before you lower it</h2>
<ol><li>Read the dip pipe.</li><li>Never let the pond below the water in the pipe plus ${text(formatBound(report.pond.margin_m, 'length', units, 'up'))}.</li><li>No pipe read? Not below the month's mark.</li><li>Read it again every morning while the pond is low; fill up when it rises.</li></ol>
<h2>Never</h2><p>Cut a bulge in the liner. Pump a bulge flat. Work alone beside an open side.</p>
<h2>Ask first</h2><div class="line">engineer</div><div class="line">regulator</div><div class="line">neighbour</div>
</div></div>`
    : '<p>No pond is to be dug here as planned; see the page.</p>';
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src ${sourceHash(STYLE)}; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1"><title>Pond card: ${name}</title><style>${STYLE}</style></head>
<body><main><h1>Pond card: ${name}</h1>
${body}
<footer>Marks: highest water outside that the month exceeds only as often as accepted, with the margin, for what is recommended. Valid for this survey only (${result.survey.sha256.slice(0, 12)}). Local codes decide.</footer></main></body></html>
`;
}

/** Columns of marks beside the stick: as recommended, and with the drain not running where there is one. */
function columnsOf(report: Report): { title: string; marks: Mark[] }[] {
  const { limits, pond, result } = report;
  const full = pond.full_level_m + result.recommendation.raise_m;
  const undrained = possibleOption(result, 'no-drain');
  const column = {
    title: result.drain ? 'drain runs' : '',
    marks: marksOf(limits.lowestSafeLevel, full, advisedOption(report.result)?.full.safe),
  };
  return result.drain && undrained
    ? [
        column,
        {
          title: 'drain does not run',
          marks: marksOf(undrained.lowest_safe_level_m, pond.full_level_m, undrained.full.safe),
        },
      ]
    : [column];
}

const STICK = { width: 230, height: 330, top: 40, foot: 320, x: 20 };

/** A stick fixed to the side, its top at the full level; marks are counted down from there. */
function stickSvg(report: Report, units: UnitSystem): string {
  const { width, height, top, foot, x } = STICK;
  const depth = report.result.recommendation.depth_m || report.pond.depth_m;
  const deepest = report.pond.full_level_m + depth;
  const columns = columnsOf(report);
  const y = (below: number | null) => top + (Math.min(below ?? deepest, deepest) / deepest) * (foot - top);
  const drawn = columns.map(({ title, marks }, at) => {
    const left = x + 18 + at * 104;
    return columnSvg({ title, marks }, left, y, units);
  });
  const alt = columns
    .map(
      ({ title, marks }) =>
        `${title ? `${title}: ` : ''}${marks.map((mark) => `${mark.months.map(monthShort).join(', ')} ${sizeWords(mark, units)}`).join('; ')}`,
    )
    .join('. ');
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" role="img" aria-label="${escapeHtml(`Stick with its top at the full level. ${alt}.`)}" font-family="system-ui, Arial, sans-serif">` +
    `<rect x="0" y="${top}" width="${width}" height="${foot - top}" fill="#e3eef5"/><rect x="${x - 5}" y="${top - 14}" width="10" height="${foot - top + 14}" fill="#d9c7a3" stroke="#5b6168"/>` +
    `<path d="M0 ${top}H${width}" stroke="#1f5f8b" stroke-width="1.5"/>${svgText({ text: 'full', x: 1, y: top - 15, size: 10, color: '#1f5f8b', xanchor: 'left', yanchor: 'bottom' })}${drawn.join('')}</svg>`
  );
}

function sizeWords({ below, lifts }: Mark, units: UnitSystem): string {
  if (lifts) return 'full may lift';
  return below === null
    ? 'may be emptied'
    : below === 0
      ? 'keep full'
      : `${formatBound(below, 'length', units, 'down')} down`;
}

function columnSvg(
  { title, marks }: { title: string; marks: Mark[] },
  left: number,
  y: (below: number | null) => number,
  units: UnitSystem,
): string {
  const { x, top, foot } = STICK;
  const texts = marks.map((mark) => {
    const months = mark.months.length === 12 ? 'all year' : mark.months.map(monthShort).join(' ');
    return `${sizeWords(mark, units)}<br>${folded(months)}`;
  });
  const rows = Math.max(...texts.map((words) => words.split('<br>').length));
  const places = spread(
    marks.map(({ below }) => y(below)),
    rows * 12 + 3,
    top + 6 * rows + 4,
    foot - 8 * rows,
  );
  const lines = marks.map(({ below }, i) => {
    const at = px(y(below));
    return (
      `<path d="M${x - 9} ${at}H${x + 9}" stroke="#22262b" stroke-width="2.5"/><path d="M${x + 9} ${at}L${left - 3} ${px(places[i]!)}" stroke="#5b6168" stroke-width=".75" fill="none"/>` +
      svgText({
        text: texts[i]!,
        x: left,
        y: places[i]!,
        size: 9.5,
        color: '#22262b',
        xanchor: 'left',
        yanchor: 'middle',
        halo: true,
      })
    );
  });
  return (
    svgText({
      text: title,
      x: left,
      y: top - 4,
      size: 9.5,
      color: '#22262b',
      xanchor: 'left',
      yanchor: 'bottom',
    }) + lines.join('')
  );
}

/** Month names on rows of three. */
function folded(names: string): string {
  const words = names.split(' ');
  if (words.length <= 3) return names;
  return Array.from({ length: Math.ceil(words.length / 3) }, (_, i) =>
    words.slice(3 * i, 3 * i + 3).join(' '),
  ).join('<br>');
}
