import type { Barred, MonthLowering, OptionName, Result } from '../contract/index.js';
import { formatGap, type UnitSystem } from '../units/display.js';
import { duringMonths } from './monthWords.js';
import { sentence } from './sentence.js';
import { timeWords } from './situationWords.js';
import { ADVICE_NAMES } from './terms.js';
/**
 * A month of the card in words.
 * @param days - that it stands empty as planned
 */
export function lowerWords({ below, says, hours }: MonthLowering, days: number, units: UnitSystem): string {
  const empty = timeWords(hours ?? 24 * days);
  const down = below === null || below === 0 ? '' : `${formatGap(below, units, 'down')} below full`;
  switch (says) {
    case 'empty':
      return hours === undefined ? 'may be emptied' : `may be emptied for ${empty} at most`;
    case 'briefly':
      return `empty for ${empty} at most; else ${down || 'full'}`;
    case 'down':
      return down;
    case 'keep-full':
      return 'keep full';
    case 'not-even-full':
      return 'not safe even full';
  }
}

/**
 * Title of the card.
 * @param name - of the survey
 * @returns a question
 */
export function cardTitle(name: string): string {
  return `${name}: how low may the pond go?`;
}

/**
 * What the card holds for.
 * @param result - with the digest of its survey
 * @returns sentences
 */
export function cardFoot({ survey, situations }: Pick<Result, 'survey' | 'situations'>): string {
  return `For this survey only (${survey.sha256.slice(0, 12)}), ${situations.some(({ of }) => of === 'recommended') ? 'built as recommended' : 'with nothing built'}. Local codes decide.`;
}

/**
 * What is read before the pond is lowered.
 * @param margin - kept above the water in the pipe, m; negative: a slab holds the pond so far below it
 * @param units - how numbers are written
 * @returns sentences
 */
export function keepAbove(margin: number, units: UnitSystem): string {
  const kept =
    margin < 0
      ? `no more than ${formatGap(-margin, units, 'down')} below that water: the slab holds no more`
      : `${formatGap(margin, units, 'up')} above that water, or full where that is too much`;
  return `Read the dip pipe first. While water stands in it above the floor, keep the pond ${kept}.`;
}

/**
 * What no reading of the pipe lets be done.
 * @param barred - what keeps an emptied pond from standing, by month
 * @returns a sentence
 */
export function notByPipe(barred: readonly (Barred | null)[]): string {
  const seam = barred.includes('floor-heave');
  const months = barred.flatMap((cause, at) => (cause === null ? [] : [at + 1]));
  const when = months.length < 12 ? `${sentence(duringMonths(months))} never` : 'Never';
  return `${when} lower than the month says, not even when the pipe is dry: ${seam ? 'water below the clay, which the pipe does not show, breaks through the floor' : 'the bared sides slip'}.`;
}

/**
 * Heading of the steps of the lowest levels.
 * @param situation - the drain works or none is needed, or it has stopped
 * @returns a heading
 */
export function lowestMonthsTitle(situation: 'emptied' | 'drain-blocked'): string {
  return situation === 'emptied'
    ? 'How low the pond may be let, month by month'
    : 'How low the pond may be let while the drain is blocked, month by month';
}

/**
 * What stands over the steps of the lowest levels.
 * @returns sentences
 */
export function lowestMonthsNote(): string {
  return 'Of each month in which it may not be emptied at will: the highest water outside, as rare as is accepted, and the margin over it; where the pond holds as it is kept, no more than that. The card tells it below full, to the centimetre on the safe side.';
}

/**
 * What is done where no level is safe.
 * @param drained - a drain may be blocked
 * @returns a sentence
 */
export function notEvenFull(drained: boolean): string {
  return `Not safe even full: fill it to the brim${drained ? ', get the drain going the same day,' : ''} and ask for help.`;
}

/**
 * Heading of the lowest levels by month.
 * @param option - that they hold for
 * @returns a heading
 */
export function keepAboveHeading(option: OptionName): string {
  return `keep the pond above: ${ADVICE_NAMES[option].toLowerCase()}`;
}
