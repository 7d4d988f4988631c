/** The drain with what it must carry, what it can, and what to buy, dig and carry. */

import { advisedOption, BEFORE_DIGGING, type Report, wallsUnjudged } from '../contract/index.js';
import { CLAY_SWELL, shoppingLines } from '../drain/index.js';
import { drainPlanFigure, drainProfileFigure, drainSectionFigure } from '../figures/index.js';
import type { Table } from '../figures/table.js';
import { worksTable } from '../figures/tables.js';
import { costWords, hoursWords } from '../text/buildWords.js';
import { amountsNote, bulkWords, dayWords } from '../text/handy.js';
import { drainWords } from '../text/index.js';
import { waitToBuild } from '../text/nextStep.js';
import { workPlan } from '../text/workPlan.js';
import type { UnitSystem } from '../units/index.js';
import { FOOT } from '../units/index.js';
import { drawingHtml, figureHtml } from './figureHtml.js';
import { html, lines, list, type Markup, NONE, paragraph, section, table } from './markup.js';

export function drainSection(report: Report, units: UnitSystem): Markup {
  const { drain, result } = report;
  if (!drain) {
    const wait = BEFORE_DIGGING.includes(result.recommendation.option);
    return section(
      'drain',
      'Build',
      paragraph(
        wait
          ? waitToBuild(report.pond.existing)
          : advisedOption(result)?.option === 'cutoff-drain'
            ? 'The drain lies in a trench uphill of the pond; none lies under it.'
            : 'No drain under the pond is recommended.',
      ),
      toBuild(report, units),
    );
  }
  const words = drainWords(drain, units);
  const profile = drainProfileFigure(report, units);
  return section(
    'drain',
    'Build',
    report.result.recommendation.as_built
      ? paragraph(
          'An old drain lies there and works; what it is made of nobody has seen. Described here is a new one in its place, should it stop.',
        )
      : '',
    paragraph(dayWords(drain, units)),
    paragraph(words.bed),
    words.power ? paragraph(words.power) : '',
    profile
      ? drawingHtml(
          'drain-profile',
          'From the floor to the outlet',
          profile,
          'Heights to scale, lengths not. Levels count from the lowest natural ground at the rim.',
        )
      : '',
    words.shortFall ? paragraph(words.shortFall) : '',
    html`<div class="pair">\n${lines(
      figureHtml(
        'drain-plan',
        'The drain from above',
        (size) => drainPlanFigure(drain, units, size),
        'The run to its end is shortened at the break.',
      ),
      figureHtml(
        'drain-cut',
        'The bed, cut across the pipe',
        (size) => drainSectionFigure(drain, units, size),
        'Heights in the bed to scale.',
      ),
      list(words.outlet),
    )}\n</div>`,
    toBuild(report, units),
    html`<h3>To look after</h3>${list(words.upkeep)}`,
  );
}

/** Everything to buy and to dig, how long it takes and what it costs; nothing where nothing is dug yet. */
function toBuild(report: Report, units: UnitSystem): Markup {
  const { build } = report.result;
  if (!build || build.quantities.length === 0) return NONE;
  const more = [hoursWords(build), workPlan(report, units), costWords(build)].filter((words) => words !== '');
  return html`<details class="to-buy"><summary>To buy and to dig</summary>${table(carried(report, units))}${paragraph(amountsNote(units, wallsUnjudged(report.result.recommendation)), 'note')}${more.map((words) => paragraph(words))}</details>`;
}

/** What the drain must carry and can, and other beds; for whoever checks it. */
export function drainNumbers({ drain }: Report, units: UnitSystem): Markup {
  if (!drain) return NONE;
  const { inflow, weakest, pipe, relief, otherBeds } = drainWords(drain, units);
  return section(
    'drain-numbers',
    'The drain in numbers',
    ...[inflow, weakest, pipe, relief].map((words) => paragraph(words)),
    otherBeds.length > 0 ? html`<h3>Other beds the merchant may have</h3>${list(otherBeds)}` : '',
  );
}

const CUBIC_YARD = (3 * FOOT) ** 3;

/** What is to be bought and dug as recommended, with how it is carried. */
export function carried(report: Report, units: UnitSystem): Table {
  const quantities = report.result.build?.quantities ?? [];
  const plain = worksTable(quantities, units);
  const bought = shoppingLines(quantities);
  /** as it is bought, m³ */
  const bulk = (at: number) => (units === 'us' ? bought[at]!.us * CUBIC_YARD : bought[at]!.metric);
  // What is tamped is carried there loose.
  const loose = (item: string) => (/tamped/.test(item) ? 1 + CLAY_SWELL : 1);
  return {
    ...plain,
    columns: [...plain.columns, { key: 'carried', label: 'carried by hand' }],
    rows: plain.rows.map((row, at) => {
      const { item, unit } = quantities[at]!;
      return [
        ...row,
        unit === 'm³' && !/before it is loosened|once settled/.test(item)
          ? bulkWords(bulk(at) * loose(item), /sand|gravel|stone|concrete/.test(item), units)
          : null,
      ];
    }),
  };
}
