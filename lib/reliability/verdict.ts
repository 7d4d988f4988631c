import type { Basis } from '../basis/index.js';
import type { Condition, Governs, PerDig } from '../contract/index.js';
import { againstDig, digConditions, perDig, worstDig } from '../digging/index.js';
import { BED_LOSS } from '../drain/index.js';
import type { Shift } from '../heads/index.js';
import { drainLevel, emptiedHold, floorLevel, type Measures } from '../heads/index.js';
import type { EmptyTime } from '../uplift/index.js';
import { type Chance, chancesOf, keptChances } from './chance.js';
import { tooBrief } from './monthlyLimits.js';

/** Whether measures are safe at a depth, and what stands out where they are not. */
export interface Verdict {
  safe: boolean;
  /** the chance a year is within what is accepted, and each emptying planned may last as long as it must */
  dry: boolean;
  /** so is the chance of a pond that is never emptied */
  kept: boolean;
  /** the dig itself is within what is accepted and its conditions are met */
  diggable: boolean;
  governs: Governs;
  /** what ends an emptying planned before anything can be done in it */
  brief?: Governs;
  chance: Chance;
  dig: PerDig;
  conditions: Condition[];
}

/**
 * Judges measures at depths, ascending: chance a year, chances per dig each for itself, conditions.
 * @param shift - of the inputs, counted for it; absent: as they are
 */
export function verdictsAt(basis: Basis, m: Measures, depths: number[], shift?: Shift): Verdict[] {
  const { pond } = basis.site;
  const chances = shift ? chancesOf(basis, m, depths, shift) : keptChances(basis, m, depths);
  return chances.map((chance, i) => {
    const depth = depths[i];
    const dig = perDig(basis.site, basis.dig, m, depth);
    const conditions = pond.existing ? [] : digConditions(basis.site, basis.dig, m, depth);
    const worst = worstDig(dig);
    const digging = againstDig(worst, conditions, pond.acceptedRisk);
    const diggable = pond.existing || digging === 'none';
    const ends = diggable && chance.perYear <= pond.acceptedRisk ? tooBrief(basis, m, depth) : undefined;
    const brief = ends && BRIEF[ends];
    const drawn = chance.modes['lift-drawn-down'] ?? 0;
    const accepted = acceptedOf(basis, { diggable, brief, chance }, chance.perYear, drawn);
    const governs = governing(chance, accepted.dry, diggable, digging, () => drainLimit(basis, m, depth));
    return {
      ...accepted,
      diggable,
      governs: brief && !chance.lacks ? brief : governs,
      brief,
      chance,
      dig,
      conditions,
    };
  });
}

/** How an emptying fails that something ends too soon. */
const BRIEF: Record<EmptyTime['governs'], Governs | undefined> = {
  lift: 'lift-emptied',
  sides: 'side-slump',
  heave: 'floor-heave',
  none: undefined,
};

function acceptedOf(
  { site }: Basis,
  { diggable, brief, chance: { lacks } }: Pick<Verdict, 'diggable' | 'brief' | 'chance'>,
  perYear: number,
  drawn: number,
) {
  const { acceptedRisk } = site.pond;
  const dry = !lacks && !brief && perYear <= acceptedRisk;
  return { dry, kept: !lacks && drawn <= acceptedRisk, safe: dry && diggable };
}

/** A verdict as it would be among some of the samples only; its chance and what governs stay those of all. */
export function verdictAmong(basis: Basis, verdict: Verdict, samples: ArrayLike<number>): Verdict {
  const { perYear, drawn } = verdict.chance.among(samples);
  return { ...verdict, ...acceptedOf(basis, verdict, perYear, drawn) };
}

/**
 * Verdict at one depth.
 * @param basis - of a judgement
 * @param m - measures of an option; its levels m above the lowest natural ground at the rim
 * @param depth - from the rim's ground, which `m.raise` lifts, to the liner's lowest point, m, above 0
 * @returns safe or not, what governs, and the chances
 */
export function verdictAt(basis: Basis, m: Measures, depth: number): Verdict {
  return verdictsAt(basis, m, [depth])[0];
}

/** What keeps a drain to an outlet from holding the water below the floor: its level, or the ditch in flood. */
function drainLimit({ site }: Basis, m: Measures, depth: number): Governs | undefined {
  if (m.drain?.kind !== 'outlet') return undefined;
  const floor = floorLevel(depth, m);
  const hold = emptiedHold(site, m, depth);
  if (drainLevel(m, floor) + BED_LOSS > hold) return 'fall';
  return m.drain.flood + BED_LOSS > hold ? 'outlet-flood' : undefined;
}

function governing(
  { modes, lacks, lifted }: Chance,
  dry: boolean,
  diggable: boolean,
  digging: Governs,
  drainLimit: () => Governs | undefined,
): Governs {
  if (!diggable) return digging;
  if (lacks) return lacks.governs;
  if (dry) return 'none';
  const of = (mode: Governs) => modes[mode] ?? 0;
  const drawn = of('lift-drawn-down');
  const emptied = Math.max(of('lift-emptied'), of('side-slump'));
  // What heaves as it is kept is counted in what fails as it is kept: the seam is named where the clay's water makes less of it.
  if (of('floor-heave') > lifted && of('floor-heave') >= emptied) return 'floor-heave';
  if (of('side-slump') > Math.max(drawn, of('lift-emptied'))) return 'side-slump';
  if (of('lift-emptied') > drawn) return drainLimit() ?? 'lift-emptied';
  if (of('lift-power-out') > 0.5 * drawn) return 'lift-power-out';
  // A full pond that lifts also lifts when drawn down: name the fuller state where it is most of the chance.
  return of('lift-full') > 0.5 * drawn ? 'lift-full' : 'lift-drawn-down';
}
