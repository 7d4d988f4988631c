import {
  type ConditionValues,
  codeAndValues,
  type Failing,
  isOption,
  type MonthlyLimits,
  type Statement,
} from '../contract/index.js';
import { LEVEL_RESOLUTION } from '../formula/index.js';
import { deepestOf, questionOf } from '../options/index.js';
import type { Site } from '../site/index.js';
import type { Judged } from './assess.js';
import type { Decision } from './decide.js';
import { EASY } from './easedWish.js';
import { outletFails } from './outletFails.js';
import { servingOf } from './serving.js';
import { stopOf } from './stops.js';
import { whyWait } from './whyWait.js';

/** Why this is recommended, with the numbers that decide. */
export function reasonOf(judged: Judged): Statement[] {
  const { site, decision } = judged;
  const stop = stopOf(site);
  if (stop) return stop.reason;
  const ask = questionOf(site, decision.measures);
  return [...(ask ? [{ code: 'ask-first', values: ask } as const] : []), ...(changed(judged) ?? why(judged))];
}

/** The pond as wished does not hold, and with the least change it does. */
function changed({ site, decision: d, limits }: Judged): Statement[] | undefined {
  const { pond } = site;
  if (!d.change || !d.verdict) return undefined;
  const { side_slope, built_in } = d.change;
  const dug = side_slope !== undefined || built_in !== undefined;
  if (dug && !(isOption(d.option) && EASY.includes(d.option))) return undefined;
  const first = d.rejected[0]?.verdict;
  return [
    ...(dug || d.open
      ? untreatedOf(site, d)
      : first
        ? [
            {
              code: 'as-wished',
              values: { governs: first.governs, per_year: first.chance.perYear },
            } as const,
          ]
        : []),
    {
      code: 'as-changed',
      values: {
        depth_m: d.depth < pond.depth ? d.depth : null,
        change: d.change,
        kept_out: d.measures.way === 'keptOut',
        raise_m: d.measures.raise,
        fails: failing(site, d, limits),
      },
    },
  ];
}

function why(judged: Judged): Statement[] {
  const { site, decision: d, limits } = judged;
  const untreated = untreatedOf(site, d);
  if (!serves(d)) return untreated[0]?.code === 'cannot-be-dug' ? untreated : stillFails(site, d, untreated);
  switch (d.option) {
    case 'shallower':
      return [
        ...untreated,
        ...dugAs(d),
        { code: 'shallower', values: { depth_m: d.depth, emptied: failing(site, d, limits).emptied } },
        ...rimBuys(judged),
        ...outletFails(d),
      ];
    case 'move':
      return d.spot
        ? [...untreated, { code: 'spot', values: { name: d.spot.name, depth_m: d.spot.depth } }]
        : [...untreated, { code: 'no-depth', values: {} }, ...outletFails(d)];
    case 'vent':
      return [{ code: 'vent', values: {} }];
    case 'measure-first':
      return [...untreated, ...whyWait(judged)];
    default:
      return servingOf(judged, [...untreated, ...dugAs(d)], failing(site, d, limits));
  }
}

/** What becomes of the wish with nothing done; empty where nothing was passed over. */
function untreatedOf({ pond }: Pick<Site, 'pond'>, d: Decision): Statement[] {
  const wish = { depth_m: pond.depth };
  if (d.open) return [{ code: 'fact-open', values: { ...wish, fact: d.open } }];
  const first = d.rejected[0]?.verdict;
  if (!first) return [];
  const tooDeep = first.conditions.find(
    ({ met, governs }) => met === 'no' && (governs === 'sides-meet' || governs === 'working-slope'),
  );
  if (tooDeep)
    return [
      { code: 'cannot-be-dug', values: { ...wish, condition: codeAndValues<ConditionValues>(tooDeep) } },
    ];
  return [
    {
      code: 'undone',
      values: { governs: first.governs, per_year: first.diggable ? first.chance.perYear : null },
    },
  ];
}

/** What the rim may add to a depth that was cut: it is not dug. */
function rimBuys({ site: { pond }, options, curves, decision: d }: Judged): Statement[] {
  const raise = options.find(({ name }) => name === 'raise-pond')?.measures?.raise ?? 0;
  const curve = curves.find(({ option }) => option === 'raise-pond');
  if (!curve || raise === 0 || d.measures.raise > 0) return [];
  const depth = Math.min(curve.depth_m[deepestOf(curve.safe)] ?? 0, pond.depth);
  if (depth <= d.depth + LEVEL_RESOLUTION) return [];
  return [{ code: 'rim-buys', values: { raise_m: raise, depth_m: depth, wish_m: pond.depth } }];
}

/** What is dug otherwise before anything that is built serves. */
function dugAs({ change }: Decision): Statement[] {
  const dug = change?.side_slope !== undefined || change?.built_in !== undefined;
  return dug ? [{ code: 'dug-otherwise', values: { change } }] : [];
}

/** Whether an option is what is recommended, and not only tried in its place. */
function serves({ option, verdict, emptyingRuled }: Decision): boolean {
  return !isOption(option) || !verdict || verdict.safe || emptyingRuled;
}

/** What an option that was tried leaves as it is. */
function stillFails({ pond }: Site, { option, verdict }: Decision, untreated: Statement[]): Statement[] {
  if (!isOption(option)) return untreated;
  const { governs, diggable, chance } = verdict!;
  return [
    ...(option === 'no-drain' ? [] : untreated),
    {
      code: 'still-fails',
      values: {
        option,
        governs,
        per_year: diggable ? chance.perYear : null,
        accepted: pond.acceptedRisk,
      },
    },
  ];
}

/** How often it fails as it is recommended: emptied as planned, or only when the rules allow it. */
function failing(
  { pond }: Site,
  { verdict, emptyingRuled, measures }: Decision,
  { barred }: MonthlyLimits,
): Failing {
  const { perYear = 0, modes = {}, upkeep = 0 } = verdict?.chance ?? {};
  return {
    per_year: emptyingRuled ? (modes['lift-drawn-down'] ?? 0) : perYear,
    upkeep,
    accepted: pond.acceptedRisk,
    emptied: !emptyingRuled ? 'planned' : barred.includes(null) ? 'ruled' : 'never',
    kept: measures.drain?.kind === 'sump' ? 'pump' : 'flap',
  };
}
