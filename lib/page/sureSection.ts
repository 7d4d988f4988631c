/** How sure the answer is: every water by its name, what is in hand, what was assumed, and what would turn it. */

import type { Report } from '../contract/index.js';
import { ladderTable, situationTable } from '../figures/situationTables.js';
import { doubtWords } from '../text/asked.js';
import { measurementWords } from '../text/nextWords.js';
import { sentence } from '../text/sentence.js';
import { assumedText, moreAssumed } from '../text/takenText.js';
import { tippingText } from '../text/tippingText.js';
import type { UnitSystem } from '../units/index.js';
import { list, paragraph, section, table, text } from './markup.js';

/** Assumptions told here; all of them stand in the evidence. */
const TOLD = 5;

/** What the answer hangs on. */
export function sureSection(report: Report, units: UnitSystem): string {
  const { result } = report;
  const { measure_next, close_call } = result.recommendation;
  const next = measure_next.map((one) => text(`${sentence(measurementWords(one))}.`));
  const turns = result.tipping_points.map((point) => text(tippingText(point, units)));
  const assumed = result.assumptions.slice(0, TOLD).map((each) => text(assumedText(each, units)));
  const more = result.assumptions.length - assumed.length;
  return section(
    'sure',
    'How sure is this',
    close_call
      ? '<p>It is a close call: within the error of the sampling the verdict could go either way.</p>'
      : '',
    '<h3>How high the water comes</h3>',
    table(ladderTable(report, units)),
    paragraph(
      'The same names mean the same water everywhere on this page. Levels count from the lowest natural ground at the rim: + above it, − below.',
      'note',
    ),
    '<h3>Safety margin, situation by situation</h3>',
    table(situationTable(report, units)),
    '<h3>What the answer hangs on</h3>',
    paragraph(doubtWords(report)),
    turns.length > 0 ? `<p>It turns when one value alone comes to:</p>${list(turns)}` : '',
    assumed.length > 0
      ? `<h3>Assumed, not measured</h3>${list(assumed)}${more > 0 ? paragraph(moreAssumed(more), 'note') : ''}`
      : '',
    next.length > 0
      ? `<h3>To measure next, the most telling first</h3>${list(next)}`
      : '<p>No measurement that was tried would change the answer.</p>',
  );
}
