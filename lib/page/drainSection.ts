/** The drain with what it must carry, what it can, and what to buy, dig and carry. */
import { drainPlanFigure, drainSectionFigure, fallTable } from '../figures/index.js';
import type { Table } from '../figures/table.js';
import { quantityTable } from '../figures/tables.js';
import { linkWords } from '../figures/words.js';
import type { Report } from '../risk/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { figureHtml } from './figureHtml.js';
import { bucketWords, bulkWords, measureSizes } from './handy.js';
import { list, paragraph, section, table, text } from './markup.js';
import { flowWords } from './verdict.js';

export function drainSection(report: Report, units: UnitSystem): string {
  const { drain, recommendation } = report.result;
  if (!drain)
    return section(
      'drain',
      'The drain',
      paragraph(
        ['measure-first', 'move', 'do-not-dig'].includes(recommendation.option)
          ? 'Buy and dig nothing yet: first what is said under “What to do”.'
          : 'No drain under the pond is recommended: there is nothing to buy or to dig for one.',
      ),
    );
  const fall =
    drain.fall_available_m === null
      ? 'The water is pumped, so no fall is needed.'
      : `Fall from the underside of the bed to the outlet: ${formatQuantity(drain.fall_available_m, 'length', units)}; needed: ${formatQuantity(drain.fall_needed_m, 'length', units)}.`;
  const links = Object.entries(drain.reserve).map(([link, ratio]) =>
    text(
      `${linkWords(link)}: ${ratio >= 100 ? 'over 100' : Number(ratio.toPrecision(2))} times what is needed`,
    ),
  );
  const day = drain.inflow_m3_s.clay * 86_400;
  const design = report.drain;
  return section(
    'drain',
    'The drain',
    paragraph(
      `A pipe of ${formatQuantity(drain.pipe_diameter_m, 'length', units)} can carry ${formatQuantity(drain.pipe_capacity_m3_s * 60, 'volume', units)} a minute. ` +
        `What reaches it: ${flowWords(drain, units)}; from the clay that is ${bucketWords(day, units)} a day. ${fall} The weakest link: ${linkWords(drain.weakest_link)}.`,
    ),
    list(links),
    design
      ? figureHtml(
          'drain-plan',
          'The drain from above',
          (size) => drainPlanFigure(design, units, size),
          'The run to its end is shortened at the break.',
        )
      : '',
    design
      ? figureHtml(
          'drain-cut',
          'The bed, cut across the pipe',
          (size) => drainSectionFigure(design, units, size),
          'Heights in the bed to scale.',
        )
      : '',
    design && design.links.length > 0 ? table(fallTable(design, units)) : '',
    table(carried(report, units)),
    paragraph(
      `${measureSizes(units)} Our choice; ask what the shop's bag holds. Amounts include waste, laps and swell.`,
      'note',
    ),
  );
}

/** The list of quantities with how it is carried; no rows where no drain is recommended. */
export function carried(report: Report, units: UnitSystem): Table {
  const plain = quantityTable(report, units);
  const quantities = report.result.drain?.quantities ?? [];
  return {
    ...plain,
    columns: [...plain.columns, { key: 'carried', label: 'carried by hand' }],
    rows: plain.rows.map((row, at) => {
      const { item, amount, unit } = quantities[at]!;
      return [...row, unit === 'm³' ? bulkWords(amount, !item.includes('spoil'), units) : null];
    }),
  };
}
