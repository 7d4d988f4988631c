import { UNIT_WEIGHT_OF_WATER } from '../formula/index.js';
import {
  type BallastLayer,
  ballastMakeup,
  CONCRETE_UNIT_WEIGHT,
  drainedGravelThickness,
  GRAVEL,
  slabThickness,
  submergedGravelThickness,
  weightOnLiner,
} from './ballast.js';
import { FLOTATION_WANTED } from './flotation.js';
import {
  headOutside,
  type LinerWater,
  liftedBands,
  netForce,
  POND_STATES,
  type PondState,
} from './linerPressure.js';
import { type LinerProfile, profileFloor } from './linerProfile.js';

const W = UNIT_WEIGHT_OF_WATER;

/** What lifts the floor and what holds it, on a square metre, and over the whole liner. */
export interface LiftBalance {
  state: PondState;
  /** level of the pond, m above the datum of the profile */
  pond: number;
  /** Pa on the floor: of the water outside, and of pond and ballast */
  lifts: number;
  holds: number;
  /** head by which it lacks, m; 0 where it holds */
  lacking: number;
  /** what holds over what lifts; null where nothing lifts */
  factor: number | null;
  /** vertical force of both waters on the whole liner, N, positive down, without ballast */
  force: number;
  /** levels of the sides between which the outside wins, m */
  lifted: { top: number; bottom: number }[];
  /** thickness of either on the bare floor that brings the wanted factor, m; 0 where none is needed */
  needed: { gravel: number; slab: number };
}

/**
 * The balance of a state: water under the floor against the pond's own water and what lies on the liner.
 * @param profile - of the liner
 * @param state - of the pond
 * @param water - levels of pond and ground, m above the datum of the profile
 * @param layers - on the floor, from the liner up, m thick
 * @param wanted - factor, total weights over full uplift, 1 or more
 * @returns pressures on the floor, Pa, factor, and the ballast that lacks, m
 * @throws PondGeometryError when the pond level is below the floor or above the rim, or the head is no number
 * @example
 * ```ts
 * const liner = linerProfile({ shape: 'box', length: 4, width: 3, sideSlope: 0 }, 0.8);
 * liftBalance(liner, 'emptied', { pond: -0.8, outside: -0.3 }).lacking; // 0.5
 * ```
 */
export function liftBalance(
  profile: LinerProfile,
  state: PondState,
  water: LinerWater,
  layers: readonly BallastLayer[] = [],
  wanted = FLOTATION_WANTED,
): LiftBalance {
  const floor = profileFloor(profile);
  const lifts = W * Math.max(headOutside(water, floor) - floor, 0);
  const holds = weightOnLiner(layers, floor, water.pond);
  return {
    state,
    pond: water.pond,
    lifts,
    holds,
    lacking: Math.max(lifts - holds, 0) / W,
    factor: lifts > 0 ? holds / lifts : null,
    force: netForce(profile, water),
    lifted: liftedBands(profile, water),
    needed: neededOn(water.pond - floor, lifts / W, wanted),
  };
}

/**
 * Balances of all states.
 * @param profile - of the liner
 * @param waters - from {@link waterOfStates}
 * @param layers - on the floor, from the liner up, m thick
 * @param wanted - factor, total weights over full uplift, 1 or more
 * @returns one for each state, in the order of {@link POND_STATES}
 * @throws PondGeometryError as {@link liftBalance}
 */
export function liftBalances(
  profile: LinerProfile,
  waters: Record<PondState, LinerWater>,
  layers: readonly BallastLayer[] = [],
  wanted = FLOTATION_WANTED,
): LiftBalance[] {
  return POND_STATES.map((state) => liftBalance(profile, state, waters[state], layers, wanted));
}

/**
 * Gravel and slab that bring the wanted factor under a depth of pond water against a head above the floor, m. Thinner
 * than the water is deep they count under water, thicker as they stand out of it.
 */
function neededOn(water: number, head: number, wanted: number): LiftBalance['needed'] {
  const excess = wanted * head - water;
  if (excess <= 0) return { gravel: 0, slab: 0 };
  const { dry, porosity } = ballastMakeup('gravel');
  const gravelUnder = submergedGravelThickness.compute(1, excess, dry, GRAVEL.grains);
  const slabUnder = slabThickness.compute(1, excess, CONCRETE_UNIT_WEIGHT);
  return {
    gravel:
      gravelUnder <= water
        ? gravelUnder
        : drainedGravelThickness.compute(wanted, head, dry) - (porosity * W * water) / dry,
    slab: slabUnder <= water ? slabUnder : (wanted * W * head) / CONCRETE_UNIT_WEIGHT,
  };
}
