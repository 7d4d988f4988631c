import { scriptJson } from '../figures/escape.js';
import type { Figure } from '../figures/figure.js';
import type { FigureSize } from '../figures/layout.js';
import { riskDepthFigure } from '../figures/riskDepthFigure.js';
import { sectionFigure } from '../figures/sectionFigure.js';
import { waterYearFigure } from '../figures/waterYearFigure.js';
import type { Report, WorkedPart } from '../risk/index.js';
import type { UnitSystem } from '../units/index.js';
import { paragraph, section, text } from './markup.js';
import { inlineScript, policyOf } from './policy.js';
import { assumptionsSection, groundSection, methodsSection, signSection, workedSection } from './record.js';
import { SCRIPT } from './script.js';
import {
  cautionsSection,
  checkSection,
  drainSection,
  monthsSection,
  neighbourSection,
  optionsSection,
  rulesSection,
  turnsSection,
} from './sections.js';
import { type Slider, sliderOf } from './slider.js';
import { STYLE } from './style.js';
import { verdictWords } from './verdict.js';

type MakeFigure = (report: Report, units: UnitSystem, size: FigureSize) => Figure;

const FIGURES: { id: string; title: string; make: MakeFigure; caption: string }[] = [
  {
    id: 'section-figure',
    title: 'The pond in section',
    make: sectionFigure,
    caption:
      'Cut along the length. Under the pond it is level against level: the water outside lifts the liner where it stands higher than the water inside, at any depth of the floor.',
  },
  {
    id: 'risk-figure',
    title: 'How deep is safe',
    make: riskDepthFigure,
    caption:
      'Heavy: safe by every measure, digging included. Ring: the safe depth. Chances below 0.1 % lie in the grey strip, set apart only to be seen. Named along each line: what fails first there.',
  },
  {
    id: 'year-figure',
    title: 'The water through the year',
    make: waterYearFigure,
    caption: 'Band: eight years in ten, counting everything unknown about the ground. Line: the middle.',
  },
];

/**
 * The shareable page: one HTML file that opens offline, makes no request and runs only its own scripts.
 * @param report what was computed; every text of it is taken for hostile
 * @param options `plotly`: source of plotly.js, put in once at the end; `worked`: steps of `workedSheet` to show
 * @returns HTML as text, to be written as UTF-8
 * @throws Error when the library's text would break out of its script
 */
export function pageHtml(
  report: Report,
  { plotly, worked = [] }: { plotly: string; worked?: WorkedPart[] },
): string {
  const { units } = report;
  const slider = sliderOf(report, units);
  const figures = FIGURES.map((figure) => {
    const wide = figure.make(report, units, 'wide');
    return {
      ...figure,
      alt: wide.alt,
      data: wide.data,
      wide: wide.layout,
      narrow: figure.make(report, units, 'narrow').layout,
    };
  });
  const data = scriptJson({
    figures: Object.fromEntries(figures.map(({ id, data, wide, narrow }) => [id, { data, wide, narrow }])),
    slider,
  });
  const scripts = [inlineScript(plotly), inlineScript(SCRIPT)];
  const [section1, risk, year] = figures.map(
    ({ id, title, alt, caption }) =>
      `<figure><h3>${title}</h3><div class="plot" id="${id}" role="img" aria-label="${text(alt)}">${text(alt)}</div><figcaption>${text(caption)}</figcaption></figure>`,
  );
  const parts = [
    rulesSection(report, units),
    section('pictures', 'The pond and the water', section1!, risk!, sliderHtml(slider), year!),
    optionsSection(report, units),
    drainSection(report, units),
    neighbourSection(report, units),
    checkSection(report, units),
    monthsSection(report, units),
    turnsSection(report, units),
    cautionsSection(report),
    groundSection(report, units),
    assumptionsSection(report),
    workedSection(worked),
    methodsSection(),
    signSection(report, units),
  ];
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policyOf(scripts)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${text(report.result.survey.name)}: pond and groundwater</title>
<style>${STYLE}</style>
</head>
<body>
${head(report)}
<main>
${parts.filter(Boolean).join('\n')}
</main>
<script type="application/json" id="data">${data}</script>
${scripts.map((script) => `<script>${script}</script>`).join('\n')}
</body>
</html>
`;
}

/** The first screen: what to do, and the four answers. */
function head(report: Report): string {
  const words = verdictWords(report);
  const answer = (title: string, value: string) => `<div><h2>${title}</h2>${paragraph(value)}</div>`;
  return `<header>
<h1>${text(report.result.survey.name)}</h1>
<p class="what">What groundwater will do to this pond, how deep it may be dug, and whether a drain must go under the liner.</p>
<div class="advice"><h2>Recommended</h2>${paragraph(words.recommendation)}</div>
<div class="verdict">
${answer('When it is full', words.full)}
${answer('When it is emptied', words.emptied)}
${answer('Where the water goes', words.water)}
${answer('What is not known', words.unknown)}
</div>
<nav aria-label="On this page"><a href="#rules">What to do</a> <a href="#pictures">Figures</a> <a href="#options">Options</a> <a href="#neighbour">Next door</a> <a href="#check">Check by hand</a> <a href="#cautions">Cautions</a> <a href="#methods">Methods</a></nav>
</header>`;
}

/** The slider with its table, filled for the depth it starts at, so that it reads without scripts and on paper. */
function sliderHtml({ depths, start, options }: Slider): string {
  if (depths.length === 0) return '';
  const rows = options.map(({ name, rows }) => {
    const { safe, per_year, per_dig, fails } = rows[start]!;
    return `<tr><th scope="row">${text(name)}</th><td class="${safe ? 'safe' : 'unsafe'}">${safe ? 'safe' : 'not safe'}</td><td>${text(per_year)}</td><td>${text(per_dig)}</td><td>${text(fails)}</td></tr>`;
  });
  return `<h3 id="depth-title">At another depth</h3>
<div class="slider"><label for="depth">Depth dug</label><input id="depth" type="range" min="0" max="${depths.length - 1}" step="1" value="${start}" disabled><output for="depth" id="depth-now">${text(depths[start]!)}</output></div>
<div class="table"><table id="at-depth" aria-labelledby="depth-title"><thead><tr><th scope="col">option</th><th scope="col">verdict</th><th scope="col">chance a year</th><th scope="col">worst chance a dig</th><th scope="col">what fails first</th></tr></thead><tbody>${rows.join('')}</tbody></table></div>`;
}
