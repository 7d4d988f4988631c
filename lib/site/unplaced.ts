import type { Survey, Warning } from '../survey/index.js';
import type { Assumptions } from './assumptions.js';
import type { Places } from './places.js';

const LEFT_OUT = 'no pipe is led there: its run and fall are not known';
const AT_EDGE = 'it is taken at the edge of the dig';

/** What levels.csv does not say of the rim and of the ways from the pond, each with what the answer does without it. */
export function unplacedWarnings(
  survey: Survey,
  { unplaced, outlets, shortOfRim }: Places,
  assume: Assumptions,
): Warning[] {
  const rim = survey.levels.filter(({ role }) => role === 'rim');
  if (rim.length < 2)
    assume.add(
      'ground at the rim',
      'level',
      '',
      'it was levelled at fewer than two points: on a slope the water behind the uphill wall stands higher and the side there is taller; level the rim at its lowest and its highest ground',
    );
  if (shortOfRim)
    assume.add(
      'rim on the plan',
      shortOfRim.reach,
      'm',
      `with fewer than three rim points round it on the plan the pond may lie on any side of them: ${shortOfRim.names.join(', ')} counted so much nearer; give a third, or the distance`,
    );
  const far = unplaced.map(({ name, role, origin }): Warning => {
    const near = role !== 'outlet' && role !== 'discharge';
    if (near) assume.add(`distance of ${name}`, 0, 'm', `levels.csv does not say how far the ${role} stands`);
    return {
      code: 'missing-distance',
      message: `nothing says how far ${name} (${role}) is from the pond's edge: ${near ? AT_EDGE : LEFT_OUT}; write distance, or x and y here and at the rim`,
      ...origin,
      column: 'distance',
    };
  });
  const open = outlets.filter((o) => o.wayUnknown);
  if (open.length === 0) return far;
  const names = open.map((o) => o.name).join(', ');
  assume.add(
    'outlet_within_boundary',
    'yes',
    '',
    `how far the boundary is does not tell whether the way to ${names} crosses it`,
  );
  return [
    ...far,
    {
      code: 'way-not-known',
      message: `whether the boundary lies between the pond and ${names}, or nearer than it may, is not known: write outlet_within_boundary (yes or no), or x and y of rim, outlet and boundary`,
      ...(survey.origins.site.outlet_within_boundary ?? { file: 'levels.csv' }),
    },
  ];
}
