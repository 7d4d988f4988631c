import { type Basis, basisOf } from '../basis/index.js';
import type { OptionName } from '../contract/index.js';
import {
  type Assessment,
  builtBy,
  type Change,
  type Decision,
  explained,
  type Judged,
  judge,
} from '../decision/index.js';
import { type Measures, NOTHING, namesOf } from '../heads/index.js';
import { outletsOf } from '../options/index.js';
import { monthlyLimits, type Verdict, verdictAt } from '../reliability/index.js';
import {
  planOf,
  type Site,
  type SiteOptions,
  siteModel,
  type WaterEnsemble,
  type WaterMet,
} from '../site/index.js';
import type { Survey } from '../survey/index.js';
import { drainFor } from '../works/index.js';
import { hasWeatherYears, inYears, type Years } from './inYears.js';
import { changesOf, trialMeasures, type WhatIfValues, waterKey } from './whatIfParameters.js';

/** What may be tried; absent: as surveyed. */
export interface WhatIf extends WhatIfValues {
  /** absent: what is recommended for the rest */
  option?: OptionName;
  /** never, or in any month; absent: in the months wished */
  emptied?: 'never' | 'any';
  /** run-off as surveyed, or turned away with the ring capped */
  runoff?: 'as-is' | 'kept-out';
  /** years of the weather that are counted */
  years?: Years;
}

const EMPTIED = { never: [] as number[], any: 'any' } as const;

/**
 * Judges what-ifs on a survey; the water is simulated again only where what was dug and filled back changes.
 * @param survey - as read
 * @param options - seed and number of samples
 * @returns judges one change after another; throws InputError for fewer than 8 samples
 */
export function explorer(survey: Survey, options: SiteOptions = {}): (change: WhatIf) => Judged {
  const arrange = arranger(survey, options);
  let last: Judged | undefined;
  return (tried) => {
    const { site, change } = arrange(tried);
    // A rim that is tried is raised so far, and may be raised no farther.
    const { raise } = trialMeasures(site, NOTHING, tried);
    const allowed = tried.raise === undefined ? {} : { highestRaise: raise };
    last = judge(site, { ...change, ...allowed }, last);
    const { decision } = last;
    if (tried.option !== undefined) return withOption(last, tried.option, tried);
    if (tried.raise === undefined || decision.measures.raise === raise) return last;
    return withMeasures(last, builtBy(decision), { ...decision.measures, raise });
  };
}

/** Gives the site of one what-if after another, and what of it changes the pond as it is kept. */
export function arranger(
  survey: Survey,
  options: SiteOptions = {},
): (tried: WhatIf) => { site: Site; change: Change } {
  let { before } = options;
  const siteFor = kept((change) => {
    before = siteModel(resized(survey, change), { ...options, before });
    return before;
  }, waterKey);
  const waterFor = kept(
    (change) => counted(siteFor(change), change),
    (change) => `${waterKey(change)}/${change.runoff ?? ''}/${change.years ?? ''}`,
  );
  let best: string | undefined;
  /** The outlet that serves the pond as surveyed: the one whose run and level are tried. */
  const movedOf = (site: Site) => {
    if (site.places.outlets.length > 1) best ??= outletsOf(basisOf(siteFor({})))[0]?.name;
    return best ?? site.places.outlets[0]?.name;
  };
  return (tried) => {
    const surveyed = siteFor(tried);
    const site = { ...arranged(surveyed, tried, movedOf(surveyed)), water: waterFor(tried) };
    const emptied = tried.emptied && { emptiedIn: EMPTIED[tried.emptied] };
    return { site, change: { ...changesOf(tried, 'kept'), ...emptied } };
  };
}

/** A function that keeps its last answer for changes with the same key. */
function kept<T>(make: (change: WhatIf) => T, keyOf: (change: WhatIf) => string): (change: WhatIf) => T {
  let last: { key: string; made: T } | undefined;
  return (change) => {
    const key = keyOf(change);
    if (last?.key !== key) last = { key, made: make(change) };
    return last.made;
  };
}

/**
 * A what-if on a survey, as the controls of the page make it.
 * @param survey as read
 * @param change what is tried; see {@link WhatIf}
 * @param options - seed and number of samples
 * @returns the assessment of the changed pond, for {@link reportOf}, {@link recommend} and the figures
 * @throws InputError for fewer than 8 samples
 */
export function whatIf(survey: Survey, change: WhatIf, options: SiteOptions = {}): Assessment {
  return explained(explorer(survey, options)(change));
}

function resized(survey: Survey, change: WhatIf): Survey {
  const dug = changesOf(change, 'dug');
  if (Object.keys(dug).length === 0) return survey;
  const { area: _, ...pond } = survey.pond;
  // A change of one side leaves the other as an area made it; a round pond is as wide as long.
  const plan = pond.shape === 'round' ? {} : planOf(survey.pond);
  return { ...survey, pond: { ...pond, ...plan, ...dug } };
}

/** The water of the years and the run-off that are counted. */
function counted(site: Site, { runoff, years = 'all' }: WhatIf): WaterEnsemble {
  const { water } = site;
  const dry = runoff === 'kept-out' ? keptOut(water) : water;
  return years === 'all' || !hasWeatherYears(site) ? dry : inYears(dry, years);
}

/** The ensemble with its ring as run-off kept out leaves it. */
function keptOut(water: WaterEnsemble): WaterEnsemble {
  const sums = water.pond?.tub?.keptOut;
  const ring = ({ tub }: WaterMet) => tub && { asIs: tub.keptOut, keptOut: tub.keptOut };
  return {
    ...water,
    tub: ring(water),
    weekend: water.weekend && { ...water.weekend, tub: ring(water.weekend) },
    pond: water.pond && { ...water.pond, tub: sums && { asIs: sums, keptOut: sums } },
  };
}

/** The site with run-off as tried, and the outlet of that name. */
function arranged(site: Site, change: WhatIf, outlet: string | undefined): Site {
  const { runoff } = change;
  const moved = changesOf(change, 'outlet');
  const outlets = site.places.outlets.map((o) => (o.name === outlet ? { ...o, ...moved } : o));
  return {
    ...site,
    places: { ...site.places, outlets },
    catchment:
      runoff === 'kept-out'
        ? { ...site.catchment, uphillArea: 0, roofArea: 0, overflow: 'away', capped: true }
        : site.catchment,
  };
}

/** The assessment with an option of it in the place of what is recommended, at the depth tried. */
function withOption(a: Judged, option: OptionName, tried: WhatIfValues = {}): Judged {
  const measures = a.options.find(({ name }) => name === option)?.measures ?? NOTHING;
  return withMeasures(a, option, trialMeasures(a.site, measures, tried));
}

function withMeasures(a: Judged, option: OptionName, measures: Measures): Judged {
  const { site, basis } = a;
  const built = builtAs(basis, calledAs(option, measures), measures);
  const decision: Decision = {
    ...a.decision,
    spot: undefined,
    ...built.decision,
    rejected: a.decision.rejected,
  };
  return {
    ...a,
    ...built,
    decision,
    assumptions: [...site.assumptions, ...(built.drain?.assumptions ?? [])],
  };
}

/** The name of what is built once its rim is raised otherwise: a raised rim is its own option where nothing is built besides. */
export function calledAs(option: OptionName, measures: Measures): OptionName {
  const bare = option === 'no-drain' || option === 'surface-water-only';
  if (measures.raise > 0) return bare ? 'raise-pond' : option;
  return option === 'raise-pond' ? namesOf(measures)[0]! : option;
}

/** The decision for measures whatever else would be decided, under the name of an option, with what follows of it. */
export function builtAs(
  basis: Basis,
  option: OptionName,
  measures: Measures,
): Pick<Judged, 'limits' | 'drain'> & { decision: Decision & { verdict: Verdict } } {
  const { depth } = basis.site.pond;
  const verdict = verdictAt(basis, measures, depth);
  return {
    decision: {
      option,
      also: [],
      measures,
      depth,
      verdict,
      governs: verdict.governs,
      emptyingRuled: !verdict.safe && verdict.diggable && verdict.kept,
      rejected: [],
    },
    limits: monthlyLimits(basis, measures, depth),
    drain: drainFor(basis, measures, depth),
  };
}
