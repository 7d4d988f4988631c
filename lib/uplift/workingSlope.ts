import { method } from '../formula/index.js';

export const workingSlopes = method({
  title: 'Working slopes while digging',
  what: 'Steepest slope and depth at which protection is due by the United States rule for employers, as a caution.',
  assumptions: [
    'type by unconfined strength, twice the undrained: A from 144 kPa, B above 48 kPa, else C',
    'fissured, disturbed or vibrated clay is never A; submerged or seeping soil is C',
    'protection from 5 ft (1.52 m), sooner where anything may cave in; an engineer above 20 ft (6.1 m)',
  ],
  source: '29 CFR 1926 Subpart P, section 652 and appendices A and B, as quoted on public pages',
});

/** Type of soil in 29 CFR 1926 Subpart P, A the firmest. */
export type SoilType = 'A' | 'B' | 'C';

/** Unconfined strengths that part the types, Pa (1.5 and 0.5 ton/ft²). */
export const TYPE_LIMITS = { A: 144_000, B: 48_000 };
/** Steepest slope by type, horizontal to 1 vertical, up to 20 ft (6.1 m) deep. */
export const WORKING_SLOPES: Record<SoilType, number> = { A: 0.75, B: 1, C: 1.5 };
/** Type A, open for at most a day and at most 12 ft deep: horizontal to 1 vertical, m, h. */
export const SHORT_TERM_A = { slope: 0.5, depth: 12 * 0.3048, hours: 24 };
/** Depth from which sides must be laid back or held, m (5 ft). */
export const PROTECTION_DEPTH = 5 * 0.3048;
/** Depth beyond which an engineer designs the protection, m (20 ft). */
export const ENGINEER_DEPTH = 20 * 0.3048;

/** What is seen in the hole. */
export interface HoleSigns {
  /** undrained strength, Pa */
  strength: number;
  /** cracks, or ground that was dug before */
  fissured: boolean;
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
  caution: string;
}

/**
 * The published working slope for what is seen.
 * @param signs - what the hole shows
 * @param depth - of the dig, m
 * @returns horizontal to 1 vertical, the type of soil, and who must be asked
 */
export function workingSlope({ strength, fissured, wet }: HoleSigns, depth: number): WorkingSlope {
  const unconfined = 2 * strength;
  const type = wet || unconfined <= TYPE_LIMITS.B ? 'C' : fissured || unconfined < TYPE_LIMITS.A ? 'B' : 'A';
  const protect = depth >= PROTECTION_DEPTH;
  const engineer = depth > ENGINEER_DEPTH;
  return {
    type,
    slope: WORKING_SLOPES[type],
    protect,
    engineer,
    caution:
      `Ground like this counts as type ${type} in the United States rule for employers (29 CFR 1926 Subpart P): lay the ` +
      `sides back ${WORKING_SLOPES[type]} to 1 or flatter while anyone is in the hole. ` +
      (engineer
        ? 'At more than 6.1 m (20 ft) a registered engineer has to design it. '
        : protect
          ? 'From 1.5 m (5 ft) the sides must be laid back or shored. '
          : 'Less than 1.5 m (5 ft) deep is not safe for being shallow: keep out where anything may cave in. ') +
      'Keep spoil 0.6 m from the edge, look again after rain, never dig alone. Your local rules decide.',
  };
}
