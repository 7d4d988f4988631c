/** What identifies a page, who answers for what, and whose leave it needs. */

import type { Report } from '../contract/index.js';
import { CONSENTS, DIGEST_RECIPE, monthWords, SIGN_LINES } from '../text/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { rulesLine } from './designSection.js';
import { list, paragraph, section, text } from './markup.js';

/** How its level is kept. */
function keptWords({ kept, usual_drawdown_m }: Report['pond'], size: (value: number) => string): string {
  if (kept.habit === 'held') return `held ${size(usual_drawdown_m)} below it`;
  const habit =
    kept.within_m === null ? 'never topped up' : `topped up when it has fallen by ${size(kept.within_m)}`;
  return `${habit}, in a middle year at most ${size(usual_drawdown_m)} below it`;
}

/** The pond as the survey has it, in a sentence. */
function pondWords({ pond }: Report, units: UnitSystem): string {
  const size = (value: number) => formatQuantity(value, 'length', units);
  const emptied =
    pond.emptied_in === 'any'
      ? 'any month, none being named'
      : pond.emptied_in.length === 0
        ? 'no month'
        : monthWords(pond.emptied_in);
  return (
    `Pond as wished: ${pond.shape}, ${size(pond.length_m)} by ${size(pond.width_m)}, ${size(pond.depth_m)} deep below the lowest ground at the rim, ` +
    `sides ${Number(pond.side_slope.toPrecision(3))} horizontal to 1 vertical; full level ${formatQuantity(pond.full_level_m, 'level', units)}, ${keptWords(pond, size)}; ` +
    `${pond.ring_width_m > 0 ? `ring filled back beside the liner ${size(pond.ring_width_m)} wide` : 'no ring filled back beside the liner'}, ` +
    `${pond.bedding_m > 0 ? `bedding ${size(pond.bedding_m)} thick` : 'no bedding'}; ground at the rim up to ${size(pond.high_rim_m)} higher; emptied in ${emptied}.`
  );
}

/** Where the level of a flood at the outlet comes from; nothing without a drain that ends in one. */
function floodWords({ outlet, result }: Report, units: UnitSystem): string {
  if (!outlet) return '';
  const assumed = result.assumptions.some(({ item }) => item === 'flood_every');
  const level =
    outlet.flood_m === null
      ? 'nobody gave a mark, so it is assumed'
      : `${formatQuantity(outlet.flood_m, 'level', units)}, from the flood mark in levels.csv`;
  return `Flood level at ${outlet.name}: ${level}. It comes once in ${Number(outlet.flood_every.toPrecision(3))} years (${assumed ? 'assumed' : 'as the survey says'}).`;
}

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
      `Date of issue: ${text(issued ?? 'not said')}. Revision: ________`,
      ...(sheet ? [`Rules: ${text(rulesLine(sheet))}.`] : []),
      `Made with underpond ${text(version)}, seed ${drawn.seed}, ${drawn.samples} samples.`,
      ...(flood ? [text(flood)] : []),
    ]),
    `<p>Survey: ${text(survey.name)}. SHA-256 of its files: <code class="digest">${text(survey.sha256)}</code>. The same survey gives the same numbers.</p>`,
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
