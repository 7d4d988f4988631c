import type { Report } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/display.js';
import { monthName } from './monthWords.js';
import { slabTakes } from './slabWords.js';
import { GOVERNS_WORDS } from './terms.js';
/** What the section shows, for whoever does not see it. */
export function sectionAlt(
  section: {
    length: number;
    depth: number;
    advised: boolean;
    full: number;
    lowest: number;
    floor: number;
    high: number;
  },
  report: Report,
  units: UnitSystem,
  water: { wet: number; dry: number; wetMonth: number; dryMonth: number },
  drainWords: string | undefined,
): string {
  const level = (z: number) => formatQuantity(z, 'level', units);
  const { recommendation } = report.result;
  return (
    `Section through the pond, ${formatQuantity(section.length, 'length', units)} long, ` +
    `${section.advised ? 'as recommended' : 'as wished'}, ${formatQuantity(section.depth, 'length', units)} deep; levels from the lowest ground at the rim. ` +
    `Pond full ${level(section.full)}, usual lowest ${level(section.lowest)}, floor ${level(section.floor)}. ${slabTakes(report, units)} ` +
    `In a wet ${monthName(water.wetMonth)} the water table stands at ${level(water.wet)}, in a dry ${monthName(water.dryMonth)} at ${level(water.dry)}; ` +
    `in one year of ten the highest water outside an undrained pond comes to ${level(section.high)} or higher. ` +
    `What governs: ${GOVERNS_WORDS[recommendation.governs]}.${drainWords ? ` ${drainWords}` : ''}`
  );
}
