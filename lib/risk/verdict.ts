import type { Site } from '../site/index.js';
import { type Chance, chanceOf, NO_SHIFT, type Shift } from './chance.js';
import { type Condition, digConditions, perDig, worstDig } from './digging.js';
import type { Draws } from './draws.js';
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

/** Judges measures at a depth: chance a year, chances per dig each for itself, conditions. */
export function verdictAt(
  site: Site,
  draws: Draws,
  m: Measures,
  depth: number,
  { shift = NO_SHIFT, subset }: { shift?: Shift; subset?: ArrayLike<number> } = {},
): Verdict {
  const accepted = site.pond.acceptedRisk;
  const chance = chanceOf(site, draws, m, depth, shift, subset);
  const dig = perDig(site, draws, m, depth);
  const conditions = site.pond.existing ? [] : digConditions(site, m, depth);
  const worst = worstDig(dig);
  const broken = conditions.find((c) => c.met !== 'yes');
  const dry = chance.perYear <= accepted;
  const diggable = site.pond.existing || (worst.chance <= accepted && !broken);
  return {
    safe: dry && diggable,
    dry,
    diggable,
    governs: governing(chance, dry, diggable, broken?.governs ?? worst.governs),
    chance,
    dig,
    conditions,
  };
}

function governing(chance: Chance, dry: boolean, diggable: boolean, digging: Governs): Governs {
  if (!diggable) return digging;
  if (dry) return 'none';
  // A full pond that lifts also lifts when drawn down: name the fuller state where it is most of the chance.
  const full = chance.modes['lift-full'] ?? 0;
  const drawn = chance.modes['lift-drawn-down'] ?? 0;
  const emptied = chance.modes['lift-emptied'] ?? 0;
  const power = chance.modes['lift-power-out'] ?? 0;
  if (emptied > drawn) return 'lift-emptied';
  if (power > 0.5 * drawn) return 'lift-power-out';
  return full > 0.5 * drawn ? 'lift-full' : 'lift-drawn-down';
}
