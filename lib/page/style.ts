/** Looks of the page, on a phone, a desk and paper. */
export const STYLE = `
:root { color-scheme: light; --ink: #22262b; --soft: #555b62; --paper: #fff; --ground: #f4f1ea; --rule: #d5d0c4; --water: #1f5f8b; --clay: #98401f; --good: #2f6627; }
* { box-sizing: border-box; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.5 Charter, "Bitstream Charter", "Iowan Old Style", Georgia, serif; }
header, main, footer { max-width: 45.125rem; margin: 0 auto; padding: 0 1rem; }
h1, h2, h3, caption, th, .verdict h2, .when, .note, nav, label, output, td { font-family: system-ui, "Segoe UI", Roboto, "Helvetica Neue", Arial, sans-serif; }
h1 { font-size: 1.6rem; line-height: 1.2; margin: 1.5rem 0 .25rem; }
h2 { font-size: 1.2rem; margin: 2.5rem 0 .5rem; padding-top: .5rem; border-top: 2px solid var(--ink); }
h3 { font-size: 1rem; margin: 1.25rem 0 .25rem; }
.what { color: var(--soft); margin: 0 0 1rem; }
.advice { margin: 0 0 1rem; padding: .75rem 1rem; background: var(--ink); color: #fff; }
.advice h2 { border: 0; margin: 0 0 .25rem; padding: 0; font-size: .95rem; color: #fff; }
.advice p { margin: 0; font-size: 1.05rem; }
.verdict { display: grid; grid-template-columns: 1fr 1fr; gap: 1px; background: var(--rule); border: 1px solid var(--rule); }
.verdict > div { background: var(--ground); padding: .6rem .9rem .8rem; }
.verdict h2 { border: 0; margin: 0 0 .25rem; padding: 0; font-size: .95rem; color: var(--water); }
.verdict p { margin: 0; font-size: .95rem; line-height: 1.42; }
nav { font-size: .85rem; margin: 1rem 0; } nav a { margin-right: .9rem; white-space: nowrap; } a { color: var(--water); }
ul { padding-left: 1.1rem; } li { margin: .35rem 0; }
.when { font-size: .85rem; color: var(--clay); margin-left: .35rem; }
.note { font-size: .85rem; color: var(--soft); }
.check { border-left: 4px solid var(--water); padding-left: .75rem; }
figure { margin: 1.25rem 0; } figcaption { font-size: .9rem; color: var(--soft); }
.plot { min-height: 12rem; overflow: hidden; color: var(--soft); }
.table { overflow-x: auto; } table { border-collapse: collapse; width: 100%; font-size: .84rem; line-height: 1.35; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-weight: 600; padding: .5rem 0; }
th, td { text-align: left; vertical-align: top; padding: .3rem .6rem .3rem 0; border-bottom: 1px solid var(--rule); overflow-wrap: break-word; }
th { font-weight: 600; color: var(--soft); } thead th { vertical-align: bottom; border-bottom-color: var(--ink); }
.options table { min-width: 41rem; font-size: .8rem; }
.methods td { overflow-wrap: anywhere; } .methods td:nth-child(1) { min-width: 8rem; } .methods table { min-width: 34rem; }
.safe { color: var(--good); font-weight: 600; } .unsafe { color: var(--clay); font-weight: 600; }
.slider { display: flex; gap: .75rem; align-items: center; flex-wrap: wrap; } .slider input { flex: 1 1 12rem; accent-color: var(--water); min-width: 0; height: 2rem; } .slider output { font-weight: 700; min-width: 6.5rem; }
code { font-size: .85em; } .digest, p, li { overflow-wrap: anywhere; }
.sign { margin: 1rem 0 2rem; } .sign div { margin-top: 1.9rem; border-top: 1px solid var(--ink); } .sign dt { font-size: .9rem; } .sign dd { margin: 0; font-size: .8rem; color: var(--soft); }
@media (max-width: 35rem) { .verdict { grid-template-columns: 1fr; } h1 { font-size: 1.35rem; } body { font-size: .97rem; } }
@media print {
  @page { margin: 13mm; }
  body { font-size: 10.5pt; } header, main, footer { max-width: 690px; padding: 0; } nav, .slider label, .slider input { display: none; }
  .advice { background: none; color: var(--ink); border: 2px solid var(--ink); } .advice h2 { color: var(--ink); }
  figure, .verdict, .advice, li, tr, .sign div { break-inside: avoid; } h2, h3, caption, thead, .slider { break-after: avoid; }
  .table { overflow: visible; } .options table, .methods table { min-width: 0; font-size: 7.5pt; }
}
`;
