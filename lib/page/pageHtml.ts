import type { Report } from '../contract/index.js';
import { scriptJson } from '../figures/escape.js';
import type { WorkedPart } from '../report/index.js';
import type { Survey } from '../survey/index.js';
import { pageTitle } from '../text/handedOn.js';
import type { UnitSystem } from '../units/index.js';
import { checkSection } from './checkSection.js';
import { designSection } from './designSection.js';
import { drainNumbers, drainSection } from './drainSection.js';
import { drawingsSection } from './drawingsSection.js';
import { wordMarker } from './glossary.js';
import { headerHtml } from './header.js';
import { heldSection } from './heldSection.js';
import { leaveOut, type PageContent, type PrivatePart } from './leaveOut.js';
import type { LiveData } from './liveData.js';
import { partsOf } from './liveScripts.js';
import { html, lines, Markup, NONE } from './markup.js';
import { neighbourSection } from './nextDoor.js';
import { inlineScript, policyOf, scriptElement } from './policy.js';
import { assumptionsSection, groundSection, methodsSection, type Photos } from './record.js';
import { comparedSection, cutSection, depthSection, firstFigure, limitsSection } from './sections.js';
import { signSection } from './signSection.js';
import { stepsSection } from './steps.js';
import { STYLE } from './style.js';
import { ladderSection, sureSection, turnsSection } from './sureSection.js';
import { workedSection } from './workedSection.js';
import { waterSection, yearSection } from './yearSection.js';

/** What the page is made with besides the report. */
export interface PageOptions {
  /** steps of `workedSheet` */
  worked: WorkedPart[];
  /** of the library */
  version: string;
  photos?: Photos;
  /** script of the what-if, the survey it starts from, and the what-if it opens with; without it the page is still, and whole */
  live?: { script: string; survey: Survey; seed: number; samples: number; tried?: string };
  /** what the owner of the survey keeps to themselves */
  leftOut?: readonly PrivatePart[];
  /** date of issue, ISO 8601; absent: none is told */
  issued?: string;
}

/**
 * The shareable page: one HTML file that opens offline, makes no request and runs only its own script.
 * @param report what was computed; every text of it is taken for hostile
 * @param options - the script, its version, photos, and what is to be left out
 * @returns HTML as text, to be written as UTF-8
 * @throws InputError when the script's text would break out of its element
 */
export function pageHtml(
  report: Report,
  { worked, version, photos = {}, live, leftOut = [], issued }: PageOptions,
): string {
  const content = leaveOut(leftOut, { report, worked, photos, survey: live?.survey });
  const { survey } = content;
  const { own, allowed, library } = partsOf(inlineScript(live && survey ? live.script : ''));
  const scripts = live && survey ? [own] : [];
  const data: LiveData | undefined = live &&
    survey && {
      survey,
      seed: live.seed,
      samples: live.samples,
      version,
      leftOut: [...leftOut],
      ...(issued ? { issued } : {}),
    };
  // The library runs in a worker made of its text; its hash lets the page run it where there is none.
  const policy =
    library === '' ? policyOf(scripts, STYLE) : `${policyOf(scripts, STYLE, [allowed])}; worker-src blob:`;
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${new Markup(policy)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${pageTitle(report.result.survey.name)}</title>
<style>${new Markup(STYLE)}</style>
</head>
<body data-units="${report.units}">
<a class="skip" href="#main">To the content</a>
${bodyHtml(content, { version, leftOut, issued })}
${data ? script(scriptJson(data), html` type="application/json" id="survey"${live?.tried ? html` data-tried="${live.tried}"` : ''}`) : ''}${library === '' ? '' : script(library, html` type="application/octet-stream" id="library" data-allowed="${allowed}"`)}${scripts.map((own) => script(own))}</body>
</html>
`.html;
}

const script = (held: string, attributes = NONE) => new Markup(scriptElement(held, attributes.html));

/** Everything between the tags of the body but the scripts, in a system of units. */
export function bodyHtml(
  { report, worked, photos, survey }: PageContent,
  { version, leftOut, issued }: { version: string; leftOut: readonly PrivatePart[]; issued?: string },
  units: UnitSystem = report.units,
): Markup {
  const words = wordMarker(report);
  // In the order in which it is read: the first of each word is marked.
  const head = words.mark(headerHtml(report, units, { issued, leftOut }, firstFigure(report, units)));
  const parts = [
    stepsSection(report, units),
    depthSection(report, units, survey !== undefined),
    yearSection(report, units),
    drainSection(report, units),
    sureSection(report, units),
    limitsSection(report),
  ]
    .filter(({ html }) => html !== '')
    .map((part) => words.mark(part));
  // A sheet of its own in print, so that it comes after the words, which it marks too.
  const nextDoor = words.mark(neighbourSection(report, units));
  const evidence = [
    drawingsSection(report, units, issued),
    checkSection(report, units),
    designSection(report, units),
    workedSection(worked, units),
    comparedSection(report, units),
    turnsSection(report, units),
    ladderSection(report, units),
    waterSection(report, units),
    drainNumbers(report, units),
    cutSection(report, units),
    groundSection(report, units, photos),
    assumptionsSection(report, units),
    methodsSection(),
    heldSection({ survey, photos }, leftOut),
    signSection(report, units, { version, issued }),
  ].filter(({ html }) => html !== '');
  return html`${head}
<div class="columns">
${contents([...parts, nextDoor], evidence)}
<main id="main" tabindex="-1">
${lines(...parts, words.list(), nextDoor)}
<details id="evidence"><summary><h2>Evidence: every number, for whoever checks it</h2></summary>
${lines(...evidence)}
</details>
</main>
</div>`;
}

/** Table of contents, from the headings of the parts. */
function contents(parts: Markup[], evidence: Markup[]): Markup {
  const entries = (of: Markup[]) =>
    of.map((part) => {
      const [, id, title] = /^<section id="([a-z-]+)"[^>]*>\n<h2 [^>]*>(.*?)<\/h2>/.exec(part.html)!;
      return html`<li><a href="#${id!}">${new Markup(title!)}</a></li>`;
    });
  return html`<nav aria-labelledby="contents-title"><h2 id="contents-title">On this page</h2><ol>${entries(parts)}<li><a href="#evidence">Evidence</a><ol>${entries(evidence)}</ol></li></ol></nav>`;
}
