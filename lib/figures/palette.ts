/** Colours of every figure: apart in lightness as well as hue, and never the only sign (lines differ in dash too). */
import type { OptionName } from '../contract/optionNames.js';

export const INK = '#22262b';
export const FAINT_INK = '#5b6168';
export const HAIRLINE = '#c9c5bb';
export const PAPER = '#ffffff';
export const WATER = '#1f5f8b';
export const WATER_BAND = 'rgba(31, 95, 139, 0.20)';
export const POND_WATER = 'rgba(90, 160, 200, 0.45)';
export const LINER = '#111111';
export const ALARM = '#a3321c';
export const RING = '#8f7f63';
/** The same in words and thin lines, 4.5 to 1 against paper. */
export const RING_INK = '#6f6048';
export const STONE = '#d9d2bd';
export const CONCRETE = '#b4b6b9';

export interface LineStyle {
  colour: string;
  /** plotly dash pattern */
  dash: string;
}

/** One line style an option, told apart in grey print by the dash. */
export const OPTION_STYLE: Record<OptionName, LineStyle> = {
  'no-drain': { colour: '#16324f', dash: 'solid' },
  'surface-water-only': { colour: '#2b8a80', dash: '7px,3px' },
  'cutoff-drain': { colour: '#a8740a', dash: '2px,3px' },
  'drain-to-outlet': { colour: '#bf4a26', dash: '12px,3px' },
  'drain-to-sump': { colour: '#7b2a58', dash: '9px,3px,2px,3px' },
  'raise-pond': { colour: '#5d7f22', dash: '5px,5px' },
  ballast: { colour: '#6a6f76', dash: '14px,4px,2px,4px,2px,4px' },
};

const SOILS: [word: string, colour: string][] = [
  ['peat', '#8a7563'],
  ['made ground', '#cfc8c0'],
  ['gravel', '#ddd7c8'],
  ['rock', '#b9b7b4'],
  ['clay loam', '#c7ad86'],
  ['clay', '#d3ad8c'],
  ['silt', '#d8c9a6'],
  ['sandy loam', '#e0cf9f'],
  ['sand', '#efe0b0'],
  ['loam', '#bfa87f'],
];

/** Colour of a soil by its texture word. */
export function soilColour(texture: string): string {
  return SOILS.find(([word]) => texture.includes(word))?.[1] ?? '#d5cab8';
}
