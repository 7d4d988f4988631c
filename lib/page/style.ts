/** Looks of the what-if, in the page and under a notebook's cell, where the root may be 10 px: its sizes are its own. */
export const PANEL_STYLE = `
.what-if { --soft: #555b62; --ink: #22262b; --rule: #d5d0c4; --water: #1f5f8b; color: var(--ink); font: max(.9rem, 14.4px)/1.4 system-ui, "Segoe UI", Roboto, Arial, sans-serif; container-type: inline-size; }
.what-if .form { background: #f4f1ea; border: 1px solid var(--rule); padding: .75em 1em; margin: .75em 0; }
.what-if .controls { display: grid; grid-template-columns: repeat(auto-fill, minmax(17em, 1fr)); gap: .6em 1.25em; }
.what-if .control { display: grid; grid-template-columns: 1fr auto; align-items: baseline; } .what-if .control input, .what-if .control select { grid-column: 1 / -1; width: 100%; min-height: 1.75em; margin: 0; accent-color: var(--water); } .what-if .control output { font-weight: 700; }
.what-if button, .what-if select { font: inherit; padding: .35em .6em; border: 1px solid var(--soft); background: #fff; color: var(--ink); border-radius: 3px; } .what-if .buttons { display: flex; flex-wrap: wrap; gap: .5em; margin: .75em 0; }
.what-if .answer { padding: .6em .8em; background: #f4f1ea; border-left: 4px solid var(--water); position: sticky; top: 0; z-index: 1; } .what-if .answer p { margin: .1em 0; font-size: 1em; } .what-if .note { color: var(--soft); font-size: .89em; } .what-if summary { padding: .6em 0; cursor: pointer; }
.what-if .safe { color: #2f6627; font-weight: 700; } .what-if .unsafe { color: #98401f; font-weight: 700; }
.what-if .told { font-size: .94em; min-height: 1.4em; margin: .4em 0 0; overflow-wrap: anywhere; } .what-if textarea { width: 100%; font: .89em/1.4 ui-monospace, Consolas, monospace; border: 1px solid var(--soft); }
.what-if table { border-collapse: collapse; width: 100%; font-size: .93em; } .what-if td, .what-if th { text-align: left; padding: .25em .6em .25em 0; border-bottom: 1px solid var(--rule); vertical-align: top; } .what-if .pictures { margin: .75em 0; } .what-if .drawing svg { display: block; width: 100%; height: auto; } .what-if.stale .pictures, .what-if.stale .answer p { opacity: .5; }
`;

/** Looks of the page, on a phone, a desk and paper. */
export const STYLE = `
:root { color-scheme: light; --ink: #22262b; --soft: #555b62; --paper: #fff; --ground: #f4f1ea; --rule: #d5d0c4; --water: #1f5f8b; --clay: #98401f; --good: #2f6627; }
* { box-sizing: border-box; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.5 Charter, "Bitstream Charter", "Iowan Old Style", Georgia, serif; }
header, main, nav { max-width: 45.125rem; margin: 0 auto; padding: 0 1rem; } main:focus { outline: none; }
.skip { position: absolute; left: -99rem; } .skip:focus { left: 1rem; top: .5rem; background: var(--paper); padding: .5rem; z-index: 1; }
h1, h2, h3, h4, caption, th, .when, .note, nav, label, output, td, legend, button, select, input, summary, .plain { font-family: system-ui, "Segoe UI", Roboto, "Helvetica Neue", Arial, sans-serif; }
h1 { font-size: 1.6rem; line-height: 1.2; margin: 1.5rem 0 .25rem; }
h2 { font-size: 1.2rem; margin: 2.5rem 0 .5rem; padding-top: .5rem; border-top: 2px solid var(--ink); }
h3 { font-size: 1rem; margin: 1.5rem 0 .25rem; } h4 { font-size: .95rem; margin: 0 0 .25rem; }
.what { color: var(--soft); margin: 0 0 1rem; }
.units { float: right; margin: -.75rem 0 .5rem 1rem; font-size: .85rem; padding: .35rem .6rem; border: 1px solid var(--soft); border-radius: 3px; background: #fff; color: var(--ink); }
.advice { clear: both; margin: 0 0 1rem; padding: .75rem 1rem; background: var(--ink); color: #fff; }
.advice h2 { border: 0; margin: 0 0 .25rem; padding: 0; font-size: .95rem; color: #fff; }
.advice p { margin: 0; font-size: 1.05rem; }
.verdict { display: grid; grid-template-columns: 1fr 1fr; gap: 1px; background: var(--rule); border: 1px solid var(--rule); }
.verdict > div { background: var(--ground); padding: .6rem .9rem .8rem; }
.verdict h2 { border: 0; margin: 0 0 .25rem; padding: 0; font-size: .95rem; color: var(--water); }
.verdict p { margin: 0; font-size: .95rem; line-height: 1.42; }
nav { font-size: .9rem; margin-top: 1.25rem; } nav h2 { font-size: .95rem; border: 0; margin: 0; padding: 0; } nav ol { columns: 2; column-gap: 2rem; margin: .25rem 0 0; padding-left: 1.5rem; } nav li { margin: 0; padding: .1rem 0; break-inside: avoid; }
a { color: var(--water); } a:focus-visible, button:focus-visible, input:focus-visible, select:focus-visible, summary:focus-visible, .table:focus-visible { outline: 3px solid var(--water); outline-offset: 2px; }
ul { padding-left: 1.1rem; } li { margin: .35rem 0; }
.when { font-size: .85rem; color: var(--clay); margin-left: .35rem; }
.note { font-size: .85rem; color: var(--soft); }
.check { border-left: 4px solid var(--water); padding-left: .75rem; }
figure { margin: 1.25rem 0; } figcaption { font-size: .9rem; color: var(--soft); } figure h3 { margin-top: 0; }
.drawing svg { display: block; width: 100%; height: auto; } .narrow { display: none; }
.photo { display: inline-block; margin: .5rem 1rem .5rem 0; max-width: 20rem; vertical-align: top; } .photo img { display: block; max-width: 100%; height: auto; }
.table { overflow-x: auto; } table { border-collapse: collapse; width: 100%; font-size: .84rem; line-height: 1.35; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-weight: 600; padding: .5rem 0; }
th, td { text-align: left; vertical-align: top; padding: .3rem .5rem .3rem 0; border-bottom: 1px solid var(--rule); overflow-wrap: break-word; }
th { font-weight: 600; color: var(--soft); } thead th { vertical-align: bottom; border-bottom-color: var(--ink); }
.options table { font-size: .8rem; }
.methods td { overflow-wrap: anywhere; }  summary { cursor: pointer; padding: .4rem 0; }
.step { border-left: 3px solid var(--rule); padding: .1rem 0 .1rem .8rem; margin: .75rem 0 1.25rem; } .step p { margin: .25rem 0; } .equation, .result { font-family: ui-monospace, Consolas, "DejaVu Sans Mono", monospace; font-size: .9rem; overflow-wrap: anywhere; } .result { font-weight: 700; } .inputs caption { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); padding: 0; } .inputs table { font-size: .8rem; } @media (min-width: 35.01rem) { .inputs td:nth-child(1) { width: 2.5rem; } } .inputs td:nth-child(3) { white-space: nowrap; }
.safe { color: var(--good); font-weight: 600; } .unsafe { color: var(--clay); font-weight: 600; }
.share label { display: block; margin: .35rem 0; } .share button { font: inherit; margin: .35rem 0; padding: .35rem .6rem; }
code { font-size: .85em; } .digest, p, li { overflow-wrap: anywhere; }
.sign { margin: 1rem 0 2rem; } .sign div { margin-top: 1.9rem; border-top: 1px solid var(--ink); } .sign dt { font-size: .9rem; } .sign dd { margin: 0; font-size: .8rem; color: var(--soft); }
${PANEL_STYLE}
@media (max-width: 35rem) { .verdict { grid-template-columns: 1fr; } h1 { font-size: 1.35rem; } body { font-size: .97rem; } nav ol { columns: 1; } nav li { padding: .3rem 0; } .wide { display: none; } .narrow { display: block; }
  .stacks table, .stacks tbody, .stacks tr, .stacks td, .stacks caption { display: block; } .stacks thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); } .stacks tr { padding: .4rem 0; border-bottom: 1px solid var(--rule); }
  .stacks td { padding: .05rem 0; border: 0; text-align: left; } .stacks td:not(:first-child) { display: grid; grid-template-columns: minmax(0, 2fr) minmax(0, 3fr); column-gap: .75rem; } .stacks td::before { content: attr(data-label); color: var(--soft); } .stacks td:first-child { font-weight: 600; } .stacks td:first-child::before { content: none; } .stacks td:empty { display: none; }
  .inputs tr { display: grid; grid-template-columns: 2rem minmax(0, 1fr); } .inputs td:not(:first-child) { display: block; grid-column: 2; } .inputs td::before { display: none; } .inputs td:first-child { grid-row: 1 / span 3; } .inputs td:nth-child(3) { order: -1; }
}
@page { margin: 14mm 13mm 16mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt system-ui, Arial, sans-serif; color: #555b62; } }
@media print {
  body { font-size: 10.5pt; } header, main, nav { max-width: 690px; padding: 0; } .skip, .units, .share, #try, nav li:has([href='#try']) { display: none; } .wide { display: block; } .narrow { display: none; }
  .advice { background: none; color: var(--ink); border: 2px solid var(--ink); } .advice h2 { color: var(--ink); } a { color: inherit; text-decoration: none; }
  figure, .verdict, .advice, li, tr, .sign div, .step { break-inside: avoid; } h2, h3, h4, caption, thead { break-after: avoid; } #neighbour, #check, #sign { break-before: page; } nav ol { columns: 2; }
  .table { overflow: visible; } .options table, .methods table { font-size: 7.5pt; }
  details::details-content { content-visibility: visible; block-size: auto; } summary { list-style: none; }
}
`;
