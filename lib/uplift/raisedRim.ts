import { formula, UNIT_WEIGHT_OF_WATER } from '../formula/index.js';

const W = UNIT_WEIGHT_OF_WATER;
const h = { meaning: 'water above the ground beside the rim', unit: 'm', min: 0, max: 2 };

/** Outward push of the water above ground on a raised rim. */
export const rimPush = formula({
  title: 'Push of the water on a raised rim',
  symbol: 'P',
  unit: 'N/m',
  expression: '9810*h^2/2',
  parameters: { h },
  compute: (h: number) => (W * h * h) / 2,
  validity: 'still water to the top, nothing but air outside; acts a third of the height up',
  source: 'hydrostatics',
});

/** Moment of that push about the foot of the rim. */
export const rimMoment = formula({
  title: 'Moment of the water about the foot of a raised rim',
  symbol: 'M',
  unit: 'N·m/m',
  expression: '9810*h^3/6',
  parameters: { h },
  compute: (h: number) => (W * h * h * h) / 6,
  validity: 'as for the push',
  source: 'hydrostatics',
});

/** What a raised rim has to carry; that it can is not checked here. */
export interface RimLoad {
  /** at the foot, Pa */
  pressure: number;
  /** N per metre of rim */
  push: number;
  /** N·m per metre of rim */
  moment: number;
}

/**
 * Load of the water above ground on the frame or bank of a raised rim.
 * @param height - water above the lowest ground outside, m; nothing above ground loads nothing
 * @returns pressure at the foot, Pa; push, N/m, and moment about the foot, N·m/m, on a metre of rim
 */
export function rimLoad(height: number): RimLoad {
  const above = Math.max(height, 0);
  return {
    pressure: W * above,
    push: rimPush.compute(above),
    moment: rimMoment.compute(above),
  };
}
