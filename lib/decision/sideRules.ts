import type { Basis } from '../basis/index.js';
import type { Governs, MonthlyLimits, Rule } from '../contract/index.js';
import {
  BAILED,
  bestDig,
  digInflow,
  dugDepth,
  monthsToDig,
  UNIT_WEIGHT,
  workingSlopeAt,
} from '../digging/index.js';
import { floorLevel } from '../heads/index.js';
import { layersInSide, type Site, strengthAt } from '../site/index.js';
import { monthWords, sayer } from '../text/index.js';
import {
  deepestFloor,
  FLAT_BOUND,
  type GasCheck,
  gasCheck,
  PROTECTION_DEPTH,
  planArea,
  rimLoad,
  SOFTENED_FRICTION,
  sideKind,
  wallLoad,
} from '../uplift/index.js';
import type { Decision } from './decide.js';

/** Takes a rule of use: its code, its text, and months or a level where it has some. */
export type AddRule = (code: string, text: string, extra?: Partial<Rule>) => void;

/** How the sides are to be cut, and how while anyone works beside them: one slope, that of everything else here. */
export function sideRules({ site, dig }: Basis, d: Decision, add: AddRule): void {
  const { ground, pond } = site;
  const dug = dugDepth(site, d.measures, d.depth);
  if (dug <= 0) return;
  const say = sayer(site);
  const { sideSlope } = pond.shape;
  const standsTo = d.verdict?.diggable ? d.depth : 0;
  if (pond.wall !== 'none') {
    wallRule(site, d, add);
    add(
      'batter-sides',
      'Behind the wall the cut is laid back or shored while it is built; nobody works beside an upright cut.',
    );
  } else if (pond.drawnSlope !== undefined)
    add(
      'batter-sides',
      `Lay the sides back at least ${sideSlope} to 1: as steep as they were drawn this ground is not to be trusted. Quantities, drawings and chances here are for sides laid back; nobody works beside an upright side.`,
    );
  // Where the sides meet before that depth, no slope was what failed.
  else if (d.governs === 'side-slump' && pond.depth <= deepestFloor(pond.shape))
    add(
      'batter-sides',
      standsTo > 0 && standsTo < pond.depth
        ? `At ${sideSlope} to 1, as drawn, the sides stand with enough safety to ${say.length(standsTo)}, not to ${say.length(pond.depth)}: dig no deeper, or have flatter or held sides designed; nobody works beside an upright side.`
        : `At ${sideSlope} to 1 the sides do not stand with enough safety at ${say.length(pond.depth)}: lay them back further, dig less deep, or have them held.`,
    );
  const wished = dugDepth(site, d.measures, pond.depth);
  const slopeAt = (depth: number, deep: number) =>
    workingSlopeAt(site, bestDig(site, dig, d.measures, depth).plan.wetWater, deep);
  if (wished >= PROTECTION_DEPTH && sideSlope < slopeAt(pond.depth, wished).slope)
    add(
      'ask-engineer',
      `A dig of ${say.length(PROTECTION_DEPTH)} and more with sides as steep as ${sideSlope} to 1 is no garden work: a licensed engineer designs what holds them.`,
    );
  const unnamed = layersInSide(ground.sides, dug).find(
    ({ texture, structure }) => sideKind(texture, structure) === 'unnamed',
  );
  if (unnamed)
    add(
      'ask-engineer',
      `No slope can be named for ${unnamed.texture}: lay it flat, have it shored, or ask a licensed engineer; ${FLAT_BOUND} to 1 is only a bound.`,
    );
  add('working-slope', slopeAt(d.depth, dug).caution);
}

/** What pushes on an upright wall when the pond is empty; the wall itself is not judged here. */
export function wallRule(site: Site, d: Decision, add: AddRule): void {
  const { pond, ground } = site;
  const height = d.depth - d.measures.raise;
  if (pond.wall === 'none' || height <= 0) return;
  const load = wallLoad.compute(SOFTENED_FRICTION, UNIT_WEIGHT.mean, height, pond.edgingLoad);
  const clay = strengthAt(ground, d.depth) ? ' Swelling clay pushes harder still.' : '';
  add(
    'wall-load',
    `Empty, with the ground outside full of water, earth and water push with about ${(load / 1000).toPrecision(2)} kN on every metre of the ${pond.wall} wall, ${sayer(site).length(height)} high.${clay} Whether it stands is not judged here: a licensed engineer designs wall and footing.`,
  );
  add('ask-engineer', 'Have a licensed engineer design the walls for the empty pond.');
}

/** The vent for gas under the liner. */
export function ventOf({ site, highs }: Basis, d: Decision): GasCheck {
  const { ground, pond, survey } = site;
  const { shape } = pond;
  return gasCheck({
    organicTop: ground.organicTop,
    smell: survey.site.organic_smell === 'yes',
    depth: d.depth,
    floor: floorLevel(d.depth, d.measures),
    head: highs.yearly(d.measures, 0.5),
    floorFall: survey.pond.floor_fall,
    area: planArea(shape, 0),
    highSide: shape.width,
    ventLength: d.depth * Math.hypot(1, shape.sideSlope) + 1,
  });
}

/** Water above the ground that any edging holds, m. Our choice. */
const KERB = 0.1;

/** What a raised rim has to carry. */
export function rimRule({ pond, survey }: Site, { measures }: Decision, add: AddRule): void {
  const above = pond.fullLevel + measures.raise;
  if (above < KERB) return;
  const { push, caution } = rimLoad(above);
  add(
    'rim-load',
    `The pond's water stands ${sayer({ survey }).length(above)} above the lowest ground: it pushes with ${Math.round(push)} N on every metre of rim. ${caution}`,
  );
}

const AGAINST: Partial<Record<Governs, string>> = {
  'wet-dig': 'more water may come in than can be taken out',
  'floor-heave': 'water under pressure below the clay may break the floor up',
  'side-slump': 'the sides may slip',
};

/** The months to dig in, where the water of the others stands against it. */
export function monthRule({ site, dig }: Basis, d: Decision, add: AddRule): void {
  const best = d.depth > 0 && monthsToDig(site, dig, d.measures, d.depth);
  if (!best) return;
  const { months, against } = best;
  add('dig-in', `Dig it in ${monthWords(months)}: in the other months ${AGAINST[against]}.`, { months });
}

/** Water that has to be pumped out of the hole while it is dug. */
export function pumpingRule({ site, dig }: Basis, d: Decision, add: AddRule): void {
  const dug = dugDepth(site, d.measures, d.depth);
  const { months, wetWater } = bestDig(site, dig, d.measures, d.depth).plan;
  const inflow = digInflow(site, wetWater, d.depth, dug);
  if (d.depth <= 0 || inflow <= BAILED) return;
  const { flow, length } = sayer(site);
  add(
    'pump-while-digging',
    `Water comes into the hole while it is dug, in a wet year about ${flow(inflow)} in ${monthWords(months)}: hire a pump, let it draw from a pit in one corner ${length(0.3)} below the floor, and keep it running until the liner lies and the pond is full.`,
    { months },
  );
}

/** A liner is bare until it is filled: how long it may be, in the months of filling. */
export function fillingRule(site: Site, { empty }: MonthlyLimits, add: AddRule): void {
  const months = site.survey.pond.filled_in ?? [];
  const ending = months.filter((month) => empty[month - 1].governs !== 'none');
  if (ending.length === 0) return;
  const hours = Math.min(...ending.map((month) => empty[month - 1].seconds)) / 3600;
  add(
    'fill-at-once',
    `Fill it as soon as the liner lies: in ${monthWords(ending)} an empty liner has ${hours < 1 ? 'no time' : hours < 72 ? `about ${Math.floor(hours)} hours` : `about ${Math.floor(hours / 24)} days`}.`,
    { months: ending },
  );
}
