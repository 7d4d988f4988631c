import { isWetHalf } from '../climate/index.js';
import type { Site } from '../site/index.js';
import type { Advice, Governs, Rule } from './result.js';
import { sayer } from './say.js';

/** What ends the question before any chance is counted. */
export interface Stop {
  option: Advice;
  governs: Governs;
  reason: string;
  rules: Rule[];
}

/** Protected ground, and an existing bulge. */
export function stopOf(site: Site): Stop | undefined {
  const { site: facts } = site.survey;
  if (facts.protected_ground === 'yes')
    return {
      option: 'do-not-dig',
      governs: 'protected',
      reason:
        'The ground is protected: digging, filling or draining it may need a permit, and a drain would harm what is ' +
        'protected. Ask the regulator first; nothing is calculated against that.',
      rules: [{ code: 'ask-regulator', text: 'Ask the regulator before any spade goes in.' }],
    };
  if (site.pond.existing && site.pond.bulge) return bulgeStop(site);
  return undefined;
}

function bulgeStop(site: Site): Stop {
  const pond = latest(site, 'pond', site.places.pondPoint);
  const under = latest(site, 'dip-pipe', site.places.dipPipePoint);
  const difference = pond !== undefined && under !== undefined ? under - pond : undefined;
  const cause =
    difference === undefined
      ? 'A bulge is water or gas under the liner; a dip pipe beside it would tell which.'
      : difference > 0.02
        ? `The water under the liner stands ${sayer(site).length(difference)} above the pond: it is groundwater or storm water that lifts it, not a leak.`
        : difference > -0.02
          ? 'The water under the liner stands as high as the pond: the liner leaks, or the two waters happen to be level.'
          : 'The water under the liner stands below the pond: what lifts the liner is gas, not water.';
  return {
    option: 'relieve-and-keep-full',
    governs: 'lift-full',
    reason: `${cause} Every bit taken out of the pond adds to the lift: top it up, let the water out slowly at the edge, and see to the cause when the ground is dry.`,
    rules: [
      {
        code: 'do-not-cut-bulge',
        text: 'Never cut or weigh down the bulge: the water comes through and the soil follows.',
      },
      {
        code: 'do-not-lower',
        months: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12].filter((m) => isWetHalf(m, site.latitude)),
        text: 'Do not lower or empty the pond while the bulge is there.',
      },
      { code: 'dip-pipe', text: 'Keep a dip pipe to the low point and read it before the pond is lowered.' },
    ],
  };
}

/** Latest level of a reserved pit, m above the datum. */
function latest(site: Site, pit: string, ground: number | undefined): number | undefined {
  const looks = site.survey.looks.filter((l) => l.pit === pit && l.reading === 'level');
  return looks.length > 0 ? (ground ?? 0) - looks[looks.length - 1].depth! : undefined;
}

/**
 * The wet season is not known: no levels and no weather, or weather alone over permeable ground, where the table
 * does what its neighbourhood does. Clay fills every winter, so weather alone says enough there.
 */
export function lacksEvidence(site: Site): boolean {
  if (site.waterModel === 'spill level') return true;
  return site.chosen?.fit.used === 0 && site.ground.ksat.median > 1e-6;
}

/** Peat or a smell of it near the floor: gas that wants a vent. */
export function gasUnder(site: Site): boolean {
  const { organicTop } = site.ground;
  const near = organicTop !== undefined && organicTop < site.pond.depth + 1;
  return near || site.survey.site.organic_smell === 'yes';
}
