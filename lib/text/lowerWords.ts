import type { MonthLowering } from '../contract/index.js';
import { formatGap, type UnitSystem } from '../units/display.js';
import { timeWords } from './situationWords.js';
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
