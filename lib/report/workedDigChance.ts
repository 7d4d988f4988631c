/** How often the dig that is recommended goes wrong, counted in the simulated years. */

import { decidingSituations, type Situation } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { bestDig, failingDigs, worstDig } from '../digging/index.js';
import { digNote, digState } from '../text/chanceStepWords.js';
import { recordCounted } from './countedSteps.js';
import { Recording, YEARLY_HEADS } from './workedFrom.js';

const HOW = { 'floor-heave': 'heave', 'side-slump': 'slump', 'wet-dig': 'wet_floor' } as const;

/** A part with the three chances of a dig; none where nothing is dug. */
export function digChancePart(a: Judged, situations: Situation[]): Recording[] {
  const { measures, depth, changed: basis = a.basis } = a.decision;
  const digs = decidingSituations(situations).filter(
    ({ of, situation }) => of === 'recommended' && situation === 'dig',
  );
  if (digs.length === 0) return [];
  const { plan, chances } = bestDig(basis.site, basis.dig, measures, depth);
  const row = digs.find(({ month }) => month === null || plan.months.includes(month))!;
  const worst = worstDig(chances).governs;
  const failing = failingDigs(basis, plan, measures, depth);
  const weight = new Float64Array(basis.draws.samples).fill(1);
  const r = new Recording('How often the dig goes wrong', digNote(YEARLY_HEADS, plan.months));
  for (const [governs, how] of Object.entries(HOW)) {
    const counted = [{ state: 'none', flooded: false, weight, fails: failing[how] } as const];
    const path = `situations[${['recommended/dig', row.month ?? []].flat().join('/')}].chance.middle`;
    recordCounted(r, basis, counted, { name: '', ...digState(how) }, governs === worst ? path : undefined);
  }
  return [r];
}
