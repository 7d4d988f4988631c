/** The worked time until the liner of an emptied pond lifts. */
import { recorder } from '../formula/index.js';
import { discInflow } from '../seepage/index.js';
import { fillTime, gatheringRadius, LEAST_FLOOR, LIFT_VOLUME_DEPTH, netHead } from '../uplift/index.js';
import type { Judged } from './assess.js';
import { secondsToLift } from './emptying.js';
import { NOTHING } from './measures.js';
import { monthlyDesign, monthlyLimits } from './monthlyLimits.js';
import { monthWords } from './monthWords.js';
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

/** The time an emptied pond has without measures, in the month planned or the worst one. */
export function emptiedPart(a: Judged): WorkedPart[] {
  const { site, basis } = a;
  const { pond } = site;
  if (Array.isArray(pond.emptiedIn) && pond.emptiedIn.length === 0) return [];
  const months = pond.emptiedIn === 'any' ? [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] : pond.emptiedIn;
  const designs = months.map((month) => ({ month, ...monthlyDesign(basis, NOTHING, pond.depth, month) }));
  const worst = designs.reduce((x, y) => (y.high > x.high ? y : x));
  const { month, holds, high, standing, conductivity } = worst;
  if (high <= holds) return [];
  const { use, steps } = recorder();
  use(netHead, holds, high);
  const lift = secondsToLift(site, pond.depth, holds, high, standing, conductivity, LIFT_VOLUME_DEPTH, use);
  if (steps.length === 1) return [];
  const end = monthlyLimits(basis, NOTHING, pond.depth).empty[month - 1];
  const liftEnds = lift === end.seconds;
  const layers = rowsWords(site.ground.layers.map((l) => l.row.origin));
  return [
    {
      heading: `Emptied in ${monthWords([month])} with nothing done: the time until the liner lifts`,
      note:
        `Head outside: exceeded in that month only in ${100 * pond.acceptedRisk} % of cases; permeability at its 90 % end. ` +
        `Seconds here, hours in result.json.${liftEnds ? '' : ` The sides allow less: ${Math.round(end.seconds / 3600)} h, as softened clay takes up water.`}`,
      from: [
        ...pondCells(a, 'length', 'width', 'depth', 'side_slope', 'emptied_in'),
        ...site.ground.layers.map((l) => l.row.origin),
      ],
      steps: withOrigins(steps, [
        [
          netHead,
          {
            p: `${floorWords(a, NOTHING, pond.depth)}, with what lies on it`,
            h: `the month's design head, ${waterWords(site)}`,
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
            s: 'head outside less floor: step 1 without its sign',
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
