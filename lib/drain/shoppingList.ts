import type { DrainQuantity } from './quantities.js';

/** A line of the list in both systems. */
export interface ShoppingLine {
  item: string;
  metric: number;
  metricUnit: string;
  us: number;
  usUnit: string;
}

const FOOT = 0.3048;
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

/**
 * Quantities as they are asked for in a shop, rounded up.
 * @param quantities - from {@link quantitiesOf}
 * @returns each in metric and in US units
 */
export function shoppingLines(quantities: DrainQuantity[]): ShoppingLine[] {
  return quantities.map(({ item, amount, unit }) => {
    const { unit: usUnit, per } = US[unit] ?? { unit, per: 1 };
    return { item, metric: upTo(amount, unit), metricUnit: unit, us: upTo(amount * per, usUnit), usUnit };
  });
}

/**
 * The list as CSV (RFC 4180), a line an item.
 * @param quantities - from {@link quantitiesOf}
 * @returns header first; lines end with CR and LF
 */
export function shoppingCsv(quantities: DrainQuantity[]): string {
  const cell = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  const rows = shoppingLines(quantities).map((l) =>
    [cell(l.item), l.metric, l.metricUnit, l.us, l.usUnit].join(','),
  );
  return `${['item,metric,metric_unit,us,us_unit', ...rows].join('\r\n')}\r\n`;
}
