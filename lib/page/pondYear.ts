/** The pond's own year, in words and a table. */

import type { Report } from '../contract/index.js';
import { pondYearTable } from '../figures/pondYearTable.js';
import { pondYearWords } from '../text/pondYearWords.js';
import type { UnitSystem } from '../units/index.js';
import { html, type Markup, paragraph, table } from './markup.js';

/** The same with its table; a level that is held needs none. */
export function pondYear(report: Report, units: UnitSystem): Markup {
  return html`${paragraph(pondYearWords(report, units).join(' '))}${
    report.pond.kept.habit === 'held'
      ? ''
      : html`<details><summary>The pond by month, as it is kept</summary>${table(pondYearTable(report, units))}</details>`
  }`;
}
