/** A sheet to print and take outside: boxes for what the survey files ask, how to measure it, and what not to do. */

import { howToDrawing } from '../figures/howToDrawings.js';
import { type OnceIn, POWER_CUT, UPKEEP } from '../heads/index.js';
import { FLOOD_EVERY } from '../site/index.js';
import { CAUTIONS } from '../text/cautions.js';
import {
  digHolesWords,
  fillHoleWords,
  fromEdgeHeading,
  ribbonWords,
  SPADE_HOLE,
} from '../text/fieldSheetWords.js';
import { HOW_TO, type HowTo, howToWords } from '../text/howToLook.js';
import { floodBox, onceInBox, powerCutBox } from '../text/keepingAsked.js';
import { sentence } from '../text/sentence.js';
import type { UnitSystem } from '../units/index.js';
import { UPKEEP_ASKED } from './templates.js';

const STYLE = `
* { box-sizing: border-box; }
body { font: 12pt/1.35 system-ui, "Segoe UI", Roboto, Arial, sans-serif; color: #111; margin: 0 auto; max-width: 186mm; padding: 4mm; }
h1 { font-size: 18pt; margin: 0; } h2 { font-size: 14pt; margin: 0 0 2mm; border-bottom: 1.5pt solid #111; }
section { break-inside: avoid; margin: 5mm 0 0; } section.page { break-before: page; margin-top: 0; }
p, ul, ol { margin: 1mm 0 2mm; } li { margin: .5mm 0; } ol, ul { padding-left: 6mm; }
@media screen { section.page { margin-top: 8mm; } }
.boxes { display: grid; grid-template-columns: repeat(3, 1fr); gap: 3mm; }
.box { border: 1.2pt solid #111; min-height: 19mm; padding: 1mm 2mm 6mm; font-size: 10pt; position: relative; }
.box i { position: absolute; right: 2mm; bottom: 1mm; font-style: normal; color: #444; }
table { border-collapse: collapse; width: 100%; table-layout: fixed; }
th, td { border: 1pt solid #111; height: 12.5mm; font-size: 9.5pt; text-align: left; vertical-align: top; padding: 1mm; }
th { height: auto; font-weight: 600; }
.sketch { border: 1.2pt solid #111; height: 40mm; padding: 1mm 2mm; font-size: 10pt; color: #444;
  background-image: linear-gradient(#e3e3e3 .5pt, transparent .5pt), linear-gradient(90deg, #e3e3e3 .5pt, transparent .5pt); background-size: 6mm 6mm; }
.how { break-inside: auto; } .shown { columns: 2; column-gap: 6mm; } .shown div { break-inside: avoid; font-size: 8.5pt; line-height: 1.22; padding-bottom: 3mm; } .shown h3 { font-size: 10.5pt; margin: 0; } .shown svg { display: block; width: 100%; max-width: 66mm; } .shown ol, .shown ul, .shown p { margin: .5mm 0; } .shown ul { list-style: square; } .shown .source { font-size: 7.5pt; color: #444; } h2 code { font-weight: 400; font-size: 10pt; float: right; padding-top: 1mm; }
.caution { border: 2pt solid #111; padding: 2mm 3mm; font-size: 10.5pt; } .caution li { margin: .8mm 0; }
`;

const box = (label: string, unit = '') => `<div class="box">${label}${unit && `<i>${unit}</i>`}</div>`;
const boxes = (all: [string, string?][]) =>
  `<div class="boxes">${all.map(([label, unit]) => box(label, unit)).join('')}</div>`;
const onceIn = (item: OnceIn): [string, string] => [
  onceInBox(sentence(UPKEEP_ASKED[item]), UPKEEP[item][0], UPKEEP[item][1]),
  'years',
];
const table = (heads: string[], widths: number[], rows: number) =>
  `<table><colgroup>${widths.map((width) => `<col style="width:${width}%">`).join('')}</colgroup>` +
  `<thead><tr>${heads.map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead>` +
  `<tbody>${`<tr>${'<td></td>'.repeat(heads.length)}</tr>`.repeat(rows)}</tbody></table>`;
const list = (tag: 'ol' | 'ul', items: string[]) =>
  `<${tag}>${items.map((item) => `<li>${item}</li>`).join('')}</${tag}>`;

/**
 * The field sheet as one HTML file, for A4 paper or in feet for Letter; it needs nothing else and says nothing of any site.
 * @param units in which its boxes ask
 */
export function fieldSheetHtml(units: UnitSystem): string {
  const us = units === 'us';
  // Letter is shorter than A4 by two rows.
  const rows = (onA4: number) => onA4 - (us ? 2 : 0);
  const [long, short, area] = us ? ['ft', 'in', 'ft²'] : ['m', 'cm', 'm²'];
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>Field sheet</title><style>@page { size: ${us ? 'letter' : 'A4'}; margin: 12mm; }${STYLE}</style></head><body>
<h1>Field sheet: pond on clay</h1>
<p>Take: spade or auger, tape, bucket, this sheet, a pencil. Write the unit where it is not the one printed. A guess is better than an empty box: write it, and that it is one.</p>
<section class="caution"><h2>Before the first hole</h2>${list(
    'ul',
    CAUTIONS.filter(({ drained }) => !drained).map(({ title, text }) => `<b>${title}.</b> ${text}`),
  )}</section>
<section><h2>1 The place <code>site.csv</code></h2>${boxes([
    ['Name', ''],
    ['Date', ''],
    ['Latitude (map, phone)', 'deg'],
    ['Ground uphill that sheds rain here', area],
    ['It is: lawn / bare / paved / woodland', ''],
    ['Roof whose downpipe ends near', area],
    ['Socket for a pump? yes / no', ''],
    ['May water go to a ditch or sewer? yes / no / unknown', ''],
    ['Is that end on your side of the boundary? yes / no / unknown', ''],
    ['Wetland or its buffer? yes / no / unknown', ''],
  ])}</section>
<section class="page"><h2>2 The pond you wish <code>pond.csv</code></h2>${boxes([
    ['Length', long],
    ['Width', long],
    ['Depth, from the lowest ground at the rim', long],
    ['Sides: across for each 1 down (0 upright)', ''],
    ['Full water above (+) or below (−) the lowest rim ground', long],
    ['The rim may be raised by', long],
    ['Loose fill between liner and clay', long],
    ['Under the liner: none / sand / gravel / mat', ''],
    ['Topped up when it has fallen by, or never', long],
    ['When full its rain runs: into the ring / away', ''],
    ['Emptied in months, or never', ''],
  ])}<p class="sketch">Sketch from above: pond, holes with their names, house, boundary, ditch, downhill arrow</p></section>
<section><h2>3 Levels, if you have a hose, level or string line <code>levels.csv</code></h2>${list('ul', [
    'Choose one fixed mark (a doorstep). All heights are above it; below it: minus.',
    'At least the lowest and the highest ground at the rim, each hole, and where a drain could end.',
  ])}${table(['Point', 'What it is', fromEdgeHeading(long), `Height (${long})`], [25, 35, 20, 20], rows(7))}</section>
<section class="page"><h2>4 Holes: a row for each layer <code>pits.csv</code></h2>${list('ol', [
    digHolesWords(units),
    SPADE_HOLE,
    'Measure from the ground downwards. Begin a new row where colour or feel changes.',
    `<b>Texture.</b> ${ribbonWords(units)}`,
    '<b>Thumb, in fresh clay.</b> Squeezes out between the fingers: very soft; moulds with light pressure: soft; with strong pressure: firm; the thumb dents it: stiff; the nail marks it: very stiff; hardly: hard.',
    '<b>Mottles.</b> Rusty and grey spots: none, few, common, many; all grey: grey. They show where water stands in winter.',
  ])}${table(
    [
      'Hole',
      `From (${long})`,
      `To (${long})`,
      'Texture',
      'massive / blocky / cracked / rooted',
      'Mottles',
      'Thumb',
      'Note: roots, smell, water',
    ],
    [9, 10, 10, 16, 15, 11, 11, 18],
    rows(11),
  )}</section>
<section class="page"><h2>5 Water: a row for each look <code>water.csv</code></h2>${list('ol', [
    'Write the day and the hour the hole was finished: reading <b>opened</b>, depth = its floor.',
    'Cover it so that no rain runs in and no child or animal falls in; fence it.',
    'Look after an hour, a day, a week, then monthly through winter and spring. Clay answers slowly: an empty hole is not yet a dry one.',
    'Reading <b>level</b>: from the ground to the water. <b>dry</b>: no water, and how deep the hole is. <b>strike</b>: where water first came in while digging.',
    'Always measure from the same mark. From a pipe’s top, write how high it stands above the ground.',
  ])}${table(
    [
      'Hole',
      'Date (year-month-day)',
      'Time',
      'opened / level / dry / strike',
      `Depth (${long})`,
      `Hole is deep (${long})`,
      'Note: rain before',
    ],
    [9, 18, 10, 18, 13, 14, 18],
    rows(15),
  )}</section>
<section class="page"><h2>6 Soakage, if you make a test <code>soakage.csv</code></h2>${list('ol', [
    fillHoleWords(units),
    'Let it soak for some hours and fill again; then write the water’s depth below the ground at the start and each time it has moved. Rain spoils the test.',
    'A fall you cannot measure in a day is an answer too: write it.',
  ])}${boxes([
    ['Hole', ''],
    ['Hole is deep', short],
    ['Hole is wide', short],
  ])}<p></p>${table(['Minutes', `Ground to water (${short})`, 'Minutes', `Ground to water (${short})`], [20, 30, 20, 30], rows(8))}</section>
<section><h2>7 Should it get a drain: how it will be kept <code>site.csv</code></h2><p>An honest guess; what you leave empty is taken as the number in brackets.</p>${boxes(
    [
      [floodBox(FLOOD_EVERY), 'years'],
      onceIn('drain_blocked_once_in'),
      onceIn('flap_stuck_once_in'),
      onceIn('pump_out_once_in'),
      [powerCutBox(POWER_CUT / 3600), 'h'],
      onceIn('power_cut_once_in'),
    ],
  )}</section>
<section class="page how"><h2>How to look and measure</h2><p>The numbers are those of the drawings.</p><div class="shown">${HOW_TO.map((what) => shown(what, units)).join('')}</div></section>
</body></html>
`;
}

/** A drawing with its parts, steps and source. */
function shown(what: HowTo, units: UnitSystem): string {
  const { title, parts, steps, source } = howToWords(what, units);
  return `<div><h3>${title}</h3>${howToDrawing(what, units)}${list('ol', parts)}${list('ul', steps)}<p class="source">${source}</p></div>`;
}
