import { FIGURE_STYLE } from '../figures/drawing.js';

/** Looks of the what-if, in the page and under a notebook's cell, where the root may be 10 px: its sizes are its own. */
export const PANEL_STYLE = `
.what-if { --soft: #555b62; --ink: #22262b; --rule: #d5d0c4; --water: #1f5f8b; --field: #fff; --box: #f4f1ea; --good: #2f6627; --clay: #98401f; color: var(--ink); font: max(.9rem, 14.4px)/1.4 system-ui, "Segoe UI", Roboto, Arial, sans-serif; container-type: inline-size; }
.what-if .form { background: var(--box); border: 1px solid var(--rule); padding: .5em 1em 0; margin: .5em 0; }
.what-if .controls { display: grid; grid-template-columns: repeat(auto-fill, minmax(17em, 1fr)); gap: .25em 1.25em; }
.what-if .control { display: grid; align-content: start; } @container (min-width: 44rem) { .what-if .form > .controls { grid-template-columns: 2fr 1fr; } } .what-if .number { display: grid; grid-template-columns: 1fr 7.5em; gap: .75em; align-items: center; }
.what-if input, .what-if select { width: 100%; min-height: 44px; margin: 0; accent-color: var(--water); } .what-if .typed { font: inherit; font-weight: 700; border: 1px solid var(--soft); border-radius: 3px; padding: .35em .5em; background: var(--field); color: var(--ink); box-sizing: border-box; } .what-if .typed[aria-invalid=true] { border: 2px solid var(--clay); }
.what-if button, .what-if select { font: inherit; min-height: 44px; padding: .35em .6em; border: 1px solid var(--soft); background: var(--field); color: var(--ink); border-radius: 3px; } .what-if .buttons { display: flex; flex-wrap: wrap; gap: .5em; margin: .25em 0; }
.what-if .answer { padding: .6em .8em; background: var(--box); border-left: 4px solid var(--water); } .what-if .answer p { margin: .1em 0; } .what-if .answer > p:first-child { font-size: 1.15em; line-height: 1.3; } .what-if .note { color: var(--soft); font-size: .89em; } .what-if summary { padding: .7em 0; min-height: 44px; box-sizing: border-box; cursor: pointer; }
.what-if .safe { color: var(--good); font-weight: 700; } .what-if .unsafe { color: var(--clay); font-weight: 700; } .what-if .ruled { color: var(--ink); font-weight: 700; }
.what-if .told { font-size: .94em; margin: .4em 0; overflow-wrap: anywhere; } .what-if .told:empty { display: none; } .what-if .spoken { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); margin: 0; } .what-if textarea { width: 100%; box-sizing: border-box; font: .89em/1.4 ui-monospace, Consolas, monospace; border: 1px solid var(--soft); background: var(--field); color: var(--ink); }
.what-if table { border-collapse: collapse; width: 100%; font-size: .93em; } .what-if caption { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); padding: 0; } .what-if td, .what-if th { text-align: left; padding: .25em .6em .25em 0; border-bottom: 1px solid var(--rule); vertical-align: top; } .what-if .answer td:last-child { font-weight: 700; } .what-if .pictures { margin: .5em 0; } .what-if .drawing svg { display: block; width: 100%; height: auto; }
.what-if.stale .answer, .what-if.stale .pictures, .what-if.stale > details { visibility: hidden; }
`;

/** Looks of the page, on a phone, a desk and paper. */
export const STYLE = `
:root { color-scheme: light dark; --ink: #22262b; --soft: #555b62; --paper: #fff; --ground: #f4f1ea; --rule: #d5d0c4; --water: #1f5f8b; --clay: #98401f; --good: #2f6627; }
@media (prefers-color-scheme: dark) { :root { --ink: #e8e6e1; --soft: #aeb4ba; --paper: #14181c; --ground: #22282e; --rule: #3d444b; --water: #86c2ea; --clay: #ff9d85; --good: #9ad08f; } .drawing { background: #fff; color: #22262b; padding: .5rem; } body .what-if { --soft: #aeb4ba; --ink: #e8e6e1; --rule: #3d444b; --water: #86c2ea; --field: #14181c; --box: #22282e; --good: #9ad08f; --clay: #ff9d85; } }
* { box-sizing: border-box; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.45 system-ui, "Segoe UI", Roboto, "Helvetica Neue", Arial, sans-serif; }
header, .columns { max-width: 68.75rem; margin: 0 auto; padding: 0 1rem; } main:focus { outline: none; }
.columns { display: grid; grid-template-columns: 13rem minmax(0, 1fr); gap: 2.5rem; align-items: start; }
.skip { position: absolute; left: -99rem; } .skip:focus { left: 1rem; top: .5rem; background: var(--paper); padding: .5rem; z-index: 1; }
.place { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0 1rem; border-bottom: 1px solid var(--rule); padding: .6rem 0; }
h1 { font-size: 1.05rem; margin: 0; } .what { color: var(--soft); margin: 0; font-size: .85rem; flex: 1 1 14rem; overflow-wrap: normal; }
h2 { font-size: 1.35rem; line-height: 1.25; margin: 1.5rem 0 .5rem; padding-top: .6rem; border-top: 2px solid var(--ink); }
h3 { font-size: 1.02rem; margin: 1rem 0 .2rem; } h4 { font-size: .95rem; margin: 0 0 .25rem; }
.headline { margin: 1.25rem 0 1rem; } .order { font-size: clamp(1.6rem, 4.2vw, 2.5rem); line-height: 1.15; font-weight: 700; margin: 0; text-wrap: balance; letter-spacing: -.01em; } .headline p + p { font-size: 1.15rem; margin: .4rem 0 0; }
.facts { display: grid; grid-template-columns: repeat(3, 1fr); gap: 1.5rem; margin: 0 0 .5rem; } .facts dt { font-weight: 700; color: var(--water); font-size: .85rem; border-top: 2px solid var(--water); padding-top: .3rem; } .facts dd { margin: .15rem 0 0; font-size: .95rem; line-height: 1.4; }
.units, .page-button { font: inherit; font-size: .85rem; min-height: 44px; padding: .35rem .8rem; border: 1px solid var(--soft); border-radius: 3px; background: var(--paper); color: var(--ink); }
nav { font-size: .9rem; position: sticky; top: 0; max-height: 100vh; overflow: auto; padding: 1rem 0; } nav h2 { font-size: .85rem; border: 0; margin: 0 0 .25rem; padding: 0; color: var(--soft); } nav ol { list-style: none; margin: 0; padding: 0; } nav ol ol { padding-left: .9rem; font-size: .92em; } nav a { display: block; padding: .25rem 0; text-decoration: none; } nav a:hover { text-decoration: underline; }
p { margin: .6em 0; } a { color: var(--water); } .word { color: inherit; text-decoration: underline dotted 1px; text-underline-offset: .2em; } #words { border-top: 2px solid var(--ink); margin: 2.5rem 0 0; } #words > summary h2 { display: inline; border: 0; margin: 0; padding: 0; } #words dl { columns: 20rem; column-gap: 2rem; margin: .5rem 0 0; font-size: .9rem; } #words dl div { break-inside: avoid; padding: .3rem 0; } #words dt { font-weight: 700; display: inline; } #words dt::after { content: ": "; } #words dd { display: inline; margin: 0; } #words :target { background: var(--ground); } a:focus-visible, button:focus-visible, input:focus-visible, select:focus-visible, summary:focus-visible, .table:focus-visible { outline: 3px solid var(--water); outline-offset: 2px; }
ul { padding-left: 1.1rem; margin: .4em 0; } #limits ul { columns: 22rem; column-gap: 2rem; } #limits li { break-inside: avoid; margin: 0; padding: .1rem 0; } .pair { display: grid; grid-template-columns: 1fr 1fr; gap: 0 2rem; align-items: start; } .pair .wide { display: none; } .pair .narrow { display: block; } li { margin: .2rem 0; }
.steps { padding: 0; list-style: none; counter-reset: step; } .steps > li { counter-increment: step; position: relative; padding-left: 3rem; margin: 0 0 .75rem; } .steps > li::before { content: counter(step); position: absolute; left: 0; top: 0; width: 2rem; height: 2rem; border-radius: 50%; background: var(--ink); color: var(--paper); font-weight: 700; text-align: center; line-height: 2rem; } .steps h3 { margin: 0; line-height: 2rem; } .steps ul { margin: 0; }
.today { background: var(--ground); padding: .75rem 1rem; display: flex; flex-wrap: wrap; gap: .5rem 1rem; align-items: end; } .today[hidden] { display: none; } .today label { display: flex; flex-wrap: wrap; gap: .25rem .5rem; align-items: center; } .today input, .today select { font: inherit; min-height: 44px; padding: .3rem .5rem; width: 7rem; } .today select { width: auto; min-width: 7rem; } .today output { flex-basis: 100%; font-weight: 600; }
.when { font-size: .85rem; color: var(--clay); }
.note { font-size: .85rem; color: var(--soft); }
.check { border-left: 4px solid var(--water); padding-left: .75rem; }
figure { margin: .75rem 0; } figcaption { font-size: .9rem; color: var(--soft); } figure h3 { margin-top: 0; } figure h2 { font-size: 1.02rem; border: 0; margin: 0 0 .25rem; padding: 0; }
.drawing svg { display: block; width: 100%; height: auto; } .narrow { display: none; }
.hand svg { display: block; width: 100%; height: auto; } .hand .narrow { max-width: 30rem; } .month-words { background: var(--ground); padding: .6rem .9rem; min-height: 3.4em; }
.paper { overflow-x: auto; border: 1px solid var(--rule); } .paper svg { display: block; max-width: none; } .sheet-a4 { width: 280mm; height: 190mm; } .sheet-letter { width: 264mm; height: 194mm; } .paper:focus-visible { outline: 3px solid var(--water); outline-offset: 2px; }
.photo { display: inline-block; margin: .5rem 1rem .5rem 0; max-width: 20rem; vertical-align: top; } .photo img { display: block; max-width: 100%; height: auto; }
.table { overflow-x: auto; } table { border-collapse: collapse; width: 100%; font-size: .88rem; line-height: 1.35; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-weight: 600; padding: .5rem 0; }
th, td { text-align: left; vertical-align: top; padding: .3rem .5rem .3rem 0; border-bottom: 1px solid var(--rule); overflow-wrap: break-word; }
th { font-weight: 600; color: var(--soft); } thead th { vertical-align: bottom; border-bottom-color: var(--ink); }
.options table, .design table { font-size: .8rem; }
.methods td { overflow-wrap: anywhere; } summary { cursor: pointer; padding: .6rem 0; min-height: 44px; } #evidence > summary h2 { display: inline; border: 0; margin: 0; padding: 0; } #evidence { border-top: 2px solid var(--ink); margin: 2.5rem 0; }
.worked { list-style: none; padding: 0; } .worked li { margin: .35rem 0; padding-left: .6rem; border-left: 2px solid var(--rule); font-size: .85rem; overflow-wrap: anywhere; } .worked small { opacity: .8; } .equation { font-family: ui-monospace, Consolas, "DejaVu Sans Mono", monospace; }
.safe { color: var(--good); font-weight: 600; } .unsafe { color: var(--clay); font-weight: 600; }
.share label { display: block; margin: .35rem 0; } .share button { font: inherit; margin: .35rem 0; padding: .35rem .6rem; min-height: 44px; }
code { font-size: .85em; } .digest, p, li { overflow-wrap: anywhere; }
.sign { margin: 1rem 0 2rem; } .sign div { margin-top: 1.9rem; border-top: 1px solid var(--ink); } .sign dt { font-size: .9rem; } .sign dd { margin: 0; font-size: .8rem; color: var(--soft); }
${PANEL_STYLE}
${FIGURE_STYLE}
@media (max-width: 56rem) { .hand .wide { display: none; } .hand .narrow { display: block; } .columns { display: block; } nav { position: static; max-height: none; } nav ol { display: flex; flex-wrap: wrap; gap: 0 1.25rem; } nav ol ol { display: none; } }
@media (max-width: 35rem) { .pair { grid-template-columns: minmax(0, 1fr); } .facts { grid-template-columns: 1fr; gap: .6rem; } body { font-size: .94rem; } .headline p + p { font-size: 1.02rem; } .wide { display: none; } .narrow { display: block; } h2 { font-size: 1.2rem; } nav a { padding: .55rem 0; }
  .stacks table, .stacks tbody, .stacks tr, .stacks td, .stacks caption { display: block; } .stacks thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); } .stacks tr { padding: .4rem 0; border-bottom: 1px solid var(--rule); }
  .stacks td { padding: .05rem 0; border: 0; text-align: left; } .stacks td:not(:first-child) { display: grid; grid-template-columns: minmax(0, 2fr) minmax(0, 3fr); column-gap: .75rem; } .stacks td::before { content: attr(data-label); color: var(--soft); } .stacks td:first-child { font-weight: 600; } .stacks td:first-child::before { content: none; } .stacks td:empty { display: none; }
}
@page { margin: 12mm 13mm 14mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt system-ui, Arial, sans-serif; color: #555b62; } }
@page a4-sheet { size: A4 landscape; margin: 8mm; } @page letter-sheet { size: letter landscape; margin: 7mm; }
@media print {
  :root { font-size: 13px; } body { font-size: 8.8pt; line-height: 1.3; } :is(ul, ol) li { margin: .1rem 0; } th, td { padding-block: .12rem; } h2 { margin-top: 1rem; } h3 { margin: .6rem 0 .2rem; } section > p { margin: .3rem 0; } section ul { margin: .2rem 0 .5rem; } figure { margin: .6rem 0; } header, .columns { max-width: 690px; padding: 0; display: block; } nav, .month-words, .months, .skip, .units, .page-button, .share, #try, .today { display: none; } .wide, .hand .wide { display: block; } .narrow, .hand .narrow { display: none; } .pair .wide { display: none; } .pair .narrow { display: block; }
  .sheet { break-before: page; break-after: page; margin: 0; page: a4-sheet; } .sheet.letter { page: letter-sheet; } .sheet h3 { display: none; } .paper { border: 0; overflow: visible; }
  .order { font-size: 20pt; } a { color: inherit; text-decoration: none; } .steps > li::before { background: none; color: inherit; border: 1.5px solid; line-height: calc(2rem - 3px); }
  figure, .facts, .headline, li, tr, .sign div { break-inside: avoid; } .steps > li { break-inside: auto; } h2, h3, h4, caption, thead { break-after: avoid; } #neighbour { break-before: page; }
  #words dl { columns: 4; column-gap: 1rem; font-size: 7.2pt; line-height: 1.22; } #words dl div { padding: .06rem 0; } :is(#drain, #neighbour) ul { columns: 2; column-gap: 1.5rem; }
  .to-buy table, .to-buy tbody { display: block; } .to-buy tbody { columns: 2; column-gap: 1.5rem; } .to-buy caption, .to-buy thead { display: none; } .to-buy tr { display: grid; grid-template-columns: minmax(0, 1fr) auto; column-gap: .75rem; border-bottom: 1px solid var(--rule); } .to-buy td { border: 0; padding: .06rem 0; } .to-buy td:nth-child(3) { grid-column: 1 / -1; color: var(--soft); } .to-buy td:empty { display: none; }
  .table { overflow: visible; } .options table, .methods table, .design table { font-size: 7.5pt; }
  #evidence:not([open]) { display: none; } #evidence { break-before: page; } details:not(#evidence)::details-content { content-visibility: visible; block-size: auto; } summary { list-style: none; min-height: 0; padding: .2rem 0; } #neighbour summary { display: none; }
}
`;
