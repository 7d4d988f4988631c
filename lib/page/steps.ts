/** What to do, in the order in which it is done. */

import { BEFORE_DIGGING, isDug, type Report } from '../contract/index.js';
import { underLiner } from '../figures/sheetSection.js';
import { CUTOFF } from '../options/index.js';
import { CAUTIONS, FIRST_CAUTIONS } from '../text/cautions.js';
import { duringMonths, monthWords } from '../text/index.js';
import { nothingYet } from '../text/nextStep.js';
import { PHASES, type Phase, RULE_NAMES } from '../text/ruleNames.js';
import { cutoffStep, digStep, LAY, lineStep, STOP, STOPPED } from '../text/stepWords.js';

import type { UnitSystem } from '../units/index.js';
import { html, type Markup, NONE, type Part, paragraph, section } from './markup.js';

const TITLES: Record<Phase, string> = {
  ask: 'Before anything else',
  dig: 'Dig',
  build: 'Before the liner goes in',
  fill: 'Line it and fill it',
  keep: 'Keep the water up',
  empty: 'Lower the water only so',
};

/** What comes before the first spade. */
const SAFETY = CAUTIONS.filter(({ title }) => FIRST_CAUTIONS.includes(title)).map(
  ({ title, text: words }) => html`<strong>${title}.</strong> ${words}`,
);

/** A rule after its name; a name or months that its sentence says itself are not said before it. */
function ruleItem({
  code,
  months,
  text: words,
}: Report['result']['recommendation']['rules'][number]): Markup {
  const name = RULE_NAMES[code].title;
  const within = months && months.length > 0 && months.length < 12 ? monthWords(months) : '';
  const isSaid = words.includes(within) || words.includes(duringMonths(months ?? []));
  const when = within !== '' && !isSaid ? html` <span class="when">${within}</span>` : '';
  return words.startsWith(name)
    ? html`<li><strong>${name}</strong>${when}${words.slice(name.length)}</li>`
    : html`<li><strong>${name}.</strong>${when} ${words}</li>`;
}

/**
 * Five to seven steps, each with its rules.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 */
export function stepsSection(report: Report, units: UnitSystem): Markup {
  const { rules, option } = report.result.recommendation;
  const dug = isDug(report.result);
  const drained = report.result.drain && !report.result.recommendation.as_built;
  const own: Partial<Record<Phase, Part[]>> = {
    ask: dug ? SAFETY : [],
    dig: dug
      ? [cutoffStep(report, CUTOFF, units), digStep(report.result, underLiner(report), units), STOP].filter(
          (words) => words !== '',
        )
      : [],
    build: drained && dug ? [LAY] : [],
    fill: dug ? [lineStep(report)] : [],
  };
  const waits = BEFORE_DIGGING.includes(option);
  const told = rules.some(({ code }) => code === 'if-drain-stops' || code === 'full-if-power-fails');
  const stopped =
    report.result.drain && !told
      ? [html`<li><strong>${RULE_NAMES['if-drain-stops'].title}.</strong> ${STOPPED}</li>`]
      : [];
  const steps = PHASES.map((phase) => {
    const first = (own[phase] ?? []).map((words) => html`<li>${words}</li>`);
    const told = rules.filter(({ code }) => RULE_NAMES[code].phase === phase).map(ruleItem);
    const items = [...first, ...told, ...(phase === 'keep' ? stopped : [])];
    const title = phase === 'build' && !dug ? 'Around the liner' : TITLES[phase];
    return {
      phase,
      item: items.length === 0 ? [] : [html`<li><h3>${title}</h3><ul>${items}</ul></li>`],
    };
  });
  const listed = (of: typeof steps) => {
    const all = of.flatMap(({ item }) => item);
    return all.length === 0 ? NONE : html`<ol class="steps">${all}</ol>`;
  };
  if (!waits) return section('do', 'Do this', listed(steps));
  const now = listed(steps.filter(({ phase }) => phase === 'ask'));
  // What would hold of a pond that is not to be dug now is for later.
  const later = listed(steps.filter(({ phase }) => phase !== 'ask'));
  return section(
    'do',
    'What to do now',
    now.html === '' ? paragraph(`${nothingYet(report.pond.existing)}.`) : now,
    later.html === ''
      ? NONE
      : html`<details><summary>${report.pond.existing ? 'Rules for the pond as it is' : 'Rules that would hold for the pond as wished'}</summary>${later}</details>`,
  );
}
