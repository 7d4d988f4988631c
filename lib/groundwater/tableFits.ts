import type { ClimateRecord } from '../climate/index.js';
import { fitTable, type TableFit } from './fitTable.js';

/** What a fit is asked for. */
type Asked = Parameters<typeof fitTable>;

/** Fits kept: what was not asked for the longest goes first. */
const MOST = 16;

/** Fits of late: one that is asked for again, in the same weather and with the same looks, is not made again. */
export class TableFits {
  private readonly kept: { record: ClimateRecord; key: string; fit: TableFit }[] = [];

  /** As {@link fitTable}. */
  of(...[record, ...rest]: Asked): TableFit {
    // Of numbers without end JSON would make the same.
    const key = JSON.stringify(rest, (_, value) => (typeof value === 'number' ? String(value) : value));
    const at = this.kept.findIndex((one) => one.key === key && isSameWeather(one.record, record));
    const found = at < 0 ? { record, key, fit: fitTable(record, ...rest) } : this.kept.splice(at, 1)[0]!;
    this.kept.push(found);
    if (this.kept.length > MOST) this.kept.shift();
    return found.fit;
  }
}

const SERIES = ['rain', 'tmean', 'demand', 'month', 'year'] as const;

/** Whether two records are the same to the last bit. */
function isSameWeather(a: ClimateRecord, b: ClimateRecord): boolean {
  const facts = ({ firstDay, years, snows, filled, demandFrom, noTemperature }: ClimateRecord) =>
    JSON.stringify([firstDay, years, snows, filled, demandFrom, noTemperature]);
  const same = (one: ArrayLike<number>, other: ArrayLike<number>) =>
    one.length === other.length && Array.prototype.every.call(one, (v, i) => Object.is(v, other[i]));
  return a === b || (facts(a) === facts(b) && SERIES.every((name) => same(a[name], b[name])));
}
