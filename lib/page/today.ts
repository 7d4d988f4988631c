/** May I lower it today? The answer of the last look into the dip pipe, and how to find the next. */

import type { Report } from '../contract/index.js';
import { monthName } from '../text/monthWords.js';
import { todayWords } from '../text/todayWords.js';
import type { UnitSystem } from '../units/index.js';
import { html, type Markup, paragraph } from './markup.js';

/** The question of the day: what the last look allows, and a box for today's, which the page's script brings to life. */
export function todayHtml(report: Report, units: UnitSystem): Markup {
  const { lower_by_reading, pond, result } = report;
  const full = pond.full_level_m + result.recommendation.raise_m;
  const unit = units === 'us' ? 'in' : 'cm';
  const months = Array.from(
    { length: 12 },
    (_, at) => html`<option value="${at}">${monthName(at + 1)}</option>`,
  );
  const data = JSON.stringify({ ...lower_by_reading, full_m: full, floor_m: full - deepest(report), units });
  return html`<h3 id="today">May I lower it today?</h3>
${paragraph(todayWords(report, units))}
<form class="today" data-today="${data}" hidden><label>Water in the dip pipe, below the full water line of the pond <span><input type="number" inputmode="decimal" step="any" name="below"> ${unit}</span></label> <label>in <select name="month">${months}</select></label> <output aria-live="polite"></output></form>`;
}

/** From the full level to the liner's lowest point, m. */
function deepest({ pond, result: { recommendation } }: Report): number {
  return pond.full_level_m + (recommendation.depth_m || pond.depth_m);
}
