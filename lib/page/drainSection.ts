/** The drain with what it must carry, what it can, and what to buy, dig and carry. */

import { advisedOption, BEFORE_DIGGING, type Report } from '../contract/index.js';
import { shoppingLines } from '../drain/index.js';
import { drainPlanFigure, drainProfileFigure, drainSectionFigure } from '../figures/index.js';
import type { Table } from '../figures/table.js';
import { worksTable } from '../figures/tables.js';
import { amountsNote, bulkWords, dayWords, linerNote } from '../text/handy.js';
import { drainWords } from '../text/index.js';
import type { UnitSystem } from '../units/index.js';
import { drawingHtml, figureHtml } from './figureHtml.js';
import { list, paragraph, section, table, text } from './markup.js';

export function drainSection(report: Report, units: UnitSystem): string {
  const { drain, result } = report;
  if (!drain) {
    const wait = BEFORE_DIGGING.includes(result.recommendation.option);
    return section(
      'drain',
      'Build',
      paragraph(
        wait
          ? 'Buy and dig nothing yet: first what is said under “What to do”.'
          : 'No drain under the pond is recommended: there is nothing to buy or to dig for one.',
      ),
      ...(wait ? [] : [table(carried(report, units)), paragraph(linerNote(units), 'note')]),
    );
  }
  const words = drainWords(drain, units);
  const profile = drainProfileFigure(report, units);
  return section(
    'drain',
    'Build',
    report.result.recommendation.as_built
      ? paragraph(
          'An old drain lies there and works; what it is made of nobody has seen. Told here is a new one in its place, should it stop.',
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
    '<div class="pair">',
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
    '</div>',
    list(words.outlet.map(text)),
    drain.quantities.length > 0
      ? `<details><summary>To buy and to dig</summary>${table(carried(report, units))}${paragraph(amountsNote(units), 'note')}</details>`
      : '',
    `<h3>To look after</h3>${list(words.upkeep.map(text))}`,
  );
}

/** What the drain must carry and can, and other beds; for whoever checks it. */
export function drainNumbers({ drain }: Report, units: UnitSystem): string {
  if (!drain) return '';
  const { inflow, weakest, pipe, relief, otherBeds } = drainWords(drain, units);
  return section(
    'drain-numbers',
    'The drain in numbers',
    ...[inflow, weakest, pipe, relief].map((words) => paragraph(words)),
    otherBeds.length > 0 ? `<h3>Other beds the merchant may have</h3>${list(otherBeds.map(text))}` : '',
  );
}

const CUBIC_YARD = (3 * 0.3048) ** 3;

/** What is to be bought and dug as recommended, with how it is carried. */
export function carried(report: Report, units: UnitSystem): Table {
  const { result, pond } = report;
  // An option's own works are those of the depth wished.
  const advised = result.recommendation.depth_m === pond.depth_m ? advisedOption(result) : undefined;
  const quantities = result.drain?.quantities ?? advised?.work.quantities ?? [];
  const plain = worksTable(quantities, units);
  const bought = shoppingLines(quantities);
  /** as it is bought, m³ */
  const bulk = (at: number) => (units === 'us' ? bought[at]!.us * CUBIC_YARD : bought[at]!.metric);
  return {
    ...plain,
    columns: [...plain.columns, { key: 'carried', label: 'carried by hand' }],
    rows: plain.rows.map((row, at) => {
      const { item, unit } = quantities[at]!;
      return [
        ...row,
        unit === 'm³' && !/as it lies/.test(item)
          ? bulkWords(bulk(at), !/spoil|clay/.test(item), units)
          : null,
      ];
    }),
  };
}
