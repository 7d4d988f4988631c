import { BED_THICKNESS } from '../drain/index.js';
import { recorder, type Use } from '../formula/index.js';
import { relievedHead } from '../groundwater/index.js';
import { discInflow } from '../seepage/index.js';
import type { Origin } from '../survey/index.js';
import { fillTime, LIFT_VOLUME_DEPTH, netHead, upliftUtilisation, waterPressure } from '../uplift/index.js';
import type { Judged } from './assess.js';
import { secondsToLift } from './emptying.js';
import { relievedBy } from './head.js';
import { floorLevel, lowestUsualLevel, type Measures, NOTHING } from './measures.js';
import { monthlyDesign, monthlyLimits } from './monthlyLimits.js';
import { monthWords } from './monthWords.js';
import type { Advice } from './result.js';
import { sayer } from './say.js';
import { upliftCheck } from './upliftCheck.js';
import { pondRow, rowsWords, type WorkedStep, waterWords, withOrigins } from './workedFrom.js';
import { diggingParts, drainPart } from './workedWorks.js';

/** A part of the worked calculation: the steps of one question, recorded from the code that answers it. */
export interface WorkedPart {
  heading: string;
  /** what the numbers put in are and where they come from */
  note: string;
  from: Origin[];
  steps: WorkedStep[];
  /** place in result.json that a step (counted from 1) equals, once divided by `per` */
  equals: { path: string; step: number; per: number }[];
}

/**
 * The worked calculation: the middle case (or the stated design case) run through the same formulas with a
 * recorder, so that nothing on the sheet is a second calculation.
 */
export function workedSheet(a: Judged): WorkedPart[] {
  const parts = [fullPart(a, NOTHING, 'no-drain', 'With nothing done: the pond at its usual lowest level')];
  const { decision, options } = a;
  const index = options.findIndex((o) => o.name === decision.option && o.measures === decision.measures);
  if (decision.measures !== NOTHING)
    parts.push(
      fullPart(
        a,
        decision.measures,
        index >= 0 ? options[index].name : undefined,
        'With what is recommended: the pond at its usual lowest level',
      ),
    );
  parts.push(...emptiedPart(a), ...diggingParts(a), ...drainPart(a), ...standardParts(a));
  return parts;
}

const cell = (a: Judged, ...items: (keyof Judged['site']['survey']['origins']['pond'])[]): Origin[] =>
  items.map((item) => a.site.survey.origins.pond[item]).filter((o): o is Origin => o !== undefined);

/** The pond's usual lowest level, put together by hand. */
function lowestWords({ site }: Judged, m: Measures): string {
  const { pond, survey } = site;
  const say = (value: number) => `${Number(value.toFixed(4))} m`;
  const full = survey.pond.full_level === undefined ? 'water_above_rim_ground' : 'full_level';
  return [
    pondRow(site, full, `full level ${say(pond.fullLevel)}`),
    ...(m.raise > 0 ? [`+ raised ${say(m.raise)}`] : []),
    pondRow(site, 'usual_drawdown', `− usual drawdown ${say(pond.usualDrawdown)}`),
    ...(m.ballast > 0 ? [`+ head held by the slab ${say(m.ballast)}`] : []),
  ].join(' ');
}

function floorWords({ site }: Judged, m: Measures, depth: number): string {
  const say = (value: number) => `${Number(value.toFixed(4))} m`;
  const dug =
    depth === site.pond.depth
      ? pondRow(site, 'depth', `floor −${say(depth)}`)
      : `floor at the recommended depth −${say(depth)}`;
  return m.raise > 0 ? `${dug} + raised ${say(m.raise)}` : dug;
}

function fullPart(a: Judged, m: Measures, option: string | undefined, heading: string): WorkedPart {
  const { site, basis } = a;
  const say = sayer(site);
  const { use, steps } = recorder();
  const undrained = basis.highs.yearly(m, 0.5);
  const head = m.drain ? usualRelief(m, site.pond.depth, use)(undrained) : undrained;
  const net = use(netHead, lowestUsualLevel(site, m) + m.ballast, head);
  const at = steps.length;
  use(waterPressure, net);
  const receiver =
    m.drain?.kind === 'outlet'
      ? `highest water at ${m.drain.outlet.name} (levels.csv, role flood; where there is none 0.4 m above its ordinary water)`
      : 'the sump is pumped below the bed';
  return {
    heading,
    note: `Head outside: the yearly highest, middle of all samples and weather years.${
      m.raise > 0 ? ` Rim and floor raised ${say.length(m.raise)}.` : ''
    }${m.ballast > 0 ? ` The slab holds ${say.length(m.ballast)} of head, counted with the pond level.` : ''}`,
    from: cell(a, 'water_above_rim_ground', 'full_level', 'usual_drawdown'),
    steps: withOrigins(steps, [
      [netHead, { p: lowestWords(a, m), h: `middle of the yearly highest heads, ${waterWords(site)}` }],
      [
        relievedHead,
        {
          u: `middle of the yearly highest heads without a drain, ${waterWords(site)}`,
          o: `the higher of the bed's underside (floor − ${BED_THICKNESS} m) and the outlet with 1 % fall up the run (levels.csv, role outlet)`,
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

/** The time an emptied pond has without measures, in the month planned or the worst one. */
function emptiedPart(a: Judged): WorkedPart[] {
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
  const size = pondRow(site, 'length', 'from length, width, depth and side slope');
  return [
    {
      heading: `Emptied in ${monthWords([month])} with nothing done: the time until the liner lifts`,
      note:
        `Head outside: exceeded in that month only in ${100 * pond.acceptedRisk} % of cases; permeability at its 90 % end. ` +
        `Seconds here, hours in result.json.${liftEnds ? '' : ` The sides allow less: ${Math.round(end.seconds / 3600)} h, as softened clay takes up water.`}`,
      from: [...cell(a, 'depth', 'emptied_in'), ...site.ground.layers.map((l) => l.row.origin)],
      steps: withOrigins(steps, [
        [
          netHead,
          {
            p: `${floorWords(a, NOTHING, pond.depth)}, with what lies on it`,
            h: `the month's design head, ${waterWords(site)}`,
          },
        ],
        [
          discInflow,
          {
            K: `90 % end of the permeability of the ground (${layers})`,
            r: `circle as large as the mean of the floor and the plan at the level of the water outside; ${size}`,
            s: 'head outside less floor: step 1 without its sign',
          },
        ],
        [
          fillTime,
          { d: '20 mm over the floor (our choice), less what stands in the ring', A: `floor area; ${size}` },
        ],
      ]),
      equals: liftEnds
        ? [{ path: `options[no-drain].hours_empty_safe[${month}]`, step: steps.length, per: 3600 }]
        : [],
    },
  ];
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
    const weight = `usual lowest pond level above the floor: ${lowestWords(a, { ...m, ballast: 0 })}; ${floorWords(a, m, depth)}`;
    return {
      heading: `Deterministic check: EN 1997-1 (UPL) on the floor, ${m === NOTHING ? 'with nothing done' : 'as recommended'}`,
      note: 'Uplift from the head outside that 95 % of years stay below; factors 1.0 and 0.9 (recommended values); at most 1 is verified.',
      from: cell(a, 'depth', 'water_above_rim_ground', 'full_level', 'usual_drawdown'),
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
