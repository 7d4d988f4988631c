/** What changed from one survey to another as a page, in the words of the terminal. */

import { comparedTitle, SAME_ANSWER, SAME_INPUTS } from '../text/changedText.js';
import { type Case, changesOf } from './changes.js';
import { html, list, Markup, paragraph, table } from './markup.js';
import { policyOf } from './policy.js';

const STYLE = `
:root { color-scheme: light dark; --ink: #22262b; --soft: #555b62; --paper: #fff; --rule: #d5d0c4; --water: #1f5f8b; }
@media (prefers-color-scheme: dark) { :root { --ink: #e8e6e1; --soft: #aeb4ba; --paper: #14181c; --rule: #3d444b; --water: #86c2ea; } }
* { box-sizing: border-box; } body { margin: 0 auto; max-width: 60rem; padding: 1rem; background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, "Segoe UI", Roboto, "Helvetica Neue", Arial, sans-serif; overflow-wrap: anywhere; }
h1 { font-size: 1.5rem; line-height: 1.2; margin: 0 0 1rem; } h2 { font-size: 1.15rem; margin: 1.5rem 0 .25rem; }
.table { overflow-x: auto; } .table:focus-visible { outline: 3px solid var(--water); outline-offset: 2px; } table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; table-layout: fixed; } caption { text-align: left; font-weight: 700; font-size: 1.15rem; padding: .75rem 0 .25rem; }
th, td { text-align: left; vertical-align: top; padding: .4rem .75rem .4rem 0; border-bottom: 1px solid var(--rule); } th { color: var(--soft); font-weight: 600; } td:last-child { font-weight: 700; }
@media (max-width: 35rem) { body { font-size: .94rem; } th, td { padding-right: .4rem; } }
@page { margin: 16mm; }
`;

/**
 * The comparison as one small HTML file that opens offline, makes no request and runs nothing.
 * @param before - the earlier survey with its result, and what it is called
 * @param after - the later one
 * @param noticed - what was given and not used, as lines of text
 * @returns HTML as text, to be written as UTF-8
 */
export function changesPage(
  before: Case & { called: string },
  after: Case & { called: string },
  noticed: readonly string[] = [],
): string {
  const { answer, inputs } = changesOf(before, after);
  const title = comparedTitle(before.called, after.called);
  const said = noticed.filter((line) => line.trim() !== '');
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${new Markup(policyOf([], STYLE))}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<style>${new Markup(STYLE)}</style>
</head>
<body>
<main>
<h1>${title}</h1>
${answer.rows.length > 0 ? table(answer) : paragraph(SAME_ANSWER)}
${inputs.rows.length > 0 ? table(inputs) : paragraph(SAME_INPUTS)}
${said.length > 0 ? html`<section><h2>What was said of the files</h2>${list(said)}</section>` : ''}
</main>
</body>
</html>
`.html;
}
