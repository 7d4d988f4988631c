/** The pond as it is kept, against the water outside, and the check that inspectors sign. */

import { type Basis, decidingDay } from '../basis/index.js';
import type { Judged } from '../decision/index.js';
import type { Measures } from '../heads/index.js';
import { NOTHING } from '../heads/index.js';
import { CHECKED_SHARE, upliftCheck } from '../reliability/index.js';
import { sayer } from '../text/index.js';
import type { UnitSystem } from '../units/index.js';
import { depthOver, netHead, slabPressure, upliftUtilisation, withSlab } from '../uplift/index.js';
import { checkedMeasures } from './checkedMeasures.js';
import { tellLevels } from './workedBasics.js';
import { drawnKept, drawnWater } from './workedDrawn.js';
import { assumed, pondCells, Recording, waterWords } from './workedFrom.js';

/** Records the day that decides in the year, or a month of it, that a share of years stays below. */
export function recordDay(
  r: Recording,
  a: Judged,
  basis: Basis,
  m: Measures,
  depth: number,
  share: number,
  month?: number,
): { head: number; pond: number } {
  const { highs } = basis;
  const { way, cutoff } = m;
  const undrained = month === undefined ? highs.yearly(m, share) : highs.monthly(m, month, share);
  const of = month === undefined ? 'year' : 'month';
  drawnWater(r, a, basis, { of, way, cutoff, ...(month && { month }) }, share, undrained);
  drawnKept(r, a, basis, m, share, month);
  return decidingDay(basis, m, depth, share, month, r.use);
}

/** Full and as it is kept: the net head in the middle year and in one year of ten. */
export function keptPart(a: Judged, units: UnitSystem, m: Measures, heading: string): Recording {
  const { site, basis } = a;
  const { depth } = site.pond;
  const say = sayer(units);
  const r = new Recording(
    heading,
    `Head outside: the yearly highest of ${waterWords(site)}.${
      m.raise > 0 ? ` Rim and floor raised ${say.length(m.raise)}.` : ''
    }${m.ballast > 0 ? ` The slab holds ${say.length(m.ballast)} of head, counted with the pond level.` : ''}`,
    pondCells(site, 'water_above_rim_ground', 'full_level', 'usual_drawdown', 'kept_within'),
  );
  tellLevels(r, site, m, depth);
  const option = a.options.find(({ measures }) => measures === m)?.name;
  for (const [end, share] of [
    ['p50', 0.5],
    ['p10', 0.9],
  ] as const) {
    const day = recordDay(r, a, basis, m, depth, share);
    r.use(netHead, m.ballast > 0 ? r.use(withSlab, day.pond, m.ballast) : day.pond, day.head);
    if (option) r.same(`options[${option}].full.net_head_m.${end}`);
  }
  return r;
}

/** The deterministic check, since inspectors do not sign chances. */
export function standardParts(a: Judged): Recording[] {
  const { site, basis } = a;
  return checkedMeasures(a).map(({ option, m, depth }, index) => {
    const r = new Recording(
      `Deterministic check: EN 1997-1 (UPL) on the floor, ${m === NOTHING ? 'with nothing done' : 'as recommended'}`,
      'Uplift from the head outside that 95 % of years stay below; at most 1 is verified.',
      pondCells(site, 'depth', 'water_above_rim_ground', 'full_level', 'usual_drawdown', 'kept_within'),
    );
    tellLevels(r, site, m, depth);
    const { highs } = basis;
    drawnWater(
      r,
      a,
      basis,
      { of: 'year', way: m.way, cutoff: m.cutoff },
      CHECKED_SHARE,
      highs.yearly(m, CHECKED_SHARE),
    );
    drawnKept(r, a, basis, m, CHECKED_SHARE);
    const factor = assumed(
      site.country.rules === 'gb' ? 'EN 1997-1, UK national annex' : 'EN 1997-1 table A.15',
    );
    r.tell(depthOver, { e: assumed('nought') }).tell(depthOver, {
      e: assumed('a film, so that the ratio has a number'),
    });
    r.tell(slabPressure, {
      b: m.ballast > 0 ? assumed('the slab of this answer, as a head') : assumed('no slab'),
    });
    r.tell(upliftUtilisation, { a: factor, b: factor });
    upliftCheck(a, option, m, depth, r.use);
    r.same(`uplift_check[${index}].utilisation`);
    return r;
  });
}
