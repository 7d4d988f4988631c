/** The answer to what is tried, as a sentence: safe or not with what is held built, how often it fails, and what would mend it. */
import { type Governs, LEAST_CHANCE, monthsFree, type OptionName } from '../contract/index.js';
import { isAsBuilt } from '../heads/index.js';
import { type Candidate, candidatesOf, deepestOf } from '../options/index.js';
import { depthsOf, type Verdict, verdictAt, verdictsAt } from '../reliability/index.js';
import { conditionText } from '../text/conditionText.js';
import { monthWords, obstacleText } from '../text/index.js';
import { chanceText, isUpkeep, oftenText, orderText, WITH_OPTION } from '../text/say.js';
import { ADVICE_NAMES, GOVERNS_WORDS } from '../text/terms.js';
import { formatBound, formatQuantity, type UnitSystem } from '../units/index.js';
import type { Holder, Tried } from './heldMeasures.js';

/** Safe; safe by a rule or as far as is known; or not. */
export type Standing = 'safe' | 'ruled' | 'unsafe';

/** The answer, and how it is meant. */
export interface Answer {
  words: string;
  standing: Standing;
}

type Held = NonNullable<Tried['held']>;

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
 * @param holder - of the survey
 * @param tried - from its `asked`
 * @param units - how numbers are written
 */
export function whatIfAnswer(holder: Holder, tried: Tried, units: UnitSystem): Answer {
  const { basis, options, held, option, stop } = tried;
  // A stop holds whatever is built: no chance is told against it.
  if (stop)
    return {
      standing: 'unsafe',
      words: `${ADVICE_NAMES[stop.option]}, whatever is tried here: ${GOVERNS_WORDS[stop.governs]}.`,
    };
  const size = (metres: number) => formatQuantity(metres, 'length', units);
  const place = `at ${size(basis.site.pond.depth)}`;
  const rescue = () => rescueWords(tried, units);
  if (!held) {
    const why = options.find(({ name }) => name === option)?.why;
    const because = why ? `: ${obstacleText(why, units).replace(/\.$/, '')}` : '';
    return {
      standing: 'unsafe',
      words: `${ADVICE_NAMES[option]} cannot be had as tried${because}. ${rescue()}`,
    };
  }
  const { verdict } = held.decision;
  const how = `${place} ${withWords(held, tried, size)}`;
  const fails = failsWords(verdict, units);
  const ruled = whenRuled(holder, held, verdict);
  const answer: Answer = verdict.safe
    ? { standing: 'safe', words: `Safe ${how}: ${fails}.` }
    : ruled
      ? { standing: 'ruled', words: `Kept full it is safe ${how}. ${ruled} ${rescue()}` }
      : { standing: 'unsafe', words: `Not safe ${how}: ${fails}. ${rescue()}${deepestWords(held, units)}` };
  return unsettled(holder, tried) ? doubted(answer) : answer;
}

/** With what is built, in the middle of a sentence. */
function withWords(
  { decision: { measures } }: Held,
  { option, gas }: Tried,
  size: (m: number) => string,
): string {
  const start = isAsBuilt(measures) ? 'with the old drain' : WITH_OPTION[option].replace('With', 'with');
  const also = [
    ...(measures.way === 'keptOut' && option !== 'surface-water-only' ? ['surface water kept out'] : []),
    ...(measures.raise > 0 ? [`the rim raised by ${size(measures.raise)}`] : []),
    ...(gas ? ['a gas vent'] : []),
  ];
  return [start, ...also].join(' and ');
}

/** How often it fails, and of what. */
function failsWords(verdict: Verdict, units: UnitSystem): string {
  const { chance, dig, conditions, governs, diggable } = verdict;
  if (!diggable) {
    const broken = conditions.find(({ met }) => met !== 'yes');
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
  if (chance.lacks) return obstacleText(chance.lacks, units).replace(/\.$/, '');
  const how = governs === 'none' ? '' : `; ${GOVERNS_WORDS[governs]}`;
  return `it fails ${yearsText(verdict)}${how}`;
}

/** How often a year it fails. */
export function yearsText({ chance: { perYear, upkeep } }: Verdict): string {
  if (perYear < LEAST_CHANCE) return 'in less than 1 year in 1000';
  return isUpkeep({ per_year: perYear, upkeep })
    ? `${orderText(perYear)}, set by how it is kept`
    : oftenText(perYear);
}

/** The rule that the answer of the survey rests on, where it is all that makes what is tried safe. */
function whenRuled({ own }: Holder, { site, limits }: Held, verdict: Verdict): string | undefined {
  const rests = own.decision.emptyingRuled || site.pond.emptiedIn === 'any' || site.pond.existing;
  if (verdict.safe || !verdict.kept || !verdict.diggable || !rests) return undefined;
  const months = monthsFree(limits.lowestSafeLevel);
  const may = months.length > 0 ? `Empty it in ${monthWords(months)} only` : 'Never empty it';
  const when = site.pond.emptiedIn === 'any' ? 'emptied at any time' : 'emptied as wished';
  return `${may}: ${when} it fails ${yearsText(verdict)}; ${GOVERNS_WORDS[verdict.governs]}.`;
}

const NOTHING_ELSE = 'Nothing else in the list would make it safe.';

/** The first option of the list that is safe at what is tried. */
function rescueWords({ basis, options, option: held }: Tried, units: UnitSystem): string {
  const found = candidatesOf(basis, options).find(
    ({ option, measures }) => option !== held && verdictAt(basis, measures, basis.site.pond.depth).safe,
  );
  return found ? `${wouldWords(found, held, units)} would make it safe.` : NOTHING_ELSE;
}

function wouldWords({ option, measures }: Candidate, held: OptionName, units: UnitSystem): string {
  if (option === 'drain-to-sump' && held !== 'drain-to-outlet') return 'A drain with a pump';
  const raised = measures.raise > 0 ? ` by ${formatQuantity(measures.raise, 'length', units)}` : '';
  if (option === 'raise-pond') return `${WOULD[option]}${raised}`;
  return `${WOULD[option]}${raised ? `, with the rim raised${raised},` : ''}`;
}

/** Down to where what is held built is safe. */
function deepestWords({ basis, decision, site }: Held, units: UnitSystem): string {
  const depths = depthsOf(site);
  const at = deepestOf(verdictsAt(basis, decision.measures, depths).map(({ safe }) => safe));
  return at < 0
    ? ' Built like this it is safe at no depth.'
    : ` Built like this it is safe down to ${formatBound(depths[at]!, 'length', units, 'down')}.`;
}

/** The answer of the survey itself is to measure first. */
function unsettled({ own }: Holder, { evidence }: Tried): boolean {
  return own.decision.option === 'measure-first' || !evidence;
}

function doubted({ words, standing }: Answer): Answer {
  const start = words.charAt(0).toLowerCase() + words.slice(1);
  return {
    words: `Measure first. As far as is known now: ${start}`,
    standing: standing === 'safe' ? 'ruled' : standing,
  };
}
