import { monthsFree } from '../contract/index.js';
import { isAsBuilt } from '../heads/index.js';
import { candidatesOf, deepestOf } from '../options/index.js';
import { depthsOf, type Verdict, verdictAt, verdictsAt } from '../reliability/index.js';
import type { TrialAlternative, TrialVerdict, TrialWorks, WhatIfFound } from '../text/whatIfText.js';
import type { Holder, Trial } from './heldMeasures.js';

type Held = NonNullable<Trial['held']>;

/**
 * Answers what is tried.
 * @param holder - of the survey
 * @param trial - from its `asked`
 * @returns what `whatIfText` puts into words
 */
export function whatIfAnswer(holder: Holder, trial: Trial): WhatIfFound {
  const { basis, options, held, option, stop } = trial;
  // A stop holds whatever is built: no chance is told against it.
  if (stop) return { found: 'stopped', option: stop.option, governs: stop.governs };
  if (!held) {
    const why = options.find(({ name }) => name === option)?.why;
    return { found: 'absent', option, why, rescue: rescueOf(trial) };
  }
  const { verdict } = held.decision;
  const judged = {
    depth_m: basis.site.pond.depth,
    built: builtOf(held, trial),
    verdict: trialVerdict(verdict),
    unsettled: unsettled(holder, trial),
  };
  if (verdict.safe) return { found: 'safe', ...judged };
  const rescue = rescueOf(trial);
  return isRuled(holder, held, verdict)
    ? {
        found: 'ruled',
        ...judged,
        rescue,
        free: monthsFree(held.limits.lowestSafeLevel),
        any: held.site.pond.emptiedIn === 'any',
      }
    : { found: 'unsafe', ...judged, rescue, deepest_m: deepestSafe(held) };
}

function builtOf({ decision: { measures } }: Held, { option, gas }: Trial): TrialWorks {
  return {
    option,
    as_built: isAsBuilt(measures),
    kept_out: measures.way === 'keptOut',
    raise_m: measures.raise,
    gas,
  };
}

/** A verdict as it is told. */
export function trialVerdict({ governs, diggable, dry, chance, dig, conditions }: Verdict): TrialVerdict {
  return {
    governs,
    diggable,
    dry,
    per_year: chance.perYear,
    upkeep: chance.upkeep,
    lacks: chance.lacks,
    dig,
    broken: conditions.find(({ met }) => met !== 'yes'),
  };
}

/** Whether the rule that the answer of the survey rests on is all that makes what is tried safe. */
function isRuled({ own }: Holder, { site }: Held, verdict: Verdict): boolean {
  const rests = own.decision.emptyingRuled || site.pond.emptiedIn === 'any' || site.pond.existing;
  return verdict.kept && verdict.diggable && rests;
}

/** The first option of the list that is safe at what is tried. */
function rescueOf({ basis, options, option: held }: Trial): TrialAlternative | undefined {
  const found = candidatesOf(basis, options).find(
    ({ option, measures }) => option !== held && verdictAt(basis, measures, basis.site.pond.depth).safe,
  );
  return found && { option: found.option, raise_m: found.measures.raise, held };
}

/** Down to where what is held built is safe; undefined: at no depth. */
function deepestSafe({ basis, decision, site }: Held): number | undefined {
  const depths = depthsOf(site);
  return depths[deepestOf(verdictsAt(basis, decision.measures, depths).map(({ safe }) => safe))];
}

/** The answer of the survey itself is to measure first. */
function unsettled({ own }: Holder, { evidence }: Trial): boolean {
  return own.decision.option === 'measure-first' || !evidence;
}
