/** The parameters of the daily water balance in words. */
import type { FittedParameter } from '../contract/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';

type Kind = 'length' | 'share' | 'rate' | 'days' | 'factor' | 'melt';

const WORDS: Record<FittedParameter['name'], [name: string, does: string, kind: Kind]> = {
  meltFactor: ['melt of snow', 'melts so much of a degree (°C) over freezing and day', 'melt'],
  crackShare: ['share down cracks', 'passes a dry root zone at once', 'share'],
  rootCapacity: ['room of the roots', 'water that the root zone holds for plants', 'length'],
  demandFactor: ['factor on evaporation', 'times the demand of the weather', 'factor'],
  delay: ['way down', 'time from the roots to the water', 'days'],
  porosity: ['drainable porosity', 'recharge over it is the rise of the water', 'share'],
  spillDepth: ['spill', 'depth at which more runs off', 'length'],
  drainDepth: ['old drain or ditch', 'depth to which the ground empties', 'length'],
  drainRate: ['its rate', 'of what stands above it, a day', 'rate'],
  extinctionDepth: ['end of evaporation', 'depth below which plants draw no water up', 'length'],
  recession: ['recession', 'of what stands above the base, a day', 'rate'],
  baseDepth: ['base', 'depth below which nothing leaves', 'length'],
  missed: ['what it misses', 'spread of looks about the water reckoned', 'length'],
};

/**
 * A parameter: its name, and what it does.
 * @param name - of the parameter
 * @returns words
 */
export function fittedName(name: FittedParameter['name']): { name: string; does: string } {
  const [words, does] = WORDS[name];
  return { name: words, does };
}

/**
 * A value of a parameter with its unit.
 * @param name - of the parameter
 * @param value - SI, rates by the day
 * @param units - how numbers are written
 * @returns text
 */
export function fittedValue(name: FittedParameter['name'], value: number, units: UnitSystem): string {
  const plain = String(Number(value.toPrecision(2)));
  switch (WORDS[name][2]) {
    case 'length':
    case 'melt':
      return formatQuantity(value, 'length', units);
    case 'days':
      return `${plain} days`;
    case 'rate':
      return `${plain} a day`;
    default:
      return plain;
  }
}

/**
 * What stands under the table.
 * @param model - of the water, by name
 * @returns sentences
 */
export function fittedNote(model: string): string {
  return `The store of the water, ${model}: in its middle, and from the low to the high end that hold eight of ten. Before: what is common in such ground. After: the sets with which the water was simulated. They are drawn together, so no one of them may be changed alone.`;
}
