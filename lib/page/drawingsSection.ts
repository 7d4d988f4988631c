/** The drawings to dig by, each for a sheet of paper, and the table they are set out from. */
import type { Report } from '../contract/index.js';
import { drawingSheets } from '../figures/sheets.js';
import type { Table } from '../figures/table.js';
import {
  groundWords,
  levelPlain,
  pegName,
  plain,
  referenceNames,
  settingOutWords,
  tieText,
} from '../text/settingOutWords.js';
import type { UnitSystem } from '../units/index.js';
import { html, list, Markup, NONE, paragraph, section, table } from './markup.js';

export function drawingsSection(report: Report, units: UnitSystem, issued?: string): Markup {
  if (!report.setting_out) return NONE;
  const sheets = drawingSheets(report, units, issued).map(
    ({ name, paper, svg }) =>
      html`<figure class="sheet ${paper}"><h3>${name}</h3><div class="paper" tabindex="0" role="group" aria-label="${name}">${new Markup(svg)}</div></figure>`,
  );
  return section(
    'drawings',
    'Drawings to dig by',
    paragraph(
      'True to scale when printed at 100 %, each on its own sheet across the paper. Open the evidence before you print.',
      'note',
    ),
    ...sheets,
    html`<h3>Setting out</h3>`,
    list(settingOutWords(report, units)),
    table(settingOutTable(report, units), 'design'),
  );
}

/**
 * The setting-out table as the page shows it.
 * @param report - from {@link reportOf}
 * @param units - how numbers are written
 * @returns a row a peg; none where nothing is dug
 */
function settingOutTable({ setting_out: set }: Report, units: UnitSystem): Table {
  const [a, b] = set ? referenceNames(set) : ['', ''];
  return {
    name: 'Setting out',
    columns: [
      { key: 'peg', label: 'peg' },
      { key: 'marks', label: 'marks' },
      { key: 'x', label: 'x' },
      { key: 'y', label: 'y' },
      { key: 'tie_1', label: tieText(a) },
      { key: 'tie_2', label: tieText(b) },
      { key: 'side', label: 'side' },
      { key: 'level', label: 'level' },
      { key: 'mark', label: 'on the mark' },
      { key: 'dig', label: 'dig to' },
      { key: 'ground', label: 'ground' },
      { key: 'cut', label: 'cut' },
    ],
    rows: (set?.pegs ?? []).map((peg) => [
      String(peg.number),
      pegName(peg, units),
      plain(peg.x_m, units),
      plain(peg.y_m, units),
      plain(peg.ties_m[0], units),
      plain(peg.ties_m[1], units),
      peg.side,
      levelPlain(peg.level_m, units, '+'),
      levelPlain(peg.mark_m, units),
      levelPlain(peg.dug_m, units, '+'),
      peg.ground_m === null ? groundWords(peg) : levelPlain(peg.ground_m, units, '+'),
      peg.cut_m === null ? null : levelPlain(peg.cut_m, units),
    ]),
  };
}
