/** The first screen: the answer, how far it holds, how sure it is, and the picture that shows why. */

import type { Report } from '../contract/index.js';
import { doubtedWords } from '../text/doubtedSurvey.js';
import { headlineOf } from '../text/headline.js';
import { lookedWords } from '../text/lookedWords.js';
import type { UnitSystem } from '../units/index.js';
import type { PrivatePart } from './leaveOut.js';
import { html, type Markup, paragraph } from './markup.js';

/**
 * The head of the page.
 * @param told - date of issue, ISO 8601, and what is left out
 * @param figure - drawn already
 */
export function headerHtml(
  report: Report,
  units: UnitSystem,
  { issued, leftOut }: { issued?: string; leftOut: readonly PrivatePart[] },
  figure: Markup,
): Markup {
  const { answer, margin, otherwise, chance, inHand, next } = headlineOf(report, units);
  const doubted = doubtedWords(report.result);
  const fact = (title: string, words: string) => html`<div><dt>${title}</dt><dd>${words}</dd></div>`;
  const meta = [
    ...(leftOut.includes('looks') ? [] : lookedWords(report)),
    ...(issued ? [`page of ${issued}`] : []),
  ].join(' · ');
  return html`<header>
<div class="place"><h1>${report.result.survey.name}</h1><p class="what">${meta}</p></div>
<div class="headline"><p class="order">${answer}</p>${paragraph(margin)}${otherwise ? paragraph(otherwise, 'otherwise') : ''}${doubted ? paragraph(doubted, 'otherwise') : ''}</div>
<dl class="facts">
${fact('How often it fails', chance)}
${fact('Safety margin', inHand)}
${fact('Next', next)}
</dl>
${figure}
</header>`;
}
