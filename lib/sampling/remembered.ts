/** What was worked out about an object, found again by a key for as long as the object is there. */
export class Remembered<Result> {
  private readonly kept = new WeakMap<object, Map<string, Result>>();

  /** @param most - results kept about one object: what was not asked for the longest goes first */
  constructor(private readonly most = Number.POSITIVE_INFINITY) {}

  /** The result kept under a key; worked out where there is none yet. */
  of(object: object, key: string, work: () => Result): Result {
    const found = this.kept.get(object) ?? new Map<string, Result>();
    this.kept.set(object, found);
    const result = found.get(key) ?? work();
    found.delete(key);
    found.set(key, result);
    if (found.size > this.most) found.delete(found.keys().next().value!);
    return result;
  }
}
