/** What the survey does not say and was assumed, with the reason; listed on the result. */
export interface Assumption {
  item: string;
  value: string | number;
  unit: string;
  reason: string;
}

/** Collects assumptions; `or` takes the survey's value where there is one. */
export class Assumptions {
  readonly list: Assumption[] = [];

  add(item: string, value: string | number, unit: string, reason: string): void {
    this.list.push({ item, value, unit, reason });
  }

  or<T extends string | number>(
    said: T | undefined,
    item: string,
    value: T,
    unit: string,
    reason: string,
  ): T {
    if (said !== undefined) return said;
    this.add(item, value, unit, reason);
    return value;
  }
}
