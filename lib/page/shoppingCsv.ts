import { type DrainQuantity, shoppingLines } from '../drain/index.js';
import { csvText } from './csv.js';

/**
 * The list to buy and to dig as CSV, a line an item.
 * @param quantities - from {@link quantitiesOf}
 * @returns header and rows ended by CR LF (RFC 4180)
 */
export function shoppingCsv(quantities: DrainQuantity[]): string {
  const rows = shoppingLines(quantities).map((l) => [l.item, l.metric, l.metricUnit, l.us, l.usUnit]);
  return csvText([['item', 'metric', 'metric_unit', 'us', 'us_unit'], ...rows]);
}
