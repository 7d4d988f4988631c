import type { Site } from '../site/index.js';
import {
  deepestFloor,
  type GasCheck,
  gasCheck,
  planArea,
  rimLoad,
  sidePlan,
  workingSlope,
} from '../uplift/index.js';
import type { Basis } from './basis.js';
import type { Decision } from './decide.js';
import { dugDepth } from './digging.js';
import { floorLevel, NOTHING } from './measures.js';
import type { MonthlyLimits } from './monthlyLimits.js';
import { monthWords } from './monthWords.js';
import type { Rule } from './result.js';
import { sayer } from './say.js';
import { UNIT_WEIGHT } from './sides.js';

/** Takes a rule of use: its code, its text, and months or a level where it has some. */
export type AddRule = (code: string, text: string, extra?: Partial<Rule>) => void;

/** How the sides are to be cut, and how while anyone works beside them. */
export function sideRules({ site, highs }: Basis, d: Decision, add: AddRule): void {
  const { ground, pond } = site;
  const dug = dugDepth(site, d.measures, d.depth);
  if (!ground.strength || dug <= 0) return;
  const say = sayer(site);
  const strength = ground.strength.median;
  // Where the sides were what stood against the wish, the wish is what they are laid back for.
  const wanted = d.governs === 'side-slump' ? dugDepth(site, d.measures, pond.depth) : dug;
  const plan = sidePlan({ strength, unitWeight: UNIT_WEIGHT.mean, edgingLoad: pond.edgingLoad }, wanted);
  // Where the sides meet before that depth, no slope was what failed.
  const slumps = d.governs === 'side-slump' && wanted <= deepestFloor(pond.shape);
  if (slumps || plan.slope === null || plan.slope > pond.shape.sideSlope)
    add(
      'batter-sides',
      plan.slope === null
        ? `At ${say.length(wanted)} no slope of this clay stands with enough safety: dig less deep, or have the sides held.`
        : `For ${say.length(wanted)} lay the sides back at least ${plan.slope} to 1${
            plan.steps && plan.steps.count > 1
              ? `, or cut ${plan.steps.count} steps of at most ${say.length(plan.steps.riser)} with shelves ${say.length(plan.steps.shelf)} wide`
              : ''
          }; nobody works beside an upright side in wet clay.`,
    );
  const cracked = ground.layers.some(({ row }) => row.structure === 'cracked' || row.structure === 'blocky');
  add(
    'working-slope',
    workingSlope({ strength, fissured: cracked, wet: highs.yearly(NOTHING, 0.5) > -dug }, dug).caution,
  );
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
export function rimRule({ pond, ...site }: Site, { measures }: Decision, add: AddRule): void {
  const above = pond.fullLevel + measures.raise;
  if (above < KERB) return;
  const { push, caution } = rimLoad(above);
  add(
    'rim-load',
    `The pond's water stands ${sayer({ pond, ...site }).length(above)} above the lowest ground: it pushes with ${Math.round(push)} N on every metre of rim. ${caution}`,
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
