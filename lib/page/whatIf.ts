import {
  type Assessment,
  assess,
  type Decision,
  drainFor,
  monthlyLimits,
  NOTHING,
  type OptionName,
  verdictAt,
} from '../risk/index.js';
import { Assumptions, type Site, type SiteOptions, siteModel } from '../site/index.js';
import type { Survey } from '../survey/index.js';
import { hasWeatherYears, inYears, type Years } from './inYears.js';

/** What may be tried: lengths in m, levels in m above the lowest natural ground at the rim; absent: as surveyed. */
export interface WhatIf {
  depth?: number;
  /** these two run the water again: they change what is dug and filled back */
  length?: number;
  width?: number;
  /** full level of the pond */
  full?: number;
  drawdown?: number;
  /** way from the pond's edge to the outlet, and its level */
  run?: number;
  outlet?: number;
  /** absent: what is recommended for the rest */
  option?: OptionName;
  /** run-off as surveyed, or turned away with the ring capped */
  runoff?: 'as-is' | 'kept-out';
  /** years of the weather that are counted */
  years?: Years;
}

/** Judges what-ifs on a survey; the water is simulated again only where what was dug and filled back changes. */
export function explorer(survey: Survey, options: SiteOptions = {}): (change: WhatIf) => Assessment {
  let made: { key: string; site: Site } | undefined;
  return (change) => {
    const key = waterKey(change);
    if (made?.key !== key) made = { key, site: siteModel(resized(survey, change), options) };
    return judged(made.site, change);
  };
}

/** Changes with the same key share one simulation of the water. */
export function waterKey({ length, width }: WhatIf): string {
  return `${length ?? ''}/${width ?? ''}`;
}

/**
 * A what-if on a survey, as the controls of the page make it.
 * @param survey as read
 * @param change what is tried; see {@link WhatIf}
 * @returns the assessment of the changed pond, for `reportOf`, `recommend` and the figures
 */
export function whatIf(survey: Survey, change: WhatIf, options: SiteOptions = {}): Assessment {
  return explorer(survey, options)(change);
}

function resized(survey: Survey, { length, width }: WhatIf): Survey {
  if (length === undefined && width === undefined) return survey;
  const { area: _, ...pond } = survey.pond;
  return { ...survey, pond: { ...pond, ...(length && { length }), ...(width && { width }) } };
}

function judged(site: Site, change: WhatIf): Assessment {
  const { depth, full, drawdown, option } = change;
  const assessment = assess(arranged(site, change), {
    ...(depth !== undefined && { depth }),
    ...(full !== undefined && { fullLevel: full }),
    ...(drawdown !== undefined && { usualDrawdown: drawdown }),
  });
  return option === undefined ? assessment : withOption(assessment, option);
}

/** The site with outlet, run-off and years as tried; its water stays as simulated. */
function arranged(site: Site, { run, outlet, runoff, years = 'all' }: WhatIf): Site {
  const [first, ...others] = site.places.outlets;
  const places =
    first && (run !== undefined || outlet !== undefined)
      ? {
          ...site.places,
          outlets: [{ ...first, distance: run ?? first.distance, level: outlet ?? first.level }, ...others],
        }
      : site.places;
  const { water, catchment } = site;
  const kept = runoff === 'kept-out' && water.tub;
  const dry = kept ? { ...water, tub: { asIs: kept.keptOut, keptOut: kept.keptOut } } : water;
  return {
    ...site,
    places,
    catchment: kept ? { ...catchment, uphillArea: 0, roofArea: 0, capped: true } : catchment,
    water: years === 'all' || !hasWeatherYears(site) ? dry : inYears(dry, years),
  };
}

/** The assessment with an option of it in the place of what is recommended, at the depth tried. */
export function withOption(a: Assessment, option: OptionName): Assessment {
  const { site, draws } = a;
  const measures = a.options.find(({ name }) => name === option)?.measures ?? NOTHING;
  const { depth } = site.pond;
  const verdict = verdictAt(site, draws, measures, depth);
  const decision: Decision = {
    ...a.decision,
    option,
    also: [],
    measures,
    depth,
    verdict,
    governs: verdict.governs,
  };
  return {
    ...a,
    decision,
    limits: monthlyLimits(site, draws, measures, depth),
    drain: drainFor(site, draws, decision, new Assumptions()),
  };
}
