/** The pond card: one printed A6 to keep in the shed. */

import type { Report } from '../contract/index.js';
import { loweringYear, type MonthLowering } from '../contract/index.js';
import { px } from '../figures/svgParts.js';
import { cardFoot, cardTitle, keepAbove, lowerWords, notByPipe, notEvenFull } from '../text/lowerWords.js';
import { monthName, monthShort } from '../text/monthWords.js';
import type { UnitSystem } from '../units/index.js';
import { html, Markup } from './markup.js';
import { sourceHash } from './policy.js';

const STYLE = `
@page { size: 105mm 148mm; margin: 6mm; }
* { box-sizing: border-box; } body { margin: 0 auto; max-width: 93mm; color: #111; background: #fff; font: 8.5pt/1.25 system-ui, "Segoe UI", Roboto, Arial, sans-serif; }
h1 { font-size: 11pt; margin: 0 0 1mm; overflow-wrap: anywhere; } p, ol { margin: 1mm 0 0; } ol { padding-left: 4mm; }
table { border-collapse: collapse; width: 100%; } th { text-align: left; font-size: 8pt; padding: 0 1mm 0.5mm; vertical-align: bottom; } td { border-top: .2mm solid #111; height: 6mm; padding: 0 1mm; vertical-align: middle; font-size: 9pt; line-height: 1.1; } td:first-child { font-weight: 700; width: 10mm; font-size: 11pt; } .stick { width: 7mm; } .stick svg { display: block; width: 5mm; height: 5mm; }
abbr { text-decoration: none; } .no { font-weight: 700; } footer { font-size: 6.5pt; margin-top: 1mm; overflow-wrap: anywhere; }
`;

/** A stick of which the water covers what must stay; full at the top. */
function stickSvg({ below, says }: MonthLowering, depth: number): Markup {
  const down = says === 'empty' ? 1 : Math.min((below ?? depth) / depth, 1);
  const cross =
    says === 'not-even-full' ? html`<path d="M2 2L18 18M18 2L2 18" stroke="#111" stroke-width="3"/>` : '';
  const water = html`<rect x="3" y="${px(1 + 18 * down)}" width="14" height="${px(18 * (1 - down))}" fill="#1f5f8b"/>`;
  return html`<svg viewBox="0 0 20 20" aria-hidden="true">${water}<rect x="3" y="1" width="14" height="18" fill="none" stroke="#111" stroke-width="1.5"/>${cross}</svg>`;
}

/**
 * The card as one HTML file: how low the pond may be let in each month, what to do before lowering, and what never to do.
 * @param report - design situations of what is recommended
 * @returns HTML, A6 in print
 */
export function pondCardHtml(report: Report): string {
  const { units, result } = report;
  const name = result.survey.name;
  return html`<!doctype html>
<html lang="en"><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src ${new Markup(sourceHash(STYLE))}; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1"><title>Pond card: ${name}</title><style>${new Markup(STYLE)}</style></head>
<body><main><h1>${cardTitle(result.survey.name)}</h1>
${bodyOf(report, units)}
<footer>${cardFoot(result)}</footer></main></body></html>
`.html;
}

/** Advice that leaves nothing to be kept at a level. */
const NO_POND: readonly string[] = ['do-not-dig', 'move'];

function bodyOf(report: Report, units: UnitSystem): Markup {
  const { option } = report.result.recommendation;
  if (NO_POND.includes(option) && !report.pond.existing)
    return html`<p>No pond is to be dug here as planned; see the page.</p>`;
  const waits = option === 'measure-first' && !report.pond.existing;
  const { works, blocked } = loweringYear(report);
  const depth = report.pond.full_level_m + (report.result.recommendation.depth_m || report.pond.depth_m);
  const cell = (one: MonthLowering) => {
    const stop = one.says === 'not-even-full' || one.says === 'keep-full';
    return html`<td class="stick">${stickSvg(one, depth)}</td><td${stop ? html` class="no"` : ''}>${lowerWords(one, report.pond.days_empty, units)}</td>`;
  };
  const rows = works.map(
    (one, at) =>
      html`<tr><td><abbr title="${monthName(one.month)}">${monthShort(one.month)}</abbr></td>${cell(one)}${blocked ? cell(blocked[at]!) : ''}</tr>`,
  );
  const { barred } = report.limits;
  const only = report.result.recommendation.rules.find(
    (rule) => rule.code === 'empty-only-in' && rule.subject === 'free' && rule.values.days > 0,
  );
  const lifts = [...works, ...(blocked ?? [])].some(({ says }) => says === 'not-even-full');
  return html`${waits ? html`<p><b>Not to be dug yet.</b> As wished, with nothing built:</p>` : ''}<table><thead><tr><th scope="col">month</th><th scope="col" colspan="2">${blocked ? 'drain works' : 'from full'}</th>${blocked ? html`<th scope="col" colspan="2">drain blocked or stopped</th>` : ''}</tr></thead><tbody>${rows}</tbody></table>
<ol><li>${keepAbove(report.pond.margin_m + report.lower_by_reading.rise_m, units)}</li><li>Read it again every morning while the pond is low; fill up when it rises.</li>${only && !waits ? html`<li>${only.text}</li>` : ''}${barred.some((cause) => cause !== null) ? html`<li>${notByPipe(barred)}</li>` : ''}${lifts ? html`<li>${notEvenFull(blocked !== undefined)}</li>` : ''}<li>Never cut a bulge in the liner, never pump water away to flatten one, never work alone beside an open side.</li></ol>`;
}
