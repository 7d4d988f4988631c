import { method } from '../formula/index.js';
import { INCH } from '../units/index.js';
import type { Mottles } from './words.js';

export const soilColour = method({
  title: 'What soil colour says about water',
  what:
    'Depth of the seasonal high water from the shallowest layer with common or many mottles, or a grey one: the water ' +
    'is taken to come 0.18 m nearer the ground than the colour, give or take 0.2 m.',
  assumptions: [
    'colour records weeks of airless wet, not the peak: measured high water stood on average 0.18 m nearer the ground ' +
      'than the grey in over half of the soils of one study, none of them heavy clay',
    'relict colours, red parent rock and drained ground mislead; a dated winter reading outweighs it',
    'few mottles (below 2 %) are not counted',
  ],
  source:
    'USDA Soil Survey Manual, redoximorphic features (few below 2 %, common 2–20 %, many above, from memory); a state ' +
    'study of mottles against measured water (seen); spread our choice',
});

/** How much nearer the ground the high water stands than the colour, and its spread, m. */
const BIAS = 0.18;
const SPREAD = 0.2;

/** Seasonal high water as the soil's colour tells it. */
export interface ColourEvidence {
  /** top of the shallowest coloured layer, m below ground */
  from: number;
  /** estimate of the seasonal high, m below ground; not above it */
  depth: number;
  /** one standard deviation, m */
  spread: number;
  rule: string;
  bias: string;
}

/**
 * Seasonal high water from the mottles of a pit log, see {@link soilColour}.
 * @param layers - top of each layer, m below ground, and what was seen in it
 * @returns its depth, m below ground, with its spread; undefined where no layer has common or many mottles or is grey
 */
export function seasonalHighFromColour(
  layers: { top: number; mottles?: Mottles }[],
): ColourEvidence | undefined {
  const coloured = layers.filter(
    (l) => l.mottles === 'common' || l.mottles === 'many' || l.mottles === 'grey',
  );
  if (coloured.length === 0) return undefined;
  const first = coloured.reduce((a, b) => (b.top < a.top ? b : a));
  return {
    from: first.top,
    depth: Math.max(first.top - BIAS, 0),
    spread: SPREAD,
    rule: `${first.mottles === 'grey' ? 'grey colours' : `${first.mottles} mottles`} from ${Number(first.top.toFixed(2))} m (Soil Survey Manual, redoximorphic features)`,
    bias: `water stands on average ${BIAS} m nearer the ground than the colour`,
  };
}

/**
 * Drainage class by the depth of the first grey mottles, m (10, 20 and 40 inches, as a state's key has it).
 * @param firstGrey - depth of the first grey, m below ground; Infinity: none
 * @returns the class in words
 */
export function drainageClass(firstGrey: number): string {
  const inches = Number((firstGrey / INCH).toFixed(6));
  if (inches <= 10) return 'poorly drained';
  if (inches <= 20) return 'somewhat poorly drained';
  return inches <= 40 ? 'moderately well drained' : 'well drained';
}
