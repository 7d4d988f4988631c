/** The answer to what is tried, as a sentence: safe or not with what is held built, how often it fails, and what would mend it. */
import {
  type Advice,
  type Condition,
  type Governs,
  LEAST_CHANCE,
  type Obstacle,
  type OptionName,
  type WishChange,
} from '../contract/index.js';
import { formatBound, formatQuantity, type UnitSystem } from '../units/index.js';
import { changeWords } from './changeWords.js';
import { conditionText } from './conditionText.js';
import { duringMonths } from './monthWords.js';
import { obstacleText } from './obstacleText.js';
import { chanceText, isUpkeep, oftenText, orderText, WITH_OPTION, yearlyText } from './say.js';
import { listText, lowerFirst } from './sentence.js';
import { ADVICE_NAMES, GOVERNS_WORDS } from './terms.js';

/** Safe; safe by a rule or as far as is known; or not. */
export type Standing = 'safe' | 'ruled' | 'unsafe';

/** The answer, and how it is meant. */
interface WhatIfAnswer {
  words: string;
  standing: Standing;
}

/** What is held built. */
export interface TrialWorks {
  option: OptionName;
  as_built: boolean;
  /** surface water is kept out */
  kept_out: boolean;
  raise_m: number;
  /** with a gas vent */
  gas: boolean;
}

/** How what is tried was judged. */
export interface TrialVerdict {
  governs: Governs;
  diggable: boolean;
  dry: boolean;
  per_year: number;
  upkeep: number;
  lacks: Obstacle | undefined;
  /** chances a dig */
  dig: { heave: number; slump: number; wet_floor: number };
  /** first condition that is not met */
  broken: Condition | undefined;
}

/** The first option that is safe there, and what is held instead of it. */
export interface TrialAlternative {
  option: OptionName;
  raise_m: number;
  held: OptionName;
}

interface Judged {
  depth_m: number;
  built: TrialWorks;
  verdict: TrialVerdict;
  /** the answer of the survey itself is to measure first */
  unsettled: boolean;
}

/** What was found of what is tried. `free`: months 1–12; `any`: it may be wished empty at any time; `deepest_m` absent: no depth is safe. */
export type WhatIfFound =
  | { found: 'stopped'; option: Advice; governs: Governs }
  | { found: 'absent'; option: OptionName; why: Obstacle | undefined; rescue: TrialAlternative | undefined }
  | ({ found: 'safe' } & Judged)
  | ({ found: 'ruled'; rescue: TrialAlternative | undefined; free: number[]; any: boolean } & Judged)
  | ({ found: 'unsafe'; rescue: TrialAlternative | undefined; deepest_m: number | undefined } & Judged);

/** What would make it safe, as the beginning of a sentence. */
const WOULD: Record<OptionName, string> = {
  'no-drain': 'No drain at all',
  'surface-water-only': 'Keeping surface water out',
  'cutoff-drain': 'A cut-off drain uphill',
  'drain-to-outlet': 'A drain to an outlet',
  'drain-to-sump': 'A pump',
  'raise-pond': 'Raising the pond',
  ballast: 'A slab on the liner',
};

/**
 * Answers what is tried.
 * @param found - of it
 * @param units - how numbers are written
 * @returns a few sentences, and how they are meant
 */
export function whatIfText(found: WhatIfFound, units: UnitSystem): WhatIfAnswer {
  if (found.found === 'stopped')
    return {
      standing: 'unsafe',
      words: `${ADVICE_NAMES[found.option]}, whatever is tried here: ${GOVERNS_WORDS[found.governs]}.`,
    };
  if (found.found === 'absent') {
    const because = found.why ? `: ${obstacleText(found.why, units).replace(/\.$/, '')}` : '';
    return {
      standing: 'unsafe',
      words: `${ADVICE_NAMES[found.option]} cannot be had as tried${because}. ${rescueWords(found.rescue, units)}`,
    };
  }
  const { depth_m, built, verdict } = found;
  const size = (metres: number) => formatQuantity(metres, 'length', units);
  const how = `at ${size(depth_m)} ${withWords(built, size)}`;
  const answer: WhatIfAnswer =
    found.found === 'safe'
      ? { standing: 'safe', words: `Safe ${how}: ${failsWords(verdict, units)}.` }
      : found.found === 'ruled'
        ? {
            standing: 'ruled',
            words: `Kept full it is safe ${how}. ${ruleWords(found)} ${rescueWords(found.rescue, units)}`,
          }
        : {
            standing: 'unsafe',
            words: `Not safe ${how}: ${failsWords(verdict, units)}. ${rescueWords(found.rescue, units)}${deepestWords(found.deepest_m, units)}`,
          };
  return found.unsettled ? doubted(answer) : answer;
}

/** With what is built, in the middle of a sentence. */
function withWords(
  { option, as_built, kept_out, raise_m, gas }: TrialWorks,
  size: (m: number) => string,
): string {
  const rim = raise_m > 0 ? [`the rim raised by ${size(raise_m)}`] : [];
  // A raised rim alone is told once.
  const main = option === 'raise-pond' && rim.length > 0 ? [] : [WITH_OPTION[option].replace(/^With /, '')];
  const parts = [
    ...(as_built ? ['the old drain'] : main),
    ...rim,
    ...(kept_out && option !== 'surface-water-only' ? ['surface water kept out'] : []),
    ...(gas ? ['a gas vent'] : []),
  ];
  return `with ${parts.join(' and ')}`;
}

/** How often it fails, and of what. */
function failsWords(verdict: TrialVerdict, units: UnitSystem): string {
  const { lacks, dig, broken, governs, diggable } = verdict;
  if (!diggable) {
    const digs: Partial<Record<Governs, number>> = {
      'floor-heave': dig.heave,
      'side-slump': dig.slump,
      'wet-dig': dig.wet_floor,
    };
    const often = digs[governs];
    const share = often !== undefined && often >= LEAST_CHANCE ? ` (in ${chanceText(often)} of digs)` : '';
    const later = verdict.dry ? '' : `. Once built it fails ${yearsText(verdict)}`;
    return `${GOVERNS_WORDS[governs]}${share}${broken ? `; ${conditionText(broken, units)}` : ''}${later}`;
  }
  if (lacks) return obstacleText(lacks, units).replace(/\.$/, '');
  const how = governs === 'none' ? '' : `; ${GOVERNS_WORDS[governs]}`;
  return `it fails ${yearsText(verdict)}${how}`;
}

/**
 * How often a year it fails.
 * @param verdict - of what is tried
 * @returns such as `about 1 year in 150, set by how it is kept`
 */
export function yearsText(verdict: Pick<TrialVerdict, 'per_year' | 'upkeep'>): string {
  if (verdict.per_year < LEAST_CHANCE) return 'in less than 1 year in 1000';
  return isUpkeep(verdict)
    ? `${orderText(verdict.per_year)}, set by how it is kept`
    : oftenText(verdict.per_year);
}

/** The rule that the answer of the survey rests on, where it is all that makes what is tried safe. */
function ruleWords({ free, any, verdict }: WhatIfFound & { found: 'ruled' }): string {
  const may = free.length > 0 ? `Empty it only ${duringMonths(free)}` : 'Never empty it';
  const when = any ? 'emptied at any time' : 'emptied as wished';
  return `${may}: ${when} it fails ${yearsText(verdict)}; ${GOVERNS_WORDS[verdict.governs]}.`;
}

function rescueWords(rescue: TrialAlternative | undefined, units: UnitSystem): string {
  return rescue
    ? `${wouldWords(rescue, units)} would make it safe.`
    : 'Nothing else in the list would make it safe.';
}

function wouldWords({ option, raise_m, held }: TrialAlternative, units: UnitSystem): string {
  if (option === 'drain-to-sump' && held !== 'drain-to-outlet') return 'A drain with a pump';
  const raised = raise_m > 0 ? ` by ${formatQuantity(raise_m, 'length', units)}` : '';
  if (option === 'raise-pond') return `${WOULD[option]}${raised}`;
  return `${WOULD[option]}${raised ? `, with the rim raised${raised},` : ''}`;
}

/** Down to where what is held built is safe. */
function deepestWords(depth: number | undefined, units: UnitSystem): string {
  return depth === undefined
    ? ' Built like this it is safe at no depth.'
    : ` Built like this it is safe down to ${formatBound(depth, 'length', units, 'down')}.`;
}

function doubted({ words, standing }: WhatIfAnswer): WhatIfAnswer {
  return {
    words: `Measure first. As far as is known now: ${lowerFirst(words)}`,
    standing: standing === 'safe' ? 'ruled' : standing,
  };
}

/** Chances of each state of a year and of the dig, as they may be told: none of a year more exactly than their sum. */
export function trialChances(
  modes: Partial<Record<Governs, number>>,
  { per_year, upkeep, dig }: Pick<TrialVerdict, 'per_year' | 'upkeep' | 'dig'>,
): string {
  const kept = isUpkeep({ per_year, upkeep });
  const yearly = (chance: number) =>
    !kept || chance < LEAST_CHANCE ? chanceText(chance) : orderText(chance);
  const say = (mode: Governs, words: string) =>
    modes[mode] === undefined ? [] : [`${words} ${yearly(modes[mode])}`];
  const year = [
    ...say('lift-full', 'full'),
    ...say('lift-drawn-down', 'at its usual lowest level'),
    ...say('lift-emptied', 'emptied'),
    ...say('lift-power-out', 'with the power out'),
  ];
  return (
    `The liner lifts: ${[...year, ...say('side-slump', 'a bared side slumps')].join(', ')}; together ${yearlyText({ per_year, upkeep })}. ` +
    `In a dig: floor heaves ${chanceText(dig.heave)}, sides slump ${chanceText(dig.slump)}, wet floor ${chanceText(dig.wet_floor)}.`
  );
}

/**
 * The change of the wish that is held with what is built.
 * @param change - of the wish
 * @param units - how numbers are written
 * @returns a sentence
 */
export function usedWords(change: WishChange, units: UnitSystem): string {
  return `Used as is recommended: ${listText(changeWords(change, (m) => formatQuantity(m, 'length', units)))}.`;
}
