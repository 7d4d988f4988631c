import type { Report } from '../contract/index.js';
import { scriptJson } from '../figures/escape.js';
import type { WorkedPart } from '../report/index.js';
import type { Survey } from '../survey/index.js';
import type { UnitSystem } from '../units/index.js';
import { checkSection } from './checkSection.js';
import { drainSection } from './drainSection.js';
import { heldSection } from './heldSection.js';
import { leaveOut, type PageContent, type PrivatePart } from './leaveOut.js';
import type { LiveData } from './liveData.js';
import { paragraph, text } from './markup.js';
import { neighbourSection } from './nextDoor.js';
import { inlineScript, policyOf, scriptElement } from './policy.js';
import { assumptionsSection, groundSection, methodsSection, type Photos, signSection } from './record.js';
import {
  depthSection,
  limitsSection,
  picturesSection,
  rulesSection,
  surerSection,
  whatIfSection,
  yearSection,
} from './sections.js';
import { STYLE } from './style.js';
import { verdictWords } from './verdict.js';
import { workedSection } from './workedSection.js';

/** What the page is made with besides the report. */
export interface PageOptions {
  /** steps of `workedSheet` */
  worked: WorkedPart[];
  /** of the library */
  version: string;
  photos?: Photos;
  /** script of the what-if, and the survey it starts from; without it the page is still, and whole */
  live?: { script: string; survey: Survey; seed: number; samples: number };
  /** what the owner of the survey keeps to themselves */
  leftOut?: readonly PrivatePart[];
}

/**
 * The shareable page: one HTML file that opens offline, makes no request and runs only its own script.
 * @param report what was computed; every text of it is taken for hostile
 * @param options - the script, its version, photos, and what is to be left out
 * @returns HTML as text, to be written as UTF-8
 * @throws Error when the script's text would break out of its element
 */
export function pageHtml(
  report: Report,
  { worked, version, photos = {}, live, leftOut = [] }: PageOptions,
): string {
  const content = leaveOut(leftOut, { report, worked, photos, survey: live?.survey });
  const { survey } = content;
  const scripts = live && survey ? [inlineScript(live.script)] : [];
  const data: LiveData | undefined = live &&
    survey && { survey, seed: live.seed, samples: live.samples, version, leftOut: [...leftOut] };
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policyOf(scripts, STYLE)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${text(report.result.survey.name)}: pond and groundwater</title>
<style>${STYLE}</style>
</head>
<body data-units="${report.units}">
<a class="skip" href="#main">To the content</a>
${bodyHtml(content, { version, leftOut })}
${data ? scriptElement(scriptJson(data), ' type="application/json" id="survey"') : ''}${scripts.map((script) => scriptElement(script)).join('')}</body>
</html>
`;
}

/** Everything between the tags of the body but the scripts, in a system of units. */
export function bodyHtml(
  { report, worked, photos, survey }: PageContent,
  { version, leftOut }: { version: string; leftOut: readonly PrivatePart[] },
  units: UnitSystem = report.units,
): string {
  const parts = [
    rulesSection(report, units),
    picturesSection(report, units),
    depthSection(report, units),
    survey ? whatIfSection() : '',
    drainSection(report, units),
    yearSection(report, units),
    neighbourSection(report, units),
    checkSection(report, units),
    workedSection(worked, units),
    groundSection(report, units, photos),
    assumptionsSection(report, units),
    surerSection(report),
    limitsSection(report),
    methodsSection(),
    heldSection({ survey, photos }, leftOut),
    signSection(report, units, version),
  ].filter(Boolean);
  return `${head(report, units)}\n${contents(parts)}\n<main id="main" tabindex="-1">\n${parts.join('\n')}\n</main>`;
}

/** The first screen: what to do, and the four answers. */
function head(report: Report, units: UnitSystem): string {
  const words = verdictWords(report, units);
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
</header>`;
}

/** Table of contents, from the headings of the parts. */
function contents(parts: string[]): string {
  const entries = parts.map((part) => {
    const [, id, title] = /^<section id="([a-z-]+)"[^>]*>\n<h2 [^>]*>(.*?)<\/h2>/.exec(part)!;
    return `<li><a href="#${id}">${title}</a></li>`;
  });
  return `<nav aria-labelledby="contents-title"><h2 id="contents-title">On this page</h2><ol>${entries.join('')}</ol></nav>`;
}
