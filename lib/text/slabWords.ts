/** The slab on the liner: what it takes of the pond, and how it comes to lie there. */
import type { Report } from '../contract/index.js';
import { formatBound, type UnitSystem } from '../units/index.js';
import { duringMonths } from './monthWords.js';

/**
 * What the slab takes of depth and volume.
 * @param report - with what is recommended
 * @param units - how numbers are written
 * @returns a sentence; empty where none is cast
 */
export function slabTakes({ slab }: Pick<Report, 'slab'>, units: UnitSystem): string {
  if (!slab) return '';
  const taken = Math.round(100 * (1 - slab.left_m3 / slab.volume_m3));
  return `The slab lies on the liner, on the floor and up the sides, and takes ${slabThick(slab, units)} of the water's depth and about ${taken} % of what the pond would hold. ${facingWords(slab, units)}`;
}

/** How thick the facings are, which weigh less on a side than on the floor. */
function facingWords({ facing_m }: NonNullable<Report['slab']>, units: UnitSystem): string {
  return facing_m === null
    ? 'No weight of concrete holds sides so steep: their facings are walls, as thick as an engineer makes them.'
    : `On the sides it is ${formatBound(facing_m, 'length', units, 'up')} thick, since on a slope less of its weight presses on the liner.`;
}

/** How thick it is, as it is cast. */
const slabThick = ({ thickness_m }: NonNullable<Report['slab']>, units: UnitSystem) =>
  formatBound(thickness_m, 'length', units, 'up');

/** Its name where it is drawn. */
export const slabLabel = (slab: NonNullable<Report['slab']>, units: UnitSystem) =>
  `concrete slab, ${slabThick(slab, units)}`;

/**
 * How the slab is cast, which a liner that water lifts does not let be. Common practice.
 * @param report - with what is recommended
 * @returns sentences; empty where none is cast
 */
export function castStep(report: Pick<Report, 'slab'>): string {
  if (!report.slab) return '';
  const { cast_in: dry } = report.slab;
  if (dry.length === 0)
    return 'The slab cannot be cast on a liner that water lifts, and in no month does the water surely stay below the floor: it must be kept pumped below it, day and night, while the slab is cast and until the concrete is hard. Have the engineer who designs the slab say how, before anything is dug or bought; where nobody can keep it low, this is not the way. Fill the pond before the pump is stopped.';
  return `Cast the slab on it ${duringMonths(dry)}, while the dip pipe shows the water below the floor, look into the pipe every day until the concrete has set for a week, and fill the pond at once if the water comes above the floor; else fill it then.`;
}
