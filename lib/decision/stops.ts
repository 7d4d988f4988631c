import { type Advice, type Governs, type Rule, ruleOf, type Statement } from '../contract/index.js';
import { pairedReadings } from '../heads/index.js';
import type { Site } from '../site/index.js';
import { bulgeCause, gasExpected } from '../uplift/index.js';

/** What ends the question before any chance is counted. */
interface Stop {
  option: Advice;
  governs: Governs;
  reason: Statement[];
  rules: Rule[];
}

/** Protected ground, and an existing bulge. */
export function stopOf(site: Site): Stop | undefined {
  const { site: facts } = site.survey;
  if (facts.protected_ground === 'yes')
    return {
      option: 'do-not-dig',
      governs: 'protected',
      reason: [{ code: 'protected', values: {} }],
      rules: [ruleOf('ask-regulator/protected', {})],
    };
  if (site.pond.existing && site.pond.bulge) return bulgeStop(site);
  return undefined;
}

function bulgeStop(site: Site): Stop {
  const { pond, under } = pairedReadings(site);
  const { cause, difference } = bulgeCause(pond?.level, under?.dry ? 'dry' : under?.level);
  return {
    option: 'relieve-and-keep-full',
    governs: cause === 'gas' ? 'gas' : 'lift-full',
    reason: [
      { code: 'bulge', values: { cause, difference_m: difference } },
      { code: 'bulge-remedy', values: { cause } },
      { code: 'bulge-never', values: {} },
    ],
    rules: [
      ruleOf('do-not-cut-bulge/bulge', {}),
      ruleOf('do-not-lower/bulge', {}, { months: site.wetMonths }),
      ruleOf('dip-pipe/bulge', {}),
      ...(cause === 'gas' ? [ruleOf('vent-high-point/bulge', {})] : []),
    ],
  };
}

/**
 * The wet season is not known: no levels and no weather, or weather alone over permeable ground, where the table
 * does what its neighbourhood does. Clay fills every winter, so weather alone says enough there.
 */
export function lacksEvidence(site: Site): boolean {
  if (site.waterModel === 'spill level') return true;
  return site.fit?.used === 0 && site.ground.permeability.median > 1e-6;
}

/** Peat or a smell of it near a floor, m below the ground: gas that wants a vent. */
export function gasUnder(site: Site, depth: number): boolean {
  return gasExpected(site.ground.organicTop, site.survey.site.organic_smell === 'yes', depth);
}
