/** Words of the sheet of design situations, for whoever signs it. */

import type {
  ActionClass,
  DesignSheet,
  DrainFault,
  HeldBy,
  LoadCategory,
  Statistic,
  WaterSource,
} from '../contract/index.js';
import type { RulesName } from '../site/index.js';
import { SIDE_FACTOR_WANTED } from '../uplift/index.js';

/** What a set of rules is, and what of it was read where. */
interface RulesWords {
  /** of the country, as the end of a sentence */
  name: string;
  /** the standard with its edition and what it wants */
  standard: string;
  /** figures with where they were read; what was not seen is to be checked */
  source: string;
}

const UPL = 'EN 1997-1:2004+A1:2013, limit state UPL, clause 2.4.7.4';
const TABLE_A15 =
  'Clauses 2.4.6.1 and 2.4.7.4 were read as published on the web; 1.0, 1.5 and 0.9 in a handbook that reprints table A.15.';

/** The rules by name. */
export const RULES_WORDS: Readonly<Record<RulesName, RulesWords>> = {
  en: {
    name: 'EN 1997-1 with its recommended values',
    standard: `${UPL}: 1.0 times what lifts (1.5 times where that is a variable action) is at most 0.9 times what holds. Recommended values of table A.15.`,
    source: `${TABLE_A15} Check table A.15 of the edition in force, and the national annex of the country: it may ask for more.`,
  },
  gb: {
    name: 'EN 1997-1 with the UK national annex',
    standard: `${UPL}, with the UK national annex: 1.1 times what lifts (1.5 times where that is a variable action) is at most 0.9 times what holds.`,
    source:
      '1.1 was read in a published worked example; 0.9 and 1.5 are the recommended values. The annex itself was not seen: check its table of partial factors for UPL, all three, in the edition in force.',
  },
  ie: {
    name: 'EN 1997-1 with its recommended values, for Ireland',
    standard: `${UPL} (I.S. EN 1997-1): 1.0 times what lifts (1.5 times where that is a variable action) is at most 0.9 times what holds. Recommended values of table A.15.`,
    source: `${TABLE_A15} The Irish national annex was not seen: check its table of partial factors for UPL, in the edition in force.`,
  },
  us: {
    name: 'USACE EM 1110-2-2100',
    standard:
      'USACE EM 1110-2-2100 (2005), flotation, equation 3-2: what holds over what lifts is at least 1.3 for usual loads, 1.2 for unusual and 1.1 for extreme ones. Written for structures of the Corps: nothing binds a garden pond to it. Building codes combine loads by ASCE 7: check chapter 2 (combinations) and chapter 3 (uplift on floors) of the edition adopted.',
    source:
      'The terms of equation 3-2 were read as quoted on the web. The three factors and the bounds of the categories were not seen: check tables 3-4 and 3-1 of the edition in force.',
  },
};

/** What follows the edition that is used; empty outside Europe. */
export const FOLLOWING_EDITION: Readonly<Record<RulesName, string>> = {
  en: 'EN 1997-1:2024 follows this edition. It is not used here.',
  gb: 'EN 1997-1:2024 follows this edition. It is not used here.',
  ie: 'EN 1997-1:2024 follows this edition. It is not used here.',
  us: '',
};

/** Kinds of action. */
export const ACTION_WORDS: Readonly<Record<ActionClass, string>> = {
  permanent: 'permanent',
  variable: 'variable',
  accidental: 'accidental',
};

/** How often a load comes. */
export const CATEGORY_WORDS: Readonly<Record<LoadCategory, string>> = {
  usual: 'usual',
  unusual: 'unusual',
  extreme: 'extreme',
};

/** What holds. */
export const HELD_WORDS: Readonly<Record<HeldBy, string>> = {
  water: 'water over the liner',
  weight: 'what lies on the liner',
  both: 'water and what lies on the liner',
  plug: 'the ground above the layer',
  'plug-and-load': 'the ground above the layer and what is over it',
  nothing: 'nothing',
};

/** How a design water was come by. */
export const SOURCE_WORDS: Readonly<Record<WaterSource, string>> = {
  heads: 'levels given in heads.csv',
  'balance-fitted': 'daily water balance, fitted to looks',
  'balance-priors': 'daily water balance, fitted to no look',
  dips: 'looks month by month',
  spill: 'taken at the spill level: nobody looked',
  drain: 'as long as the drain works',
  'flood-surveyed': 'flood mark in levels.csv',
  'flood-assumed': 'flood level assumed: nobody gave a mark',
  'seam-surveyed': 'pressure given in heads.csv',
  'seam-assumed': 'pressure assumed: nobody looked',
};

const FAULTS: Readonly<Record<DrainFault, string>> = {
  drain_blocked_once_in: 'drain found blocked',
  flap_stuck_once_in: 'flap found stuck',
  pump_out_once_in: 'pumps out with nobody there',
  power_cut_once_in: 'long power cut',
};

const HIGHEST: Readonly<Record<Statistic['highest_of'], string>> = {
  year: 'highest of the year',
  month: 'highest of the month',
  emptying: 'highest while it is empty',
  flood: 'flood',
  dig: 'highest while it is dug',
};

/**
 * Which water of which year.
 * @param statistic - of a row
 * @param known - whether years differ in it, or only what is known of it
 * @returns such as `highest of the year, exceeded in 1 year of 50`
 */
export function statisticText({ highest_of, exceeded }: Statistic, known: 'by years' | 'by surveys'): string {
  const years = Number((1 / exceeded).toPrecision(2));
  if (known === 'by surveys') return `${HIGHEST[highest_of]}, 1 chance in ${years} that it stands higher`;
  return `${HIGHEST[highest_of]}, exceeded ${years <= 1 ? 'every year' : `in 1 year of ${years}`}`;
}

/**
 * Of what the sheet is.
 * @param sheet - from `result.json`
 * @param depth - in words
 * @returns a sentence
 */
export function designedText({ of }: DesignSheet, depth: string): string {
  return of === 'recommended'
    ? `Of what is recommended, ${depth} deep.`
    : `Of the pond as wished, ${depth} deep, with nothing done: the page advises no pond here yet.`;
}

/**
 * What must be known to read the sheet.
 * @param sheet - from `result.json`
 * @returns sentences, each a point
 */
export function designNotes({ rules, rows, upkeep }: DesignSheet): string[] {
  const us = rules === 'us';
  const held = rows.some(({ uplift }) => uplift?.held_by === 'water' || uplift?.held_by === 'both');
  return [
    ...(held
      ? [
          `A liner has no weight. Where water over it holds it down, the ${us ? 'factor of safety' : 'utilisation'} depends on the level from which both waters are counted, here the liner's lowest point: a deeper pond comes nearer to the limit and lifts no sooner. So the margin in level stands in every row; it depends on no such choice.${us ? '' : ' EN 1997-1, 2.4.6.1 (8), lets a design water be found by such a margin.'}`,
        ]
      : []),
    us
      ? 'A pond is full, low, emptied and dug in any year, so these loads count as usual, however rare the water of the row is. A failed part counts as unusual. Nothing counts as extreme: upkeep that nobody has measured does not earn the lowest factor.'
      : 'Water outside counts as a permanent action at the rare level of its row (2.4.6.1 (6)). Whoever takes its rise as variable puts 1.5 on the rise. A flood at the outlet counts as variable. A failed part counts as accidental, with the factors of ordinary design, which is on the safe side.',
    ...(rows.some(({ drained }) => drained)
      ? [
          `Rows whose water is what the drain leaves hold only as long as the drain works; the row “drain blocked or stopped” stands beside them. Its upkeep is part of the design: ${upkeep.map(({ item, years, said }) => `${FAULTS[item]} once in ${Number(years.toPrecision(3))} years (${said ? 'as the survey says' : 'assumed'})`).join(', ')}.`,
        ]
      : []),
    ...(rows.some(({ water }) => water?.which === 'seam')
      ? [
          'Below the clay the water presses on the ground down to that layer. Its water is as high as is rare enough by what is known of it, and alike in every year. The weight of the ground is its middle, while the answer draws that too. The margin of these rows is counted to a factor of 1.25, as the answer is, not to balance, and all months of the year are taken together where the pond is full or low.',
        ]
      : []),
    ...(rows.some(({ sides }) => sides)
      ? [
          `The highest side of the hole is weighed as clay of middling strength, wet, and cracked to half its height with the crack full of water. A factor of ${SIDE_FACTOR_WANTED} is wanted: common practice. It tells of slumping in the days of a dig, not of somebody's safety in the hole: see digging.`,
        ]
      : []),
    'Friction at the sides of what lifts is left out. Pumping is not weighed here: see digging.',
  ];
}

/**
 * A side and how high it stands.
 * @param height - of the side, with its unit
 * @param stands - at factor 1, with its unit
 * @returns what it is, and what it would be, for two cells
 */
export function sideCells(height: string, stands: string): [string, string] {
  return [`a side ${height} high, bank and all`, `it stands ${stands}`];
}

/**
 * A ratio with what it may be.
 * @param ratio - as printed
 * @param wanted - its bound
 * @param most - whether it may be no more, else no less
 * @returns such as `1.62, at least 1.5`
 */
export function boundedWords(ratio: string, wanted: number, most: boolean): string {
  return `${ratio}, at ${most ? 'most' : 'least'} ${wanted}`;
}

const HAND_CHECK: Readonly<Record<RulesName, string>> = {
  en: 'recommended factors of table A.15',
  ie: 'recommended factors of table A.15',
  gb: 'factors of the UK national annex',
  us: 'recommended factors of table A.15, which bind nobody in the United States and are here for comparison with the sheet to sign',
};

/**
 * What the check by hand goes by.
 * @param rules - of the country
 * @param factor - partial factors on what lifts and what holds
 * @returns sentences
 */
export function handCheckStandard(
  rules: RulesName,
  { lifting, holding }: { lifting: number; holding: number },
): string {
  return `Uplift of the floor with the pond as it is kept. Standard: EN 1997-1:2004, limit state UPL (2.4.7.4): ${lifting.toFixed(1)} times what lifts is at most ${holding.toFixed(1)} times what holds (${HAND_CHECK[rules]}). The water outside is the yearly highest that 95 % of years stay below; the sheet to sign has the rarer water that the answer goes by.`;
}
