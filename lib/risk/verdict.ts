import type { Basis } from './basis.js';
import { type Chance, type Counting, chancesOf } from './chance.js';
import { type Condition, digConditions, perDig, worstDig } from './digging.js';
import type { Measures } from './measures.js';
import type { Governs, PerDig } from './result.js';

/** Whether measures are safe at a depth, and what stands out where they are not. */
export interface Verdict {
  safe: boolean;
  /** the chance a year is within what is accepted */
  dry: boolean;
  /** the dig itself is within what is accepted and its conditions are met */
  diggable: boolean;
  governs: Governs;
  chance: Chance;
  dig: PerDig;
  conditions: Condition[];
}

/** Judges measures at depths: chance a year, chances per dig each for itself, conditions. */
export function verdictsAt(basis: Basis, m: Measures, depths: number[], how?: Counting): Verdict[] {
  const { pond } = basis.site;
  return chancesOf(basis, m, depths, how).map((chance, i) => {
    const depth = depths[i];
    const dig = perDig(basis, m, depth);
    const conditions = pond.existing ? [] : digConditions(basis.site, m, depth);
    const worst = worstDig(dig);
    const broken = conditions.find((c) => c.met !== 'yes');
    const dry = chance.perYear <= pond.acceptedRisk;
    const diggable = pond.existing || (worst.chance <= pond.acceptedRisk && !broken);
    return {
      safe: dry && diggable,
      dry,
      diggable,
      governs: governing(chance, dry, diggable, broken?.governs ?? worst.governs),
      chance,
      dig,
      conditions,
    };
  });
}

/** {@link verdictsAt} one depth. */
export function verdictAt(basis: Basis, m: Measures, depth: number, how?: Counting): Verdict {
  return verdictsAt(basis, m, [depth], how)[0];
}

function governing({ modes }: Chance, dry: boolean, diggable: boolean, digging: Governs): Governs {
  if (!diggable) return digging;
  if (dry) return 'none';
  const of = (mode: Governs) => modes[mode] ?? 0;
  const drawn = of('lift-drawn-down');
  if (of('side-slump') > Math.max(drawn, of('lift-emptied'))) return 'side-slump';
  if (of('lift-emptied') > drawn) return 'lift-emptied';
  if (of('lift-power-out') > 0.5 * drawn) return 'lift-power-out';
  // A full pond that lifts also lifts when drawn down: name the fuller state where it is most of the chance.
  return of('lift-full') > 0.5 * drawn ? 'lift-full' : 'lift-drawn-down';
}
