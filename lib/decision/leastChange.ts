import { type Basis, basisOf } from '../basis/index.js';
import type { WishChange } from '../contract/index.js';
import { method } from '../formula/index.js';
import { NOTHING } from '../heads/index.js';
import { Remembered } from '../sampling/index.js';
import { WEEKEND } from '../site/index.js';
import { emptiedInWeekend, keptWithin } from './simulatedAs.js';

export const leastChangeMethod = method({
  title: 'The least change that makes it safe',
  what:
    'Whether the pond as wished holds when it is emptied in another month, topped up sooner, emptied for fewer days, or two of ' +
    'these: before pump and concrete, less depth, another spot and a season of measuring; and beside a drain, told as another way.',
  assumptions: [
    'in this order, what costs least first: emptied in the month whose water stands lowest; topped up within 5 cm (hose or ' +
      'float valve); both; emptied for two days at most; that with each of the others',
    'each with nothing built, then with surface water kept out, then with the rim raised',
    'where none gives all of the wish: all of it never emptied, unless 0.7 of it may be emptied as wished; else what gives most, used ' +
      'as wished or otherwise, or never emptied where that gives more than 1 ÷ 0.7 as much; what is deeper never emptied is told beside',
    'other habits and other days are run through the weather again',
  ],
  source: 'our choice of changes and order; chances as of any pond',
});

/** A pond used otherwise than wished, and what judgements of it rest on. */
export interface Changed {
  change: WishChange;
  basis: Basis;
}

/** Topped up within this, m: what a float valve keeps, or a hose once a week. Our choice. */
const KEPT_FULL = 0.05;

const changed = new Remembered<Basis>();

/** A thing that is done otherwise with a pond in use; what is dug otherwise is decided before. */
type Thing = Exclude<keyof WishChange, 'side_slope' | 'built_in'>;

/** Each thing done otherwise; undefined where it is done so already. */
const STEPS: Record<Thing, (basis: Basis) => Changed | undefined> = {
  emptied_in: emptiedBest,
  kept_within_m: toppedUpSooner,
  days_empty: emptiedBriefly,
};

/** What is changed together, what costs least first. */
const COMBINATIONS: Thing[][] = [
  ['emptied_in'],
  ['kept_within_m'],
  ['emptied_in', 'kept_within_m'],
  ['days_empty'],
  ['emptied_in', 'days_empty'],
  ['kept_within_m', 'days_empty'],
];

/** Whether a change of the wish is of just these things, whatever is dug otherwise. */
export function isJust(change: WishChange, things: readonly Thing[]): boolean {
  const changed = (Object.keys(STEPS) as Thing[]).filter((thing) => change[thing] !== undefined);
  return things.length === changed.length && things.every((thing) => changed.includes(thing));
}

/**
 * Changes of the wish, what costs least first; each is worked out when it is asked for.
 * @param worthwhile - whether to try what is changed by these things
 */
export function* changesOf(
  basis: Basis,
  worthwhile: (things: readonly Thing[]) => boolean,
): Generator<Changed> {
  for (const things of COMBINATIONS) {
    if (!worthwhile(things)) continue;
    let all: Changed | undefined = { change: {}, basis };
    for (const thing of things) {
      const next: Changed | undefined = all && STEPS[thing](all.basis);
      all = next && { change: { ...all!.change, ...next.change }, basis: next.basis };
    }
    if (all) yield all;
  }
}

/** Emptied only in the month whose water stands lowest; undefined where no other month was wished. */
function emptiedBest(basis: Basis): Changed | undefined {
  const { site, highs } = basis;
  const { emptiedIn, acceptedRisk } = site.pond;
  if (emptiedIn === 'any' || emptiedIn.length === 0) return undefined;
  const water = Array.from({ length: 12 }, (_, i) =>
    highs.monthly(NOTHING, i + 1, 1 - acceptedRisk, 'emptied'),
  );
  const best = [water.indexOf(Math.min(...water)) + 1];
  if (`${emptiedIn}` === `${best}`) return undefined;
  const then = changed.of(basis, `${best}`, () =>
    basisOf({ ...site, pond: { ...site.pond, emptiedIn: best } }, basis),
  );
  return { change: { emptied_in: best }, basis: then };
}

/** Topped up sooner than wished in the same weather; undefined where it is not tried. */
export function toppedUpSooner(basis: Basis): Changed | undefined {
  const { kept } = basis.site.pond;
  const sooner = 'held' in kept ? kept.held > KEPT_FULL : kept.within > KEPT_FULL;
  const then = sooner && keptWithin(basis, KEPT_FULL);
  return then ? { change: { kept_within_m: KEPT_FULL }, basis: then } : undefined;
}

/** Emptied for no longer than a weekend. */
function emptiedBriefly(basis: Basis): Changed | undefined {
  const then = emptiedInWeekend(basis);
  return then && { change: { days_empty: WEEKEND }, basis: then };
}
