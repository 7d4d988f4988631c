import { recorder, type Step, UNIT_WEIGHT_OF_WATER, type Use } from '../formula/index.js';
import type { Site } from '../site/index.js';
import type { Origin } from '../survey/index.js';
import {
  heaveFactor,
  LIFT_VOLUME_DEPTH,
  netHead,
  upliftUtilisation,
  waterPressure,
  wetCrackedCut,
} from '../uplift/index.js';
import type { Assessment } from './assess.js';
import { dugDepth } from './digging.js';
import { secondsToLift } from './emptying.js';
import { relievedBy } from './head.js';
import { floorLevel, lowestUsualLevel, type Measures, NOTHING } from './measures.js';
import { monthlyDesign, monthlyLimits } from './monthlyLimits.js';
import { sayer } from './say.js';
import { UNIT_WEIGHT } from './sides.js';

/** A part of the worked calculation: the steps of one question, recorded from the code that answers it. */
export interface WorkedPart {
  heading: string;
  /** what the numbers put in are and where they come from */
  note: string;
  from: Origin[];
  steps: Step[];
  /** place in result.json that the last step equals, once divided by `per` */
  equals?: { path: string; per: number };
}

/**
 * The worked calculation: the middle case (or the stated design case) run through the same formulas with a
 * recorder, so that nothing on the sheet is a second calculation.
 */
export function workedSheet(a: Assessment): WorkedPart[] {
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
  parts.push(...emptiedPart(a), ...diggingParts(a), standardPart(a));
  return parts;
}

const cell = (site: Site, ...items: (keyof Site['survey']['origins']['pond'])[]): Origin[] =>
  items.map((item) => site.survey.origins.pond[item]).filter((o): o is Origin => o !== undefined);

function fullPart(
  { site, basis }: Assessment,
  m: Measures,
  option: string | undefined,
  heading: string,
): WorkedPart {
  const say = sayer(site);
  const { use, steps } = recorder();
  const undrained = basis.highs.yearly(m, 0.5);
  const head = m.drain ? usualRelief(m, site.pond.depth, use)(undrained) : undrained;
  const net = use(netHead, lowestUsualLevel(site, m) + m.ballast, head);
  use(waterPressure, net);
  // The head is what result.json carries; the pressure goes before it.
  steps.push(steps.splice(steps.length - 2, 1)[0]);
  return {
    heading,
    note: `Head outside: the yearly highest, middle of all samples and weather years (${site.waterModel}).${
      m.raise > 0 ? ` Rim and floor raised ${say.length(m.raise)}.` : ''
    }${m.ballast > 0 ? ` The slab holds ${say.length(m.ballast)} of head, counted with the pond level.` : ''}`,
    from: cell(site, 'water_above_rim_ground', 'full_level', 'usual_drawdown'),
    steps,
    equals: option === undefined ? undefined : { path: `options[${option}].full.net_head_m.p50`, per: 1 },
  };
}

/** What the drain leaves at the yearly high, the ditch in flood. */
function usualRelief(m: Measures, depth: number, use?: Use) {
  const flood = m.drain?.kind === 'outlet' ? m.drain.flood : Number.NEGATIVE_INFINITY;
  return relievedBy(m, floorLevel(depth, m), 'works', flood, use);
}

/** The time an emptied pond has without measures, in the month planned or the worst one. */
function emptiedPart({ site, basis }: Assessment): WorkedPart[] {
  const { pond } = site;
  if (Array.isArray(pond.emptiedIn) && pond.emptiedIn.length === 0) return [];
  const months = pond.emptiedIn === 'any' ? [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] : pond.emptiedIn;
  const designs = months.map((month) => ({
    month,
    ...monthlyDesign(basis, NOTHING, pond.depth, month),
  }));
  const worst = designs.reduce((x, y) => (y.high > x.high ? y : x));
  if (worst.high <= worst.holds) return [];
  const { use, steps } = recorder();
  use(netHead, worst.holds, worst.high);
  const lift = secondsToLift(
    site,
    pond.depth,
    worst.holds,
    worst.high,
    worst.standing,
    worst.conductivity,
    LIFT_VOLUME_DEPTH,
    use,
  );
  if (steps.length === 1) return [];
  const end = monthlyLimits(basis, NOTHING, pond.depth).empty[worst.month - 1];
  const liftEnds = lift === end.seconds;
  return [
    {
      heading: `Emptied in month ${worst.month} with nothing done: the time until the liner lifts`,
      note:
        `Head outside: exceeded in that month only in ${100 * pond.acceptedRisk} % of cases; permeability at its 90 % end. ` +
        `Seconds here, hours in result.json.${liftEnds ? '' : ` The sides allow less: ${Math.round(end.seconds / 3600)} h, as softened clay takes up water.`}`,
      from: [...cell(site, 'depth', 'emptied_in'), ...site.ground.layers.map((l) => l.row.origin)],
      steps,
      equals: liftEnds
        ? { path: `options[no-drain].hours_empty_safe[${worst.month}]`, per: 3600 }
        : undefined,
    },
  ];
}

function diggingParts({ site, decision }: Assessment): WorkedPart[] {
  const parts: WorkedPart[] = [];
  const say = sayer(site);
  const dug = dugDepth(site, decision.measures, decision.depth);
  const { ground } = site;
  if (ground.strength && dug > 0) {
    const { use, steps } = recorder();
    use(wetCrackedCut, ground.strength.median, UNIT_WEIGHT.mean);
    parts.push({
      heading: 'The sides while digging',
      note: `Dug ${say.length(dug)} deep; an upright side should stand 1.5 times as high. ${ground.strength.evidence.join(', ')}.`,
      from: ground.layers.map((l) => l.row.origin),
      steps,
    });
  }
  for (const seam of ground.seams) {
    const left = seam.top - dug;
    const pressure = seam.top - seam.headDepth;
    if (left <= 0 || pressure <= 0) continue;
    const { use, steps } = recorder();
    use(heaveFactor, UNIT_WEIGHT.mean, left, pressure);
    parts.push({
      heading: `The floor over the seam in ${seam.pit}`,
      note: `Dug ${say.length(dug)} deep; 1.25 is wanted.`,
      from: site.survey.heads.filter((h) => h.place === `below:${seam.pit}`).map((h) => h.origin),
      steps,
    });
  }
  return parts;
}

/** One deterministic check in a line, since inspectors do not sign chances. */
function standardPart({ site, basis, decision }: Assessment): WorkedPart {
  const m = decision.measures;
  const depth = decision.depth || site.pond.depth;
  const floor = floorLevel(depth, m);
  const high = usualRelief(m, depth)(basis.highs.yearly(m, 0.95));
  const { use, steps } = recorder();
  const uplift = use(waterPressure, Math.max(high - floor, 0));
  const weight = use(waterPressure, lowestUsualLevel(site, m) - floor) + m.ballast * UNIT_WEIGHT_OF_WATER;
  use(upliftUtilisation, 1.0, uplift, 0.9, Math.max(weight, 1e-6));
  return {
    heading: 'Deterministic check: EN 1997-1 (UPL) on the floor at the usual lowest pond level',
    note: 'Uplift from the head outside that 95 % of years stay below; factors 1.0 and 0.9 (recommended values); at most 1 is verified.',
    from: cell(site, 'depth', 'water_above_rim_ground', 'full_level', 'usual_drawdown'),
    steps,
  };
}
