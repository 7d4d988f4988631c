/** The library's side of the page: answers in a worker, or beside the page where there is none. */

import { type Assessment, explained } from '../decision/index.js';
import { DESIGN_WIDTH } from '../figures/layout.js';
import { figureSvg } from '../figures/svg.js';
import { outletsOf } from '../options/index.js';
import { reportOf, workedSheet } from '../report/index.js';
import { ADVICE_NAMES } from '../text/terms.js';
import type { UnitSystem } from '../units/index.js';
import { type Holder, holder, type Trial } from './heldMeasures.js';
import { hasWeatherYears } from './inYears.js';
import type { LiveData } from './liveData.js';
import { html, table } from './markup.js';
import { bodyHtml, pageHtml } from './pageHtml.js';
import type {
  Choice,
  Controls,
  Drawn,
  PageReply,
  PageRequest,
  Questions,
  TrialText,
} from './pageQuestions.js';
import { type TrialColumn, trialColumn } from './trialColumn.js';
import type { WhatIf } from './whatIf.js';
import { surveyedNumbers } from './whatIfParameters.js';
import { trialFigures, viewOf } from './whatIfView.js';

/** What is kept between questions. */
interface Opened {
  data: LiveData;
  holder: Holder;
  /** with nothing tried */
  survey: Trial;
  /** what was asked about last, with its change */
  last: { key: string; trial: Trial };
  columns: Partial<Record<UnitSystem, TrialColumn>>;
  /** of the survey; made when it is first asked for */
  assessment?: Assessment;
}

/** Answers the questions of one page, the first of which opens it. */
export function pageReckoner(): (request: PageRequest) => PageReply {
  let opened: Opened | undefined;
  return (request) => {
    const { id } = request;
    try {
      if (request.page === 'open') {
        opened = open(JSON.parse(request.ask));
        return { id, answer: controlsOf(opened.holder) };
      }
      if (!opened) throw new Error('asked before it was opened');
      return { id, answer: answered(opened, request) };
    } catch (error) {
      return { id, failed: error instanceof Error ? error.message : String(error) };
    }
  };
}

function open(data: LiveData): Opened {
  const held = holder(data.survey, data);
  const survey = held.asked({});
  return { data, holder: held, survey, last: { key: '{}', trial: survey }, columns: {} };
}

function answered(opened: Opened, request: Exclude<PageRequest, { page: 'open' }>): unknown {
  switch (request.page) {
    case 'try':
      return said(opened, request.ask);
    case 'draw':
      return drawn(opened, request.ask);
    case 'body':
      return body(opened, request.ask);
    case 'copy':
      return copy(opened, request.ask);
  }
}

function asked(opened: Opened, change: WhatIf): Trial {
  const key = JSON.stringify(change);
  if (opened.last.key !== key) opened.last = { key, trial: opened.holder.asked(change) };
  return opened.last.trial;
}

function said(opened: Opened, { change, units }: Questions['try']['ask']): TrialText {
  const { holder, survey } = opened;
  opened.columns[units] ??= trialColumn(survey, units);
  const trial = asked(opened, change);
  const { compared, ...view } = viewOf(holder, trial, opened.columns[units], units);
  const raise = trial.held?.decision.measures.raise;
  return { ...view, compared: table(compared).html, built: raise === undefined ? {} : { raise } };
}

function drawn(opened: Opened, { change, units, size, name }: Questions['draw']['ask']): Drawn {
  const pictured = trialFigures(asked(opened, change), units, size);
  if (!pictured) return { buy: '', section: '', risk: '' };
  const svg = (which: 'section' | 'risk') =>
    figureSvg(pictured[which], DESIGN_WIDTH[size], `${name}-${which}`);
  return {
    buy: (pictured.buy.rows.length > 0
      ? table(pictured.buy)
      : html`<p>No drain: nothing to buy or to dig for one.</p>`
    ).html,
    section: svg('section'),
    risk: svg('risk'),
  };
}

function assessed(opened: Opened): Assessment {
  opened.assessment ??= explained(opened.holder.own);
  return opened.assessment;
}

function body(opened: Opened, { units, photos }: Questions['body']['ask']): string {
  const assessment = assessed(opened);
  const { data } = opened;
  return bodyHtml(
    {
      report: reportOf(assessment, { units }),
      worked: workedSheet(assessment, units),
      photos,
      survey: data.survey,
    },
    data,
    units,
  ).html;
}

function copy(opened: Opened, { units, photos, script, parts, tried }: Questions['copy']['ask']): string {
  const assessment = assessed(opened);
  const { survey, seed, samples, version, leftOut, issued } = opened.data;
  return pageHtml(reportOf(assessment, { units }), {
    worked: workedSheet(assessment),
    version,
    photos,
    live: { script, survey, seed, samples, ...(tried ? { tried } : {}) },
    leftOut: [...leftOut, ...parts],
    issued,
  });
}

/** Controls for what the survey has; those that would change nothing are left out. */
function controlsOf({ own, option }: Holder): Controls {
  const { site, basis, options } = own;
  const choices: Choice[] = [
    {
      key: 'option',
      label: 'Drain or other measure',
      choices: [
        ['', `held: ${ADVICE_NAMES[option].toLowerCase()}`],
        ...options
          .filter(({ measures, name }) => measures && name !== option)
          .map(({ name }): [string, string] => [name, ADVICE_NAMES[name].toLowerCase()]),
      ],
    },
  ];
  choices.push({
    key: 'emptied',
    label: 'Emptied',
    choices: [
      ['', 'as surveyed'],
      ['never', 'never'],
      ['any', 'in any month'],
    ],
  });
  if (site.water.tub)
    choices.push({
      key: 'runoff',
      label: 'Run-off from uphill and roof',
      choices: [
        ['', 'as surveyed'],
        ['kept-out', 'kept out, ring capped'],
      ],
    });
  if (hasWeatherYears(site))
    choices.push({
      key: 'years',
      label: 'Years counted',
      choices: [
        ['', 'every year of the weather'],
        ['ordinary', 'ordinary years (middle fifth)'],
        ['wet', 'wet years (wettest fifth)'],
      ],
    });
  return {
    numbers: surveyedNumbers(site, outletsOf(basis)[0], own.decision.measures),
    choices,
    ring: site.tub !== undefined,
    held: option,
  };
}
