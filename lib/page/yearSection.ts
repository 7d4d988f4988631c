/** The year of the pond: when to dig, when it may be lowered, and the water in detail. */

import type { Report } from '../contract/index.js';
import { digWindowFigure } from '../figures/digWindowFigure.js';
import { fittedTable } from '../figures/fittedTable.js';
import { waterMonthTable } from '../figures/tables.js';
import { waterYearFigure } from '../figures/waterYearFigure.js';
import { yearFigure } from '../figures/yearFigure.js';
import { fittedNote } from '../text/fittedWords.js';
import { yearWords } from '../text/yearWords.js';
import type { UnitSystem } from '../units/index.js';
import { drawingHtml, figureHtml } from './figureHtml.js';
import { list, paragraph, section, table, text } from './markup.js';
import { pondYear } from './pondYear.js';
import { standingWater } from './standingWater.js';
import { todayHtml } from './today.js';

/** When to dig and when to lower, in a picture, and the question of the day. */
export function yearSection(report: Report, units: UnitSystem): string {
  return section(
    'year',
    'Your year',
    drawingHtml('your-year', 'When to dig, when to lower', yearFigure(report, units)),
    '<p class="month-words" aria-live="polite" hidden></p>',
    `<details class="months"><summary>The year in words, month by month</summary>${list(yearWords(report, units).map(text))}</details>`,
    todayHtml(report, units),
  );
}

/** The water by the day and the month, for whoever checks it. */
export function waterSection(report: Report, units: UnitSystem): string {
  const { digging, pond } = report;
  return section(
    'water',
    'The water by the month, and the open hole',
    report.water_year.length > 0
      ? figureHtml(
          'year-figure',
          'Depth to water',
          (size) => waterYearFigure(report, units, size),
          'Blue, the water in the ground. Band: eight years in ten, counting everything unknown about it; line: the middle. ' +
            'Black, the pond as it is kept: where water outside stands higher than it, the liner is lifted. ' +
            'Looks: carried from their holes to the low side of the pond, so not the depths read in the hole.',
        )
      : '',
    pondYear(report, units),
    digging
      ? figureHtml(
          'dig-figure',
          'When to dig how deep',
          (size) => digWindowFigure(digging, pond.depth_m, units, size),
          'Chance that the water in the ground stays below the floor of the dig all month.',
        )
      : '',
    table(waterMonthTable(report, units)),
    paragraph(
      'Depths are below, levels above (+) or below (−) the lowest natural ground at the rim. The floor counts as dry where the water table stays below the depth wished.',
      'note',
    ),
    standingWater(report, units),
    ...(report.fitted.length > 0
      ? [table(fittedTable(report, units)), paragraph(fittedNote(report.result.water.model), 'note')]
      : []),
  );
}
