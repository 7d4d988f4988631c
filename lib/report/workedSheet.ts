import { decidingDay } from '../basis/index.js';
import type { Advice } from '../contract/index.js';
import type { Judged } from '../decision/index.js';
import { BED_THICKNESS } from '../drain/index.js';
import { recorder, type Use } from '../formula/index.js';
import { relievedHead } from '../groundwater/index.js';
import { floorLevel, type Measures, NOTHING, relievedBy } from '../heads/index.js';
import { CHECKED_SHARE, upliftCheck } from '../reliability/index.js';
import { sayer } from '../text/index.js';
import type { UnitSystem } from '../units/index.js';
import { netHead, upliftUtilisation, waterPressure } from '../uplift/index.js';
import { unitsOf } from './unitsOf.js';
import { emptiedPart } from './workedEmptied.js';
import { floorWords, keptWords, pondCells, type WorkedPart, waterWords, withOrigins } from './workedFrom.js';
import { planPart } from './workedPlan.js';
import { diggingParts, drainPart, inflowPart } from './workedWorks.js';

/**
 * The worked calculation: the middle case (or the stated design case) run through the same formulas with a
 * recorder, so that nothing on the sheet is a second calculation.
 * @param a - from {@link assess} or {@link judge}
 * @param units - of the words; those of the survey where none are given
 * @returns parts with their steps, each with equation, numbers put in and source
 */
export function workedSheet(a: Judged, units: UnitSystem = unitsOf(a)): WorkedPart[] {
  const parts = [
    planPart(a, units),
    fullPart(a, units, NOTHING, 'no-drain', 'With nothing done: the pond as it is kept'),
  ];
  const { decision, options } = a;
  const index = options.findIndex((o) => o.name === decision.option && o.measures === decision.measures);
  if (decision.measures !== NOTHING)
    parts.push(
      fullPart(
        a,
        units,
        decision.measures,
        index >= 0 ? options[index].name : undefined,
        'With what is recommended: the pond as it is kept',
      ),
    );
  parts.push(
    ...emptiedPart(a),
    ...diggingParts(a, units),
    ...inflowPart(a, units),
    ...drainPart(a),
    ...standardParts(a),
  );
  return parts;
}

function fullPart(
  a: Judged,
  units: UnitSystem,
  m: Measures,
  option: string | undefined,
  heading: string,
): WorkedPart {
  const { site, basis } = a;
  const say = sayer(units);
  const { use, steps } = recorder();
  const undrained = basis.highs.yearly(m, 0.5);
  const head = m.drain ? usualRelief(m, site.pond.depth, use)(undrained) : undrained;
  const net = use(netHead, decidingDay(basis, m, site.pond.depth, 0.5).pond + m.ballast, head);
  const at = steps.length;
  use(waterPressure, net);
  const bed = `bed's underside (floor − ${BED_THICKNESS} m)`;
  const [outlet, receiver] =
    m.drain?.kind === 'outlet'
      ? [
          `the higher of the ${bed} and the outlet with 1 % fall up the run (levels.csv, role outlet)`,
          `highest water at ${m.drain.outlet.name} (levels.csv, role flood; where there is none 0.4 m above its ordinary water)`,
        ]
      : [`the ${bed}, from which the sump takes the water`, 'the sump is pumped below the bed'];
  return {
    heading,
    note: `Head outside: the yearly highest, middle of all samples and weather years.${
      m.raise > 0 ? ` Rim and floor raised ${say.length(m.raise)}.` : ''
    }${m.ballast > 0 ? ` The slab holds ${say.length(m.ballast)} of head, counted with the pond level.` : ''}`,
    from: pondCells(a, 'water_above_rim_ground', 'full_level', 'usual_drawdown', 'kept_within'),
    steps: withOrigins(steps, [
      [netHead, { p: keptWords(a, m, 0.5), h: `middle of the yearly highest heads, ${waterWords(site)}` }],
      [
        relievedHead,
        {
          u: `middle of the yearly highest heads without a drain, ${waterWords(site)}`,
          o: outlet,
          r: receiver,
          d: 'head lost in the bed: our choice, far above what the formula for a blanket gives',
        },
      ],
    ]),
    equals:
      option === undefined ? [] : [{ path: `options[${option}].full.net_head_m.p50`, step: at, per: 1 }],
  };
}

/** What the drain leaves at the yearly high, the ditch in flood. */
function usualRelief(m: Measures, depth: number, use?: Use) {
  const flood = m.drain?.kind === 'outlet' ? m.drain.flood : Number.NEGATIVE_INFINITY;
  return relievedBy(m, floorLevel(depth, m), 'works', flood, use);
}

/** What the deterministic check is made for: nothing done, and what is recommended. */
export function checkedMeasures({
  decision,
  site,
}: Judged): { option: Advice; m: Measures; depth: number }[] {
  const depth = decision.depth || site.pond.depth;
  const nothing = { option: 'no-drain' as const, m: NOTHING, depth };
  return decision.measures === NOTHING
    ? [nothing]
    : [nothing, { option: decision.option, m: decision.measures, depth }];
}

/** The deterministic check, since inspectors do not sign chances. */
function standardParts(a: Judged): WorkedPart[] {
  return checkedMeasures(a).map(({ option, m, depth }, index) => {
    const { use, steps } = recorder();
    upliftCheck(a, option, m, depth, use);
    const uplift = `head above the floor that 95 % of years stay below, ${waterWords(a.site)}; ${floorWords(a, m, depth)}`;
    const weight = `pond level of that day above the floor: ${keptWords(a, { ...m, ballast: 0 }, CHECKED_SHARE)}; ${floorWords(a, m, depth)}`;
    return {
      heading: `Deterministic check: EN 1997-1 (UPL) on the floor, ${m === NOTHING ? 'with nothing done' : 'as recommended'}`,
      note: 'Uplift from the head outside that 95 % of years stay below; factors 1.0 and 0.9 (recommended values); at most 1 is verified.',
      from: pondCells(a, 'depth', 'water_above_rim_ground', 'full_level', 'usual_drawdown', 'kept_within'),
      steps: withOrigins(steps, [
        [waterPressure, { h: uplift }],
        [waterPressure, { h: weight }],
        [
          upliftUtilisation,
          { a: 'EN 1997-1 table A.15', b: 'EN 1997-1 table A.15', G: 'step 2 and the weight of the slab' },
        ],
      ]),
      equals: [{ path: `uplift_check[${index + 1}].utilisation`, step: 3, per: 1 }],
    };
  });
}
