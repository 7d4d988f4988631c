/** The parts of the page on depth and limits. */

import { isDug, type Report } from '../contract/index.js';
import type { Figure } from '../figures/figure.js';
import { howDeepFigure } from '../figures/howDeepFigure.js';
import { hasPlan, planFigure } from '../figures/planFigure.js';
import { riskDepthFigure } from '../figures/riskDepthFigure.js';
import { sectionFigure } from '../figures/sectionFigure.js';
import type { Table } from '../figures/table.js';
import { optionTable } from '../figures/tables.js';
import { whichWaterFigure } from '../figures/whichWaterFigure.js';
import { spotWords, wishQuestion, wishWords } from '../text/asked.js';
import { CAUTIONS, FIRST_CAUTIONS } from '../text/cautions.js';
import { countedWords } from '../text/countedWords.js';
import { diggingLaw } from '../text/diggingLaw.js';
import { ADVICE_NAMES } from '../text/terms.js';
import { verdictWords } from '../text/verdictWords.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { acceptedRisksTable } from './acceptedRisks.js';
import { drawingHtml, figureHtml } from './figureHtml.js';
import { html, list, type Markup, NONE, paragraph, section, table } from './markup.js';

/** The picture of the first screen; nothing where no situation could be reckoned. */
export function firstFigure(report: Report, units: UnitSystem): Markup {
  const drawn = whichWaterFigure(report, units);
  return drawn.wide === ''
    ? NONE
    : drawingHtml(
        'which-water',
        'Which water wins?',
        drawn,
        'The liner stays down where the water inside, or what lies on it, stands higher than the water outside.',
        'h2',
      );
}

/** The pond cut through, with its ground; for whoever checks it. */
export function cutSection(report: Report, units: UnitSystem): Markup {
  return section(
    'cut',
    'The pond cut through',
    figureHtml(
      'section-figure',
      'The pond in section',
      (size) => sectionFigure(report, units, size),
      'Cut along the length. Under the pond it is level against level: the water outside lifts the liner where it stands higher than the water inside, at any depth of the floor.',
    ),
    planHtml(report, units),
  );
}

/** The plan, or the levelled points where the survey gives no places. */
function planHtml(report: Report, units: UnitSystem): Markup {
  return hasPlan(report)
    ? figureHtml(
        'plan-figure',
        'From above',
        (size): Figure => planFigure(report, units, size),
        "Places and levels as surveyed; levels count from the lowest natural ground at the rim, directions along the survey's own axes.",
      )
    : table(placesTable(report, units));
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

/** How deep is safe, and the what-if. */
export function depthSection(report: Report, units: UnitSystem, live: boolean): Markup {
  const spots = spotWords(report, units);
  return section(
    'depth',
    'How deep, with what',
    html`<h3>${wishQuestion(report, units)}</h3>`,
    paragraph(wishWords(report, units)),
    html`<details><summary>Why, with the numbers</summary>${paragraph(verdictWords(report, units).recommendation)}</details>`,
    drawingHtml(
      'how-deep',
      'How deep, with what?',
      howDeepFigure(report, units),
      'Solid: safe by every measure, digging included. Hatched: it fails, by what is named at the edge.',
    ),
    spots.length > 0
      ? html`<h3>Where in the garden, the best spot first</h3><ol>${spots.map((one) => html`<li>${one}</li>`)}</ol>`
      : '',
    live
      ? html`<div id="try"><h3 id="try-title">What if?</h3>${paragraph(
          'Try another depth, size, level or drain: it is computed again, here and offline. What is tried is no part of the record and is not printed.',
        )}<div id="what-if"><p class="note">The controls need the script of this page.</p></div></div>`
      : '',
  );
}

/** Every option side by side, for whoever checks it. */
export function comparedSection(report: Report, units: UnitSystem): Markup {
  const { options } = report.result;
  const possible = options.filter((option) => option.possible);
  const out = options
    .filter((option) => !option.possible)
    .map(
      ({ option, why_not }) =>
        html`<strong>${ADVICE_NAMES[option]}</strong>: ${why_not ?? 'no reason given'}`,
    );
  const { full, emptied, water, unknown } = verdictWords(report, units);
  const said = {
    'When it is full': full,
    'When it is emptied': emptied,
    'Where the water goes': water,
    'What is not known': unknown,
  };
  return section(
    'compared',
    'What was compared',
    ...Object.entries(said).map(([title, words]) => html`<h3>${title}</h3>${paragraph(words)}`),
    figureHtml(
      'risk-figure',
      'Risk against depth',
      (size) => riskDepthFigure(report, units, size),
      'Heavy: safe by every measure, digging included. Ring: the safe depth. Chances below 0.1 % lie in the grey strip, set apart only to be seen. Named along each line: what fails first there.',
    ),
    table(optionTable({ ...report, result: { ...report.result, options: possible } }, units), 'options'),
    paragraph(countedWords(report), 'note'),
    out.length > 0 ? html`<p>Not possible or not needed here:</p>${list(out)}` : '',
    table(acceptedRisksTable(report, units)),
  );
}

/** What the country asks of whoever digs. */
function lawHtml(rules: Report['rules']): Markup[] {
  const { title, points } = diggingLaw(rules);
  return [html`<h3>${title}</h3>`, list(points)];
}

/** What the numbers do not cover, and what no number covers; where it is dug the steps have said some of it. */
export function limitsSection({ result, rules }: Report): Markup {
  const dug = isDug(result);
  const items = CAUTIONS.filter(
    ({ title, drained }) => (!drained || result.drain !== null) && !(dug && FIRST_CAUTIONS.includes(title)),
  ).map(({ title, text: words }) => html`<strong>${title}.</strong> ${words}`);
  return section(
    'limits',
    'Limits and cautions',
    list([
      'Valid for this site, these dates and these inputs only.',
      'Holes show the ground at the holes; water can stand higher than was seen.',
      'One water table for the clay; no frost, earthquake, tree roots or flow in three dimensions.',
      'Slabs, walls and raised banks are sized for water only; their structure needs an engineer.',
    ]),
    html`<h3>Cautions</h3>`,
    list(items),
    ...lawHtml(rules),
  );
}
