/** What identifies a page, who answers for what, and whose leave it needs. */

import type { Report } from '../contract/index.js';
import { rulesLine } from '../text/designVerdict.js';
import { floodWords } from '../text/floodWords.js';
import { CONSENTS, DIGEST_RECIPE, issuedLine, SIGN_LINES } from '../text/index.js';
import { pondWords } from '../text/pondWords.js';
import { drawnWith, surveyNamed } from '../text/recordWords.js';
import type { UnitSystem } from '../units/index.js';
import { list, paragraph, section, text } from './markup.js';

/** A line with room to write on. */
const blank = (title: string, note: string) => `<div><dt>${text(title)}</dt><dd>${text(note)}</dd></div>`;

export function signSection(
  report: Report,
  units: UnitSystem,
  { version, issued }: { version: string; issued?: string },
): string {
  const { result, drawn } = report;
  const { survey, design_sheet: sheet } = result;
  const drained = result.drain !== null;
  const flood = floodWords(report, units);
  return section(
    'sign',
    'Inputs, digest and sign-off',
    paragraph(pondWords(report, units)),
    list([
      text(issuedLine(issued)),
      ...(sheet ? [`Rules: ${text(rulesLine(sheet))}.`] : []),
      text(drawnWith(version, drawn.seed, drawn.samples)),
      ...(flood ? [text(flood)] : []),
    ]),
    `<p>${text(surveyNamed(survey.name))} SHA-256 of its files: <code class="digest">${text(survey.sha256)}</code>. The same survey gives the same numbers.</p>`,
    list(
      Object.entries(survey.files).map(
        ([file, digest]) =>
          `<code class="digest" data-file="${text(file)}">${text(digest)}</code> ${text(file)}`,
      ),
    ),
    paragraph(DIGEST_RECIPE, 'note'),
    '<h3>Leave that may be needed</h3>',
    paragraph('Whoever is in charge says whether it is. A line left empty was not asked.', 'note'),
    `<dl class="sign">${CONSENTS.filter((each) => !each.drained || drained)
      .map(({ what }) => blank(what, 'reference, date'))
      .join('')}</dl>`,
    '<h3>Who answers for what</h3>',
    `<dl class="sign">${SIGN_LINES.map(({ who, covers }) => blank(`${who}: ${covers}`, 'name, date')).join('')}</dl>`,
  );
}
