import { LEVEL_RESOLUTION, method } from '../formula/index.js';
import type { Structure, Texture } from '../soil/index.js';
import { FOOT } from '../units/index.js';
import { sideKind } from './groundSides.js';

export const workingSlopes = method({
  title: 'Working slopes while digging',
  what: 'Steepest slope and depth at which protection is due by the United States rule for employers, as a caution.',
  assumptions: [
    'clay by unconfined strength, twice the undrained: A from 144 kPa, B above 48 kPa, else C',
    'loam, sandy and silt loam, silt: B; sand, loamy sand, gravel, peat and made ground: C; of several the weakest',
    'fissured, disturbed or vibrated clay is never A; submerged or seeping soil is C',
    'protection from 5 ft (taken as 1.5 m), sooner where anything may cave in; an engineer above 20 ft (6.1 m)',
  ],
  source: '29 CFR 1926 Subpart P, section 652 and appendices A and B, as quoted on public pages',
});

/** Type of soil in 29 CFR 1926 Subpart P, A the firmest. */
export type SoilType = 'A' | 'B' | 'C';

/** Unconfined strengths that part the types, Pa (1.5 and 0.5 ton/ft²). */
const TYPE_LIMITS = { A: 144_000, B: 48_000 };
/** Steepest slope by type, horizontal to 1 vertical, up to 20 ft (6.1 m) deep. */
export const WORKING_SLOPES: Record<SoilType, number> = { A: 0.75, B: 1, C: 1.5 };
/** Depth from which sides must be laid back or held, m: 5 ft by the rule, taken as the round metres of other countries. */
export const PROTECTION_DEPTH = 1.5;
/** Depth beyond which an engineer designs the protection, m (20 ft). */
export const ENGINEER_DEPTH = 20 * FOOT;

/** Whether sides so high, m, must be laid back or held. */
export const isProtectionDue = (height: number) => height >= PROTECTION_DEPTH - LEVEL_RESOLUTION;

/** What is seen in the hole. */
export interface HoleSigns {
  /** undrained strength of the clay, Pa; absent: none */
  strength?: number;
  /** kinds of ground in the side; absent: clay without cracks */
  sides?: readonly { texture: Texture; structure?: Structure }[];
  /** water stands in it or seeps from the sides */
  wet: boolean;
}

/** A working slope, and who must be asked. */
export interface WorkingSlope {
  type: SoilType;
  /** horizontal to 1 vertical */
  slope: number;
  /** protection is due at this depth by the rule alone */
  protect: boolean;
  /** too deep for the rule: an engineer designs it */
  engineer: boolean;
}

/**
 * The published working slope for what is seen.
 * @param signs - what the hole shows
 * @param depth - of the dig, m
 * @returns horizontal to 1 vertical, the type of soil, and who must be asked
 */
export function workingSlope({ strength, sides = [], wet }: HoleSigns, depth: number): WorkingSlope {
  const types = sides.map(({ texture, structure }) => typeOf(texture, structure, strength));
  if (sides.length === 0) types.push(clayType(strength, false));
  const type = wet || types.includes('C') ? 'C' : types.includes('B') ? 'B' : 'A';
  return {
    type,
    slope: WORKING_SLOPES[type],
    protect: isProtectionDue(depth),
    engineer: depth > ENGINEER_DEPTH,
  };
}

/** Type of a clay by its strength; one with cracks is never A. */
function clayType(strength: number | undefined, fissured: boolean): SoilType {
  const unconfined = 2 * (strength ?? 0);
  if (unconfined <= TYPE_LIMITS.B) return 'C';
  return fissured || unconfined < TYPE_LIMITS.A ? 'B' : 'A';
}

function typeOf(texture: Texture, structure: Structure | undefined, strength?: number): SoilType {
  const kind = sideKind(texture, structure);
  if (kind === 'loam' || texture === 'silt') return 'B';
  if (kind === 'granular' || kind === 'unnamed') return 'C';
  return clayType(strength, kind === 'fissured clay');
}
