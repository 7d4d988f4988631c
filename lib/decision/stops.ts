import type { Advice, Governs, Rule } from '../contract/index.js';
import { pairedReadings } from '../heads/index.js';
import type { Site } from '../site/index.js';
import { BULGE_NEVER, BULGE_REMEDY, bulgeCause, gasExpected } from '../uplift/index.js';

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
  const { pond, under } = pairedReadings(site);
  const { cause, words } = bulgeCause(
    pond?.level,
    under?.dry ? 'dry' : under?.level,
    site.survey.site.show_units,
  );
  return {
    option: 'relieve-and-keep-full',
    governs: cause === 'gas' ? 'gas' : 'lift-full',
    reason: `${words} ${BULGE_REMEDY[cause]} ${BULGE_NEVER.join(' ')}`,
    rules: [
      {
        code: 'do-not-cut-bulge',
        text: 'Never cut or weigh down the bulge: the water comes through and the soil follows.',
      },
      {
        code: 'do-not-lower',
        months: site.wetMonths,
        text: 'Do not lower or empty the pond while the bulge is there.',
      },
      { code: 'dip-pipe', text: 'Keep a dip pipe to the low point and read it before the pond is lowered.' },
      ...(cause === 'gas'
        ? [
            {
              code: 'vent-high-point',
              text: 'Lay a vent from the high point when the liner is next up, in a dry month.',
            },
          ]
        : []),
    ],
  };
}

/**
 * The wet season is not known: no levels and no weather, or weather alone over permeable ground, where the table
 * does what its neighbourhood does. Clay fills every winter, so weather alone says enough there.
 */
export function lacksEvidence(site: Site): boolean {
  if (site.waterModel === 'spill level') return true;
  return site.fit?.used === 0 && site.ground.ksat.median > 1e-6;
}

/** Peat or a smell of it near a floor, m below the ground: gas that wants a vent. */
export function gasUnder(site: Site, depth: number): boolean {
  return gasExpected(site.ground.organicTop, site.survey.site.organic_smell === 'yes', depth);
}
