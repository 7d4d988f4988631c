/** What identifies a page, who answers for what, and whose leave it needs. */

import type { Report } from '../contract/index.js';
import { rulesLine } from '../text/designVerdict.js';
import { floodWords } from '../text/floodWords.js';
import { CONSENTS, DIGEST_RECIPE, issuedLine, SIGN_LINES } from '../text/index.js';
import { pondWords } from '../text/pondWords.js';
import { drawnWith, surveyNamed } from '../text/recordWords.js';
import type { UnitSystem } from '../units/index.js';
import { html, list, type Markup, paragraph, section } from './markup.js';

/** A line with room to write on. */
const blank = (title: string, note: string) => html`<div><dt>${title}</dt><dd>${note}</dd></div>`;

export function signSection(
  report: Report,
  units: UnitSystem,
  { version, issued }: { version: string; issued?: string },
): Markup {
  const { result, drawn } = report;
  const { survey, design_sheet: sheet } = result;
  const drained = result.drain !== null;
  const flood = floodWords(report, units);
  return section(
    'sign',
    'Inputs, digest and sign-off',
    paragraph(pondWords(report, units)),
    list([
      issuedLine(issued),
      ...(sheet ? [`Rules: ${rulesLine(sheet)}.`] : []),
      drawnWith(version, drawn.seed, drawn.samples),
      ...(flood ? [flood] : []),
    ]),
    html`<p>${surveyNamed(survey.name)} SHA-256 of its files: <code class="digest">${survey.sha256}</code>. The same survey gives the same numbers.</p>`,
    list(
      Object.entries(survey.files).map(
        ([file, digest]) => html`<code class="digest" data-file="${file}">${digest}</code> ${file}`,
      ),
    ),
    paragraph(DIGEST_RECIPE, 'note'),
    html`<h3>Leave that may be needed</h3>`,
    paragraph('Whoever is in charge says whether it is. A line left empty was not asked.', 'note'),
    html`<dl class="sign">${CONSENTS.filter((each) => !each.drained || drained).map(({ what }) =>
      blank(what, 'reference, date'),
    )}</dl>`,
    html`<h3>Who answers for what</h3>`,
    html`<dl class="sign">${SIGN_LINES.map(({ who, covers }) => blank(`${who}: ${covers}`, 'name, date'))}</dl>`,
  );
}
