import { FIGURE_STYLE } from '../figures/drawing.js';

/** Looks of the form: a phone first, by day and by night; nothing to be touched is smaller than 44 px. */
export const FORM_STYLE = `
:root { color-scheme: light dark; --ink: #22262b; --soft: #50565d; --paper: #fff; --ground: #f4f1ea; --rule: #8a857a; --faint: #d5d0c4; --water: #1f5f8b; --on-water: #fff; --clay: #98401f; --good: #2f6627; --amber: #7a5200; }
@media (prefers-color-scheme: dark) { :root { --ink: #ecebe6; --soft: #b9b6ad; --paper: #191c1f; --ground: #24282c; --rule: #8d8a83; --faint: #3b4046; --water: #8cc4ec; --on-water: #10202c; --clay: #f0a184; --good: #9ed08f; --amber: #e8c16d; } }
* { box-sizing: border-box; }
html { scroll-padding-bottom: 10rem; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1.0625rem/1.45 system-ui, "Segoe UI", Roboto, "Helvetica Neue", Arial, sans-serif; overflow-wrap: anywhere; }
header, main, nav, .bar { max-width: 44rem; margin: 0 auto; padding: 0 1rem; }
header { display: grid; grid-template-columns: 1fr auto; align-items: center; gap: .25rem .75rem; padding-top: .5rem; }
h1 { font-size: 1.25rem; margin: 0; } h2 { font-size: 1.35rem; line-height: 1.2; margin: 1rem 0 .25rem; } h2:focus { outline: none; } h3 { font-size: 1.1rem; margin: 0 0 .5rem; } h4 { font-size: 1rem; margin: 0 0 .5rem; }
.kept { grid-column: 1 / -1; margin: 0; font-size: .875rem; color: var(--soft); } .today { grid-column: 1 / -1; justify-self: start; }
.lead { margin: 0 0 1rem; color: var(--soft); } .hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.steps { list-style: none; display: flex; gap: .35rem; padding: .25rem 0; margin: .5rem 0 0; overflow-x: auto; } .steps li { flex: none; } .steps button { position: relative; min-height: 2.75rem; margin: 0; } .steps [aria-current] { background: var(--water); color: var(--on-water); border-color: var(--water); font-weight: 700; } .steps .faulty { border: 3px solid var(--clay); }
@media (min-width: 44rem) { .steps { flex-wrap: wrap; overflow: visible; } }
button, select, input:not([type=checkbox]) { font: inherit; color: var(--ink); background: var(--paper); border: 1px solid var(--rule); border-radius: 4px; min-height: 2.75rem; min-width: 2.75rem; padding: .35rem .6rem; max-width: 100%; }
button { background: var(--ground); cursor: pointer; margin: .25rem .5rem .25rem 0; text-align: left; } button.plain { background: none; border-color: transparent; color: var(--water); text-decoration: underline; padding-left: 0; } button:disabled { opacity: .55; cursor: default; }
button:focus-visible, select:focus-visible, input:focus-visible, summary:focus-visible { outline: 3px solid var(--water); outline-offset: 2px; }
.field { border: 0; margin: 0 0 1.25rem; padding: 0; min-width: 0; } .field > label:not(.tick), .field > legend { display: block; font-weight: 600; padding: 0; } .why { margin: .1rem 0 .35rem; font-size: .9rem; color: var(--soft); }
.field > select, .field > input:not([type=checkbox]) { width: 100%; } .number { display: flex; flex-wrap: wrap; gap: .5rem; align-items: center; } .number > input { flex: 1 1 6rem; min-width: 0; width: 6rem; } .number > select { flex: 0 0 auto; } .number > .tick { flex-basis: 100%; } .unit { color: var(--soft); }
.tick { display: flex; align-items: center; gap: .6rem; min-height: 2.75rem; } .tick input { width: 1.4rem; height: 1.4rem; margin: 0; flex: none; accent-color: var(--water); } .months { display: grid; grid-template-columns: repeat(auto-fill, minmax(8rem, 1fr)); }
.faulty input, .faulty select { border: 2px solid var(--clay); }
.remarks p, p.wrong, p.open, p.noticed { margin: .25rem 0; padding-left: .6rem; border-left: 4px solid var(--faint); font-size: .95rem; } p.wrong { color: var(--clay); border-color: var(--clay); font-weight: 600; } p.noticed { color: var(--amber); border-color: var(--amber); } p.open { color: var(--soft); }
.card { border: 1px solid var(--faint); border-radius: 6px; padding: .75rem .75rem .25rem; margin: 0 0 1rem; } .card .card { border-width: 1px 0 0; border-radius: 0; padding: 0; margin: 0; } .row { border-top: 2px solid var(--faint); padding-top: .75rem; margin-bottom: .75rem; }
.pair { display: grid; grid-template-columns: 1fr 1fr; gap: 0 .75rem; border: 0; border-top: 1px solid var(--faint); padding: .5rem 0 0; margin: 0; min-width: 0; } .pair > legend { font-weight: 600; padding: 0 .5rem 0 0; } .pair > button { justify-self: start; } .pair .number { flex-wrap: nowrap; gap: .25rem; } .pair .number > input { flex-basis: 3rem; } .pair label { font-size: .9rem; } .pair .number > select { padding: .2rem; }
summary { cursor: pointer; min-height: 2.75rem; padding: .6rem 0; font-weight: 600; } .more { border-top: 1px solid var(--faint); margin-bottom: .5rem; } .how { padding-left: 1.25rem; } .how li { margin: .35rem 0; }
.cautions { border: 3px solid var(--clay); border-radius: 6px; padding: .75rem; margin: 0 0 1.25rem; font-size: .95rem; } .cautions ul { padding-left: 1.1rem; margin: 0; } .cautions li { margin: .35rem 0; }
.photo { display: block; max-width: 100%; height: auto; max-height: 16rem; border-radius: 4px; margin: .25rem 0; } .clock { font-size: 1.75rem; font-weight: 700; font-variant-numeric: tabular-nums; display: block; } .watch { background: var(--ground); padding: .5rem .75rem; border-radius: 6px; margin-bottom: .75rem; }
.notice p { background: var(--ground); border-left: 4px solid var(--water); padding: .5rem .75rem; margin: 0 0 .75rem; }
.walk { display: flex; flex-wrap: wrap; justify-content: space-between; gap: .5rem; margin: 1.5rem 0; }
.bar { display: grid; grid-template-columns: 1fr auto; gap: 0 .75rem; align-items: center; position: sticky; bottom: 0; background: var(--ground); border-top: 3px solid var(--water); padding-top: .5rem; padding-bottom: max(.5rem, env(safe-area-inset-bottom)); } .bar p { margin: 0; } .bar button { margin: 0; } .bar .note { font-size: .9rem; color: var(--soft); display: -webkit-box; -webkit-line-clamp: 2; -webkit-box-orient: vertical; overflow: hidden; } .bar.refused, .bar.failed { border-color: var(--clay); } .headline { font-weight: 700; }
.bar:not(.full) .headline { font-weight: 400; font-style: italic; } .bar .headline { display: -webkit-box; -webkit-line-clamp: 2; -webkit-box-orient: vertical; overflow: hidden; }
.verdict.old { border-left: 4px dashed var(--rule); padding-left: .75rem; } .verdict .headline { font-size: 1.2rem; } .verdict h3 { margin-bottom: .1rem; } .verdict p { margin: 0 0 .75rem; } .most { border-left: 4px solid var(--water); padding: .1rem 0 .1rem .75rem; }
figure { margin: 1rem 0; } figcaption { font-weight: 600; } .drawing { background: var(--paper); border-radius: 6px; padding: .25rem; } .drawing svg { display: block; width: 100%; height: auto; }
.sketch { margin: 0 0 1rem; } .sketch svg { display: block; width: 100%; max-width: 30rem; height: auto; touch-action: manipulation; cursor: crosshair; user-select: none; } .sketch .squares { fill: none; stroke: var(--faint); } .sketch .pond { fill: var(--water); fill-opacity: .22; stroke: var(--water); stroke-width: 2; } .sketch .boundary { fill: none; stroke: var(--clay); stroke-width: 2; stroke-dasharray: 8 4; } .sketch text { font-size: 12px; fill: var(--ink); stroke: var(--paper); stroke-width: 3; paint-order: stroke; stroke-linejoin: round; }
.mark { cursor: grab; outline: none; } .mark .reach { fill: none; pointer-events: all; } .mark .spot { fill: var(--ink); stroke: var(--paper); stroke-width: 1.5; } .mark.taped .spot { fill: var(--paper); stroke: var(--ink); stroke-dasharray: 3 2; } .mark.chosen .spot { fill: var(--water); stroke: var(--ink); } .mark:focus-visible .reach { stroke: var(--water); stroke-width: 3; }
@media print { .bar, nav, .walk, button { display: none; } }
${FIGURE_STYLE}
`;
