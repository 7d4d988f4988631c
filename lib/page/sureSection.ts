/** How sure the answer is: every water by its name, what is in hand, what was assumed, and what would turn it. */

import type { Report } from '../contract/index.js';
import { ladderTable, situationTable } from '../figures/situationTables.js';
import { doubtWords } from '../text/asked.js';
import { measurementWords } from '../text/nextWords.js';
import { isRimTaken, LEVEL_THE_RIM } from '../text/rimTaken.js';
import { sentence } from '../text/sentence.js';
import { assumedCount } from '../text/takenText.js';
import { tippingText } from '../text/tippingText.js';
import { weatherGainWords } from '../text/weatherGain.js';
import type { UnitSystem } from '../units/index.js';
import { html, lines, list, type Markup, NONE, paragraph, section, table } from './markup.js';

/** What the answer hangs on. */
export function sureSection(report: Report, units: UnitSystem): Markup {
  const { result } = report;
  const { measure_next, close_call } = result.recommendation;
  const rim = isRimTaken(result) ? [LEVEL_THE_RIM] : [];
  const next = [...rim, ...measure_next.map(measurementWords)].map((words) => `${sentence(words)}.`);
  const gain = weatherGainWords(report, units);
  return section(
    'sure',
    'How sure is this',
    close_call
      ? html`<p>It is a close call: within the error of the sampling the verdict could go either way.</p>`
      : '',
    html`<h3>What the answer hangs on</h3>`,
    paragraph(doubtWords(report)),
    paragraph(assumedCount(report)),
    html`<details><summary>Safety margin, situation by situation</summary>\n${lines(
      table(situationTable(report, units)),
      paragraph('Levels count from the lowest natural ground at the rim: + above it, − below.', 'note'),
    )}\n</details>`,
    next.length > 0
      ? html`<h3>To measure next, the most telling first</h3>${list(next)}`
      : html`<p>No measurement that was tried would change the answer.</p>`,
    gain ? html`<h4>What daily weather would settle</h4>${paragraph(gain)}` : '',
  );
}

/** Every water by its name, for whoever checks it. */
export function ladderSection(report: Report, units: UnitSystem): Markup {
  return section(
    'ladder',
    'How high the water comes',
    table(ladderTable(report, units)),
    paragraph(
      'The same names mean the same water everywhere on this page. Levels count from the lowest natural ground at the rim: + above it, − below.',
      'note',
    ),
  );
}

/** The values at which another answer comes, for whoever checks it. */
export function turnsSection({ result }: Report, units: UnitSystem): Markup {
  const turns = result.tipping_points.map((point) => tippingText(point, units));
  return turns.length === 0
    ? NONE
    : section(
        'turns',
        'What would turn the answer',
        html`<p>It turns when one value alone comes to:</p>`,
        list(turns),
      );
}
