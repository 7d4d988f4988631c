/** The parts of the page below the verdict. */

import type { Report } from '../contract/index.js';
import { digWindowFigure } from '../figures/digWindowFigure.js';
import { hasPlan, planFigure } from '../figures/planFigure.js';
import { riskDepthFigure } from '../figures/riskDepthFigure.js';
import { sectionFigure } from '../figures/sectionFigure.js';
import type { Table } from '../figures/table.js';
import { optionTable, waterMonthTable } from '../figures/tables.js';
import { waterYearFigure } from '../figures/waterYearFigure.js';
import { ADVICE_NAMES, ruleWords, sentence, turnWords } from '../figures/words.js';
import { monthWords } from '../text/index.js';
import { chanceText } from '../text/say.js';
import { formatBound, formatQuantity, type UnitSystem } from '../units/index.js';
import { acceptedRisksTable } from './acceptedRisks.js';
import { doubtWords, spotWords, wishWords } from './asked.js';
import { CAUTIONS } from './cautions.js';
import { figureHtml } from './figureHtml.js';
import { list, paragraph, section, table, text } from './markup.js';
import { measurementWords } from './nextWords.js';
import { pondYear } from './pondYear.js';
import { standingWater } from './standingWater.js';
import { todayWords } from './today.js';

/** Rules of use with their months. */
export function rulesSection(report: Report, units: UnitSystem): string {
  const rules = report.result.recommendation.rules.map(({ code, months, level_m, text: words }) => {
    const when = [
      ...(months && months.length > 0 ? [monthWords(months)] : []),
      ...(level_m === undefined ? [] : [formatBound(level_m, 'level', units, 'up')]),
    ].join(', ');
    return `<strong>${text(ruleWords(code))}</strong>${when ? ` <span class="when">${text(when)}</span>` : ''}<br>${text(words)}`;
  });
  return section(
    'rules',
    'What to do',
    list(rules),
    '<h3 id="today">May I lower it today?</h3>',
    paragraph(todayWords(report, units)),
  );
}

/** Section and plan. */
export function picturesSection(report: Report, units: UnitSystem): string {
  return section(
    'pictures',
    'The pond, cut through and from above',
    figureHtml(
      'section-figure',
      'The pond in section',
      (size) => sectionFigure(report, units, size),
      'Cut along the length. Under the pond it is level against level: the water outside lifts the liner where it stands higher than the water inside, at any depth of the floor.',
    ),
    hasPlan(report)
      ? figureHtml(
          'plan-figure',
          'From above',
          (size) => planFigure(report, units, size),
          "Places and levels as surveyed; levels count from the lowest natural ground at the rim, directions along the survey's own axes.",
        )
      : table(placesTable(report, units)),
  );
}

/** Levelled points where the survey gives no places for a plan. */
function placesTable({ points }: Report, units: UnitSystem): Table {
  return {
    name: 'Levelled points',
    columns: [
      { key: 'point', label: 'point' },
      { key: 'role', label: 'what it is' },
      { key: 'distance', label: "from the pond's edge" },
      { key: 'level', label: 'level from the lowest ground at the rim' },
    ],
    rows: points.map(({ name, role, distance_m, level_m }) => [
      name,
      role.replaceAll('-', ' '),
      distance_m === null ? null : formatQuantity(distance_m, 'length', units),
      formatQuantity(level_m, 'level', units),
    ]),
  };
}

/** A value at which the answer turns; one without a unit is a chance. */
function amountText(amount: number, unit: string, units: UnitSystem): string {
  if (unit === '') return chanceText(amount);
  const kind = ({ m: 'level', 'm/s': 'conductivity', Pa: 'pressure' } as const)[unit];
  return kind ? formatQuantity(amount, kind, units) : `${Number(amount.toPrecision(3))} ${unit}`;
}

/** How deep is safe, what was compared, and where the answer turns. */
export function depthSection(report: Report, units: UnitSystem): string {
  const { options, tipping_points } = report.result;
  const possible = options.filter((option) => option.possible);
  const out = options
    .filter((option) => !option.possible)
    .map(
      ({ option, why_not }) =>
        `<strong>${ADVICE_NAMES[option]}</strong>: ${text(why_not ?? 'no reason given')}`,
    );
  const compared = optionTable({ ...report, result: { ...report.result, options: possible } }, units);
  const turns = tipping_points.map(({ input, value: at, unit, from, now, ...turn }) =>
    text(
      `${sentence(input)} at ${amountText(at, unit, units)} (now ${amountText(typeof now === 'number' ? now : now.p50, unit, units)}): from “${ADVICE_NAMES[from].toLowerCase()}” to “${turnWords(turn).toLowerCase()}”.`,
    ),
  );
  const spots = spotWords(report, units);
  return section(
    'depth',
    'How deep is safe',
    `<h3>May I dig ${formatQuantity(report.pond.depth_m, 'length', units)} deep, as wished?</h3>`,
    paragraph(wishWords(report, units)),
    figureHtml(
      'risk-figure',
      'Risk against depth',
      (size) => riskDepthFigure(report, units, size),
      'Heavy: safe by every measure, digging included. Ring: the safe depth. Chances below 0.1 % lie in the grey strip, set apart only to be seen. Named along each line: what fails first there.',
    ),
    turns.length > 0
      ? `<h3>Where the answer turns</h3><p>One value alone would have to come to:</p>${list(turns)}`
      : '',
    '<h3>What the answer hangs on</h3>',
    paragraph(doubtWords(report)),
    spots.length > 0
      ? `<h3>Where in the garden, the best spot first</h3><ol>${spots.map((one) => `<li>${text(one)}</li>`).join('')}</ol>`
      : '',
    '<h3>What was compared</h3>',
    table(compared, 'options'),
    paragraph(
      `Chances are counted over draws of everything unknown and all years of the weather; accepted is ${chanceText(report.accepted_risk)} a year; its life is counted as ${report.life_years} years. ` +
        'Chances per dig are counted for one excavation and not added to those per year.',
      'note',
    ),
    out.length > 0 ? `<p>Not possible or not needed here:</p>${list(out)}` : '',
    table(acceptedRisksTable(report, units)),
  );
}

/** Where the what-if is built by the page's script. */
export function whatIfSection(): string {
  return section(
    'try',
    'What if?',
    paragraph(
      'Try another depth, size, level or drain: the same library computes it again, here and offline. What is tried is not part of the record above and below, and is not printed. A depth is tried in the water as it was simulated for the depth wished; for the record, write it into pond.csv and run the analysis again.',
    ),
    '<div id="what-if"><p class="note">The controls need the script of this page, which does not run here.</p></div>',
  );
}

/** Water and digging through the year. */
export function yearSection(report: Report, units: UnitSystem): string {
  const { digging, pond } = report;
  return section(
    'year',
    'The water through the year, and when to dig',
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
  );
}

/** What drives the answer, and what would make it surer. */
export function surerSection({ result }: Report): string {
  const { measure_next, close_call } = result.recommendation;
  const next = measure_next.map((one) => text(`${sentence(measurementWords(one))}.`));
  return section(
    'surer',
    'Sensitivity: what drives the answer, and what would make it surer',
    close_call
      ? '<p>It is a close call: within the error of the sampling the verdict could go either way.</p>'
      : '',
    table({
      name: 'What the doubt about the chance comes from',
      columns: [
        { key: 'input', label: 'input' },
        { key: 'share', label: 'share of the doubt that would go if it were known' },
      ],
      rows: result.drivers.map(({ input, first_order }) => [input, chanceText(Math.max(first_order, 0))]),
    }),
    next.length > 0
      ? `<h3>To measure next, the most telling first</h3>${list(next)}`
      : '<p>No measurement that was tried would change the answer.</p>',
    '<p>The values at which the answer turns stand under <a href="#depth">How deep is safe</a>.</p>',
  );
}

/** What the numbers do not cover, and what no number covers. */
export function limitsSection({ result }: Report): string {
  const items = CAUTIONS.filter(({ drained }) => !drained || result.drain !== null).map(
    ({ title, text: words }) => `<strong>${title}.</strong> ${text(words)}`,
  );
  return section(
    'limits',
    'Limits and cautions',
    list([
      'Valid for this site, these dates and these inputs only.',
      'Holes show the ground at the holes; water can stand higher than was seen.',
      'One water table for the clay; no frost, earthquake, tree roots or flow in three dimensions.',
      'Slabs, walls and raised banks are sized for water only; their structure needs an engineer.',
    ]),
    '<h3>Cautions</h3>',
    list(items),
  );
}
