import { isoDate } from '../climate/index.js';
import {
  codeAndValues,
  type Failing,
  type MonthlyLimits,
  type ObstacleValues,
  type ServingStatements,
  type Statement,
} from '../contract/index.js';
import { BED_THICKNESS } from '../drain/index.js';
import { floorLevel, type OwnReading, oldDrainOf, reliefBounds } from '../heads/index.js';
import type { Option } from '../options/index.js';
import type { Site } from '../site/index.js';
import type { Judged } from './assess.js';
import type { Decision } from './decide.js';
import { outletFails } from './outletFails.js';

/** Why an option that is recommended serves; after what becomes of the wish untreated. */
export function servingOf(judged: Judged, untreated: Statement[], fails: Failing): Statement[] {
  const { site, options, decision: d, limits } = judged;
  const { raise, ballast, drain: to } = d.measures;
  switch (d.option) {
    case 'no-drain':
      return d.emptyingRuled
        ? [wronglyEmptied(site, d), keepTo(limits), ...noDrainServes(site, options, d, limits)]
        : [{ code: 'nothing-lifts', values: { ...asPlanned(site, limits), fails } }];
    case 'surface-water-only':
      return [...untreated, { code: 'surface-water-only', values: { fails } }];
    case 'raise-pond':
      return [...untreated, { code: 'raise-pond', values: { raise_m: raise, dug_m: dugInstead(d), fails } }];
    case 'cutoff-drain':
      return [...untreated, { code: 'cutoff-drain', values: { raise_m: raise, fails } }];
    case 'drain-to-outlet': {
      if (to?.kind !== 'outlet') throw new Error('a drain to an outlet without one');
      if (to.asBuilt) return [oldDrainServes(site, fails)];
      const { most } = reliefBounds(d.measures, floorLevel(d.depth, d.measures), 'works', to.flood);
      return [
        ...untreated,
        {
          code: 'drain-to-outlet',
          values: { bed_m: BED_THICKNESS, outlet: to.outlet.name, level_m: most, fails },
        },
        ...carried(judged),
      ];
    }
    case 'drain-to-sump': {
      const { why } = options.find(({ name }) => name === 'drain-to-outlet')!;
      return [
        ...untreated,
        { code: 'drain-to-sump', values: { lowest: why !== undefined && !why.asks, fails } },
        ...outletFails(d),
        ...carried(judged),
      ];
    }
    case 'ballast':
      return [...untreated, { code: 'ballast', values: { head_m: ballast, fails } }, ...outletFails(d)];
    default:
      return untreated;
  }
}

/** What is dug below the ground where the rim is raised to dig less; null where all of the depth could be dug. */
function dugInstead({ depth, measures, rejected }: Decision): number | null {
  return rejected[0]?.verdict.diggable === false ? depth - measures.raise : null;
}

/** What the drain must take, and what takes least. */
function carried({ drain }: Judged): Statement[] {
  if (!drain) return [];
  const { governing, weakestLink: link, reserve } = drain;
  return [
    { code: 'inflow', values: governing },
    { code: 'weakest-link', values: { link, reserve: reserve[link] } },
  ];
}

/** What the looks into the dip pipe tell of the drain that is there. */
function oldDrainServes(site: Site, fails: Failing): Statement {
  const { looks, highest } = oldDrainOf(site)!;
  const date = ({ day }: OwnReading) => isoDate(Math.floor(day));
  return {
    code: 'old-drain-works',
    values: {
      looks: looks.length,
      from: date(looks[0]),
      to: date(looks.at(-1)!),
      highest_m: highest!,
      fails,
    },
  };
}

/** What emptying in the months wished would do. */
function wronglyEmptied({ pond }: Site, { verdict }: Decision): Statement {
  const { emptiedIn } = pond;
  if (emptiedIn === 'any' || emptiedIn.length === 0 || !verdict || verdict.safe)
    return { code: 'kept-full', values: { emptied: null } };
  const emptied = { months: emptiedIn, fails: verdict.governs, per_year: verdict.chance.perYear };
  return { code: 'kept-full', values: { emptied } };
}

/** The months to keep to; where none is free the dip pipe tells, but of the water under the liner only. */
function keepTo({ lowestSafeLevel, barred }: MonthlyLimits): Statement {
  if (lowestSafeLevel.includes(null)) return { code: 'keep-to-months', values: {} };
  if (!barred.includes(null))
    return {
      code: 'never-emptied',
      values: { cause: barred.includes('floor-heave') ? 'floor-heave' : 'side-slump' },
    };
  const never = barred.flatMap((by, i) => (by === null ? [] : [i + 1]));
  return { code: 'by-dip-pipe', values: { never } };
}

/** Why no drain lets the pond be emptied in the months wished. */
function noDrainServes(
  { pond }: Site,
  options: Option[],
  d: Decision,
  { barred }: MonthlyLimits,
): Statement[] {
  if (pond.emptiedIn === 'any' || pond.emptiedIn.some((month) => barred[month - 1])) return [];
  const { why } = options.find(({ name }) => name === 'drain-to-outlet')!;
  return why ? [{ code: 'no-drain-serves', values: codeAndValues<ObstacleValues>(why) }] : outletFails(d);
}

/** What a plan without a drain owes its safety to, where some months would lift an emptied liner. */
function asPlanned(
  { pond }: Site,
  { lowestSafeLevel }: MonthlyLimits,
): Pick<ServingStatements['nothing-lifts'], 'how' | 'months'> {
  const { emptiedIn } = pond;
  const bound = lowestSafeLevel.some((level) => level !== null);
  if (!bound || emptiedIn === 'any') return { how: 'always', months: [] };
  if (emptiedIn.length === 0) return { how: 'never-emptied', months: [] };
  const brief = emptiedIn.filter((month) => lowestSafeLevel[month - 1] !== null);
  return brief.length === 0 ? { how: 'in-months', months: emptiedIn } : { how: 'in-time', months: brief };
}
