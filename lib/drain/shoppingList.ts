import { FOOT } from '../units/index.js';
import type { DrainQuantity } from './quantities.js';

/** A line of the list in both systems. */
export interface ShoppingLine {
  item: string;
  metric: number;
  metricUnit: string;
  us: number;
  usUnit: string;
  /** length and width of a sheet in one piece, m and ft */
  sides?: { metric: string; us: string };
}

const US: Record<string, { unit: string; per: number }> = {
  m: { unit: 'ft', per: 1 / FOOT },
  'm²': { unit: 'ft²', per: 1 / FOOT ** 2 },
  'm³': { unit: 'yd³', per: 1 / (3 * FOOT) ** 3 },
};

/** Up to the next step a shop sells: whole pieces, a tenth of a cubic measure, half of any other. */
function upTo(amount: number, unit: string): number {
  const step = unit === 'piece' ? 1 : unit.endsWith('³') ? 0.1 : 0.5;
  return Number((Math.ceil(amount / step - 1e-9) * step).toFixed(1));
}

/** Sides of a sheet as it is sold, in half metres or half feet up. */
export const sheetSold = (sides: [number, number], unit: 'm' | 'ft'): [number, number] => {
  const [a, b] = sides.map((side) => upTo(side / (unit === 'ft' ? FOOT : 1), unit));
  return [a!, b!];
};

/**
 * Quantities as they are asked for in a shop, rounded up.
 * @param quantities - from {@link quantitiesOf}
 * @returns each in metric and in US units
 */
export function shoppingLines(quantities: DrainQuantity[]): ShoppingLine[] {
  return quantities.map(({ item, amount: exact, unit, sides_m }) => {
    // As `result.json` has it: a list made from that is the same.
    const amount = Number(exact.toPrecision(6));
    const { unit: usUnit, per } = US[unit] ?? { unit, per: 1 };
    const sold = sides_m && { metric: sheetSold(sides_m, 'm'), us: sheetSold(sides_m, 'ft') };
    const area = ([a, b]: [number, number]) => a * b;
    return {
      item,
      metric: sold ? area(sold.metric) : upTo(amount, unit),
      metricUnit: unit,
      us: sold ? area(sold.us) : upTo(amount * per, usUnit),
      usUnit,
      ...(sold ? { sides: { metric: `${sold.metric.join(' × ')} m`, us: `${sold.us.join(' × ')} ft` } } : {}),
    };
  });
}
