/** The worked time until the liner of an emptied pond lifts. */

import type { Judged } from '../decision/index.js';
import { LEVEL_RESOLUTION, recorder } from '../formula/index.js';
import { NOTHING, secondsToLift } from '../heads/index.js';
import { monthlyDesign, monthlyLimits } from '../reliability/index.js';
import { discInflow } from '../seepage/index.js';
import { monthWords } from '../text/index.js';
import {
  type EmptyTime,
  fillTime,
  gatheringRadius,
  LEAST_FLOOR,
  LIFT_VOLUME_DEPTH,
  netHead,
} from '../uplift/index.js';
import {
  floorWords,
  pondCells,
  pondRow,
  rowsWords,
  type WorkedPart,
  waterWords,
  withOrigins,
} from './workedFrom.js';
import { planTold } from './workedPlan.js';

const LEAST = `no floor is left: ${LEAST_FLOOR} m² at least is counted`;

/** Why the month's time is another than that by its own water. */
function elsewhere({ seconds, governs }: EmptyTime): string {
  const hours = `${Math.round(seconds / 3600)} h`;
  if (governs === 'heave') return ' The floor would heave at once.';
  if (governs === 'sides') return ` The sides allow less: ${hours}, as softened clay takes up water.`;
  const from = Number.isFinite(seconds)
    ? `${hours} from the worst day of the month on`
    : 'from no day of the month on does the water come in time';
  return ` Where it is not over within the month, the next counts with its own water: ${from}.`;
}

/** The time an emptied pond has without measures, in the month planned or the worst one. */
export function emptiedPart(a: Judged): WorkedPart[] {
  const { site, basis } = a;
  const { pond } = site;
  if (Array.isArray(pond.emptiedIn) && pond.emptiedIn.length === 0) return [];
  const months = pond.emptiedIn === 'any' ? [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] : pond.emptiedIn;
  const designs = months.map((month) => ({ month, ...monthlyDesign(basis, NOTHING, pond.depth, month) }));
  const worst = designs.reduce((x, y) => (y.high > x.high ? y : x));
  const { month, holds, clay, standing, conductivity } = worst;
  if (clay <= holds + LEVEL_RESOLUTION) return [];
  const { use, steps } = recorder();
  use(netHead, holds, clay);
  const lift = secondsToLift(site, pond.depth, holds, clay, standing, conductivity, LIFT_VOLUME_DEPTH, use);
  if (steps.length === 1) return [];
  const end = monthlyLimits(basis, NOTHING, pond.depth).empty[month - 1];
  const liftEnds = lift === end.seconds;
  const layers = rowsWords(site.ground.layers.map((l) => l.row.origin));
  return [
    {
      heading: `Emptied in ${monthWords([month])} with nothing done: the time until the liner lifts`,
      note:
        `Head in the clay: exceeded in that month only in ${100 * pond.acceptedRisk} % of cases; permeability at its 90 % end. ` +
        `Seconds here, hours in result.json.${liftEnds ? '' : elsewhere(end)}`,
      from: [
        ...pondCells(a, 'length', 'width', 'depth', 'side_slope', 'emptied_in'),
        ...site.ground.layers.map((l) => l.row.origin),
      ],
      steps: withOrigins(steps, [
        [
          netHead,
          {
            p: `${floorWords(a, NOTHING, pond.depth)}, with what lies on it`,
            h: `the month's design head in the clay, ${waterWords(site)}`,
          },
        ],
        ...planTold(a, pondRow(site, 'depth', 'depth of the floor')),
        ...planTold(
          a,
          'rim to the level of the water outside, no less than nought: depth less the head above the floor',
        ),
        [gatheringRadius, { A: LEAST, B: 'no plan is left at that level' }],
        [
          discInflow,
          {
            K: `90 % end of the permeability of the ground (${layers})`,
            s: 'head in the clay less floor: step 1 without its sign',
          },
        ],
        [fillTime, { d: '20 mm over the floor (our choice), less what stands in the ring', A: LEAST }],
      ]),
      equals: liftEnds
        ? [{ path: `options[no-drain].hours_empty_safe[${month}]`, step: steps.length, per: 3600 }]
        : [],
    },
  ];
}
